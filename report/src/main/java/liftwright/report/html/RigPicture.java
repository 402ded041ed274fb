package liftwright.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import liftwright.answer.Section.Drawing;
import liftwright.quantity.Measure;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;
import liftwright.report.html.RigScene.Fan;
import liftwright.report.html.RigScene.Limb;
import liftwright.report.html.RigScene.Line;
import liftwright.report.html.RigScene.Part;
import liftwright.report.html.RigScene.Point;

/**
 * The rig from behind, from above and from the side: fans with their spin and thrust, the wearer's
 * segments, packs, centre of mass and the line along which the lift acts. All three to one scale.
 */
final class RigPicture {

    private static final int WIDTH = 360;
    private static final double MARGIN = 22;
    private static final double FOOT = 24;

    /** Length of the arrow of the strongest fan, m, over the size of the rig. */
    private static final double ARROW_SHARE = 0.13;

    /** Marks of the hatched rim. */
    private static final int TEETH = 20;

    private final Markup page;
    private final Canvas canvas;
    private final QuantityFormat format;
    private final UnitSystem units;

    RigPicture(Markup page, UnitSystem units) {
        this.page = page;
        this.canvas = new Canvas(page);
        this.format = new QuantityFormat(units, false);
        this.units = units;
    }

    void draw(Drawing drawing, String id) {
        RigScene scene = RigScene.of(drawing);
        List<Point> all = corners(scene);
        if (all.isEmpty()) {
            return;
        }
        double size = 0;
        for (RigView view : RigView.values()) {
            size = Math.max(size, span(view, all, true));
        }
        double scale = (WIDTH - 2 * MARGIN) / Math.max(size, 1e-6);
        double tall = Math.max(span(RigView.BEHIND, all, false), span(RigView.SIDE, all, false));
        if (tall * scale > 1.6 * WIDTH) { // a tall rig shall not outgrow a page
            scale = 1.6 * WIDTH / tall;
        }
        for (RigView view : RigView.values()) {
            new OneView(scene, view, all, scale)
                    .draw(drawing.title(), id + "-" + view.name().toLowerCase(Locale.ROOT));
        }
    }

    /** Points that must be seen: rims of fans, tips of arrows, ends of limbs, parts. */
    private static List<Point> corners(RigScene scene) {
        List<Point> all = new ArrayList<>();
        double arrow = arrowM(scene);
        for (Fan fan : scene.fans()) {
            double r = fan.tipM() / 2;
            all.add(fan.at().plus(new Point(r, r, 0), 1));
            all.add(fan.at().plus(new Point(r, r, 0), -1));
            all.add(fan.at().plus(fan.push(), arrow * share(scene, fan)));
        }
        for (Limb limb : scene.limbs()) {
            double half = limb.name().equals("head") ? 0.1 : 0.05;
            for (Point end : List.of(limb.from(), limb.to())) {
                all.add(end.plus(new Point(half, half, 0), 1));
                all.add(end.plus(new Point(half, half, 0), -1));
            }
        }
        scene.parts().forEach(part -> all.add(part.at()));
        scene.centre().ifPresent(all::add);
        return all;
    }

    private static double share(RigScene scene, Fan fan) {
        double most = scene.fans().stream().mapToDouble(Fan::thrustN).max().orElse(0);
        return most > 0 ? Math.max(0, fan.thrustN()) / most : 0;
    }

    private static double arrowM(RigScene scene) {
        double reach = 0;
        for (Fan fan : scene.fans()) {
            reach = Math.max(reach, fan.at().length());
        }
        for (Limb limb : scene.limbs()) {
            reach = Math.max(reach, limb.to().length());
        }
        return Math.max(0.05, ARROW_SHARE * 2 * reach);
    }

