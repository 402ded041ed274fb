package liftwright.flight.loops;

import java.util.Arrays;
import java.util.OptionalDouble;
import liftwright.numerics.BoundedProgram;

/**
 * What fans between idle and their most can give, by linear programmes: greatest lift, and the
 * greatest moment about an axis with lift at weight and the other axes at rest.
 */
final class Reserves {

    private final Craft craft;
    private final FanMatrix matrix;
    private final double weightN;
    private final double armM;

    Reserves(Craft craft) {
        this.craft = craft;
        matrix = FanMatrix.of(craft.fans());
        weightN = craft.weightN();
        double squares = 0;
        for (Lifter fan : craft.fans()) {
            squares += fan.moment().x() * fan.moment().x() + fan.moment().y() * fan.moment().y();
        }
        armM = squares > 0 ? Math.sqrt(squares / craft.fans().size()) : 1;
    }

    /** Greatest lift without roll and pitch over weight; empty where nothing balances. */
    OptionalDouble liftShare() {
        OptionalDouble found = greatest(0, 1, new int[] {1, 2}, false);
        return found.isPresent()
                ? OptionalDouble.of(found.getAsDouble() / weightN)
                : OptionalDouble.empty();
    }

    /** Whether weight is held with roll and pitch at rest. */
    boolean trims() {
        return greatest(3, 1, new int[] {1, 2}, true).isPresent();
    }

    /**
     * Greatest moment about an axis either way, the lesser, N·m; below zero or empty where it
     * cannot even be held at rest.
     *
     * @param row 1 roll, 2 pitch, 3 yaw
     */
    OptionalDouble momentNm(int row) {
        int[] rest = row == 1 ? new int[] {2} : row == 2 ? new int[] {1} : new int[] {1, 2};
        OptionalDouble one = greatest(row, 1, rest, true);
        OptionalDouble other = greatest(row, -1, rest, true);
        if (one.isEmpty() || other.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Math.min(one.getAsDouble(), other.getAsDouble()));
    }

    private OptionalDouble greatest(int row, int sign, int[] rest, boolean held) {
        int fans = craft.fans().size();
        int count = rest.length + (held ? 1 : 0);
        double[][] a = new double[count][];
        double[] b = new double[count];
        for (int k = 0; k < rest.length; k++) {
            a[k] = scaled(rest[k], 1);
            b[k] = -atIdle(rest[k]);
        }
        if (held) {
            a[count - 1] = scaled(0, 1);
            b[count - 1] = 1 - atIdle(0);
        }
        double[] span = new double[fans];
        Arrays.setAll(
                span, f -> Math.max(0, craft.fans().get(f).mostN() - craft.fans().get(f).idleN()));
        return switch (BoundedProgram.greatest(scaled(row, sign), a, b, span)) {
            case BoundedProgram.Found found ->
                    OptionalDouble.of((found.value() + sign * atIdle(row)) * scale(row));
            case BoundedProgram.Impossible _ -> OptionalDouble.empty();
            case BoundedProgram.Undecided _ ->
                    throw new IllegalStateException("a programme of few rows ran out of steps");
        };
    }

    private double scale(int row) {
        return row == 0 ? weightN : weightN * armM;
    }

    private double[] scaled(int row, int sign) {
        double[] out = new double[craft.fans().size()];
        Arrays.setAll(out, f -> sign * matrix.row(row, f) / scale(row));
        return out;
    }

    private double atIdle(int row) {
        double sum = 0;
        for (int f = 0; f < craft.fans().size(); f++) {
            sum += matrix.row(row, f) * craft.fans().get(f).idleN() / scale(row);
        }
        return sum;
    }
}
