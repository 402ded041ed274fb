package liftwright.app;

import liftwright.answer.Answer;
import liftwright.answer.Section;
import liftwright.answer.Value;

/** What an answer shows, for tests. */
final class Shown {

    private Shown() {}

    static Section.Table table(Answer answer, String id) {
        return answer.sections().stream()
                .filter(section -> section.id().equals(id))
                .map(Section.Table.class::cast)
                .findFirst()
                .orElseThrow();
    }

    /** Infinite for what never happens. */
    static double si(Value value) {
        return value.figure() instanceof Value.Figure.Amount(double si, var _)
                ? si
                : Double.POSITIVE_INFINITY;
    }
}
