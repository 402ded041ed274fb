package liftwright.plant.motion;

/**
 * The greatest force in one line or mat.
 *
 * @param spring which
 * @param forceN N; 0 where it was never stretched
 * @param timeS when, s
 * @param stretchM the greatest stretch of all, m, ≥ 0
 */
public record Peak(Spring spring, double forceN, double timeS, double stretchM) {}
