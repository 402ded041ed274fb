package liftwright.app.job;

import java.util.Optional;

/**
 * What is to be worked out, and of which state of the rig.
 *
 * @param rig its path from the opened folder
 * @param digest of what the rig was read from
 */
public record JobSpec(String rig, String digest, What what) {

    /** What it is. */
    public sealed interface What {}

    /**
     * Many flights.
     *
     * @param profile the name of its file; empty for the usual one
     * @param profileDigest of that file
     * @param flights 1 to this number
     */
    public record Flights(Optional<String> profile, String profileDigest, int flights, long seed)
            implements What {

        public Flights {
            profile.ifPresent(name -> requireLine("profile", name));
            requireLine("digest of the profile", profileDigest);
            if (flights < 1) {
                throw new IllegalArgumentException("at least one flight is flown, not " + flights);
            }
        }
    }

    /** Every two and every three losses at once. */
    public record Pairs() implements What {}

    /**
     * Why a test went as it did.
     *
     * @param test names it in the logbook
     */
    public record Explain(String test) implements What {
        public Explain {
            requireLine("test", test);
        }
    }

    public JobSpec {
        requireLine("rig", rig);
        requireLine("digest", digest);
    }

    /** Whether both are one piece of work, of which the other may ask for more. */
    boolean isSameWork(JobSpec other) {
        return rig.equals(other.rig)
                && digest.equals(other.digest)
                && switch (what) {
                    case Flights mine ->
                            other.what instanceof Flights its
                                    && mine.profile.equals(its.profile)
                                    && mine.profileDigest.equals(its.profileDigest)
                                    && mine.seed == its.seed;
                    case Pairs() -> other.what instanceof Pairs;
                    case Explain mine -> mine.equals(other.what);
                };
    }

    /** This with so many flights as the other asks for, where that is more. */
    JobSpec joined(JobSpec other) {
        return what instanceof Flights mine
                        && other.what instanceof Flights its
                        && its.flights > mine.flights
                ? other
                : this;
    }

    /** What stands in a file of lines has to be one. */
    private static void requireLine(String what, String text) {
        if (text.isBlank()
                || text.length() > 1_000
                || !text.equals(text.strip())
                || text.codePoints().anyMatch(JobSpec::breaksLines)) {
            throw new IllegalArgumentException("no name of a " + what + ": " + text);
        }
    }

    private static boolean breaksLines(int c) {
        int type = Character.getType(c);
        return Character.isISOControl(c)
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || type == Character.SURROGATE;
    }
}