    private static double span(RigView view, List<Point> all, boolean across) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Point point : all) {
            double value = across ? view.across(point) : view.upward(point);
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return high - low;
    }

    /** One of the three. */
    private final class OneView {
        private final RigScene scene;
        private final RigView view;
        private final double scale;
        private final double left;
        private final double top;
        private final int height;
        private final double arrowM;

        OneView(RigScene scene, RigView view, List<Point> all, double scale) {
            this.scene = scene;
            this.view = view;
            this.scale = scale;
            double low = all.stream().mapToDouble(view::across).min().orElse(0);
            double most = all.stream().mapToDouble(view::upward).max().orElse(0);
            left = low - (WIDTH / scale - span(view, all, true)) / 2;
            top = most + MARGIN / scale;
            height = (int) (span(view, all, false) * scale + 2 * MARGIN + FOOT);
            arrowM = RigPicture.arrowM(scene);
        }

        private double x(Point p) {
            return (view.across(p) - left) * scale;
        }

        private double y(Point p) {
            return (top - view.upward(p)) * scale;
        }

        void draw(String title, String id) {
            page.element(
                    "figure",
                    () -> {
                        page.element("figcaption", title + ", seen " + view.words());
                        canvas.picture(
                                id,
                                WIDTH,
                                height,
                                title + ", seen " + view.words(),
                                words(),
                                this::all);
                    },
                    "class",
                    "rig");
        }

        private String words() {
            return scene.fans().size()
                    + " fans as circles with hatched rims, their thrusts as arrows"
                    + (scene.limbs().isEmpty() ? "" : ", the wearer's segments")
                    + ", packs as squares, the centre of mass and the line of lift;"
                    + " the places stand in the table of this drawing";
        }

        private void all() {
            Labels labels = new Labels(canvas, WIDTH, height - FOOT);
            scene.limbs().stream()
                    .sorted(Comparator.comparingDouble(limb -> view.near(limb.from())))
                    .forEach(this::limb);
            scene.parts().forEach(this::part);
            List<Fan> fans =
                    scene.fans().stream()
                            .sorted(Comparator.comparingDouble(fan -> view.near(fan.at())))
                            .toList();
            fans.forEach(this::fan);
            fans.forEach(this::arrow);
            scene.lift().ifPresent(this::liftLine);
            scene.centre().ifPresent(this::centre);
            edges(labels);
            fans.reversed().forEach(fan -> number(fan, labels));
            names(labels);
        }

        private void limb(Limb limb) {
            double width =
                    switch (limb.name().replaceFirst("^(left|right) ", "")) {
                        case "head" -> 0.15;
                        case "trunk" -> 0.24;
                        case "thigh" -> 0.13;
                        case "upper arm", "shank" -> 0.09;
                        case "hand" -> 0.05;
                        default -> 0.07;
                    };
            canvas.path("M" + point(limb.from()) + " L" + point(limb.to()), width * scale, "limb");
        }

        private String point(Point p) {
            return Canvas.n(x(p)) + " " + Canvas.n(y(p));
        }

        private void part(Part part) {
            double half = part.pack() ? 6 : 3.5;
            canvas.box(
                    x(part.at()) - half,
                    y(part.at()) - half,
                    2 * half,
                    2 * half,
                    part.pack() ? "pack" : "other");
        }

        private void fan(Fan fan) {
            Point up = fan.push().unit();
            Point any = Math.abs(up.forward()) < 0.9 ? new Point(1, 0, 0) : new Point(0, 1, 0);
            // e1 × e2 = thrust, so that growing angles turn right-hand about it
            Point e1 = any.cross(up).unit();
            Point e2 = up.cross(e1);
            canvas.path(ring(fan.at(), e1, e2, fan.tipM() / 2), "disk");
            canvas.path(ring(fan.at(), e1, e2, 0.36 * fan.tipM()), "rim");
            StringBuilder teeth = new StringBuilder();
            double slant = (fan.rightHand() ? 1 : -1) * 1.6 * Math.PI / TEETH;
            for (int k = 0; k < TEETH; k++) {
                double angle = 2 * Math.PI * k / TEETH;
                teeth.append(k == 0 ? "M" : " M")
                        .append(point(on(fan.at(), e1, e2, 0.36 * fan.tipM(), angle)))
                        .append(" L")
                        .append(point(on(fan.at(), e1, e2, 0.5 * fan.tipM(), angle + slant)));
            }
            canvas.path(teeth.toString(), fan.rightHand() ? "righthand" : "lefthand");
        }

        private Point on(Point at, Point e1, Point e2, double radius, double angle) {
            return at.plus(e1, radius * Math.cos(angle)).plus(e2, radius * Math.sin(angle));
        }

        private String ring(Point at, Point e1, Point e2, double radius) {
            StringBuilder d = new StringBuilder();
            for (int k = 0; k < 24; k++) {
                d.append(k == 0 ? "M" : " L")
                        .append(point(on(at, e1, e2, radius, 2 * Math.PI * k / 24)));
            }
            return d.append(" Z").toString();
        }

        private void arrow(Fan fan) {
            Point tip = fan.at().plus(fan.push(), arrowM * share(scene, fan));
            double dx = x(tip) - x(fan.at());
            double dy = y(tip) - y(fan.at());
            double length = Math.hypot(dx, dy);
            if (length < 4) { // straight at the eye
                canvas.disk(x(fan.at()), y(fan.at()), 1.6, "tip");
                return;
            }
            double ux = dx / length;
            double uy = dy / length;
            double head = Math.min(7, length);
            double bx = x(tip) - head * ux;
            double by = y(tip) - head * uy;
            canvas.line(x(fan.at()), y(fan.at()), bx, by, "thrust");
            canvas.path(
                    "M"
                            + point(tip)
                            + " L"
                            + Canvas.n(bx - 0.42 * head * uy)
                            + " "
                            + Canvas.n(by + 0.42 * head * ux)
                            + " L"
                            + Canvas.n(bx + 0.42 * head * uy)
                            + " "
                            + Canvas.n(by - 0.42 * head * ux)
                            + " Z",
                    "tip");
        }

        /**
         * Across the whole picture, as far as it lies in the page; a ring where it meets the eye.
         */
        private void liftLine(Line lift) {
            double ux = view.across(lift.along());
            double uy = -view.upward(lift.along());
            double x = x(lift.at());
            double y = y(lift.at());
            double length = Math.hypot(ux, uy);
            if (length < 0.05) {
                canvas.disk(x, y, 9, "liftline");
                return;
            }
            double bottom = height - FOOT - 4.0;
            double from = -1e9;
            double to = 1e9;
            double[][] walls = {{x, ux, 4, WIDTH - 4.0}, {y, uy, 4, bottom}};
            for (double[] wall : walls) {
                if (Math.abs(wall[1]) > 1e-9) {
                    double a = (wall[2] - wall[0]) / wall[1];
                    double b = (wall[3] - wall[0]) / wall[1];
                    from = Math.max(from, Math.min(a, b));
                    to = Math.min(to, Math.max(a, b));
                }
            }
            if (from < to) {
                canvas.line(x + from * ux, y + from * uy, x + to * ux, y + to * uy, "liftline");
            }
        }

        /** The trade's sign: a circle in quarters, two of them filled. */
        private void centre(Point at) {
            double x = x(at);
            double y = y(at);
            double r = 8;
            canvas.disk(x, y, r, "centre");
            canvas.path(quarter(x, y, r, 0, -r, r, 0), "quarter");
            canvas.path(quarter(x, y, r, 0, r, -r, 0), "quarter");
        }

        private static String quarter(
                double x, double y, double r, double x1, double y1, double x2, double y2) {
            return "M"
                    + Canvas.n(x)
                    + " "
                    + Canvas.n(y)
                    + " L"
                    + Canvas.n(x + x1)
                    + " "
                    + Canvas.n(y + y1)
                    + " A"
                    + Canvas.n(r)
                    + " "
                    + Canvas.n(r)
                    + " 0 0 1 "
                    + Canvas.n(x + x2)
                    + " "
                    + Canvas.n(y + y2)
                    + " Z";
        }

        /** Which way the edges are, and how long a stretch is. */
        private void edges(Labels labels) {
            double base = height - 7.0;
            canvas.line(0, height - FOOT + 1, WIDTH, height - FOOT + 1, "hair");
            canvas.text(0, base, "start", "← " + view.left(), "soft");
            canvas.text(WIDTH, base, "end", view.right() + " →", "soft");
            labels.reserve(0, 0, 20 + Canvas.widthOf(view.top()), 18);
            canvas.text(0, 13, "start", "↑ " + view.top(), "soft");
            double metre = barM();
            double wide = metre * scale;
            String words = format.amount(Measure.LENGTH, metre);
            double whole = wide + 6 + Canvas.widthOf(words);
            double from = (WIDTH - whole) / 2;
            canvas.line(from, base - 4, from + wide, base - 4, "axis");
            canvas.line(from, base - 8, from, base, "axis");
            canvas.line(from + wide, base - 8, from + wide, base, "axis");
            canvas.text(from + wide + 6, base, "start", words, "soft");
        }

        /** A round length that shows well. */
        private double barM() {
            double unit =
                    switch (units) {
                        case SI -> 1;
                        case US -> 0.3048;
                    };
            for (double round : new double[] {2, 1, 0.5, 0.2, 0.1, 0.05, 0.02}) {
                if (round * unit * scale <= 90) {
                    return round * unit;
                }
            }
            return 0.01 * unit;
        }

        /** The last word of its name and the letter of its spin, where the circle has room. */
        private void number(Fan fan, Labels labels) {
            int dot = fan.id().lastIndexOf('.');
            String number =
                    (dot >= 0 ? fan.id().substring(dot + 1) : "") + (fan.rightHand() ? "R" : "L");
            boolean room =
                    fan.tipM() * scale > Canvas.widthOf(number) + 2
                            && Math.abs(view.near(fan.push())) > 0.5;
            if (room) {
                labels.centred(x(fan.at()), y(fan.at()), number, "fanname");
            }
        }

        /** Groups of fans and single packs by name. */
        private void names(Labels labels) {
            scene.centre()
                    .ifPresent(at -> labels.reserve(x(at) - 9, y(at) - 9, x(at) + 9, y(at) + 9));
            Map<String, List<Point>> groups = new LinkedHashMap<>();
            for (Fan fan : scene.fans()) {
                group(groups, fan.id(), fan.at());
            }
            for (Part part : scene.parts()) {
                group(groups, part.id(), part.at());
            }
            groups.forEach(
                    (name, points) -> {
                        double lowX = points.stream().mapToDouble(this::x).min().orElse(0);
                        double highX = points.stream().mapToDouble(this::x).max().orElse(0);
                        double lowY = points.stream().mapToDouble(this::y).min().orElse(0);
                        double highY = points.stream().mapToDouble(this::y).max().orElse(0);
                        labels.beside(
                                (lowX + highX) / 2,
                                (lowY + highY) / 2,
                                (highX - lowX) / 2 + 8,
                                (highY - lowY) / 2 + 8,
                                name);
                    });
        }

        private void group(Map<String, List<Point>> groups, String id, Point at) {
            int dot = id.lastIndexOf('.');
            groups.computeIfAbsent(dot > 0 ? id.substring(0, dot) : id, _ -> new ArrayList<>())
                    .add(at);
        }
    }
}
