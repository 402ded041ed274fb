package liftwright.flight.run;

/** Flies cases, one after the other; for one thread. */
public final class FlightRun {

    /** Flies one flight from its first step to its end. */
    public FlightOutcome fly(FlightCase flight) {
        if (flight.number() < 0) {
            throw new IllegalArgumentException("flights count from 0");
        }
        throw new UnsupportedOperationException("no flight is flown yet");
    }
}
