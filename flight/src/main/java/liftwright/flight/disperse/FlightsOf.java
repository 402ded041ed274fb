package liftwright.flight.disperse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What decides, together with its number, every bit of a flight.
 *
 * @param program version of it
 * @param rig digest of the rig file and its tables
 * @param corrections digest of the corrections in force; "none" without
 * @param profile digest of the profile
 * @param seed of everything that is drawn
 */
public record FlightsOf(String program, String rig, String corrections, String profile, long seed) {

    public FlightsOf {
        for (String each : List.of(program, rig, corrections, profile)) {
            if (!each.matches("[A-Za-z0-9:._+-]{1,200}")) {
                throw new IllegalArgumentException("no digest and no version: " + each);
            }
        }
    }

    /** In what another differs, in words; empty where flights of both are of one kind. */
    public Optional<String> unlike(FlightsOf other) {
        List<String> unlike = new ArrayList<>();
        unlike("version of the program", program, other.program, unlike);
        unlike("rig", rig, other.rig, unlike);
        unlike("corrections", corrections, other.corrections, unlike);
        unlike("profile", profile, other.profile, unlike);
        unlike("seed", Long.toString(seed), Long.toString(other.seed), unlike);
        return unlike.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", unlike));
    }

    private static void unlike(String what, String mine, String other, List<String> unlike) {
        if (!mine.equals(other)) {
            unlike.add("another " + what + " (" + shortened(mine) + ", " + shortened(other) + ")");
        }
    }

    private static String shortened(String digest) {
        return digest.startsWith("sha256:") && digest.length() > 19
                ? digest.substring(7, 19)
                : digest;
    }
}
