package liftwright.review.cause.truth;

import java.util.Arrays;

/**
 * How a rig is otherwise than its builder wrote down; all zero, or one for factors, where it is
 * not. What belongs to a fan moves with it, what belongs to its seat stays.
 */
final class Hidden {

    final Plan plan;
    private final double[] values;
    private final boolean[] reversed;

    /** Where each kind of number begins. */
    enum Part {
        /** Thrust of a fan over its share. */
        GIVES,
        /** Lean of a fan's own jet, forward and right, rad. */
        LEAN,
        /** Lean of its seat. */
        SEAT,
        /** What a mount gives at lift-off: turn about forward and about right, rad. */
        TWIST,
        /** How its mount stands askew, likewise. */
        TILT,
        /** Joints of the arms, rad. */
        ARM,
        /** Centre of mass, m. */
        CENTRE,
        /** Factors of inertia about the three axes. */
        INERTIA,
        /** Yaw inertia of the person over that of the segments. */
        PERSON_YAW,
        /** Residual swirl. */
        SWIRL,
        /** Factors of what limbs and boxes catch of a jet. */
        CATCH
    }

    Hidden(Plan plan) {
        this.plan = plan;
        values = new double[size(plan)];
        reversed = new boolean[plan.fans()];
        for (Part part : new Part[] {Part.GIVES, Part.INERTIA, Part.PERSON_YAW, Part.CATCH}) {
            for (int k = 0; k < count(plan, part); k++) {
                set(part, k, 1);
            }
        }
        set(Part.SWIRL, 0, plan.swirl());
    }

    private Hidden(Hidden other) {
        plan = other.plan;
        values = other.values.clone();
        reversed = other.reversed.clone();
    }

    Hidden copy() {
        return new Hidden(this);
    }

    static int count(Plan plan, Part part) {
        return switch (part) {
            case GIVES -> plan.fans();
            case LEAN, SEAT -> 2 * plan.fans();
            case TWIST, TILT -> 2 * plan.mounts().size();
            case ARM -> Body.JOINTS;
            case CENTRE, INERTIA -> 3;
            case PERSON_YAW, SWIRL -> 1;
            case CATCH -> 2;
        };
    }

    private static int size(Plan plan) {
        return Arrays.stream(Part.values()).mapToInt(part -> count(plan, part)).sum();
    }

    private int at(Part part, int k) {
        int at = k;
        for (Part each : Part.values()) {
            if (each == part) {
                return at;
            }
            at += count(plan, each);
        }
        throw new IllegalStateException();
    }

    double get(Part part, int k) {
        return values[at(part, k)];
    }

    void set(Part part, int k, double value) {
        values[at(part, k)] = value;
    }

    Hidden add(Part part, int k, double more) {
        values[at(part, k)] += more;
        return this;
    }

    boolean reversed(int fan) {
        return reversed[fan];
    }

    void reverse(int fan) {
        reversed[fan] = true;
    }
}
