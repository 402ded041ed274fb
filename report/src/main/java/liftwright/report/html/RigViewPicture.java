package liftwright.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.quantity.Measure;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;
import liftwright.report.html.RigScene.Fan;
import liftwright.report.html.RigScene.Limb;
import liftwright.report.html.RigScene.Line;
import liftwright.report.html.RigScene.Part;
import liftwright.report.html.RigScene.Point;

/** The rig seen from one side. */
final class RigViewPicture {

    private static final int WIDTH = RigPicture.WIDTH;
    private static final double MARGIN = RigPicture.MARGIN;
    private static final double FOOT = 24;
    private static final int LEAST_HEIGHT = 190;

    /** Marks of the hatched rim. */
    private static final int TEETH = 20;

    private final Markup page;
    private final Canvas canvas;
    private final UnitSystem units;
    private final RigScene scene;
    private final RigView view;
    private final double scale;
    private final double left;
    private final double top;
    private final int height;
    private final double arrowM;

    /**
     * @param all points that must be seen
     * @param scale units of the picture to a metre
     */
    RigViewPicture(
            Markup page,
            UnitSystem units,
            RigScene scene,
            RigView view,
            List<Point> all,
            double scale) {
        this.page = page;
        this.canvas = new Canvas(page);
        this.units = units;
        this.scene = scene;
        this.view = view;
        this.scale = scale;
        double low = all.stream().mapToDouble(view::across).min().orElse(0);
        double most = all.stream().mapToDouble(view::upward).max().orElse(0);
        left = low - (WIDTH / scale - RigPicture.span(view, all, true)) / 2;
        double tall = RigPicture.span(view, all, false) * scale + 2 * MARGIN + FOOT;
        height = (int) Math.max(LEAST_HEIGHT, tall);
        top = most + (MARGIN + (height - tall) / 2) / scale;
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
        // Growing angles, from e1 to e2, turn right-hand about the thrust.
        Point e1 = any.cross(up).unit();
        Point e2 = e1.cross(up); // the other way round: these axes are left-handed
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
        Point tip = fan.at().plus(fan.push(), arrowM * RigPicture.share(scene, fan));
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

    /** Across the whole picture, as far as it lies in the page; a ring where it meets the eye. */
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
        String words = new QuantityFormat(units, false).amount(Measure.LENGTH, metre);
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

    /** Groups of fans and packs by name, beside what they name and off the fans. */
    private void names(Labels labels) {
        scene.centre().ifPresent(at -> labels.reserve(x(at) - 9, y(at) - 9, x(at) + 9, y(at) + 9));
        Map<String, List<double[]>> groups = new LinkedHashMap<>();
        for (Fan fan : scene.fans()) {
            double half = fan.tipM() / 2 * scale;
            double wide = half * Math.sqrt(1 - square(view.across(fan.push().unit())));
            double high = half * Math.sqrt(1 - square(view.upward(fan.push().unit())));
            group(groups, labels, fan.id(), fan.at(), wide, high);
        }
        for (Part part : scene.parts()) {
            if (part.pack()) {
                group(groups, labels, part.id(), part.at(), 6, 6);
            }
        }
        groups.forEach(
                (name, boxes) -> {
                    double lowX = boxes.stream().mapToDouble(box -> box[0]).min().orElse(0);
                    double lowY = boxes.stream().mapToDouble(box -> box[1]).min().orElse(0);
                    double highX = boxes.stream().mapToDouble(box -> box[2]).max().orElse(0);
                    double highY = boxes.stream().mapToDouble(box -> box[3]).max().orElse(0);
                    labels.beside(
                            (lowX + highX) / 2,
                            (lowY + highY) / 2,
                            (highX - lowX) / 2,
                            (highY - lowY) / 2,
                            name);
                });
    }

    private static double square(double x) {
        return Math.min(1, x * x);
    }

    /** Takes one into its group, and keeps names off it. */
    private void group(
            Map<String, List<double[]>> groups,
            Labels labels,
            String id,
            Point at,
            double wide,
            double high) {
        double[] box = {x(at) - wide, y(at) - high, x(at) + wide, y(at) + high};
        labels.avoid(box[0], box[1], box[2], box[3]);
        int dot = id.lastIndexOf('.');
        groups.computeIfAbsent(dot > 0 ? id.substring(0, dot) : id, _ -> new ArrayList<>())
                .add(box);
    }
}
