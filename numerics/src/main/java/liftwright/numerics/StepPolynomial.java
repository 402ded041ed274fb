package liftwright.numerics;

import java.util.Arrays;

/** What a step of {@link DormandPrince} says of the values within it, of order 4 [HAIRER93]. */
final class StepPolynomial {

    /** The place 0 holds the values the step began with. */
    private final double[][] terms = new double[5][];

    StepPolynomial(int size) {
        for (int term = 0; term < terms.length; term++) {
            terms[term] = new double[size];
        }
    }

    /** The same values everywhere. */
    void rest(double[] values) {
        System.arraycopy(values, 0, terms[0], 0, values.length);
        for (int term = 1; term < terms.length; term++) {
            Arrays.fill(terms[term], 0);
        }
    }

    /**
     * A step.
     *
     * @param from values at its start
     * @param to values at its end
     * @param k slopes of all stages
     * @param length of the step
     */
    void step(double[] from, double[] to, double[][] k, double length) {
        for (int i = 0; i < from.length; i++) {
            double whole = to[i] - from[i];
            double bend = length * k[0][i] - whole;
            double sum = 0;
            for (int stage = 0; stage < DormandPrincePair.STAGES; stage++) {
                sum += DormandPrincePair.D[stage] * k[stage][i];
            }
            terms[0][i] = from[i];
            terms[1][i] = whole;
            terms[2][i] = bend;
            terms[3][i] = whole - length * k[DormandPrincePair.STAGES - 1][i] - bend;
            terms[4][i] = length * sum;
        }
    }

    /** Values at a share of the step, 0 to 1. */
    void at(double share, double[] out) {
        double rest = 1 - share;
        for (int i = 0; i < out.length; i++) {
            double third = terms[3][i] + rest * terms[4][i];
            double second = terms[2][i] + share * third;
            double first = terms[1][i] + rest * second;
            out[i] = terms[0][i] + share * first;
        }
    }
}
