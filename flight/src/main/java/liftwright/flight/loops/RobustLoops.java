package liftwright.flight.loops;

import java.util.List;

/** Margins of shaped loops with more and less inertia and lag than declared. */
final class RobustLoops {

    private static final double[] FACTORS = {1 - Asked.DOUBT, 1, 1 + Asked.DOUBT};

    /** Where stability is asked: the corners. */
    private static final double[] ENDS = {1 - Asked.DOUBT, 1 + Asked.DOUBT};

    /** Margins that must be left then: 10° and a tenth of gain. */
    private static final double LEFT_RAD = Math.toRadians(10);

    private static final double LEFT_GAIN = 1.1;

    private RobustLoops() {}

    /** Worst margins of a stage over all pairs of factors. */
    static Loop.Worst worst(Cascade cascade, int stage, double radps) {
        double phase = Double.POSITIVE_INFINITY;
        double gain = Double.POSITIVE_INFINITY;
        for (double inertia : FACTORS) {
            for (double lags : FACTORS) {
                Margins margins = Shaper.margins(cascade, stage, radps, inertia, lags);
                phase = Math.min(phase, margins.phaseMarginRad());
                gain = Math.min(gain, margins.gainMargin());
                if (margins.lowGainMargin() > 0) {
                    gain = Math.min(gain, 1 / margins.lowGainMargin());
                }
            }
        }
        return new Loop.Worst(phase, gain);
    }

    static boolean stable(Shaped shaped) {
        int first = shaped.cascade().stages().size() - shaped.levels().size();
        for (int k = Math.max(0, -first); k < shaped.levels().size(); k++) {
            double radps = shaped.radps().get(k);
            if (!leavesEnough(shaped.cascade(), first + k, radps)
                    || !keepsApart(shaped, first + k, radps)) {
                return false;
            }
        }
        return true;
    }

    private static boolean leavesEnough(Cascade cascade, int stage, double radps) {
        for (double inertia : ENDS) {
            for (double lags : ENDS) {
                Margins margins = Shaper.margins(cascade, stage, radps, inertia, lags);
                double low = margins.lowGainMargin();
                if (margins.phaseMarginRad() < LEFT_RAD
                        || margins.gainMargin() < LEFT_GAIN
                        || (low > 0 && 1 / low < LEFT_GAIN)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean keepsApart(Shaped shaped, int stage, double radps) {
        for (double inertia : ENDS) {
            for (double lags : ENDS) {
                if (!HarnessCheck.keeps(
                        shaped.cascade(),
                        stage,
                        radps,
                        ends(shaped.modes()),
                        inertia,
                        lags,
                        Asked.LEFT_HARNESS_DISTANCE)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Lowest, middle and highest. */
    private static List<FlexMode> ends(List<FlexMode> modes) {
        return modes.isEmpty()
                ? modes
                : List.of(modes.getFirst(), modes.get(modes.size() / 2), modes.getLast());
    }
}
