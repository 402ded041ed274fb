package liftwright.review.failures;

import java.util.List;
import java.util.OptionalDouble;
import liftwright.review.failures.FaultFigures.ByArms;
import liftwright.review.failures.FaultFigures.ByComputer;
import liftwright.review.failures.FaultFigures.ByNothing;
import liftwright.review.failures.FaultFigures.Trim;

/** The numbers of a fault that are told, each with its field. */
public enum FaultNumber {
    LIFT("fault-lift"),
    TRIM_HELD("fault-trim-held"),
    TRIM_FREE("fault-trim-free"),
    ROLL("fault-roll"),
    PITCH("fault-pitch"),
    YAW("fault-yaw"),
    ROLL_FREE("fault-roll-free"),
    PITCH_FREE("fault-pitch-free"),
    REACH("fault-reach"),
    REACH_YAW_FREE("fault-reach-yaw-free"),
    TILT("fault-tilt"),
    TURNING("fault-turning");

    /** Less than this is told as this: there is none. */
    public static final double NONE = -99;

    private final String field;

    FaultNumber(String field) {
        this.field = field;
    }

    /** Id of its field. */
    public String field() {
        return field;
    }

    /** Those that a rig with these figures has, in reading order. */
    public static List<FaultNumber> of(FaultFigures figures) {
        return switch (figures.held()) {
            case ByComputer _ ->
                    List.of(LIFT, TRIM_HELD, TRIM_FREE, ROLL, PITCH, YAW, ROLL_FREE, PITCH_FREE);
            case ByArms _ -> List.of(LIFT, REACH, REACH_YAW_FREE);
            case ByNothing _ -> List.of(LIFT, TILT, TURNING);
        };
    }

    /** The number itself, bounded by {@link #NONE}; empty where a rig has none such. */
    public OptionalDouble in(FaultFigures figures) {
        if (this == LIFT) {
            return OptionalDouble.of(figures.fullLiftN() / figures.weightN());
        }
        return switch (figures.held()) {
            case ByComputer computer -> in(figures.weightN(), computer);
            case ByArms arms -> in(arms);
            case ByNothing nothing -> in(nothing);
        };
    }

    private OptionalDouble in(double weightN, ByComputer computer) {
        Trim held = computer.yawHeld();
        Trim free = computer.yawFree();
        return switch (this) {
            case TRIM_HELD -> OptionalDouble.of(held.liftN() / weightN);
            case TRIM_FREE -> OptionalDouble.of(free.liftN() / weightN);
            case ROLL -> bounded(held.atWeight().rollRadps2());
            case PITCH -> bounded(held.atWeight().pitchRadps2());
            case YAW -> bounded(held.atWeight().yawRadps2());
            case ROLL_FREE -> bounded(free.atWeight().rollRadps2());
            case PITCH_FREE -> bounded(free.atWeight().pitchRadps2());
            case LIFT, REACH, REACH_YAW_FREE, TILT, TURNING -> OptionalDouble.empty();
        };
    }

    private OptionalDouble in(ByArms arms) {
        return switch (this) {
            case REACH -> bounded(arms.left());
            case REACH_YAW_FREE -> bounded(arms.leftYawFree());
            case LIFT,
                    TRIM_HELD,
                    TRIM_FREE,
                    ROLL,
                    PITCH,
                    YAW,
                    ROLL_FREE,
                    PITCH_FREE,
                    TILT,
                    TURNING ->
                    OptionalDouble.empty();
        };
    }

    private OptionalDouble in(ByNothing nothing) {
        return switch (this) {
            case TILT -> bounded(nothing.tiltRadps2());
            case TURNING -> bounded(nothing.yawRadps2());
            case LIFT,
                    TRIM_HELD,
                    TRIM_FREE,
                    ROLL,
                    PITCH,
                    YAW,
                    ROLL_FREE,
                    PITCH_FREE,
                    REACH,
                    REACH_YAW_FREE ->
                    OptionalDouble.empty();
        };
    }

    private static OptionalDouble bounded(double number) {
        return OptionalDouble.of(Math.max(NONE, number));
    }
}
