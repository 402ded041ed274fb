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

    /** A finding about the whole rig, which says neither a number nor a remedy yet. */
    public static Finding of(Severity severity, String code, Sentence sentence, String cause) {
        return new Finding(
                severity,
                code,
                Optional.empty(),
                Optional.empty(),
                sentence,
                Optional.empty(),
                Optional.empty(),
                cause,
                List.of());
    }

    /** The same about the part with this id. */
    public Finding about(String id) {
        return about(Optional.of(id));
    }

    public Finding about(Optional<String> id) {
        return new Finding(severity, code, id, path, sentence, value, limit, cause, remedies);
    }

    /** The same with a place in the rig file. */
    public Finding at(String place) {
        return at(Optional.of(place));
    }

    public Finding at(Optional<String> place) {
        return new Finding(severity, code, part, place, sentence, value, limit, cause, remedies);
    }

    /** The same with the number it is about, where that is held against nothing. */
    public Finding judging(Value judged) {
        return judging(Optional.of(judged));
    }

    public Finding judging(Optional<Value> judged) {
        return new Finding(severity, code, part, path, sentence, judged, limit, cause, remedies);
    }

    /** The same with the number judged and what it was held against. */
    public Finding against(Value judged, Limit held) {
        return new Finding(
                severity,
                code,
                part,
                path,
                sentence,
                Optional.of(judged),
                Optional.of(held),
                cause,
                remedies);
    }

    /** The same with what would clear it. */
    public Finding mendedBy(List<Remedy> clearing) {
        return new Finding(severity, code, part, path, sentence, value, limit, cause, clearing);
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
