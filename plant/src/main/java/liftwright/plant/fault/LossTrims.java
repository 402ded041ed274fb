package liftwright.plant.fault;

import java.util.Arrays;
import java.util.OptionalDouble;
import liftwright.numerics.BoundedProgram;

/**
 * Trims and reserves of what survives, as linear programmes over the thrusts of the fans, each
 * between bounds of its own. Lift counts in weights, moments in weights times an arm. For one
 * thread.
 */
public final class LossTrims {

    private static final int LIFT = 0;
    private static final int YAW = 3;

    private final int fans;
    private final double[][] unit = new double[4][];
    private final double[] least;
    private final double[] most;
    private double gap;

    public LossTrims(int fans) {
        this.fans = fans;
        for (int row = 0; row < unit.length; row++) {
            unit[row] = new double[fans];
        }
        least = new double[fans];
        most = new double[fans];
    }

    /** What a newton of each fan does: lift, roll, pitch, yaw; to be written by the caller. */
    public double[][] unit() {
        return unit;
    }

    /** Thrust of each fan at least, N; above 0 only where it is stuck. */
    public double[] leastN() {
        return least;
    }

    /** Thrust of each fan at most, N. */
    public double[] mostN() {
        return most;
    }

    /** Greatest gap of all proofs since the last call. */
    public double takeGap() {
        double taken = gap;
        gap = 0;
        return taken;
    }

    /**
     * Most lift without the other moments, in weights.
     *
     * @param yawHeld whether yaw counts among them
     */
    public OptionalDouble greatestLift(boolean yawHeld) {
        int rows = yawHeld ? 3 : 2;
        int[] held = new int[rows];
        Arrays.setAll(held, i -> i + 1);
        return greatest(LIFT, 1, held, new double[rows]);
    }

    /**
     * Greatest moment about an axis with the other moments zero, in weights times arm.
     *
     * @param axis 1 to 3: roll, pitch, yaw
     * @param sign +1 or −1: which way
     * @param yawHeld whether yaw counts among the others
     * @param lift to be held, in weights
     */
    public OptionalDouble reserve(int axis, int sign, boolean yawHeld, double lift) {
        int[] held = new int[4];
        int rows = 0;
        for (int row = 0; row < 4; row++) {
            if (row != axis && (row != YAW || yawHeld)) {
                held[rows++] = row;
            }
        }
        double[] right = new double[rows];
        right[0] = lift;
        return greatest(axis, sign, Arrays.copyOf(held, rows), right);
    }

    /** Whether a lift is held without the other moments. */
    public boolean holds(boolean yawHeld, double lift) {
        int rows = yawHeld ? 4 : 3;
        int[] held = new int[rows];
        Arrays.setAll(held, i -> i);
        double[] right = new double[rows];
        right[0] = lift;
        return greatest(LIFT, 0, held, right).isPresent();
    }

    private OptionalDouble greatest(int along, int sign, int[] held, double[] right) {
        double[] c = new double[fans];
        double[][] a = new double[held.length][fans];
        double[] b = right.clone();
        double[] upper = new double[fans];
        double fixed = 0;
        for (int k = 0; k < fans; k++) {
            c[k] = sign * unit[along][k];
            fixed += c[k] * least[k];
            upper[k] = most[k] - least[k];
            for (int i = 0; i < held.length; i++) {
                a[i][k] = unit[held[i]][k];
                b[i] -= a[i][k] * least[k];
            }
        }
        return switch (BoundedProgram.greatest(c, a, b, upper)) {
            case BoundedProgram.Found found -> {
                gap = Math.max(gap, found.gap());
                yield OptionalDouble.of(found.value() + fixed);
            }
            case BoundedProgram.Impossible _ -> OptionalDouble.empty();
            case BoundedProgram.Undecided _ ->
                    throw new IllegalStateException("a programme of few rows ran out of steps");
        };
    }
}
