package liftwright.physics;

/**
 * Empty capacitors connected to a pack, and the resistor that fills them first. Without inductance:
 * the peak current is an upper bound, the energy and I² t are not changed by it.
 */
public final class Inrush {

    private Inrush() {}

    /** Energy in the capacitors once full, and as much again lost on the way there, ½ C V², J. */
    public static double energyJ(double capacitanceF, double volt) {
        return capacitanceF * volt * volt / 2;
    }

    /** Peak current V/R, A. */
    public static double peakA(double volt, double loopOhm) {
        return volt / loopOhm;
    }

    /** ∫ I² dt while they fill, C V²/(2 R), A²·s: what a fuse or a contact in the loop takes. */
    public static double meltingA2s(double capacitanceF, double volt, double loopOhm) {
        return energyJ(capacitanceF, volt) / loopOhm;
    }

    /**
     * Time until a resistor has filled them to a share of the voltage, −R C ln(1 − share), s.
     *
     * @param share 0 to below 1
     */
    public static double fillS(double preChargeOhm, double capacitanceF, double share) {
        if (!(share >= 0 && share < 1)) {
            throw new IllegalArgumentException("a share filled is from 0 to below 1, not " + share);
        }
        return -preChargeOhm * capacitanceF * Math.log1p(-share);
    }

    /** Resistor that fills them to a share in a time, t/(−C ln(1 − share)), Ω. */
    public static double preChargeOhm(double fillS, double capacitanceF, double share) {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException("a share filled is between 0 and 1, not " + share);
        }
        return fillS / (-capacitanceF * Math.log1p(-share));
    }
}
