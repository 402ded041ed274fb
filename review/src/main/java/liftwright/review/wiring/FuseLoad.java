package liftwright.review.wiring;

import java.util.ArrayList;
import java.util.List;
import liftwright.physics.FuseCurve;
import liftwright.rig.Demands;
import liftwright.rig.Rig;

/**
 * What a fuse is asked to carry, in the order of time.
 *
 * @param steps currents and how long each flows
 */
public record FuseLoad(List<Step> steps) {

    /** Full throttle after a hover, unless a flight says otherwise, s; common practice. */
    public static final double BURST_S = 10;

    public FuseLoad {
        steps = List.copyOf(steps);
    }

    /**
     * @param ampere ≥ 0
     * @param forS s
     */
    public record Step(double ampere, double forS) {}

    /** Every hover that is asked for, a burst of full throttle at its end, pauses between. */
    public static FuseLoad of(Rig rig, double expectedA, double worstA) {
        Demands demands = rig.demands();
        List<Step> steps = new ArrayList<>();
        for (int run = 0; run < demands.runs(); run++) {
            if (run > 0) {
                steps.add(new Step(0, demands.pause().si()));
            }
            steps.add(new Step(expectedA, demands.hover().si()));
            steps.add(new Step(worstA, BURST_S));
        }
        return new FuseLoad(steps);
    }

    /** Greatest current, A. */
    double mostA() {
        return steps.stream().mapToDouble(Step::ampere).max().orElse(0);
    }

    /**
     * Greatest state on the way from cold, heat carried from step to step; at 1 and above the fuse
     * opens.
     */
    double greatestState(FuseCurve curve) {
        double theta = 0;
        double most = 0;
        for (Step step : steps) {
            theta =
                    FuseCurve.after(
                            theta, curve.gain(step.ampere), step.forS, curve.timeConstantS());
            most = Math.max(most, theta);
        }
        return most;
    }
}
