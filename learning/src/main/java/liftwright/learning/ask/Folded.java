package liftwright.learning.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;

/**
 * A list of findings that is short enough to be read: the worst first, what stops always, and what
 * also stands in a table folded to one line beyond the first few.
 */
final class Folded {

    /** So many are told in full, what stops not counted. */
    static final int MOST = 6;

    private Folded() {}

    /**
     * @param found in the order in which they are told, the worst first
     */
    static List<Finding> of(List<Finding> found) {
        List<Finding> told = new ArrayList<>();
        Map<String, Integer> folded = new LinkedHashMap<>();
        int full = 0;
        for (Finding one : found) {
            if (one.severity() == Severity.STOPS || !standsInTable(one) || full < MOST) {
                told.add(one);
                full += one.severity() == Severity.STOPS ? 0 : 1;
            } else {
                folded.merge(kind(one), 1, Integer::sum);
            }
        }
        if (!folded.isEmpty()) {
            told.add(line(folded));
        }
        return told;
    }

    /** Nothing is folded that is told nowhere else. */
    private static boolean standsInTable(Finding one) {
        return one.code().startsWith("event-") || one.code().startsWith("channel");
    }

    private static String kind(Finding one) {
        return one.code().startsWith("event-")
                ? "what happened"
                : one.code().equals("channel-not-predicted")
                        ? "channels that are not predicted"
                        : "channels outside their bands or late";
    }

    private static Finding line(Map<String, Integer> folded) {
        int all = folded.values().stream().mapToInt(Integer::intValue).sum();
        return Finding.of(
                Severity.NOTES,
                "findings-folded",
                Sentence.words(
                        all
                                + " more of less weight: "
                                + folded.entrySet().stream()
                                        .map(kind -> kind.getKey() + " (" + kind.getValue() + ")")
                                        .collect(Collectors.joining(", "))),
                "the tables of what happened and of channels have them all");
    }
}
