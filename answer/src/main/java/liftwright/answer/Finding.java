package liftwright.answer;

import java.util.List;
import java.util.Optional;

/**
 * Something the builder should know.
 *
 * @param severity how far it reaches
 * @param code stable name of the kind of finding, lower case with hyphens
 * @param part id of the part it is about; empty when it is about the whole
 * @param path where in the rig file to look; empty when nowhere
 * @param sentence what was computed, against which limit, with which margin; never "safe"
 * @param value the number judged, when there is one
 * @param limit what it was judged against
 * @param cause why it is so
 * @param remedies what would clear it, each recomputed
 */
public record Finding(
        Severity severity,
        String code,
        Optional<String> part,
        Optional<String> path,
        Sentence sentence,
        Optional<Value> value,
        Optional<Limit> limit,
        String cause,
        List<Remedy> remedies) {

    public Finding {
        remedies = List.copyOf(remedies);
    }

    /** Worst first. */
    public enum Severity {
        /** The rig must not be run like this, or the question cannot be answered. */
        STOPS,
        WARNS,
        NOTES
    }

    /**
     * @param value same field as the finding's value
     * @param origin declared, a standard, common practice, or from memory
     */
    public record Limit(Value value, String origin) {}
}
