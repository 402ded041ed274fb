package liftwright.plant.motion;

import java.util.Set;

/**
 * When a kill acts, after the fault; each time may be infinite, which is never.
 *
 * @param commandAtS when every controller is told, s
 * @param share what it is told: lift over weight; 0 stops it
 * @param openAtS when the contactors open, s
 * @param contactors their names
 */
public record Stop(double commandAtS, double share, double openAtS, Set<String> contactors) {

    /** Nothing stops it. */
    public static final Stop NEVER =
            new Stop(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Set.of());

    public Stop {
        contactors = Set.copyOf(contactors);
        if (!(commandAtS >= 0) || !(openAtS >= 0) || !(share >= 0)) {
            throw new IllegalArgumentException("a kill acts after the fault");
        }
    }

    /** A command that stops all fans. */
    public Stop(double commandAtS, double openAtS, Set<String> contactors) {
        this(commandAtS, 0, openAtS, contactors);
    }

    /** The same so much later, s. */
    public Stop later(double byS) {
        return new Stop(commandAtS + byS, share, openAtS + byS, contactors);
    }

    /** When it first acts, s. */
    public double firstS() {
        return Math.min(commandAtS, openAtS);
    }
}
