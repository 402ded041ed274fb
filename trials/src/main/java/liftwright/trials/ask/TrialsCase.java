package liftwright.trials.ask;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.rig.Rig;
import liftwright.rig.stand.Stand;
import liftwright.trials.evidence.Pass;
import liftwright.trials.proof.KillProof;

/**
 * A rig with all that is on record about its tests.
 *
 * @param rig as declared
 * @param rigDigest of what it was read from
 * @param passes written down so far
 * @param unread files of passes that cannot be read, in words
 * @param settings digests of what controllers and flight computers are set to, by name
 * @param proof of the kills, the last one; empty without
 * @param stand by which thrust is measured; empty where no plan of one lies beside the rig
 * @param today the day
 */
public record TrialsCase(
        Rig rig,
        String rigDigest,
        List<Pass> passes,
        List<String> unread,
        Map<String, String> settings,
        Optional<KillProof> proof,
        Optional<Stand> stand,
        LocalDate today) {

    public TrialsCase {
        passes = List.copyOf(passes);
        unread = List.copyOf(unread);
        settings = Map.copyOf(settings);
    }

    /** The same with another proof of the kills. */
    public TrialsCase with(KillProof other) {
        return new TrialsCase(
                rig, rigDigest, passes, unread, settings, Optional.of(other), stand, today);
    }

    /** A rig that was never tested. */
    public static TrialsCase untested(Rig rig, String rigDigest, LocalDate today) {
        return new TrialsCase(
                rig,
                rigDigest,
                List.of(),
                List.of(),
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                today);
    }
}
