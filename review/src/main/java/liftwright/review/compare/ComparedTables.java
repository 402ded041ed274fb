package liftwright.review.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Answer;
import liftwright.answer.CompareFields;
import liftwright.answer.Fields;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.answer.Value.Figure;
import liftwright.quantity.Band;
import org.jspecify.annotations.Nullable;

/**
 * What differs between the figures of two answers to one question: a table for each section that
 * has something, a row a figure.
 */
final class ComparedTables {

    private static final List<String> COLUMNS =
            List.of(
                    "compared-of",
                    "compared-what",
                    "compared-before",
                    "compared-after",
                    "compared-change");

    /** What two solutions of the same equations may differ by, relative. */
    private static final double SAME = 1e-9;

    private final String question;
    private final Answer before;
    private final Answer after;
    private final Map<Place, Value> was;
    private final Map<Place, Value> is;

    ComparedTables(String question, Answer before, Answer after) {
        this.question = question;
        this.before = before;
        this.after = after;
        was = Figures.of(before);
        is = Figures.of(after);
    }

    /** Numbers that both have and that differ. */
    List<Place> changed() {
        return was.keySet().stream().filter(place -> change(place).isPresent()).toList();
    }

    private Optional<Change> change(Place place) {
        Value from = was.get(place);
        Value to = is.get(place);
        if (from == null || to == null || !from.field().equals(to.field())) {
            return Optional.empty();
        }
        return from.figure() instanceof Figure.Amount(double a, var _)
                        && to.figure() instanceof Figure.Amount(double b, var _)
                        && Math.abs(b - a) > SAME * Math.max(Math.abs(a), Math.abs(b))
                ? Optional.of(
                        new Change(CompareFields.change(Fields.of(from.field()).measure()), b - a))
                : Optional.empty();
    }

    /**
     * Second less first.
     *
     * @param field of a change of that measure
     * @param si of it
     */
    private record Change(String field, double si) {

        /** What is the same in every draw has no band to be told. */
        Value with(Optional<Band> band) {
            return Value.of(field, si, band.filter(b -> b.high() - b.low() > SAME * Math.abs(si)));
        }
    }

    /** How many numbers stand in both and are the same. */
    int same() {
        int same = 0;
        for (Place place : was.keySet()) {
            same += is.containsKey(place) && !differs(place) ? 1 : 0;
        }
        return same;
    }

    private boolean differs(Place place) {
        Value from = was.get(place);
        Value to = is.get(place);
        if (from == null || to == null) {
            return true;
        }
        boolean numbers =
                from.figure() instanceof Figure.Amount
                        && to.figure() instanceof Figure.Amount
                        && from.field().equals(to.field());
        return numbers
                ? change(place).isPresent()
                : !(from.field().equals(to.field()) && from.figure().equals(to.figure()));
    }

    /**
     * @param paired differences draw by draw; empty where none were made
     */
    List<Section> sections(Optional<Paired> paired) {
        Map<String, List<List<Value>>> rows = new LinkedHashMap<>();
        Set<Place> all = new LinkedHashSet<>(was.keySet());
        all.addAll(is.keySet());
        for (Place place : all) {
            if (differs(place)) {
                rows.computeIfAbsent(place.section(), _ -> new ArrayList<>())
                        .add(row(place, paired.flatMap(drawn -> drawn.band(place))));
            }
        }
        List<Section> sections = new ArrayList<>();
        rows.forEach(
                (id, lines) ->
                        sections.add(
                                new Section.Table(
                                        "compared-" + question + "-" + id,
                                        question + ": " + title(id),
                                        COLUMNS,
                                        lines)));
        return sections;
    }

    private List<Value> row(Place place, Optional<Band> band) {
        return List.of(
                Value.words("compared-of", place.row()),
                Value.words("compared-what", Fields.of(place.column()).label()),
                shown("compared-before", was.get(place)),
                shown("compared-after", is.get(place)),
                change(place)
                        .map(change -> change.with(band))
                        .orElseGet(() -> Value.words("compared-change", "")));
    }

    private static Value shown(String column, @Nullable Value value) {
        return value == null ? Value.words(column, "not there") : value;
    }

    private String title(String id) {
        for (Answer answer : List.of(before, after)) {
            for (Section section : answer.sections()) {
                if (section.id().equals(id)) {
                    return section.title();
                }
            }
        }
        return id;
    }
}
