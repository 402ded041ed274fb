package liftwright.flight.run;

import java.util.BitSet;
import liftwright.flight.loops.Standing;
import liftwright.flight.loops.Wanted;

/** What tells the fans what to do. For one flight; steps allocate nothing. */
public interface Steersman {

    /** Forgets what it held. */
    void begin();

    /** Fans of which it is known from now on that they do not do what they are told. */
    void lost(BitSet fans);

    /** Such a fan pushes all the same, as its reported speed tells, N. */
    void pushesOn(int fan, double thrustN);

    /**
     * One step of the computer.
     *
     * @param dtS since the last
     * @param felt in: place, velocity, attitude, turn rates in the order of the body's state
     * @param standing what else holds the rig
     * @param wanted the set point
     * @param fanV in: voltage at each controller, V
     * @param duty out: 0 to 1 for each fan
     */
    void steer(
            double dtS,
            double[] felt,
            Standing standing,
            Wanted wanted,
            double[] fanV,
            double[] duty);
}
