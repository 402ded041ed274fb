package liftwright.rig.guide;

import java.util.List;
import java.util.Optional;

/**
 * One thing that is asked.
 *
 * @param key its name among the answers
 * @param label what it is called
 * @param help how to find the value, in a sentence
 * @param kind how it is answered
 * @param choices what can be chosen; empty for other kinds
 * @param value the answer, or what stands there until it is answered
 * @param answered whether it was answered; else the value is a placeholder
 * @param problem what is wrong with the answer, a sentence
 */
public record GuideField(
        String key,
        String label,
        String help,
        Kind kind,
        List<Choice> choices,
        String value,
        boolean answered,
        Optional<String> problem) {

    /** How a field is answered. */
    public enum Kind {
        TEXT,
        QUANTITY,
        COUNT,
        CHOICE
    }

    /**
     * One of several answers.
     *
     * @param value as answered
     * @param label as shown
     */
    public record Choice(String value, String label) {}

    public GuideField {
        choices = List.copyOf(choices);
    }

    GuideField with(String sentence) {
        return problem.isPresent()
                ? this
                : new GuideField(
                        key, label, help, kind, choices, value, answered, Optional.of(sentence));
    }
}
