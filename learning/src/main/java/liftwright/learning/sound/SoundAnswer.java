package liftwright.learning.sound;

import java.util.List;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Verdict;

/** The answer to "what did every fan turn, and did all keep turning?". */
public record SoundAnswer(
        Verdict verdict, List<Finding> findings, List<Section> sections, Evidence evidence)
        implements Answer {

    public SoundAnswer {
        findings = List.copyOf(findings);
        sections = List.copyOf(sections);
    }

    @Override
    public String question() {
        return "sound";
    }
}
