package liftwright.physics;

/** A foot on the ground: pushed back by it, held by friction. */
public final class Contact {

    private Contact() {}

    /**
     * Push of the ground on a foot, N = k δ (1 + a dδ/dt), never below 0, N: a spring whose damping
     * grows with its depth, so that the push begins at 0 and no foot sticks [HUNT75]. It gives back
     * about 1 − 2 a v/3 of a small speed of impact v.
     *
     * @param depthM δ below the ground, m; above it there is no push
     * @param sinkMps dδ/dt, m/s
     * @param stiffnessNpm k, N/m
     * @param dampingSpm a, s/m
     */
    public static double normalN(
            double depthM, double sinkMps, double stiffnessNpm, double dampingSpm) {
        return depthM > 0 ? Math.max(0, stiffnessNpm * depthM * (1 + dampingSpm * sinkMps)) : 0;
    }

    /**
     * Share of the sideways push of a foot that friction can hold, μN over the push, at most 1
     * (Coulomb; one coefficient for rest and sliding).
     */
    public static double heldShare(double wantedN, double normalN, double friction) {
        double most = friction * normalN;
        return wantedN > most ? most / wantedN : 1;
    }
}
