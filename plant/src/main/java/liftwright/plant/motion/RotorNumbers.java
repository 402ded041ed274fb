package liftwright.plant.motion;

/** Numbers of the rotors beside those of the units; one value a fan. For one thread. */
public final class RotorNumbers {

    /** Inertia of all that turns, kg·m². */
    public final double[] inertiaKgm2;

    /** Upward share of the thrust, −1 to 1. */
    public final double[] upShare;

    /** Exit area of the jet, m². */
    public final double[] exitM2;

    /** Intake loss K over the exit dynamic pressure. */
    public final double[] loss;

    /** Whether a controller that is told zero brakes. */
    public final boolean[] brakes;

    /** Of the air, kg/m³. */
    public double densityKgpm3;

    public RotorNumbers(int fans) {
        inertiaKgm2 = new double[fans];
        upShare = new double[fans];
        exitM2 = new double[fans];
        loss = new double[fans];
        brakes = new boolean[fans];
    }
}
