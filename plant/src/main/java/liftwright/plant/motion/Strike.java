package liftwright.plant.motion;

/**
 * A blow against what stands above.
 *
 * @param timeS when, s
 * @param heightM of the soles, m
 * @param speedMps upward, m/s
 * @param energyJ of the whole body, m v²/2
 */
public record Strike(double timeS, double heightM, double speedMps, double energyJ) {}
