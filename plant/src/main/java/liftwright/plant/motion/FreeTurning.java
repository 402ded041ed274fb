package liftwright.plant.motion;

/**
 * Half a step of all rotors at once as nearly all of them turn nearly always: driven, with the duty
 * told in effect. The same figures as {@link RotorLaws#turn} one by one, in short loops without a
 * branch, which the machine goes through several rotors at a time. Where it does not hold, {@link
 * #holds} says so. Allocates nothing; for one thread.
 */
public final class FreeTurning {

    private final RotorLaws laws;
    private final double[] firstA;
    private final double[] lastA;
    private final double[] airNm;
    private final double[] leftNm;

    /** Slope of the torque left times the speed: the air's is known so without a quotient. */
    private final double[] slopeNm;

    private final double[] beyond;

    public FreeTurning(RotorLaws laws) {
        this.laws = laws;
        int fans = laws.kv.length;
        firstA = new double[fans];
        lastA = new double[fans];
        airNm = new double[fans];
        leftNm = new double[fans];
        slopeNm = new double[fans];
        beyond = new double[fans];
    }

    /**
     * One step of Newton's for the x of x = start + half · slope(x), of each rotor.
     *
     * @param terminalV in: in the middle of the step
     * @param inertiaKgm2 in
     * @param start in: speeds, rad/s
     * @param middle out
     */
    public void go(
            double[] terminalV,
            double[] inertiaKgm2,
            double[] start,
            double[] middle,
            double halfS) {
        RotorLaws of = laws;
        int fans = firstA.length;
        of.airNm(start, airNm);
        drivingA(terminalV, start, firstA);
        for (int fan = 0; fan < fans; fan++) {
            double friction = (of.noLoadA[fan] + of.noLoadSlope[fan] * start[fan]) * of.perKv[fan];
            leftNm[fan] = firstA[fan] * of.perKv[fan] - friction - airNm[fan];
        }
        for (int fan = 0; fan < fans; fan++) {
            double motor = -of.perKv[fan] * of.perOhm[fan] - of.noLoadSlope[fan];
            double air = (2 + of.torqueDrift[fan]) * airNm[fan];
            slopeNm[fan] = motor * of.perKv[fan] * start[fan] - air;
        }
        for (int fan = 0; fan < fans; fan++) {
            double held = inertiaKgm2[fan] * start[fan] - halfS * slopeNm[fan];
            middle[fan] = start[fan] + halfS * leftNm[fan] * start[fan] / held;
        }
        drivingA(terminalV, middle, lastA);
        for (int fan = 0; fan < fans; fan++) {
            double most = Math.max(firstA[fan], lastA[fan]) - of.limitA[fan];
            double least = -Math.min(firstA[fan], lastA[fan]);
            double slow = RotorLaws.NEARLY_STILL_RADPS - start[fan];
            beyond[fan] = Math.max(Math.max(most, least), slow);
        }
    }

    private void drivingA(double[] terminalV, double[] radps, double[] out) {
        RotorLaws of = laws;
        for (int fan = 0; fan < out.length; fan++) {
            double volts = Math.max(terminalV[fan], 0);
            out[fan] = (of.duty[fan] * volts - radps[fan] * of.perKv[fan]) * of.perOhm[fan];
        }
    }

    /** Whether {@link #holds} is so of every rotor. */
    public boolean holdsForAll() {
        boolean all = true;
        for (double each : beyond) {
            all &= each < 0;
        }
        return all;
    }

    /**
     * Whether a rotor, if its controller drives it, turned as {@link #go} took it to: from start to
     * middle with a current above nothing and below its limit, and not nearly at rest.
     */
    public boolean holds(int fan) {
        return beyond[fan] < 0;
    }
}
