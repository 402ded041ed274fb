package liftwright.learning.explain;

/**
 * The lift that was there beside the one declared. A cause takes a share of what there would be
 * without it; that share is computed on the rig as declared, the newtons follow from what was
 * measured.
 *
 * @param declaredN lift as declared, N
 * @param measuredN lift measured over the same moments, N; 0 where nothing measured it
 */
record Lifted(double declaredN, double measuredN) {

    /** Shares beyond this are told in newtons of the declared rig. */
    private static final double MOST = 0.9;

    /** Nothing measured it. */
    static final Lifted UNKNOWN = new Lifted(0, 0);

    /**
     * What a cause took, N.
     *
     * @param newtons that it takes on the rig as declared, beside what else is wrong
     * @param besideN newtons that this takes
     */
    double beside(double newtons, double besideN) {
        return taken(newtons, declaredN - newtons - besideN);
    }

    /**
     * What a cause took, N.
     *
     * @param newtons that it takes as computed
     * @param left lift with it and all else that is wrong, as computed, N
     */
    double taken(double newtons, double left) {
        return measuredN > 0 && left > (1 - MOST) * declaredN
                ? newtons * measuredN / left
                : newtons;
    }
}
