package liftwright.flight.disperse;

/**
 * Flights that are wanted.
 *
 * @param of which flights
 * @param from first number, ≥ 0; 0 is the flight at the declared values, which no share counts
 * @param to last number, ≥ from
 */
public record FlightRange(FlightsOf of, int from, int to) {

    /** The last number that can be asked for. */
    public static final int MOST = 999_999;

    public FlightRange {
        if (from < 0 || to < from || to > MOST) {
            throw new IllegalArgumentException(
                    "flights go from 0 or later to "
                            + MOST
                            + " at most, not from "
                            + from
                            + " to "
                            + to);
        }
    }
}
