package liftwright.physics;

/**
 * The air of a closed room that a rig stirs and warms. Walls, doors and what stands in it take up
 * heat; without them the rise is an upper end.
 */
public final class RoomAir {

    private RoomAir() {}

    /**
     * Rise of all air together, E/(ρ c_p V), K; below some 50 K, where density and specific heat
     * hardly change.
     *
     * @param heatJ E put into it
     * @param volumeM3 V &gt; 0
     * @param airK its temperature before, K
     */
    public static double riseK(double heatJ, double volumeM3, double densityKgpm3, double airK) {
        return heatJ / (densityKgpm3 * AirFilm.specificHeatJpkgK(airK) * volumeM3);
    }

    /**
     * Time in which the fans move as much air as the room holds, V/Σ A V_e, s: later each of them
     * breathes what has been through another.
     *
     * @param volumeM3 of the room
     * @param flowM3ps through all fans
     */
    public static double turnoverS(double volumeM3, double flowM3ps) {
        return volumeM3 / flowM3ps;
    }
}
