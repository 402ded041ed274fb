package liftwright.flight.run;

/** Who flies: what looks on, and what tells the fans what to do, anew for every flight. */
public interface Crew {

    Steersman steersman();

    /**
     * @param flight whose noise it has
     * @param tickS length of a tick, s
     */
    Lookout lookout(FlightCase flight, double tickS);
}
