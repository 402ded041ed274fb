package liftwright.flight.loops;

import java.util.List;

/**
 * Loops of one axis with their crossovers, and what bound each.
 *
 * @param axis which
 * @param cascade the loops
 * @param levels level of each stage
 * @param radps crossover of each stage, rad/s
 * @param bound what kept each from being faster
 * @param modes of the wearer in the harness that they have to bear; none where nobody wears it
 */
record Shaped(
        Axis axis,
        Cascade cascade,
        List<Loop.Level> levels,
        List<Double> radps,
        List<Bound> bound,
        List<FlexMode> modes) {

    /** What keeps a crossover from being higher. */
    enum Bound {
        MARGIN("phase margin"),
        GAIN_MARGIN("gain margin"),
        INNER("the loop inside it"),
        AUTHORITY("authority"),
        HARNESS("harness mode"),
        LEGS("swinging legs"),
        TILT("tilt, which comes first"),
        DECLARED("as declared"),
        ROBUST("± 30 % of inertia and lag");

        final String words;

        Bound(String words) {
            this.words = words;
        }
    }

    Shaped {
        levels = List.copyOf(levels);
        radps = List.copyOf(radps);
        bound = List.copyOf(bound);
        modes = List.copyOf(modes);
    }

    double outermostRadps() {
        return radps.getLast();
    }
}
