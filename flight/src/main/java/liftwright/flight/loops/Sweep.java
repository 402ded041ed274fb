package liftwright.flight.loops;

import java.util.function.DoubleUnaryOperator;
import liftwright.numerics.Roots;

/**
 * Gain and phase of a transfer over its frequencies, the phase unwound from the low end: a fixed
 * grid on which crossings are bracketed, and then found to rounding.
 */
final class Sweep {

    /** A crossing is found to this share of its frequency. */
    private static final double ROUNDING = 1e-13;

    /** Steps over the range; a delay turns by less than a quarter round between two of them. */
    private static final int STEPS = 300;

    private final Transfer transfer;
    private final double[] radps = new double[STEPS + 1];
    private final double[] gain = new double[STEPS + 1];
    private final double[] phase = new double[STEPS + 1];

    /**
     * @param least lowest frequency, rad/s: so low that the phase there lies within π of its true
     *     value
     */
    Sweep(Transfer transfer, double least, double most) {
        this.transfer = transfer;
        double ratio = Math.log(most / least) / STEPS;
        for (int k = 0; k <= STEPS; k++) {
            radps[k] = least * Math.exp(ratio * k);
            Complex value = transfer.at(radps[k]);
            gain[k] = value.gain();
            double turn = value.phaseRad();
            phase[k] = k == 0 ? lowEnd(turn) : near(turn, phase[k - 1]);
        }
    }

    /** A loop with two integrators starts at −180°: rounding must not make that +180°. */
    private static double lowEnd(double turn) {
        return turn > Math.PI / 2 ? turn - 2 * Math.PI : turn;
    }

    private static double near(double turn, double before) {
        return turn - 2 * Math.PI * Math.rint((turn - before) / (2 * Math.PI));
    }

    int steps() {
        return STEPS;
    }

    double radps(int step) {
        return radps[step];
    }

    /** Whether the gain is above a level, at a step. */
    boolean isOver(int step, double level) {
        return gain[step] > level;
    }

    /** Phase above {@code level}, at a step, rad. */
    double above(int step, double level) {
        return phase[step] - level;
    }

    /** Where the gain crosses a level between a step and the next. */
    double gainCrossing(int step, double level) {
        return root(step, w -> Math.log(transfer.at(w).gain() / level));
    }

    /** Where the phase crosses a level between a step and the next. */
    double phaseCrossing(int step, double level) {
        double before = phase[step];
        return root(step, w -> near(transfer.at(w).phaseRad(), before) - level);
    }

    /** Unwound phase at a frequency between a step and the next, rad. */
    double phaseAt(int step, double at) {
        return near(transfer.at(at).phaseRad(), phase[step]);
    }

    /** Step at or below a frequency. */
    int below(double at) {
        int step = 0;
        while (step + 1 < STEPS && radps[step + 1] <= at) {
            step++;
        }
        return step;
    }

    double gainAt(double at) {
        return transfer.at(at).gain();
    }

    private double root(int step, DoubleUnaryOperator f) {
        double high = radps[step + 1];
        return Roots.bracketed(f, radps[step], high, ROUNDING * high);
    }
}
