package liftwright.plant.thrust;

import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * Residual swirl of every fan: the share s_r of the shaft's torque that the jet carries away and
 * that turns the rig against the spin. 1 for an open rotor, 0 behind perfect stators, below 0 where
 * they turn the jet too far (common practice).
 */
public final class Swirls {

    private final int[] share;
    private final int[] spin;

    private Swirls(int fans) {
        share = new int[fans];
        spin = new int[fans];
    }

    /** Declares the swirl of all fans. */
    public static Swirls declare(Rig rig, ParameterRows table) {
        Swirls swirls = new Swirls(rig.fans().size());
        for (int k = 0; k < swirls.share.length; k++) {
            Fan fan = rig.fans().get(k);
            swirls.share[k] =
                    table.row(
                            RigPath.of("fan types", fan.type().name(), "swirl"),
                            "swirl of fan " + fan.type().name(),
                            fan.id(),
                            fan.type().swirl(),
                            Range.ANY);
            swirls.spin[k] =
                    switch (fan.spin()) {
                        case RIGHT_HAND -> 1;
                        case LEFT_HAND -> -1;
                    };
        }
        return swirls;
    }

    /**
     * Moment on the rig about the thrust, right-hand: −σ s_r Q, N·m.
     *
     * @param torqueNm torque at the shaft, ≥ 0
     */
    public double momentNm(double[] p, int fan, double torqueNm) {
        return -spin[fan] * p[share[fan]] * torqueNm;
    }
}
