package liftwright.flight.loops;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Gains of granted loops and the matrix that shares thrust out, as plain tables and as JSON, every
 * number with its unit. The layout is our own: no flight computer reads it as it is.
 */
public final class LoopExport {

    private static final List<String> ROWS = List.of("lift", "roll", "pitch", "yaw");
    private static final List<String> UNITS = List.of("N", "N·m", "N·m", "N·m");

    /** Where nobody wears the rig, or the loop is so slow that the harness does not matter. */
    private static final String NOT_FELT = "not felt";

    private final LoopDesign.Granted granted;
    private final FanMatrix matrix;

    public LoopExport(LoopDesign.Granted granted) {
        this.granted = granted;
        matrix = FanMatrix.of(granted.craft().fans());
    }

    /** One loop a line; units stand in the head. */
    public String gainsCsv() {
        StringBuilder out =
                new StringBuilder(
                        "axis,level,gain (1/s),integral (1/s²),crossover (rad/s),phase margin of"
                                + " the rigid body (rad),gain margin of the rigid body (1),least"
                                + " phase margin of the rigid body ± 30 % (rad),least gain margin"
                                + " of the rigid body ± 30 % (1),overshoot of the rigid body"
                                + " (1),rise time of the rigid body (s),settling time of the rigid"
                                + " body (s),least distance from −1 with the harness (1),frequency"
                                + " of the harness at it (rad/s),bound by\n");
        for (Loop loop : granted.loops()) {
            out.append(loop.axis().words())
                    .append(',')
                    .append(loop.level().words())
                    .append(',')
                    .append(
                            List.of(
                                            loop.gainPerS(),
                                            loop.integralPerS2(),
                                            loop.crossoverRadps(),
                                            loop.phaseMarginRad(),
                                            loop.gainMargin(),
                                            loop.worst().phaseMarginRad(),
                                            loop.worst().gainMargin(),
                                            loop.step().overshoot(),
                                            loop.step().riseS(),
                                            loop.step().settleS())
                                    .stream()
                                    .map(LoopExport::cell)
                                    .collect(Collectors.joining(",")))
                    .append(',')
                    .append(
                            loop.harness()
                                    .map(told -> cell(told.distance()) + ',' + cell(told.radps()))
                                    .orElse(NOT_FELT + ',' + NOT_FELT))
                    .append(",\"")
                    .append(loop.bound())
                    .append("\"\n");
        }
        return out.toString();
    }

    /** One fan a line: what a newton of it gives, and how much of it each wish takes. */
    public String matrixCsv() {
        StringBuilder out = new StringBuilder("fan");
        for (int row = 0; row < ROWS.size(); row++) {
            out.append(',').append(ROWS.get(row)).append(" (").append(UNITS.get(row)).append("/N)");
        }
        for (int row = 0; row < ROWS.size(); row++) {
            out.append(",for ")
                    .append(ROWS.get(row))
                    .append(" (N/")
                    .append(row == 0 ? "N" : "(N·m)")
                    .append(')');
        }
        out.append(
                ",least thrust (N),most thrust (N),still voltage (V),root voltage (V/√N),voltage for"
                        + " thrust (V/N)\n");
        for (int fan = 0; fan < matrix.fans(); fan++) {
            Lifter lifter = granted.craft().fans().get(fan);
            out.append(lifter.id());
            for (int row = 0; row < ROWS.size(); row++) {
                out.append(',').append(cell(matrix.row(row, fan)));
            }
            for (int row = 0; row < ROWS.size(); row++) {
                out.append(',').append(cell(matrix.share(row, fan)));
            }
            out.append(',').append(cell(lifter.idleN()));
            out.append(',').append(cell(lifter.mostN()));
            out.append(',').append(cell(lifter.volts().stillV()));
            out.append(',').append(cell(lifter.volts().rootVpRootN()));
            out.append(',').append(cell(lifter.volts().perNewtonVpN())).append('\n');
        }
        return out.toString();
    }

