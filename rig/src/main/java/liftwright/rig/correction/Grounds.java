package liftwright.rig.correction;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a correction rests on.
 *
 * @param tests at least one, in the order of the fit
 * @param heldOut how well the fit told a test that it had not seen: root mean square of measured
 *     less predicted, over what their bands led to expect, 1; empty where no test was held out
 * @param distance of what was found from what was declared, in standard deviations of the declared
 *     doubt, all values of the group together
 */
public record Grounds(List<Test> tests, OptionalDouble heldOut, double distance) {

    /** Beyond so many standard deviations of its doubt a declared value was not just imprecise. */
    public static final double FARTHEST = 4;

    /** A held-out test that is missed by more than so often what was expected bears nothing out. */
    public static final double WORST_HELD_OUT = 3;

    public Grounds {
        tests = List.copyOf(tests);
        if (tests.isEmpty()) {
            throw new IllegalArgumentException("a correction rests on a test");
        }
        if (!(distance >= 0) || Double.isInfinite(distance)) {
            throw new IllegalArgumentException("a distance is no less than 0, not " + distance);
        }
        if (heldOut.isPresent()
                && (!(heldOut.getAsDouble() >= 0) || Double.isInfinite(heldOut.getAsDouble()))) {
            throw new IllegalArgumentException("a residual is no less than 0, not " + heldOut);
        }
    }

    /**
     * A test of the logbook.
     *
     * @param id as the logbook calls it
     * @param digest of its recording, {@code sha256:} and 64 digits
     */
    public record Test(String id, String digest) {}

    /** What is missing before a verdict may rest on the correction. */
    public enum Lack {
        /** Nothing. */
        NOTHING,
        /** No test was held out. */
        NOT_HELD_OUT,
        /** The held-out test was missed. */
        MISSED,
        /** What was found is too far from what was declared. */
        TOO_FAR
    }

    /** Whether a verdict may rest on it, and else why not. */
    public Lack lack() {
        if (heldOut.isEmpty()) {
            return Lack.NOT_HELD_OUT;
        }
        if (heldOut.getAsDouble() > WORST_HELD_OUT) {
            return Lack.MISSED;
        }
        return distance > FARTHEST ? Lack.TOO_FAR : Lack.NOTHING;
    }
}
