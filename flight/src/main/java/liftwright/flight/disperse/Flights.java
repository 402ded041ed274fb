package liftwright.flight.disperse;

import liftwright.flight.run.FlightOutcome;

/** Flies by number, for one thread; the same number always gives the same bits. */
@FunctionalInterface
public interface Flights {

    /**
     * @param number of the flight, ≥ 0; 0 is the one at the declared values
     * @throws liftwright.plant.parameters.ImpossibleValueException where a drawn number cannot be
     */
    FlightOutcome fly(int number);
}
