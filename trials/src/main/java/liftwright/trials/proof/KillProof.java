package liftwright.trials.proof;

import java.time.LocalDate;
import java.util.List;
import liftwright.answer.Outcome;
import liftwright.rig.table.KillLog.Signal;

/**
 * That the kills of a rig were pressed on a day, and what became of the thrust. Worth nothing on
 * any other day, nor for any other build.
 *
 * @param date on which the log was made
 * @param rigDigest SHA-256 of the rig
 * @param log name of the log
 * @param logDigest SHA-256 of it
 * @param signal what was logged
 * @param limitS from the press to a tenth of the thrust, s
 * @param paths every declared way to stop, in the order of the rig file
 */
public record KillProof(
        LocalDate date,
        String rigDigest,
        String log,
        String logDigest,
        Signal signal,
        double limitS,
        List<PathProof> paths) {

    public KillProof {
        paths = List.copyOf(paths);
        if (!(limitS > 0)) {
            throw new IllegalArgumentException("a kill has a time to act in");
        }
    }

    /** Whether every declared way to stop is proved; cannot be told of a rig that declares none. */
    public Outcome outcome() {
        Outcome all = paths.isEmpty() ? Outcome.CANNOT_BE_TOLD : Outcome.HOLDS;
        for (PathProof path : paths) {
            if (path.outcome() == Outcome.DOES_NOT_HOLD) {
                return Outcome.DOES_NOT_HOLD;
            }
            all = all.downgradedTo(path.outcome());
        }
        return all;
    }

    /**
     * Why it proves nothing on a day; empty where it stands.
     *
     * @param rigDigest of the build that is to be tested
     */
    public List<String> doubts(LocalDate on, String rigDigest) {
        List<String> doubts = new java.util.ArrayList<>();
        if (!date.equals(on)) {
            doubts.add("the kills were proved on " + date + ": that day is over");
        }
        if (!this.rigDigest.equals(rigDigest)) {
            doubts.add("the kills were proved on another state of the rig file");
        }
        for (PathProof path : paths) {
            if (!path.holds()) {
                doubts.add(
                        path.path()
                                + ": "
                                + (path.reasons().isEmpty()
                                        ? path.outcome().label()
                                        : path.reasons().getFirst()));
            }
        }
        if (paths.isEmpty()) {
            doubts.add("the rig declares no way to stop");
        }
        return doubts;
    }

    /** Whether it stands on a day for a build. */
    public boolean stands(LocalDate on, String rigDigest) {
        return doubts(on, rigDigest).isEmpty();
    }
}
