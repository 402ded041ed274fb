package liftwright.review.bench;

import java.util.List;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Verdict;

/** The answer to "do these rows make a fan, which one, and can they be true?". */
public record BenchAnswer(
        Verdict verdict, List<Finding> findings, List<Section> sections, Evidence evidence)
        implements Answer {

    public BenchAnswer {
        findings = List.copyOf(findings);
        sections = List.copyOf(sections);
    }

    @Override
    public String question() {
        return "fan";
    }
}
