package liftwright.physics;

/**
 * A cell as an open-circuit voltage behind a resistance and resistor–capacitor pairs (equivalent
 * circuit) [PLETT15].
 */
public final class CellLaw {

    /** Temperature at which resistances are stated, K. */
    public static final double REFERENCE_K = 298.15;

    /** A step of less than this share of a time constant is short: series serve. */
    private static final double SHORT = 0.02;

    // Six quotients of each pair at each step are dear.
    private static final double THIRD = 1.0 / 3;
    private static final double FIFTH = 1.0 / 5;
    private static final double SIXTH = 1.0 / 6;
    private static final double SEVENTH = 1.0 / 7;

    /** What a constant-power load does behind a resistance. */
    public sealed interface PowerDraw {

        /**
         * The source carries the load, at the higher-voltage root.
         *
         * @param currentA current
         * @param terminalV voltage left at the terminals
         */
        record Carries(double currentA, double terminalV) implements PowerDraw {}

        /**
         * There is no voltage at which the load gets its power.
         *
         * @param greatestW the most the source can give, E² / 4R
         */
        record Collapses(double greatestW) implements PowerDraw {}
    }

    private CellLaw() {}

    /**
     * Open-circuit voltage by linear interpolation; the end values hold beyond the ends.
     *
     * @param charge shares of charge, strictly rising
     * @param volt voltage at each, V
     * @param at share of charge asked for
     * @return V
     */
    public static double openCircuitV(double[] charge, double[] volt, double at) {
        return LinearTable.value(charge, volt, at);
    }

    /**
     * Factor of all resistances with temperature, exp(B (1/T − 1/298.15 K)) (Arrhenius form);
     * common practice between about 0 °C and 60 °C.
     *
     * @param coefficientK B, K
     * @param cellK cell temperature, K
     */
    public static double temperatureFactor(double coefficientK, double cellK) {
        return Math.exp(coefficientK * (1 / cellK - 1 / REFERENCE_K));
    }

    /**
     * Factor of all resistances with charge, by linear interpolation; the end values hold beyond
     * the ends. It is 1 at half charge, where resistance is stated.
     *
     * @param charge shares of charge, strictly rising
     * @param factor resistance over that at half charge, at each
     * @param at share of charge asked for
     */
    public static double chargeFactor(double[] charge, double[] factor, double at) {
        return LinearTable.value(charge, factor, at);
    }

    /** Resistance after all pairs have settled, R0 + Σ R_k, Ω. */
    public static double settledOhm(double instantOhm, double... pairOhm) {
        double sum = instantOhm;
        for (double ohm : pairOhm) {
            sum += ohm;
        }
        return sum;
    }

    /**
     * Share of one pair's settled drop reached a time after the current stepped on, 1 − exp(−t / R
     * C). The drop is I (R0 + Σ R_k · share_k).
     */
    public static double pairShare(double sinceStepS, double timeConstantS) {
        return -Math.expm1(-sinceStepS / timeConstantS);
    }

    /** Drop of a cell with one pair, I (R0 + R1 (1 − exp(−t / R1 C1))), V. */
    public static double pulseDropV(
            double currentA,
            double instantOhm,
            double pairOhm,
            double pairFarad,
            double sinceStepS) {
        return currentA * (instantOhm + pairOhm * pairShare(sinceStepS, pairOhm * pairFarad));
    }

    /**
     * Slow voltage of a pair after a step in which current runs straight: the exact solution of
     * dv/dt = i/C − v/(R C), however long the step.
     *
     * @param startV at the start of the step, V
     * @param nearA current at its start, A
     * @param farA current at its end, A
     * @param ohm R &gt; 0, the same throughout, Ω
     * @param timeConstantS R C &gt; 0, s
     * @param stepS s
     */
    public static double pairAfterV(
            double startV,
            double nearA,
            double farA,
            double ohm,
            double timeConstantS,
            double stepS) {
        double part = stepS / timeConstantS;
        double lag = lag(part);
        double gone = part < SHORT ? part * (1 - lag) : -Math.expm1(-part);
        return startV * (1 - gone) + ohm * (nearA * gone + (farA - nearA) * lag);
    }

    /** 1 − (1 − exp(−x))/x: how far a pair stays behind a current that has risen straight. */
    private static double lag(double x) {
        if (!(x < SHORT)) {
            return 1 + Math.expm1(-x) / x;
        }
        // The series of the same, whose next term is below rounding.
        double fifth = 1 - x * FIFTH * (1 - x * SIXTH * (1 - x * SEVENTH * (1 - x / 8)));
        return x / 2 * (1 - x * THIRD * (1 - x / 4 * fifth));
    }

    /**
     * Temperature of a body without inner differences after a step in which its heat stays the
     * same: the exact solution of C dT/dt = P − G (T − T_air). One lump serves a cell as long as
     * its surface follows its core.
     *
     * @param startK at the start of the step, K
     * @param heatW P, W
     * @param heatCapacityJpK C &gt; 0, J/K
     * @param toAirWpK G &gt; 0, W/K
     */
    public static double lumpAfterK(
            double startK,
            double airK,
            double heatW,
            double heatCapacityJpK,
            double toAirWpK,
            double stepS) {
        double gone = -Math.expm1(-stepS * toAirWpK / heatCapacityJpK);
        return startK + gone * (airK + heatW / toAirWpK - startK);
    }

    /**
     * Current of a regulated load, i = (E − √(E² − 4 R P)) / 2R in its form without cancellation.
     *
     * @param sourceV E &gt; 0, V
     * @param resistanceOhm R ≥ 0, Ω
     * @param powerW P ≥ 0, W
     */
    public static PowerDraw constantPower(double sourceV, double resistanceOhm, double powerW) {
        double under = sourceV * sourceV - 4 * resistanceOhm * powerW;
        if (under < 0) {
            return new PowerDraw.Collapses(sourceV * sourceV / (4 * resistanceOhm));
        }
        double current = 2 * powerW / (sourceV + Math.sqrt(under));
        return new PowerDraw.Carries(current, sourceV - resistanceOhm * current);
    }
}
