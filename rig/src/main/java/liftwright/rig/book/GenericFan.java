package liftwright.rig.book;

/**
 * A ducted fan of which nothing but the size is known, worked out from what common fans of the size
 * share: a jet of 75 m/s, a blade tip of 190 m/s, a hub of 0.37 of the tip and a shaft power of the
 * ideal over 0.72. A starting point for a first sketch, ± 25 % at best; from memory, measure yours.
 *
 * @param tipM rotor tip diameter, m, 0.05 to 0.5
 */
public record GenericFan(double tipM) {

    private static final double HUB_SHARE = 0.37;
    private static final double JET_M_PER_S = 75;
    private static final double TIP_M_PER_S = 190;
    private static final double SHARE_OF_IDEAL = 0.72;

    /** Air at 15 °C and 1013.25 hPa, kg/m³ (ISO 2533). */
    private static final double DENSITY_KG_PER_M3 = 1.225;

    public GenericFan {
        if (!(tipM >= 0.05 && tipM <= 0.5)) {
            throw new IllegalArgumentException("no generic fan has a tip of " + tipM + " m");
        }
    }

    public double hubM() {
        return HUB_SHARE * tipM;
    }

    /** The ring between hub and tip, m². */
    public double exitAreaM2() {
        return Math.PI / 4 * (tipM * tipM - hubM() * hubM());
    }

    /** ρ A V², N. */
    public double thrustN() {
        return DENSITY_KG_PER_M3 * exitAreaM2() * JET_M_PER_S * JET_M_PER_S;
    }

    /** Power of the jet, T V / 2, over the share of the ideal, W. */
    public double shaftPowerW() {
        return thrustN() * JET_M_PER_S / 2 / SHARE_OF_IDEAL;
    }

    public double speedRadPerS() {
        return 2 * TIP_M_PER_S / tipM;
    }
}
