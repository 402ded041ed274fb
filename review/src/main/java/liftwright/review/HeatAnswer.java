package liftwright.review;

import java.util.List;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Verdict;
import liftwright.rig.table.StartState;

/**
 * The answer to "what gives out first, and when?".
 *
 * @param left what the parts are left with when the flight that was asked for is over, at the
 *     declared values: what the next flight starts from
 */
public record HeatAnswer(
        Verdict verdict,
        List<Finding> findings,
        List<Section> sections,
        Evidence evidence,
        StartState left)
        implements Answer {

    public HeatAnswer {
        findings = List.copyOf(findings);
        sections = List.copyOf(sections);
    }

    @Override
    public String question() {
        return "heat";
    }
}
