package liftwright.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import liftwright.answer.Section.Elevation;
import liftwright.answer.Section.Elevation.Kind;
import liftwright.answer.Section.Elevation.Load;
import liftwright.answer.Section.Elevation.Shape;
import liftwright.answer.Section.Elevation.Spot2;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;
import liftwright.report.ElevationFrame;
import liftwright.report.Figures;
import liftwright.report.PlotFrame.Axis;

/**
 * What holds the rig, from the side, as high as it is wide. Kinds of things differ by line and
 * hatch; loads are numbered arrows, as long as they are strong, with their words below. Where
 * nobody may stand is a hatched strip below the ground, torn where it goes on.
 */
final class ElevationPicture {

    private static final int WIDTH = 640;
    private static final double LEFT = 46;
    private static final double RIGHT = 10;
    private static final double TOP = 14;
    private static final double MOST_HIGH = 400;
    private static final double STRIP = 12;
    private static final double FOOT = 62;
    private static final double LEAST_ARROW = 20;
    private static final double MOST_ARROW = 70;
    private static final double HEAD = 8;

    private final Markup page;
    private final Canvas canvas;
    private final Figures figures;
    private final QuantityFormat format;
    private final Elevation elevation;
    private final ElevationFrame frame;
    private final double perM;
    private final double leftM;
    private final double bottom;

    ElevationPicture(Markup page, Figures figures, UnitSystem units, Elevation elevation) {
        this.page = page;
        this.canvas = new Canvas(page);
        this.figures = figures;
        this.format = new QuantityFormat(units, false);
        this.elevation = elevation;
        frame = ElevationFrame.of(elevation);
        double room = WIDTH - LEFT - RIGHT;
        perM = Math.min(room / frame.wideM(), MOST_HIGH / frame.highM());
        leftM = frame.leftM() - (room / perM - frame.wideM()) / 2;
        bottom = TOP + frame.highM() * perM;
    }

    void draw(String id) {
        page.element(
                "figure",
                () -> {
                    page.element("figcaption", elevation.title());
                    canvas.picture(
                            id,
                            WIDTH,
                            (int) Math.ceil(bottom + FOOT),
                            elevation.title(),
                            words(),
                            this::all);
                    loads();
                    page.element("p", key(), "class", "key");
                },
                "class",
                "elevation");
    }

    private void all() {
        axes();
        keepOut();
        elevation.shapes().stream().filter(this::isDrawn).forEach(this::shape);
        canvas.line(LEFT, y(0), WIDTH - RIGHT, y(0), "axis");
        Labels labels = new Labels(canvas, WIDTH, bottom);
        labels.reserve(0, 0, LEFT, bottom);
        elevation.shapes().stream().filter(this::isDrawn).forEach(shape -> keepOff(shape, labels));
        List<double[]> tips = new ArrayList<>();
        elevation.loads().forEach(load -> tips.add(arrow(load, labels)));
        for (int k = 0; k < tips.size(); k++) {
            double[] tip = tips.get(k);
            labels.beside(tip[0], tip[1], 2, 2, Integer.toString(k + 1));
        }
        elevation.shapes().stream()
                .filter(this::isDrawn)
                .filter(shape -> !shape.label().isEmpty())
                .forEach(shape -> name(shape, labels));
    }

    /** Names stand beside lines as long as there is room. */
    private void keepOff(Shape shape, Labels labels) {
        List<Spot2> spots = shape.outline();
        int edges = shape.closed() ? spots.size() : spots.size() - 1;
        for (int k = 0; k < edges; k++) {
            Spot2 from = spots.get(k);
            Spot2 to = spots.get((k + 1) % spots.size());
            double dx = x(to.acrossM()) - x(from.acrossM());
            double dy = y(to.upM()) - y(from.upM());
            int steps = Math.max(1, (int) Math.ceil(Math.hypot(dx, dy) / 8));
            for (int i = 0; i <= steps; i++) {
                double x = x(from.acrossM()) + dx * i / steps;
                double y = y(from.upM()) + dy * i / steps;
                labels.avoid(x - 2, y - 2, x + 2, y + 2);
            }
        }
    }

    private boolean isDrawn(Shape shape) {
        return shape.kind() != Kind.KEEP_OUT && shape.kind() != Kind.GROUND;
    }

