package liftwright.review.compare;

import java.util.List;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Verdict;

/** The answer to "is the second revision no worse than the first, and what differs?". */
public record CompareAnswer(
        Verdict verdict, List<Finding> findings, List<Section> sections, Evidence evidence)
        implements Answer {

    public CompareAnswer {
        findings = List.copyOf(findings);
        sections = List.copyOf(sections);
    }

    @Override
    public String question() {
        return "compare";
    }
}
