package liftwright.plant.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.numerics.WarmProgram;

/**
 * Trims and reserves of what survives, as linear programmes over the thrusts of the fans, each
 * between bounds of its own. Thrusts and lift count in weights, moments in weights times an arm.
 * Every solve starts from the basis of the whole rig ({@link #whole}), so that what it finds
 * depends on nothing it found before. Allocates nothing after it was made; for one thread.
 */
public final class LossTrims {

    /** Of a lift or moment that nothing gives: no point meets the rest. */
    public static final double NONE = Double.NEGATIVE_INFINITY;

    /** Lift, roll, pitch, yaw. */
    private static final int ROWS = 4;

    private static final int LIFT = 0;
    private static final int YAW = 3;

    private final int fans;
    private final double[][] unit = new double[ROWS][];
    private final double[] least;
    private final double[] most;

    /** For each row, others held without yaw and with it, made great downwards and upwards. */
    private final Programme[][][] programmes = new Programme[ROWS][2][2];

    private final List<Programme> all = new ArrayList<>();
    private double gap;
    private boolean renewed;

    /** Greatest of one row, one way, with others held. */
    private final class Programme {
        final int row;
        final double sign;
        final int[] held;
        final WarmProgram linear;
        final WarmProgram.Start whole;
        final WarmProgram.Start start;

        Programme(int row, double sign, boolean yawHeld) {
            this.row = row;
            this.sign = sign;
            int[] rows = new int[ROWS];
            int count = 0;
            for (int other = 0; other < ROWS; other++) {
                if (other != row && (other != YAW || yawHeld)) {
                    rows[count++] = other;
                }
            }
            held = Arrays.copyOf(rows, count);
            linear = new WarmProgram(count, fans);
            whole = linear.newStart();
            start = linear.newStart();
        }

        /** Takes what a weight of each fan's thrust does. */
        void columns() {
            for (int k = 0; k < fans; k++) {
                column(k);
            }
            whole.clear();
        }

        void column(int k) {
            for (int i = 0; i < held.length; i++) {
                linear.coefficient(i, k, unit[held[i]][k]);
            }
            linear.worth(k, sign * unit[row][k]);
        }

        private void bounds(double lift) {
            for (int k = 0; k < fans; k++) {
                linear.bounds(k, least[k], most[k]);
            }
            for (int i = 0; i < held.length; i++) {
                linear.right(i, held[i] == LIFT ? lift : 0);
            }
        }

        /** On the whole rig: where all losses start from. */
        void begin(double lift) {
            bounds(lift);
            linear.solve(whole);
        }

        double greatest(double lift) {
            bounds(lift);
            if (renewed) {
                start.copy(whole);
                start.renew();
            }
            return switch (linear.solveFrom(renewed ? start : whole)) {
                case FOUND -> {
                    gap = Math.max(gap, linear.gap());
                    yield linear.value();
                }
                case IMPOSSIBLE -> NONE;
                case UNDECIDED ->
                        throw new IllegalStateException("a programme of few rows ran out of steps");
            };
        }
    }

    public LossTrims(int fans) {
        this.fans = fans;
        for (int row = 0; row < ROWS; row++) {
            unit[row] = new double[fans];
        }
        least = new double[fans];
        most = new double[fans];
        for (int row = 0; row < ROWS; row++) {
            for (int up = 0; up < 2; up++) {
                for (int yaw = 0; yaw < 2; yaw++) {
                    // Where yaw is what is made great it is not among the others.
                    boolean same = row == YAW && yaw == 1;
                    programmes[row][yaw][up] =
                            same
                                    ? programmes[row][0][up]
                                    : new Programme(row, up == 0 ? -1 : 1, yaw == 1);
                    if (!same) {
                        all.add(programmes[row][yaw][up]);
                    }
                }
            }
        }
    }

    /** What a weight of each fan's thrust does: lift, roll, pitch, yaw; written by the caller. */
    public double[][] unit() {
        return unit;
    }

    /** Thrust of each fan at least, in weights; above 0 only where it is stuck. */
    public double[] least() {
        return least;
    }

    /** Thrust of each fan at most, in weights. */
    public double[] most() {
        return most;
    }

    /** Takes columns and bounds as those of the whole rig, from which all losses start. */
    public void whole(double lift) {
        renewed = false;
        for (Programme one : all) {
            one.columns();
            one.begin(lift);
        }
    }

    /**
     * Takes over columns that differ from those of the whole rig.
     *
     * @param fan whose column in {@link #unit} was changed
     */
    public void turned(int fan) {
        renewed = true;
        for (Programme one : all) {
            one.column(fan);
        }
    }

    /**
     * Takes over columns that are again those of the whole rig.
     *
     * @param fan whose column in {@link #unit} was changed back
     */
    public void restored(int fan) {
        turned(fan);
        renewed = false;
    }

    /** Greatest gap of all proofs since the last call. */
    public double takeGap() {
        double taken = gap;
        gap = 0;
        return taken;
    }

    /**
     * Most lift without the other moments, in weights; {@link #NONE} where stuck fans leave none.
     *
     * @param yawHeld whether yaw counts among them
     */
    public double greatestLift(boolean yawHeld) {
        return programmes[LIFT][yawHeld ? 1 : 0][1].greatest(0);
    }

    /**
     * Greatest moment about an axis with the other moments zero, in weights times arm; {@link
     * #NONE} where nothing holds lift and the others.
     *
     * @param axis 1 to 3: roll, pitch, yaw
     * @param sign +1 or −1: which way
     * @param yawHeld whether yaw counts among the others
     * @param lift to be held, in weights
     */
    public double reserve(int axis, int sign, boolean yawHeld, double lift) {
        return programmes[axis][yawHeld ? 1 : 0][sign > 0 ? 1 : 0].greatest(lift);
    }
}
