package liftwright.physics;

/**
 * A pack that burns. All numbers are from memory and scatter by a factor of two: cells differ in
 * chemistry and charge. Gas, which is poisonous and can explode, and pieces that fly are not in it.
 */
public final class PackFire {

    /** Heat of a burning full cell over what is stored in it: cathode, electrolyte and gas too. */
    public static final double LEAST_HEAT = 1.5;

    /** The most of it. */
    public static final double MOST_HEAT = 3;

    /** Share of a flame's heat that shines on what is around, least. */
    public static final double LEAST_RADIANT = 0.2;

    /** The most of it. */
    public static final double MOST_RADIANT = 0.4;

    /** A pack burns through in this at the soonest, s. */
    public static final double SHORTEST_S = 30;

    /** And in this at the latest, s. */
    public static final double LONGEST_S = 120;

    /** Bare skin hurts within half a minute under this, W/m². */
    public static final double PAIN_WPM2 = 2500;

    /** Flames shoot out of a vent so far, m. */
    public static final double FLAME_M = 1;

    private PackFire() {}

    /**
     * Distance at which the light of a fire falls to a strength, as of a point that shines evenly:
     * √(χ E/(4 π t q)), m.
     *
     * @param heatJ E
     * @param burnS t
     * @param radiant χ
     * @param fluxWpm2 q
     */
    public static double radiantM(double heatJ, double burnS, double radiant, double fluxWpm2) {
        return Math.sqrt(radiant * heatJ / (4 * Math.PI * burnS * fluxWpm2));
    }
}
