package liftwright.plant.motion;

/**
 * Where the body is at a moment.
 *
 * @param timeS since the fault or the fall began, s
 * @param heightM of the soles above the ground, m
 * @param upMps speed, upward positive, m/s
 */
public record Moment(double timeS, double heightM, double upMps) {}
