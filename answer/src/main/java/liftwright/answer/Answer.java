package liftwright.answer;

import java.util.List;

/**
 * What a question returns. Each room that answers questions implements it with its own closed
 * family of records; the JSON writer and every report read only what is declared here.
 */
public interface Answer {

    /** One word, the verb's argument and the schema's name: {@code lift}. */
    String question();

    Verdict verdict();

    /** Worst first. */
    List<Finding> findings();

    /** Pictures and tables, as data, in reading order. */
    List<Section> sections();

    Evidence evidence();

    /** All remedies in the order of the findings: the first is number 1 wherever one is named. */
    default List<Remedy> remedies() {
        return findings().stream().flatMap(finding -> finding.remedies().stream()).toList();
    }
}
