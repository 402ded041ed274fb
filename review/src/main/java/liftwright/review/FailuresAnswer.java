package liftwright.review;

import java.util.List;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Verdict;

/** The answer to "what does a failure do?". */
public record FailuresAnswer(
        Verdict verdict, List<Finding> findings, List<Section> sections, Evidence evidence)
        implements Answer {

    public FailuresAnswer {
        findings = List.copyOf(findings);
        sections = List.copyOf(sections);
    }

    @Override
    public String question() {
        return "failures";
    }
}
