package liftwright.trials.programme;

import java.util.Optional;
import liftwright.trials.CardKind;

/**
 * How long cards take, how often they are repeated and when their passes are worth nothing any
 * more. All of it is common practice, from memory, and none of it a rule of anybody.
 */
final class Practice {

    /** Clean runs in a row before more is trusted to the rig. */
    static final int CLEAN = 10;

    /** Clean runs before something is called routine: none of 29 fails, 90 % at 95 %. */
    static final int ROUTINE = 29;

    /**
     * @param minutes with setting up
     * @param repeats clean runs in a row
     * @param agesAfterDays never where it is empty
     */
    record Terms(double minutes, int repeats, Optional<Integer> agesAfterDays) {}

    private Practice() {}

    static Terms of(CardKind kind) {
        return switch (kind) {
            case MASS -> ages(60, 1, 180);
            case CENTRE -> ages(45, 3, 180);
            case INERTIA -> ages(60, 5, 365);
            case CELLS -> ages(120, 2, 30);
            case FRAME -> ages(30, 3, 90);
            case THROTTLE -> ages(30, 3, 30);
            case KILL -> ages(30, 3, 30);
            case FIRST_SPIN -> lasts(45, 3);
            case PROOF_SPIN -> lasts(45, 1);
            case THRUST -> ages(60, 3, 180);
            case LAG -> ages(30, 5, 180);
            case POD -> ages(60, CLEAN, 60);
            case ALL_FANS -> ages(90, CLEAN, 30);
            case SCALE -> ages(60, CLEAN, 30);
            case HANGING -> ages(90, CLEAN, 30);
            case HOP -> ages(120, CLEAN, 14);
            case FREE_HOVER -> ages(120, ROUTINE, 14);
            case MODULE_HOLD -> ages(90, CLEAN, 14);
            case MODULE_CROSS -> ages(90, ROUTINE, 14);
            case TO_WEARER -> ages(90, ROUTINE, 14);
        };
    }

    private static Terms ages(double minutes, int repeats, int days) {
        return new Terms(minutes, repeats, Optional.of(days));
    }

    private static Terms lasts(double minutes, int repeats) {
        return new Terms(minutes, repeats, Optional.empty());
    }
}
