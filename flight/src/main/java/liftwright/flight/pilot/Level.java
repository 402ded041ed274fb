package liftwright.flight.pilot;

/**
 * Levels of flying qualities as MIL-F-8785C has them for aeroplanes [MIL8785C]: 1 clearly adequate,
 * 2 the task is done with more work of the pilot, 3 it can be controlled and the task is not done
 * well. Nothing was published for rigs that are worn; these are yardsticks and no rule for them.
 */
public enum Level {
    ONE,
    TWO,
    THREE,
    WORSE;

    private static final double[] SPIRAL_DOUBLES_S = {12, 8, 4};
    private static final double LEAST_DAMPING = 0.04;
    private static final double OSCILLATION_DOUBLES_S = 55;

    /** Of a motion that does not swing: §3.3.1.3, least time to double, flight phases A and C. */
    public static Level ofDivergence(Mode mode) {
        for (int level = 0; level < SPIRAL_DOUBLES_S.length; level++) {
            if (mode.doublesInS() >= SPIRAL_DOUBLES_S[level]) {
                return values()[level];
            }
        }
        return WORSE;
    }

    /** Of a slow swing: §3.2.1.2, least damping, then least time to double. */
    public static Level ofOscillation(Mode mode) {
        if (mode.damping() >= LEAST_DAMPING) {
            return ONE;
        }
        if (mode.damping() >= 0) {
            return TWO;
        }
        return mode.doublesInS() >= OSCILLATION_DOUBLES_S ? THREE : WORSE;
    }

    /** The worst of all its motions. */
    public static Level of(Iterable<Mode> modes) {
        Level worst = ONE;
        for (Mode mode : modes) {
            Level one = mode.swings() ? ofOscillation(mode) : ofDivergence(mode);
            worst = one.compareTo(worst) > 0 ? one : worst;
        }
        return worst;
    }
}
