package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Verdict;

/**
 * An answer with more to read at its end.
 *
 * @param of the answer
 * @param more behind its own sections
 */
public record WithSections(Answer of, List<Section> more) implements Answer {

    public WithSections {
        more = List.copyOf(more);
    }

    @Override
    public String question() {
        return of.question();
    }

    @Override
    public Verdict verdict() {
        return of.verdict();
    }

    @Override
    public List<Finding> findings() {
        return of.findings();
    }

    @Override
    public List<Section> sections() {
        List<Section> all = new ArrayList<>(of.sections());
        all.addAll(more);
        return all;
    }

    @Override
    public Evidence evidence() {
        return of.evidence();
    }
}
