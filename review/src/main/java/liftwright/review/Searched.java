package liftwright.review;

import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Section;

/**
 * What a search adds to an answer.
 *
 * @param findings with what is better as a remedy
 * @param sections tables
 */
record Searched(List<Finding> findings, List<Section> sections) {

    Searched {
        findings = List.copyOf(findings);
        sections = List.copyOf(sections);
    }
}
