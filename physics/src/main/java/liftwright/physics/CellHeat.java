package liftwright.physics;

/**
 * Heat that a cell makes: what its resistances lose, I² R0 + Σ v_k²/R_k [PLETT15]. The heat of the
 * reaction (entropy), some ± 10 % at a tenth of these currents and less the faster a cell is
 * emptied (from memory), is left out.
 */
public final class CellHeat {

    private CellHeat() {}

    /** Of a cell without pairs, W. */
    public static double lossW(double currentA, double instantOhm) {
        return currentA * currentA * instantOhm;
    }

    /**
     * Of a cell with one pair, W.
     *
     * @param pairV v over the pair now, V
     * @param pairOhm R of the pair, Ω, &gt; 0
     */
    public static double lossW(double currentA, double instantOhm, double pairV, double pairOhm) {
        return currentA * currentA * instantOhm + pairV * pairV / pairOhm;
    }

    /** Of a cell with pairs, W; resistances above 0, as many as voltages. */
    public static double lossW(
            double currentA, double instantOhm, double[] pairV, double[] pairOhm) {
        double sum = currentA * currentA * instantOhm;
        for (int pair = 0; pair < pairOhm.length; pair++) {
            sum += pairV[pair] * pairV[pair] / pairOhm[pair];
        }
        return sum;
    }
}
