package liftwright.plant.heat;

import liftwright.physics.FuseCurve;

/** What makes heat and what takes it at one moment; filled by those who know it. */
public final class HeatLoad {

    /** Current of each chain, A. */
    public final double[] chainA;

    /** Heat made in the inner and in the outer node of each body, W. */
    public final double[] innerW;

    public final double[] outerW;

    /** From the outer node of each body to the air, W/K. */
    public final double[] toAirWpK;

    /** All heat of each pack, links and pairs included, W. */
    public final double[] packW;

    /** What the cells give up, their own heat included: Σ E I and the heat of the pairs, W. */
    public double givenW;

    /** What leaves at the shafts, W. */
    public double shaftW;

    /** Gain of each fuse above 1. */
    final double[] excess;

    HeatLoad(int chains, int packs, int bodies, int fuses) {
        chainA = new double[chains];
        packW = new double[packs];
        innerW = new double[bodies];
        outerW = new double[bodies];
        toAirWpK = new double[bodies];
        excess = new double[fuses];
    }

    void fuses(FuseCurve[] curve, int[] chainOfFuse) {
        for (int k = 0; k < excess.length; k++) {
            excess[k] = curve[k].excess(chainA[chainOfFuse[k]]);
        }
    }

    public void copyFrom(HeatLoad other) {
        System.arraycopy(other.chainA, 0, chainA, 0, chainA.length);
        System.arraycopy(other.innerW, 0, innerW, 0, innerW.length);
        System.arraycopy(other.outerW, 0, outerW, 0, outerW.length);
        System.arraycopy(other.toAirWpK, 0, toAirWpK, 0, toAirWpK.length);
        System.arraycopy(other.packW, 0, packW, 0, packW.length);
        System.arraycopy(other.excess, 0, excess, 0, excess.length);
        givenW = other.givenW;
        shaftW = other.shaftW;
    }

    /** Between two moments, each value running straight. */
    public void between(HeatLoad near, HeatLoad far, double share) {
        mix(near.chainA, far.chainA, share, chainA);
        mix(near.innerW, far.innerW, share, innerW);
        mix(near.outerW, far.outerW, share, outerW);
        mix(near.toAirWpK, far.toAirWpK, share, toAirWpK);
        mix(near.packW, far.packW, share, packW);
        mix(near.excess, far.excess, share, excess);
        givenW = near.givenW + share * (far.givenW - near.givenW);
        shaftW = near.shaftW + share * (far.shaftW - near.shaftW);
    }

    private static void mix(double[] near, double[] far, double share, double[] out) {
        for (int k = 0; k < out.length; k++) {
            out[k] = near[k] + share * (far[k] - near[k]);
        }
    }
}
