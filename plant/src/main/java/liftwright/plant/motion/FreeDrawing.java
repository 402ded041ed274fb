package liftwright.plant.motion;

import liftwright.physics.FanUnit;

/**
 * What all controllers draw at once as nearly all of them do nearly always: driving, with the duty
 * told in effect. The same figures as {@link RotorLaws#operate} one by one, in short loops without
 * a branch. Where it does not hold, {@link #holds} says so. Allocates nothing; for one thread.
 */
public final class FreeDrawing {

    private final RotorLaws laws;
    private final double[] windingA;
    private final double[] beyond;

    /** One over the voltages tried last, 1/V. */
    private final double[] perV;

    public FreeDrawing(RotorLaws laws) {
        this.laws = laws;
        windingA = new double[laws.kv.length];
        beyond = new double[laws.kv.length];
        perV = new double[laws.kv.length];
    }

    /**
     * Currents of all.
     *
     * @param terminalV in: one a fan, V
     * @param backV in: what each rotor makes, ≥ 0, V
     * @param outA out: one a fan, A
     */
    public void go(double[] terminalV, double[] backV, double[] outA) {
        RotorLaws of = laws;
        int fans = windingA.length;
        for (int fan = 0; fan < fans; fan++) {
            windingA[fan] = (of.duty[fan] * terminalV[fan] - backV[fan]) * of.perOhm[fan];
            perV[fan] = 1 / terminalV[fan];
        }
        for (int fan = 0; fan < fans; fan++) {
            outA[fan] = of.drawnShare[fan] * windingA[fan] + of.fixedW[fan] * perV[fan];
        }
        for (int fan = 0; fan < fans; fan++) {
            double most = windingA[fan] - of.limitA[fan];
            double low = FanUnit.LEAST_CONTROLLER_V - terminalV[fan];
            beyond[fan] = Math.max(Math.max(most, -windingA[fan]), low);
        }
    }

    /**
     * How the currents found last go with the voltage.
     *
     * @param outS out: one a fan, S
     */
    public void slopes(double[] outS) {
        RotorLaws of = laws;
        for (int fan = 0; fan < outS.length; fan++) {
            double motor = of.drawnShare[fan] * of.dutyOverOhm[fan];
            outS[fan] = motor - of.fixedW[fan] * perV[fan] * perV[fan];
        }
    }

    /** Currents of the windings found last, one a fan, A. */
    public void windings(double[] outA) {
        System.arraycopy(windingA, 0, outA, 0, windingA.length);
    }

    /** Whether {@link #holds} is so of every fan. */
    public boolean holdsForAll() {
        boolean all = true;
        for (double each : beyond) {
            all &= each < 0;
        }
        return all;
    }

    /**
     * Whether a fan, if its controller drives it, draws what {@link #go} found: a current above
     * nothing and below its limit flows through its winding, at a voltage at which controllers
     * work.
     */
    public boolean holds(int fan) {
        return beyond[fan] < 0;
    }
}
