package liftwright.trials.day;

import java.util.List;
import java.util.OptionalDouble;
import liftwright.answer.Answer;
import liftwright.answer.Section;
import liftwright.answer.Value;

/** The least pause between flights, from the answer of the review of heat. */
public final class HeatWait {

    private static final String TABLE = "waits";
    private static final String FIELD = "wait";

    private HeatWait() {}

    /**
     * The longest wait that the answer tells, on the same packs or fresh ones, s; empty where it
     * tells none.
     */
    public static OptionalDouble of(Answer heat) {
        return heat.sections().stream()
                .filter(
                        section ->
                                section instanceof Section.Table table && table.id().equals(TABLE))
                .flatMap(section -> ((Section.Table) section).rows().stream())
                .flatMap(List::stream)
                .filter(value -> value.field().equals(FIELD))
                .filter(value -> value.figure() instanceof Value.Figure.Amount)
                .mapToDouble(value -> ((Value.Figure.Amount) value.figure()).si())
                .max();
    }
}
