package liftwright.flight.run;

import liftwright.flight.motion.BodyState;

/** What the computer knows of the flight. For one flight; {@link #look} allocates nothing. */
public interface Lookout {

    /** Everything has been as it is now for ever; it is tick 0. */
    void begin(BodyState state, double[] specificForceMps2);

    /**
     * Goes on to a tick.
     *
     * @param tick one more than the last
     * @param specificForceMps2 in: mean since the last tick, body axes
     * @param rotorRadps in: speed of every rotor
     */
    void look(long tick, BodyState state, double[] specificForceMps2, double[] rotorRadps);

    /**
     * What is felt now.
     *
     * @param out place, velocity, attitude, turn rates in the order of the body's state
     */
    void felt(double[] out);

    /** A sensor says nothing from now on. */
    void lose(String sensor);
}
