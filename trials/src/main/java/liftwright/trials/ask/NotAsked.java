package liftwright.trials.ask;

import java.util.List;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;

/**
 * Stands in for an answer of the review that nobody asked for yet: not judged, so it opens nothing.
 *
 * @param question which
 */
public record NotAsked(String question) implements Answer {

    @Override
    public Verdict verdict() {
        return new Verdict(
                Outcome.NOT_JUDGED,
                Sentence.words("not asked yet"),
                java.util.Optional.empty(),
                List.of());
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Section> sections() {
        return List.of();
    }

    @Override
    public Evidence evidence() {
        return new Evidence("", "none", 0, 0, Sentence.start(), List.of(), List.of(), List.of());
    }
}