    private void axes() {
        Axis up = Axis.between(Elevation.UP, frame.lowM(), frame.lowM() + frame.highM(), format);
        for (double tick : up.ticks()) {
            canvas.line(LEFT, y(tick), WIDTH - RIGHT, y(tick), "hair");
            canvas.text(LEFT - 6, y(tick) + 4.5, "end", up.number(tick, up.step()), "soft");
        }
        double rightM = leftM + (WIDTH - LEFT - RIGHT) / perM;
        Axis across = Axis.between(Elevation.ACROSS, leftM, rightM, format);
        for (double tick : across.ticks()) {
            String words = across.number(tick, across.step());
            canvas.line(x(tick), bottom, x(tick), bottom + 4, "axis");
            canvas.text(
                    Math.min(x(tick), WIDTH - Canvas.widthOf(words) / 2),
                    bottom + STRIP + 22,
                    "middle",
                    words,
                    "soft");
        }
        canvas.text(WIDTH, bottom + STRIP + 42, "end", across.title(), "soft");
        canvas.text(0, bottom + STRIP + 42, "start", "up: " + up.title(), "soft");
    }

    private void keepOut() {
        for (Shape shape : elevation.shapes()) {
            if (shape.kind() != Kind.KEEP_OUT) {
                continue;
            }
            double from = shape.outline().stream().mapToDouble(s -> x(s.acrossM())).min().orElse(0);
            double to = shape.outline().stream().mapToDouble(s -> x(s.acrossM())).max().orElse(0);
            if (ElevationFrame.isUpright(shape)) {
                double high = shape.outline().stream().mapToDouble(Spot2::upM).max().orElse(0);
                canvas.line(from, bottom, from, y(high), "reach");
                boolean before = shape.outline().getFirst().acrossM() < frame.middleM();
                from = before ? -1 : from;
                to = before ? to : WIDTH;
            }
            double left = Math.max(LEFT, from);
            double right = Math.min(WIDTH - RIGHT, to);
            if (right > left) {
                canvas.path(strip(left, right, from < LEFT, to > WIDTH - RIGHT), "taken");
            }
        }
    }

    /** A hatched strip below the ground, torn where it goes on. */
    private String strip(double left, double right, boolean tornLeft, boolean tornRight) {
        double top = bottom + 5;
        double low = top + STRIP;
        double middle = (top + low) / 2;
        return "M"
                + spot(left, top)
                + " L"
                + spot(right, top)
                + (tornRight ? " L" + spot(right - 6, middle) : "")
                + " L"
                + spot(right, low)
                + " L"
                + spot(left, low)
                + (tornLeft ? " L" + spot(left + 6, middle) : "")
                + " Z";
    }

    private void shape(Shape shape) {
        List<Spot2> outline = shape.outline();
        if (outline.size() == 1) {
            canvas.disk(x(outline.getFirst().acrossM()), y(outline.getFirst().upM()), 4, "anchor");
            return;
        }
        String d =
                outline.stream()
                        .map(s -> spot(x(s.acrossM()), y(s.upM())))
                        .collect(Collectors.joining(" L", "M", shape.closed() ? " Z" : ""));
        canvas.path(d, shape.closed() ? area(shape.kind()) : edge(shape.kind()));
    }

    private static String area(Kind kind) {
        return switch (kind) {
            case PERSON -> "person";
            case RIG -> "pack";
            case MAT -> "added";
            case REACH, KEEP_OUT -> "reach";
            case GROUND, STAND, ANCHOR, BEAM, LINE, DOWN_LINE, PLATFORM, GANTRY -> "made";
        };
    }

    private static String edge(Kind kind) {
        return switch (kind) {
            case REACH, KEEP_OUT -> "reach";
            case DOWN_LINE -> "dashes";
            case PERSON -> "person";
            case GROUND, STAND, RIG, ANCHOR, BEAM, LINE, PLATFORM, MAT, GANTRY -> "edge";
        };
    }

