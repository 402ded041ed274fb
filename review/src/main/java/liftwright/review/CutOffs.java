package liftwright.review;

import liftwright.plant.SteadyState;
import liftwright.rig.Rig;

/**
 * A controller below its cut-off voltage stops its motor, so its fan counts for nothing. The
 * network is not solved again without it: the voltage it frees would lift the others, so the truth
 * lies above what is counted.
 */
final class CutOffs {

    private final double[] cutOffV;

    CutOffs(Rig rig) {
        cutOffV =
                rig.fans().stream()
                        .mapToDouble(
                                fan ->
                                        fan.type()
                                                .controller()
                                                .cutOff()
                                                .map(v -> v.si())
                                                .orElse(0.0))
                        .toArray();
    }

    boolean below(SteadyState state, int fan) {
        return state.fanFed(fan) && state.fanTerminalV(fan) < cutOffV[fan];
    }

    /** Upward thrust of all fans that run, N. */
    double usableLiftN(SteadyState state) {
        double sum = 0;
        for (int fan = 0; fan < cutOffV.length; fan++) {
            if (!below(state, fan)) {
                sum += state.fanUpwardThrustN(fan);
            }
        }
        return sum;
    }
}
