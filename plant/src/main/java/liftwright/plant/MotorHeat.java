package liftwright.plant;

/**
 * How warm motors and controllers are taken to be.
 *
 * @param magnetK magnets, K; 293.15 to 393.15
 * @param windingK windings, K
 * @param switchK switches of the controllers, K
 */
public record MotorHeat(double magnetK, double windingK, double switchK) {

    /**
     * After minutes at full load: magnets at 80 °C, windings and switches at 100 °C, the default
     * limits of magnets and controllers; common practice.
     */
    public static final MotorHeat HOT = new MotorHeat(353.15, 373.15, 373.15);
}
