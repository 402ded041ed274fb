package liftwright.plant.drive;

import java.util.Arrays;
import liftwright.plant.motion.FreeDrawing;
import liftwright.plant.motion.FreeTurning;
import liftwright.plant.motion.RotorLaws;
import liftwright.plant.motion.RotorNumbers;
import liftwright.plant.supply.Device;
import liftwright.plant.supply.NetworkState;

/**
 * All rotors of a rig in time: speeds move by the implicit midpoint rule (order 2; a rotor that
 * settles in less than a step does not ring up) on voltages that are solved at its start and run
 * straight on from those before it. For the network they stand still: back EMF is what they make at
 * the moment it is asked. Allocates nothing; for one thread.
 *
 * <p>Thrust and flow are those of {@link FanStreams} at these speeds.
 */
public final class SpinningFans implements Device {

    /** A law has no more pieces to step over. */
    private static final int MOST_PIECES = 4;

    private final RotorLaws laws;
    private final RotorNumbers numbers;
    private final FanStreams streams;
    private final double[] startRadps;
    private final double[] middleRadps;
    private final double[] endRadps;

    /** At the start of a step, and how they ran until then, V and V/s. */
    private final double[] volt;

    private final double[] voltPerS;
    private final double[] middleV;
    private final FreeTurning free;
    private final FreeDrawing drawing;
    private final double[] backV;
    private final double[] windingA;
    private final double[] busA;

    /** At the voltage tried last, A. */
    private final double[] drawnA;

    private final RotorLaws.Piece[] piece;

    private boolean anyLimited;

    private final boolean[] fed;
    private final boolean[] stopped;

    /**
     * Whether every fan was live and drove freely at the point last solved in full, and none was
     * stopped or fed otherwise since.
     */
    private boolean allFree;

    /** Speeds at start, middle and end of the step, one after the other, for the streams. */
    private final double[] allRadps;

    /** Whether thrust and flow were asked for at these. */
    private boolean asked;

