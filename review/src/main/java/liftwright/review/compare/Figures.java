package liftwright.review.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.answer.Answer;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.answer.Value.Figure;

/**
 * Every figure of an answer by its place. Pictures whose numbers stand in a table too (drawings,
 * curves, what is played) are left out.
 */
final class Figures {

    private final Map<Place, Value> byPlace = new LinkedHashMap<>();

    private Figures() {}

    static Map<Place, Value> of(Answer answer) {
        var figures = new Figures();
        answer.sections().forEach(figures::section);
        return figures.byPlace;
    }

    private void section(Section section) {
        switch (section) {
            case Section.Table table -> table(table);
            case Section.Timeline timeline -> table(timeline.table());
            case Section.Shares shares -> table(shares.table());
            case Section.Matrix matrix -> table(matrix.table());
            case Section.Waterfall waterfall -> {
                step(waterfall, waterfall.start());
                waterfall.steps().forEach(step -> step(waterfall, step));
                step(waterfall, waterfall.end());
                step(waterfall, waterfall.against());
            }
            case Section.Elevation _,
                    Section.Drawing _,
                    Section.Plot _,
                    Section.Playback _,
                    Section.Cases _,
                    Section.Card _,
                    Section.Strips _ -> {}
        }
    }

    private void step(Section of, Section.Waterfall.Step step) {
        put(of.id(), step.label(), step.value().field(), step.value());
    }

    /** A row is known by the words that it begins with. */
    private void table(Section.Table table) {
        for (List<Value> row : table.rows()) {
            int words = 0;
            var name = new StringBuilder();
            while (words < row.size()
                    && row.get(words).figure() instanceof Figure.Words(var text)) {
                name.append(words == 0 || text.isEmpty() ? "" : ", ").append(text);
                words++;
            }
            for (int k = words; k < row.size(); k++) {
                put(table.id(), name.toString(), table.columns().get(k), row.get(k));
            }
        }
    }

    private void put(String section, String row, String column, Value value) {
        int nth = 0;
        while (byPlace.containsKey(new Place(section, row, column, nth))) {
            nth++;
        }
        byPlace.put(new Place(section, row, column, nth), value);
    }
}
