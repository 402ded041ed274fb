package liftwright.plant.motion;

/**
 * What moves: rig and wearer as one mass.
 *
 * @param massKg &gt; 0
 * @param dragAreaM2 C_d A for motion along the body, ≥ 0, m²
 * @param densityKgpm3 of the air, ≥ 0
 */
public record Body(double massKg, double dragAreaM2, double densityKgpm3) {

    /**
     * Drag area of a person who moves feet first or head first with a rig, 0.2 m²; from memory. A
     * low one, so that falls come out rather too fast; at 10 m/s it takes 12 N.
     */
    public static final double USUAL_DRAG_AREA_M2 = 0.2;

    public Body {
        if (!(massKg > 0) || !(dragAreaM2 >= 0) || !(densityKgpm3 >= 0)) {
            throw new IllegalArgumentException("a body has mass");
        }
    }

    /** Upward drag, N: against the motion. */
    double dragUpN(double upMps) {
        return -densityKgpm3 * dragAreaM2 / 2 * upMps * Math.abs(upMps);
    }
}
