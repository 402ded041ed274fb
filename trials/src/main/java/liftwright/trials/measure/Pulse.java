package liftwright.trials.measure;

import liftwright.physics.CellLaw;
import liftwright.plant.supply.Cells;
import liftwright.rig.Pack;

/**
 * A pack under a pulse of current from rest: v = n (U(s) − i (R0 + Σ R_k (1 − exp(−t/τ_k)))) − I
 * R_links with i = I/parallel, charge s falling straight with time, resistances those at the charge
 * it starts from. After the pulse the slow drops decay.
 *
 * @param number of the pack in the rig
 * @param pulseA current of the pack
 */
record Pulse(Cells cells, int number, int series, int parallel, double pulseA, double startCharge) {

    static Pulse of(Cells cells, int number, Pack pack, double pulseA) {
        return new Pulse(
                cells, number, pack.series(), pack.parallel(), pulseA, cells.startCharge(number));
    }

    /**
     * Voltage of the pack, V.
     *
     * @param sinceOnS time under current
     * @param loaded whether current flows
     */
    double packV(double sinceOnS, boolean loaded) {
        double slow = 0;
        for (int pair = 0; pair < Cells.PAIRS; pair++) {
            slow += slowV(pair, sinceOnS);
        }
        return packV(chargeAfter(sinceOnS), slow, loaded);
    }

    /**
     * Voltage after the pulse, V.
     *
     * @param pulseS its length
     * @param sinceOffS time since its end
     */
    double packAfterV(double pulseS, double sinceOffS) {
        double slow = 0;
        for (int pair = 0; pair < Cells.PAIRS; pair++) {
            slow += slowV(pair, pulseS) * Math.exp(-sinceOffS / cells.slowS(number, pair));
        }
        return packV(chargeAfter(pulseS), slow, false);
    }

    /** R0 of the mean cell put to 25 °C, Ω: what the step when the current comes on tells. */
    double cellOhmAtReference() {
        return cells.instantOhm(number, startCharge) / cells.startWarmth(number);
    }

    private double chargeAfter(double pulseS) {
        return startCharge - pulseA * pulseS / cells.packCapacityAs(number);
    }

    private double slowV(int pair, double sinceOnS) {
        return pulseA
                / parallel
                * cells.slowOhm(number, pair, startCharge)
                * CellLaw.pairShare(sinceOnS, cells.slowS(number, pair));
    }

    private double packV(double charge, double slowV, boolean loaded) {
        double open = series * (cells.restV(number, charge) - slowV);
        if (!loaded) {
            return open;
        }
        return open
                - pulseA
                        * (series * cells.instantOhm(number, startCharge) / parallel
                                + cells.interconnectOhm(number));
    }
}
