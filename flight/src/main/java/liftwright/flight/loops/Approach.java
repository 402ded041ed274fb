package liftwright.flight.loops;

/** How fast to go for something that is off. */
final class Approach {

    private Approach() {}

    /**
     * Speed towards something so far away: in proportion near it, slowing evenly farther off. Half
     * of the even slowing's reach, a/k², joins the two with one slope, so that neither jumps.
     *
     * @param far above or below 0, in m or rad
     * @param perS gain k near it, above 0, 1/s
     * @param mps2 even slowing a farther off, above 0, m/s² or rad/s²
     */
    static double speed(double far, double perS, double mps2) {
        double near = mps2 / (perS * perS);
        double size = Math.abs(far);
        return size <= near
                ? perS * far
                : Math.copySign(Math.sqrt(2 * mps2 * (size - 0.5 * near)), far);
    }
}
