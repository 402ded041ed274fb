package liftwright.flight.run;

import java.util.OptionalDouble;

/**
 * How near two modules of a scene come to each other.
 *
 * @param one its name
 * @param other its name
 * @param leastM least distance between any fan or foot of the one and any of the other, m; below 0
 *     where they touch
 * @param atS when that is, s
 * @param jetS when a jet of the one first reaches the other, s; empty where none ever does
 */
public record Near(String one, String other, double leastM, double atS, OptionalDouble jetS) {

    /** Whether they stay apart, and out of each other's jets. */
    public boolean isClear(double apartM) {
        return leastM >= apartM && jetS.isEmpty();
    }
}
