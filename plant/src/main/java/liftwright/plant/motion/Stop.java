package liftwright.plant.motion;

import java.util.Optional;
import java.util.Set;

/**
 * When a kill acts, after the fault; each time may be infinite, which is never.
 *
 * @param commandAtS when every controller is told, s
 * @param share what it is told: lift over weight; 0 stops it
 * @param openAtS when the contactors open, s
 * @param contactors their names
 * @param measured how thrust was seen to go, in place of how rotors are computed to run down
 */
public record Stop(
        double commandAtS,
        double share,
        double openAtS,
        Set<String> contactors,
        Optional<Measured> measured) {

    /** Nothing stops it. */
    public static final Stop NEVER =
            new Stop(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Set.of());

    /** Of full thrust, what is left between the two measured times. */
    private static final double HALF = 0.5;

    /** And what is left after them while the body still rises. */
    private static final double TENTH = 0.1;

    /**
     * Measured times, which bound thrust that never rises again from above: all of it until half
     * was seen, half of it until a tenth was seen, then a tenth while the body rises. In the fall
     * there is none, since thrust would soften it.
     *
     * @param halfAtS when no more than half was left, s
     * @param tenthAtS when no more than a tenth was left, s
     */
    public record Measured(double halfAtS, double tenthAtS) {
        public Measured {
            if (!(halfAtS >= 0) || !(tenthAtS >= halfAtS) || tenthAtS == Double.POSITIVE_INFINITY) {
                throw new IllegalArgumentException("thrust goes in its order, after the fault");
            }
        }
    }

    public Stop {
        contactors = Set.copyOf(contactors);
        if (!(commandAtS >= 0) || !(openAtS >= 0) || !(share >= 0)) {
            throw new IllegalArgumentException("a kill acts after the fault");
        }
    }

    /** As the laws of rotors have it. */
    public Stop(double commandAtS, double share, double openAtS, Set<String> contactors) {
        this(commandAtS, share, openAtS, contactors, Optional.empty());
    }

    /** A command that stops all fans. */
    public Stop(double commandAtS, double openAtS, Set<String> contactors) {
        this(commandAtS, 0, openAtS, contactors);
    }

    /** Thrust goes as it was measured, whatever acts. */
    public static Stop asMeasured(double halfAtS, double tenthAtS) {
        return new Stop(
                Double.POSITIVE_INFINITY,
                0,
                Double.POSITIVE_INFINITY,
                Set.of(),
                Optional.of(new Measured(halfAtS, tenthAtS)));
    }

    /** The same so much later, s. */
    public Stop later(double byS) {
        return new Stop(
                commandAtS + byS,
                share,
                openAtS + byS,
                contactors,
                measured.map(at -> new Measured(at.halfAtS + byS, at.tenthAtS + byS)));
    }

    /** When it first acts, s. */
    public double firstS() {
        double first = Math.min(commandAtS, openAtS);
        return measured.map(at -> Math.min(first, at.halfAtS)).orElse(first);
    }

    /**
     * Share of the rotors' thrust that is there by what was measured.
     *
     * @param halved whether the first of its times is over
     * @param gone whether the second is
     * @param upMps speed of the body, upward positive
     */
    static double left(boolean halved, boolean gone, double upMps) {
        if (gone) {
            return upMps > 0 ? TENTH : 0;
        }
        return halved ? HALF : 1;
    }
}
