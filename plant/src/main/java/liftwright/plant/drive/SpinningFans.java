package liftwright.plant.drive;

import liftwright.plant.motion.FreeTurning;
import liftwright.plant.motion.RotorLaws;
import liftwright.plant.motion.RotorNumbers;

/**
 * All rotors of a rig in time: speeds move by the implicit midpoint rule (order 2; a rotor that
 * settles in less than a step does not ring up) on voltages that are solved at its start and run
 * straight on from those before it. Allocates nothing; for one thread.
 *
 * <p>Thrust and flow are those of {@link FanStreams} at these speeds; what they draw, and at which
 * voltages, {@link FedFans} knows.
 */
public final class SpinningFans {

    /** A law has no more pieces to step over. */
    private static final int MOST_PIECES = 4;

    private final RotorLaws laws;
    private final RotorNumbers numbers;
    private final FanStreams streams;
    private final FedFans fed;
    private final double[] startRadps;
    private final double[] middleRadps;
    private final double[] endRadps;

    private final double[] middleV;
    private final FreeTurning free;

    /** Speeds at start, middle and end of the step, one after the other, for the streams. */
    private final double[] allRadps;

    /** Whether thrust and flow were asked for at these. */
    private boolean asked;

    private double stepS;

    /**
     * @param laws with coefficients and duties of the units
     * @param numbers filled by the caller; brakes are those of a shorted winding alone
     */
    public SpinningFans(RotorLaws laws, RotorNumbers numbers) {
        this.laws = laws;
        this.numbers = numbers;
        streams = new FanStreams(laws, numbers);
        int fans = numbers.inertiaKgm2.length;
        startRadps = new double[fans];
        middleRadps = new double[fans];
        endRadps = new double[fans];
        fed = new FedFans(laws, numbers, endRadps);
        middleV = new double[fans];
        free = new FreeTurning(laws);
        allRadps = new double[FanStreams.MOMENTS * fans];
    }

    /** Everything at rest, nothing stopped, in still air. */
    public void rest() {
        fed.rest();
        streams.rest();
        stepS = 0;
        for (int fan = 0; fan < endRadps.length; fan++) {
            turn(fan, 0);
        }
    }

    /** Lets a rotor turn at a speed ≥ 0, rad/s. */
    public void turn(int fan, double radps) {
        asked = false;
        startRadps[fan] = radps;
        middleRadps[fan] = radps;
        endRadps[fan] = radps;
    }

    /**
     * The air that meets a fan from now on, m/s.
     *
     * @param axial along the thrust, above 0 where the fan flies into it
     * @param across beside it, ≥ 0
     */
    public void inflow(int fan, double axial, double across) {
        asked = false;
        streams.inflow(fan, axial, across);
    }

    /** The same of every fan. */
    public void inflow(double[] axial, double[] across) {
        asked = false;
        streams.inflow(axial, across);
    }

    /**
     * All rotors go one step.
     *
     * @param dtS from the moment whose voltages were taken last, s
     */
    public void step(double dtS) {
        stepS = dtS;
        asked = false;
        double half = dtS / 2;
        System.arraycopy(endRadps, 0, startRadps, 0, endRadps.length);
        fed.ahead(half, middleV);
        free.go(middleV, numbers.inertiaKgm2, startRadps, middleRadps, half);
        if (!(fed.allFree() && free.holdsForAll())) {
            for (int fan = 0; fan < endRadps.length; fan++) {
                // What drives freely is not told zero, so that nothing shorts it.
                if (!free.holds(fan) || !fed.isLive(fan)) {
                    middleRadps[fan] = middle(fan, startRadps[fan], middleV[fan], half);
                }
            }
        }
        for (int fan = 0; fan < endRadps.length; fan++) {
            endRadps[fan] = Math.max(0, 2 * middleRadps[fan] - startRadps[fan]);
        }
    }

