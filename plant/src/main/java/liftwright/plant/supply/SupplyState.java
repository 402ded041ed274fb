package liftwright.plant.supply;

import java.util.Arrays;
import java.util.Optional;
import liftwright.plant.heat.HeatState;

/**
 * What a supply remembers: how much each pack gave, its slow voltages, and how warm all parts are.
 */
public final class SupplyState {

    double timeS;
    final double[] passedAs;
    final double[] slowV;

    /** Factor on the resistances of each pack by how much its cells have warmed; 1 for cold. */
    final double[] warmth;

    private final Optional<HeatState> heat;

    SupplyState(int packs, Optional<HeatState> heat) {
        passedAs = new double[packs];
        slowV = new double[packs * Cells.PAIRS];
        warmth = new double[packs];
        Arrays.fill(warmth, 1);
        this.heat = heat;
    }

    /** Temperatures; empty where none are computed. */
    public Optional<HeatState> heat() {
        return heat;
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

    /** Takes a charge as given already, A·s; the cells stay rested. */
    public void passed(int pack, double ampereS) {
        passedAs[pack] = ampereS;
    }

    /** Rested packs at their starting charge, time 0; temperatures stay. */
    public void reset() {
        timeS = 0;
        Arrays.fill(passedAs, 0);
        Arrays.fill(slowV, 0);
        Arrays.fill(warmth, 1);
    }

    /** All but temperatures. */
    void chargeFrom(SupplyState other) {
        timeS = other.timeS;
        System.arraycopy(other.passedAs, 0, passedAs, 0, passedAs.length);
        System.arraycopy(other.slowV, 0, slowV, 0, slowV.length);
        System.arraycopy(other.warmth, 0, warmth, 0, warmth.length);
    }

    public void copyFrom(SupplyState other) {
        chargeFrom(other);
        if (heat.isPresent() && other.heat.isPresent()) {
            heat.get().copyFrom(other.heat.get());
        }
    }
}
