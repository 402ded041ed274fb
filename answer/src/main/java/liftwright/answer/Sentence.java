package liftwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;

/**
 * Words with amounts among them. Amounts stay numbers until a report writes them, so that one
 * answer can be read in either system of units.
 *
 * @param parts in reading order
 */
public record Sentence(List<Part> parts) {

    public Sentence {
        parts = List.copyOf(parts);
    }

    /** One part of it. */
    public sealed interface Part {
        record Words(String text) implements Part {}

        /**
         * @param measure decides unit and rounding
         * @param si SI, finite
         * @param band written after the amount where present
         */
        record Amount(Measure measure, double si, Optional<Band> band) implements Part {}
    }

    public static Sentence words(String text) {
        return new Sentence(List.of(new Part.Words(text)));
    }

    public static Sentence start() {
        return new Sentence(List.of());
    }

    public Sentence then(String text) {
        return with(new Part.Words(text));
    }

    public Sentence then(Measure measure, double si) {
        return with(new Part.Amount(measure, si, Optional.empty()));
    }

    public Sentence then(Measure measure, double si, Band band) {
        return with(new Part.Amount(measure, si, Optional.of(band)));
    }

    /** The same, where there may be none. */
    public Sentence then(Measure measure, double si, Optional<Band> band) {
        return with(new Part.Amount(measure, si, band));
    }

    public Sentence then(Sentence other) {
        List<Part> longer = new ArrayList<>(parts);
        longer.addAll(other.parts);
        return new Sentence(longer);
    }

    private Sentence with(Part part) {
        List<Part> longer = new ArrayList<>(parts);
        longer.add(part);
        return new Sentence(longer);
    }
}