    /** The x of x = start + half · slope(x): one step of Newton's for each piece of the law. */
    private double middle(int fan, double start, double terminalV, double half) {
        double perInertia = half / numbers.inertiaKgm2[fan];
        double at = start;
        RotorLaws.Piece on = turn(fan, terminalV, at);
        for (int pieces = 0; ; pieces++) {
            double miss = at - start - perInertia * laws.turningNm();
            at = Math.max(0, at - miss / (1 - perInertia * laws.turningSlope()));
            if (pieces == MOST_PIECES || (start == 0 && at == 0)) {
                return at;
            }
            if (pieceAt(fan, terminalV, at) == on) {
                return at;
            }
            on = turn(fan, terminalV, at);
        }
    }

    private RotorLaws.Piece pieceAt(int fan, double terminalV, double radps) {
        return fed.isLive(fan) && !fed.shorts(fan)
                ? laws.pieceAt(fan, terminalV, radps)
                : turn(fan, terminalV, radps);
    }

    private RotorLaws.Piece turn(int fan, double terminalV, double radps) {
        if (!fed.isLive(fan)) {
            return laws.coast(fan, radps);
        }
        return fed.shorts(fan) ? laws.brake(fan, radps) : laws.turn(fan, terminalV, radps);
    }

    /**
     * Thrust along the axis in the stream of now, N: of all fans at the start of the last step,
     * then in its middle, then at its end.
     */
    public double[] thrustN() {
        ask();
        return streams.thrustN;
    }

    /** Air through the fans in the middle of the last step, ≥ 0, one a fan, kg/s. */
    public void massFlowKgps(double[] outKgps) {
        ask();
        int fans = endRadps.length;
        System.arraycopy(streams.flowKgps, fans, outKgps, 0, fans);
    }

    /** The same of one fan. */
    public double massFlowKgps(int fan) {
        ask();
        return streams.flowKgps[endRadps.length + fan];
    }

    private void ask() {
        if (!asked) {
            int fans = endRadps.length;
            System.arraycopy(startRadps, 0, allRadps, 0, fans);
            System.arraycopy(middleRadps, 0, allRadps, fans, fans);
            System.arraycopy(endRadps, 0, allRadps, 2 * fans, fans);
            streams.ask(allRadps);
            asked = true;
        }
    }

    /** Whether the thrust of any fan at the end of the last step is in a stream beyond the law. */
    public boolean isAnyBeyondLaw() {
        ask();
        return streams.isAnyBeyondLaw();
    }

    /** Whether the thrust at the end of the last step is in a stream beyond the law. */
    public boolean isBeyondLaw(int fan) {
        ask();
        return streams.isBeyondLaw(fan);
    }

    /**
     * What all rotors do to the frame about the direction of their thrust.
     *
     * @param swirl in: moment for each N·m of the air in the middle of the last step, one a fan
     * @param spun in: angular momentum for each rad/s, kg·m²
     * @param reactionNm out: swirl that is kept, less what changes the angular momentum
     * @param spinNms out: angular momentum at the end of the step
     */
    public void turning(double[] swirl, double[] spun, double[] reactionNm, double[] spinNms) {
        double perS = stepS > 0 ? 1 / stepS : 0;
        laws.airNm(middleRadps, reactionNm);
        for (int fan = 0; fan < swirl.length; fan++) {
            double rate = (endRadps[fan] - startRadps[fan]) * perS;
            reactionNm[fan] = swirl[fan] * reactionNm[fan] - spun[fan] * rate;
            spinNms[fan] = spun[fan] * endRadps[fan];
        }
    }

    /** Torque of the air on the rotor against its turning in the middle of the step, ≥ 0 N·m. */
    public double airNm(int fan) {
        return laws.airNm(fan, middleRadps[fan]);
    }

    /** What the rotor takes up over the last step, J dΩ/dt, N·m. */
    public double speedingUpNm(int fan) {
        return stepS > 0 ? numbers.inertiaKgm2[fan] * (endRadps[fan] - startRadps[fan]) / stepS : 0;
    }

    public double startRadps(int fan) {
        return startRadps[fan];
    }

    public double middleRadps(int fan) {
        return middleRadps[fan];
    }

    public double endRadps(int fan) {
        return endRadps[fan];
    }

    /** The same of all. */
    public void endRadps(double[] out) {
        System.arraycopy(endRadps, 0, out, 0, endRadps.length);
    }

    public RotorLaws laws() {
        return laws;
    }

    /** The same fans as the network sees them. */
    public FedFans fed() {
        return fed;
    }
}
