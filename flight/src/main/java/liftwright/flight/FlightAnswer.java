package liftwright.flight;

import java.util.List;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Verdict;

/** The answer to "will the flight computer hold it?". */
public record FlightAnswer(
        Verdict verdict, List<Finding> findings, List<Section> sections, Evidence evidence)
        implements Answer {

    public FlightAnswer {
        findings = List.copyOf(findings);
        sections = List.copyOf(sections);
    }

    @Override
    public String question() {
        return "flight";
    }
}