    private final double[] facedRadps;
    private double stepS;
    private boolean moved;

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
        volt = new double[fans];
        voltPerS = new double[fans];
        middleV = new double[fans];
        free = new FreeTurning(laws);
        drawing = new FreeDrawing(laws);
        backV = new double[fans];
        facedRadps = new double[fans];
        windingA = new double[fans];
        busA = new double[fans];
        drawnA = new double[fans];
        piece = new RotorLaws.Piece[fans];
        fed = new boolean[fans];
        stopped = new boolean[fans];
        allRadps = new double[FanStreams.MOMENTS * fans];
    }

    /** Everything at rest, nothing stopped, in still air. */
    public void rest() {
        Arrays.fill(stopped, false);
        allFree = false;
        streams.rest();
        Arrays.fill(volt, 0);
        Arrays.fill(voltPerS, 0);
        Arrays.fill(windingA, 0);
        Arrays.fill(busA, 0);
        Arrays.fill(piece, RotorLaws.Piece.OFF);
        anyLimited = false;
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

    /** Its controller stops a fan for good: it draws nothing and coasts. */
    public void stop(int fan) {
        stopped[fan] = true;
        allFree = false;
    }

    public boolean isStopped(int fan) {
        return stopped[fan];
    }

    /** Whether a controller at work drives the fan. */
    public boolean isLive(int fan) {
        return fed[fan] && !stopped[fan];
    }

    /** Whether a pack reaches a fan from now on. */
    public void feed(int fan, boolean reaches) {
        fed[fan] = reaches;
        allFree = false;
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

    /** The network is to be solved at the speeds of now. */
    public void face() {
        for (int fan = 0; fan < backV.length; fan++) {
            backV[fan] = laws.backV(fan, endRadps[fan]);
        }
        moved = false;
    }

    /**
     * Takes the voltages just solved in full.
     *
     * @param sinceS time since those before, s; 0 where orders have jumped: voltages then stay
     *     until the next are known
     */
    public void take(NetworkState solved, double sinceS) {
        follow(solved, sinceS);
        System.arraycopy(endRadps, 0, facedRadps, 0, endRadps.length);
        drawing.go(volt, backV, busA);
        drawing.windings(windingA);
        anyLimited = false;
        if (allFree && drawing.holdsForAll()) {
            return;
        }
        allFree = true;
        for (int fan = 0; fan < volt.length; fan++) {
            if (drawing.holds(fan) && isLive(fan)) {
                piece[fan] = RotorLaws.Piece.FREE;
            } else {
                takeAlone(fan);
            }
            allFree &= isLive(fan) && piece[fan] == RotorLaws.Piece.FREE;
        }
    }

    private void takeAlone(int fan) {
        if (isLive(fan)) {
            operate(fan, volt[fan]);
            windingA[fan] = laws.windingA();
            busA[fan] = laws.currentA();
            piece[fan] = laws.piece();
            anyLimited |= limited(fan);
        } else {
            windingA[fan] = 0;
            busA[fan] = 0;
            piece[fan] = RotorLaws.Piece.OFF;
        }
    }

    /** Takes voltages that follow those solved in full; parameters as {@link #take}. */
    public void follow(NetworkState solved, double sinceS) {
        double per = sinceS > 0 ? 1 / sinceS : 0;
        for (int fan = 0; fan < volt.length; fan++) {
            double now = solved.loadTerminalV(fan);
            voltPerS[fan] = (now - volt[fan]) * per;
            volt[fan] = now;
        }
    }

    /**
     * Whether since {@link #face} a fan was found on another piece of its law than where the
     * network was solved in full last: slopes found there no longer serve.
     */
    public boolean moved() {
        return moved;
    }

    @Override
    public void operate(int fan, double terminalV) {
        if (stopped[fan]) {
            laws.dead();
        } else if (shorts(fan)) {
            laws.idle(fan, terminalV, laws.brakedA(fan, endRadps[fan]));
        } else {
            laws.operate(fan, terminalV, backV[fan]);
        }
        drawnA[fan] = laws.currentA();
        moved |= laws.piece() != piece[fan];
    }

    @Override
    public void operate(double[] terminalV, double[] outA) {
        drawing.go(terminalV, backV, outA);
        if (allFree && drawing.holdsForAll()) {
            return;
        }
        for (int fan = 0; fan < outA.length; fan++) {
            boolean same = drawing.holds(fan) && piece[fan] == RotorLaws.Piece.FREE;
            if (!(same && isLive(fan)) && fed[fan]) {
                operate(fan, terminalV[fan]);
                outA[fan] = drawnA[fan];
            }
        }
    }

    @Override
    public void operate(int[] loads, double[] terminalV, double[] outA, double[] outS) {
        drawing.go(terminalV, backV, outA);
        drawing.slopes(outS);
        if (allFree && drawing.holdsForAll()) {
            return;
        }
        for (int fan : loads) {
            if (!(drawing.holds(fan) && isLive(fan))) {
                operate(fan, terminalV[fan]);
                outA[fan] = drawnA[fan];
                outS[fan] = laws.slopeS();
            }
        }
    }

    private boolean shorts(int fan) {
        return numbers.brakes[fan] && laws.duty(fan) == 0;
    }

    @Override
    public double currentA(int load) {
        return drawnA[load];
    }

    @Override
    public double slopeS(int load) {
        return laws.slopeS();
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
        for (int fan = 0; fan < middleV.length; fan++) {
            middleV[fan] = volt[fan] + voltPerS[fan] * half;
        }
        free.go(middleV, numbers.inertiaKgm2, startRadps, middleRadps, half);
        if (!(allFree && free.holdsForAll())) {
            for (int fan = 0; fan < endRadps.length; fan++) {
                // What drives freely is not told zero, so that nothing shorts it.
                if (!free.holds(fan) || !isLive(fan)) {
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
        return isLive(fan) && !shorts(fan)
                ? laws.pieceAt(fan, terminalV, radps)
                : turn(fan, terminalV, radps);
    }

    private RotorLaws.Piece turn(int fan, double terminalV, double radps) {
        if (!isLive(fan)) {
            return laws.coast(fan, radps);
        }
        return shorts(fan) ? laws.brake(fan, radps) : laws.turn(fan, terminalV, radps);
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

    /** Speed at the point last solved in full. */
    public double facedRadps(int fan) {
        return facedRadps[fan];
    }

    /** Voltage at the start of the last step, V. */
    public double volt(int fan) {
        return volt[fan];
    }

    /** The same of all. */
    public void volt(double[] out) {
        System.arraycopy(volt, 0, out, 0, volt.length);
    }

    /** Power that all draw together, at that voltage and the currents of the point solved, W. */
    public double powerW() {
        double sum = 0;
        for (int fan = 0; fan < volt.length; fan++) {
            sum += volt[fan] * busA[fan];
        }
        return sum;
    }

    /** Current of the winding at the point last solved, A. */
    public double windingA(int fan) {
        return windingA[fan];
    }

    /** Current drawn at the point last solved, A. */
    public double busA(int fan) {
        return busA[fan];
    }

    /** Heat of winding and controller, friction and air at the point last solved in full, W. */
    public double spentW(int fan) {
        double radps = facedRadps[fan];
        double driven = laws.drivenNm(fan, windingA[fan]) * radps;
        return volt[fan] * busA[fan]
                - driven
                + (laws.frictionNm(fan, radps) + laws.airNm(fan, radps)) * radps;
    }

    /** Whether its controller holds its current limit there. */
    public boolean limited(int fan) {
        return piece[fan] == RotorLaws.Piece.LIMITED || piece[fan] == RotorLaws.Piece.BACK_LIMITED;
    }

    /** Whether any does. */
    public boolean anyLimited() {
        return anyLimited;
    }

    public RotorLaws laws() {
        return laws;
    }
}