    /** Returns where its tip is. */
    private double[] arrow(Load load, Labels labels) {
        double newton = Math.hypot(load.acrossN(), load.upN());
        double most =
                elevation.loads().stream()
                        .mapToDouble(l -> Math.hypot(l.acrossN(), l.upN()))
                        .max()
                        .orElse(newton);
        double x = x(load.at().acrossM());
        double y = y(load.at().upM());
        if (!(newton > 0)) {
            canvas.disk(x, y, 3, "dot");
            return new double[] {x, y};
        }
        double ux = load.acrossN() / newton;
        double uy = -load.upN() / newton;
        double wanted = LEAST_ARROW + MOST_ARROW * newton / most;
        boolean onTheGround = uy > 0 && y + wanted * uy > bottom;
        if (onTheGround) { // what presses on the ground ends there
            x -= wanted * ux;
            y -= wanted * uy;
        }
        double length = onTheGround ? wanted : fitted(x, y, ux, uy, wanted);
        double tipX = x + length * ux;
        double tipY = y + length * uy;
        double bx = tipX - HEAD * ux;
        double by = tipY - HEAD * uy;
        canvas.line(x, y, bx, by, "thrust");
        canvas.path(
                "M"
                        + spot(tipX, tipY)
                        + " L"
                        + spot(bx - 0.42 * HEAD * uy, by + 0.42 * HEAD * ux)
                        + " L"
                        + spot(bx + 0.42 * HEAD * uy, by - 0.42 * HEAD * ux)
                        + " Z",
                "tip");
        labels.avoid(
                Math.min(x, tipX) - 3,
                Math.min(y, tipY) - 3,
                Math.max(x, tipX) + 3,
                Math.max(y, tipY) + 3);
        return new double[] {tipX, tipY};
    }

    /** Shorter where the picture ends before. */
    private double fitted(double x, double y, double ux, double uy, double length) {
        double most = length;
        if (ux > 1e-9) {
            most = Math.min(most, (WIDTH - RIGHT - x) / ux);
        } else if (ux < -1e-9) {
            most = Math.min(most, (x - LEFT) / -ux);
        }
        if (uy < -1e-9) {
            most = Math.min(most, (y - 2) / -uy);
        }
        return Math.max(HEAD + 2, most);
    }

    private void name(Shape shape, Labels labels) {
        List<Spot2> outline = shape.outline();
        Spot2 at =
                shape.closed()
                        ? outline.stream()
                                .max(Comparator.comparingDouble(Spot2::upM))
                                .orElse(outline.getFirst())
                        : middle(outline);
        labels.beside(x(at.acrossM()), y(at.upM()), 4, 4, shape.label());
    }

    private static Spot2 middle(List<Spot2> line) {
        Spot2 from = line.get((line.size() - 1) / 2);
        Spot2 to = line.get(line.size() / 2);
        return new Spot2((from.acrossM() + to.acrossM()) / 2, (from.upM() + to.upM()) / 2);
    }

    private void loads() {
        if (!elevation.loads().isEmpty()) {
            page.element(
                    "ol",
                    () ->
                            elevation
                                    .loads()
                                    .forEach(
                                            load ->
                                                    page.element(
                                                            "li",
                                                            load.label()
                                                                    + ": "
                                                                    + figures.value(load.value()))),
                    "class",
                    "loads");
        }
    }

    private String key() {
        String out =
                elevation.shapes().stream()
                        .filter(shape -> shape.kind() == Kind.KEEP_OUT)
                        .map(Shape::label)
                        .filter(label -> !label.isEmpty())
                        .distinct()
                        .collect(Collectors.joining("; "));
        return "Numbered arrows: loads, longer where they are stronger. Broken lines: ropes and"
                + " reach."
                + (out.isEmpty()
                        ? ""
                        : " Hatched strip below the ground, torn where it goes on: " + out + ".");
    }

    private String words() {
        return elevation.shapes().stream()
                        .map(s -> s.label().isEmpty() ? s.kind().word() : s.label())
                        .distinct()
                        .collect(Collectors.joining(", "))
                + "; "
                + elevation.loads().size()
                + " loads as arrows; the places stand in the tables of this drawing";
    }

    private static String spot(double x, double y) {
        return Canvas.n(x) + " " + Canvas.n(y);
    }

    private double x(double acrossM) {
        return LEFT + (acrossM - leftM) * perM;
    }

    private double y(double upM) {
        return bottom - (upM - frame.lowM()) * perM;
    }
}