    /** Both in one, with mass, inertia and units. */
    public String json() {
        Craft craft = granted.craft();
        return "{\n  \"liftwright loops\": 1,\n  \"units\": {\"gain\": \"1/s\", \"integral\": \"1/s²\","
                + " \"crossover\": \"rad/s\", \"phase margin\": \"rad\", \"gain margin\": \"1\","
                + " \"overshoot\": \"1\", \"rise time\": \"s\", \"settling time\": \"s\","
                + " \"harness distance\": \"1\", \"harness frequency\": \"rad/s\","
                + " \"mass\": \"kg\", \"inertia\": \"kg·m²\", \"gives\": \"N/N, N·m/N\", \"takes\":"
                + " \"N/N, N/(N·m)\", \"thrust\": \"N\", \"voltage\": \"V, V/√N, V/N\"},\n"
                + "  \"margins and steps\": \"of the rigid body; the harness distance is the least"
                + " distance of the open loop from −1 with a wearer who gives, over all frequencies"
                + " of the harness\",\n"
                + "  \"axes\": \"x forward, y right, z down, at the centre of mass\",\n"
                + "  \"mass\": "
                + number(craft.massKg())
                + ",\n  \"inertia\": "
                + list(
                        craft.inertia().xx(),
                        craft.inertia().yy(),
                        craft.inertia().zz(),
                        craft.inertia().xy(),
                        craft.inertia().xz(),
                        craft.inertia().yz())
                + ",\n  \"inertia order\": \"xx, yy, zz, xy, xz, yz\",\n  \"loops\": [\n    "
                + granted.loops().stream()
                        .map(LoopExport::loop)
                        .collect(Collectors.joining(",\n    "))
                + "\n  ],\n  \"fans\": [\n    "
                + fans()
                + "\n  ]\n}\n";
    }

    private static String loop(Loop loop) {
        return "{\"axis\": "
                + text(loop.axis().words())
                + ", \"level\": "
                + text(loop.level().words())
                + ", \"gain\": "
                + number(loop.gainPerS())
                + ", \"integral\": "
                + number(loop.integralPerS2())
                + ", \"crossover\": "
                + number(loop.crossoverRadps())
                + ", \"phase margin\": "
                + number(loop.phaseMarginRad())
                + ", \"gain margin\": "
                + number(loop.gainMargin())
                + ", \"overshoot\": "
                + number(loop.step().overshoot())
                + ", \"rise time\": "
                + number(loop.step().riseS())
                + ", \"settling time\": "
                + number(loop.step().settleS())
                + ", \"harness distance\": "
                + harness(loop, Loop.Harness::distance)
                + ", \"harness frequency\": "
                + harness(loop, Loop.Harness::radps)
                + ", \"bound by\": "
                + text(loop.bound())
                + "}";
    }

    private static String harness(Loop loop, ToDoubleFunction<Loop.Harness> figure) {
        return loop.harness()
                .map(told -> number(figure.applyAsDouble(told)))
                .orElse(text(NOT_FELT));
    }

    private String fans() {
        StringBuilder out = new StringBuilder();
        for (int fan = 0; fan < matrix.fans(); fan++) {
            Lifter lifter = granted.craft().fans().get(fan);
            double[] gives = new double[ROWS.size()];
            double[] takes = new double[ROWS.size()];
            for (int row = 0; row < ROWS.size(); row++) {
                gives[row] = matrix.row(row, fan);
                takes[row] = matrix.share(row, fan);
            }
            out.append(fan == 0 ? "" : ",\n    ")
                    .append("{\"fan\": ")
                    .append(text(lifter.id().toString()))
                    .append(", \"gives\": ")
                    .append(list(gives))
                    .append(", \"takes\": ")
                    .append(list(takes))
                    .append(", \"thrust\": ")
                    .append(list(lifter.idleN(), lifter.mostN()))
                    .append(", \"voltage\": ")
                    .append(
                            list(
                                    lifter.volts().stillV(),
                                    lifter.volts().rootVpRootN(),
                                    lifter.volts().perNewtonVpN()))
                    .append('}');
        }
        return out.toString();
    }

    private static String list(double... values) {
        StringBuilder out = new StringBuilder("[");
        for (int k = 0; k < values.length; k++) {
            out.append(k == 0 ? "" : ", ").append(number(values[k]));
        }
        return out.append(']').toString();
    }

    /** A number of JSON; "never" where no rise of the gain is too much. */
    private static String number(double value) {
        return Double.isFinite(value) ? cell(value) : "\"never\"";
    }

    private static String cell(double value) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, "%.9g", value) : "never";
    }

    private static String text(String words) {
        return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
