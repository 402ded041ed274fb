package liftwright.flight.loops;

/** What comes out of a linear system for a sine that goes in, at each frequency. */
@FunctionalInterface
public interface Transfer {

    /**
     * @param radps angular frequency, above 0, rad/s
     */
    Complex at(double radps);
}
