package liftwright.numerics;

/**
 * Coefficients of the embedded pair of orders 5 and 4 [DORMAND80], and between steps [HAIRER93].
 */
final class DormandPrincePair {

    static final int STAGES = 7;

    /** Where in the step each stage is. */
    static final double[] C = {0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1, 1};

    /** Weights of the stages before in each. */
    static final double[][] A = {
        {},
        {1.0 / 5},
        {3.0 / 40, 9.0 / 40},
        {44.0 / 45, -56.0 / 15, 32.0 / 9},
        {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
        {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
        {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84},
    };

    /** Weights of order 5 less those of order 4. */
    static final double[] E = {
        71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40
    };

    /** Weights of the term of highest order between the ends of a step. */
    static final double[] D = {
        -12715105075.0 / 11282082432.0,
        0,
        87487479700.0 / 32700410799.0,
        -10690763975.0 / 1880347072.0,
        701980252875.0 / 199316789632.0,
        -1453857185.0 / 822651844.0,
        69997945.0 / 29380423.0
    };

    private DormandPrincePair() {}
}
