package liftwright.plant.motion;

import java.util.Set;

/**
 * When a kill acts, after the fault; each time may be infinite, which is never.
 *
 * @param commandAtS when every controller is told zero, s
 * @param openAtS when the contactors open, s
 * @param contactors their names
 */
public record Stop(double commandAtS, double openAtS, Set<String> contactors) {

    /** Nothing stops it. */
    public static final Stop NEVER =
            new Stop(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Set.of());

    public Stop {
        contactors = Set.copyOf(contactors);
        if (!(commandAtS >= 0) || !(openAtS >= 0)) {
            throw new IllegalArgumentException("a kill acts after the fault");
        }
    }

    /** The same so much later, s. */
    public Stop later(double byS) {
        return new Stop(commandAtS + byS, openAtS + byS, contactors);
    }

    /** When it first acts, s. */
    public double firstS() {
        return Math.min(commandAtS, openAtS);
    }
}
