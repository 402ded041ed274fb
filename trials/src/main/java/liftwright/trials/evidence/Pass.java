package liftwright.trials.evidence;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.trials.CardId;

/**
 * What came of a card on one day: the only thing that opens another.
 *
 * @param number in the folder, from 1, in the order in which they were written down
 * @param card which
 * @param on the day
 * @param outcome what came of it
 * @param by who signed
 * @param cleanRuns runs without anything that was not expected, one after the other, at least 1
 *     where it passed
 * @param rig digest of the rig file and its tables
 * @param revision of the rig
 * @param killProof what proved the kills that day, in words or as a digest; empty where nothing had
 *     to
 * @param note what else was seen; may be empty
 * @param inputs of the rig that it rests on
 */
public record Pass(
        int number,
        CardId card,
        LocalDate on,
        Outcome outcome,
        List<String> by,
        int cleanRuns,
        String rig,
        int revision,
        Optional<String> killProof,
        String note,
        Inputs inputs) {

    /** In the order in which they happened. */
    public static final Comparator<Pass> IN_TIME =
            Comparator.comparing(Pass::on).thenComparingInt(Pass::number);

    /** The last one that can be written: file names have four digits. */
    public static final int MOST = 9999;

    public Pass {
        by = List.copyOf(by);
        if (number < 1
                || number > MOST
                || by.isEmpty()
                || by.stream().anyMatch(String::isBlank)
                || cleanRuns < (outcome == Outcome.PASSED ? 1 : 0)) {
            throw new IllegalArgumentException("not a pass of " + card);
        }
    }

    /** What came of a card. */
    public enum Outcome {
        /** All that was expected, and nothing else. */
        PASSED,
        /** Stopped at an abort value or by somebody's call. */
        ABORTED,
        /** Done to its end, and something was not as it has to be. */
        FAILED,
        /** Something happened that nobody can explain. */
        UNEXPLAINED;

        /** As it stands in a file. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public boolean isPassed() {
        return outcome == Outcome.PASSED;
    }

    /** The last day on which it is worth anything; empty where it does not age. */
    public Optional<LocalDate> lastDay(Optional<Integer> agesAfterDays) {
        return agesAfterDays.map(on::plusDays);
    }
}
