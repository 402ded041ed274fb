package liftwright.review.compare;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.CompareFields;
import liftwright.answer.Fields;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.quantity.Band;
import liftwright.review.Bands;
import liftwright.review.Judged;

/**
 * Both answers to one question.
 *
 * @param question in one word
 * @param judgedBefore the judged number of the first; empty where it judges by none
 * @param same numbers that stand in both and are the same
 * @param sections what differs
 * @param draws in which every figure was computed on both
 */
record Compared(
        String question,
        Answer before,
        Answer after,
        Optional<Judged> judgedBefore,
        Optional<Judged> judgedAfter,
        int same,
        List<Section> sections,
        int draws) {

    Outcome outcomeBefore() {
        return before.verdict().outcome();
    }

    Outcome outcomeAfter() {
        return after.verdict().outcome();
    }

    boolean verdictChanged() {
        return outcomeBefore() != outcomeAfter();
    }

    /** Whether the second answers less well. */
    boolean worse() {
        return rank(outcomeAfter()) < rank(outcomeBefore());
    }

    private static int rank(Outcome outcome) {
        return switch (outcome) {
            case DOES_NOT_HOLD -> 0;
            case NOT_JUDGED, CANNOT_BE_TOLD -> 1;
            case HOLDS -> 2;
        };
    }

    /** "lift: not met, was met". */
    String verdictWords() {
        return question + ": " + outcomeAfter().label() + ", was " + outcomeBefore().label();
    }

    /** Of the judged number, on the draws that both have; empty where they judge by unlike ones. */
    Optional<Value> change() {
        if (judgedBefore.isEmpty()
                || judgedAfter.isEmpty()
                || !judgedBefore.get().field().equals(judgedAfter.get().field())) {
            return Optional.empty();
        }
        Judged was = judgedBefore.get();
        Judged is = judgedAfter.get();
        Band band = Bands.ofDifference(is.values(), was.values());
        return Optional.of(
                Value.of(
                        CompareFields.change(Fields.of(was.field()).measure()),
                        is.nominal() - was.nominal(),
                        band));
    }

    List<Value> row() {
        return List.of(
                Value.words("compared-question", question),
                Value.words("verdict-before", outcomeBefore().label()),
                Value.words("verdict-after", outcomeAfter().label()),
                Value.words("compared-what", what()),
                judged("compared-before", judgedBefore),
                judged("compared-after", judgedAfter),
                change().orElseGet(() -> Value.words("compared-change", "")));
    }

    private String what() {
        return judgedAfter
                .or(() -> judgedBefore)
                .map(judged -> Fields.of(judged.field()).label())
                .orElse("");
    }

    private static Value judged(String column, Optional<Judged> judged) {
        return judged.map(one -> Value.of(one.field(), one.nominal(), one.band()))
                .orElseGet(() -> Value.words(column, ""));
    }
}
