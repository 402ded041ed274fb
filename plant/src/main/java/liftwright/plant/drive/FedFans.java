package liftwright.plant.drive;

import java.util.Arrays;
import liftwright.plant.motion.FreeDrawing;
import liftwright.plant.motion.RotorLaws;
import liftwright.plant.motion.RotorNumbers;
import liftwright.plant.supply.Device;
import liftwright.plant.supply.NetworkState;

/**
 * The fans of {@link SpinningFans} as the network sees them: it finds them standing still, their
 * back EMF what they make at the moment it is asked. Which are fed and which stopped, what they
 * draw, and at which voltages. Allocates nothing; for one thread.
 *
 * <p>Where every fan drives freely all are asked in loops without a branch; others one by one.
 */
public final class FedFans implements Device {

    private final RotorLaws laws;
    private final RotorNumbers numbers;

    /** Speeds of now, which who turns them writes, rad/s. */
    private final double[] radps;

    /** At the start of a step, and how they ran until then, V and V/s. */
    private final double[] volt;

    private final double[] voltPerS;
    private final FreeDrawing drawing;
    private final double[] backV;
    private final double[] windingA;
    private final double[] busA;

    /** At the voltage tried last, A. */
    private final double[] drawnA;

    private final RotorLaws.Piece[] piece;
    private final boolean[] fed;
    private final boolean[] stopped;
    private final double[] facedRadps;
    private boolean anyLimited;
    private boolean moved;

    /**
     * Whether every fan was live and drove freely at the point last solved in full, and none was
     * stopped or fed otherwise since.
     */
    private boolean allFree;

    FedFans(RotorLaws laws, RotorNumbers numbers, double[] radps) {
        this.laws = laws;
        this.numbers = numbers;
        this.radps = radps;
        int fans = radps.length;
        volt = new double[fans];
        voltPerS = new double[fans];
        drawing = new FreeDrawing(laws);
        backV = new double[fans];
        facedRadps = new double[fans];
        windingA = new double[fans];
        busA = new double[fans];
        drawnA = new double[fans];
        piece = new RotorLaws.Piece[fans];
        fed = new boolean[fans];
        stopped = new boolean[fans];
    }

    /** Nothing stopped, nothing drawn. */
    void rest() {
        Arrays.fill(stopped, false);
        allFree = false;
        Arrays.fill(volt, 0);
        Arrays.fill(voltPerS, 0);
        Arrays.fill(windingA, 0);
        Arrays.fill(busA, 0);
        Arrays.fill(piece, RotorLaws.Piece.OFF);
        anyLimited = false;
    }

    /** Whether all are live and drove freely where the network was solved in full last. */
    boolean allFree() {
        return allFree;
    }

    /**
     * Voltages as they run on from those taken last.
     *
     * @param afterS so long after, s
     * @param outV out: one a fan
     */
    void ahead(double afterS, double[] outV) {
        for (int fan = 0; fan < outV.length; fan++) {
            outV[fan] = volt[fan] + voltPerS[fan] * afterS;
        }
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

    /** The network is to be solved at the speeds of now. */
    public void face() {
        for (int fan = 0; fan < backV.length; fan++) {
            backV[fan] = laws.backV(fan, radps[fan]);
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
        System.arraycopy(radps, 0, facedRadps, 0, radps.length);
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
            laws.idle(fan, terminalV, laws.brakedA(fan, radps[fan]));
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

    /** Whether its controller shorts the winding: told zero, and made so. */
    boolean shorts(int fan) {
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
}
