package liftwright.plant.supply;

import java.util.Arrays;

/**
 * What a supply remembers: how much each pack gave and its slow voltages. Heat joins it when the
 * laws of heat do.
 */
public final class SupplyState {

    double timeS;
    final double[] passedAs;
    final double[] slowV;

    SupplyState(int packs) {
        passedAs = new double[packs];
        slowV = new double[packs * Cells.PAIRS];
    }

    /** Time since the start, s. */
    public double timeS() {
        return timeS;
    }

    /** Charge that a pack gave since the start, A·s; negative where it was charged. */
    public double passedAs(int pack) {
        return passedAs[pack];
    }

    /**
     * Slow voltage of a pack's mean cell, V.
     *
     * @param pair 0 or 1
     */
    public double slowV(int pack, int pair) {
        return slowV[pack * Cells.PAIRS + pair];
    }

    /** Rested packs at their starting charge, time 0. */
    public void reset() {
        timeS = 0;
        Arrays.fill(passedAs, 0);
        Arrays.fill(slowV, 0);
    }

    public void copyFrom(SupplyState other) {
        timeS = other.timeS;
        System.arraycopy(other.passedAs, 0, passedAs, 0, passedAs.length);
        System.arraycopy(other.slowV, 0, slowV, 0, slowV.length);
    }
}
