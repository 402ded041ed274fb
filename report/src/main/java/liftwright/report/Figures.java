package liftwright.report;

import java.util.stream.Collectors;
import liftwright.answer.Fields;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.quantity.QuantityFormat;

/** Values and sentences as text in the reader's units. */
public final class Figures {

    private final QuantityFormat format;

    /** For a reader. */
    public Figures(Look look) {
        this.format = new QuantityFormat(look.units(), look.ascii());
    }

    /** With its band where it has one. */
    public String value(Value value) {
        return switch (value.figure()) {
            case Value.Figure.Amount amount ->
                    amount.band()
                            .map(band -> format.amountWithBand(measure(value), amount.si(), band))
                            .orElseGet(() -> format.amount(measure(value), amount.si()));
            case Value.Figure.Words words -> words.text();
            case Value.Figure.Never _ -> "never";
            case Value.Figure.NotComputed not -> "not computed: " + not.reason();
        };
    }

    /** Without its band. */
    public String bare(Value value) {
        return value.figure() instanceof Value.Figure.Amount amount
                ? amount.band()
                        .map(band -> format.amount(measure(value), amount.si(), band))
                        .orElseGet(() -> format.amount(measure(value), amount.si()))
                : value(value);
    }

    /** A change of something: with its sign, also when it is positive. */
    public String signed(Value value) {
        return value.figure() instanceof Value.Figure.Amount amount && amount.si() > 0
                ? "+" + value(value)
                : value(value);
    }

    /**
     * Without its band, to the digits that make sense beside a number of {@code sizeSi}: whole
     * newtons beside thousands of them.
     */
    public String beside(double sizeSi, Value value) {
        if (!(value.figure() instanceof Value.Figure.Amount amount)) {
            return value(value);
        }
        double step = Math.abs(sizeSi) / 300;
        var digits =
                new Band(
                        amount.si() - step,
                        amount.si() + step,
                        1,
                        "rounding beside larger numbers",
                        0,
                        0);
        return format.amount(measure(value), amount.si(), digits);
    }

    /** The same of a change: with its sign, also when it is positive. */
    public String signedBeside(double sizeSi, Value value) {
        return value.figure() instanceof Value.Figure.Amount amount && amount.si() > 0
                ? "+" + beside(sizeSi, value)
                : beside(sizeSi, value);
    }

    /** The band alone, in brackets; empty where there is none, or none that can be seen. */
    public String band(Value value) {
        return value.figure() instanceof Value.Figure.Amount amount
                ? amount.band()
                        .map(band -> format.band(measure(value), amount.si(), band))
                        .filter(ends -> !ends.isEmpty())
                        .map(ends -> "(" + ends + ")")
                        .orElse("")
                : "";
    }

    /** When a limit of a timeline is reached; for one that is not, how long was looked. */
    public String when(Section.Timeline timeline, Value at) {
        return switch (at.figure()) {
            case Value.Figure.Amount _ -> bare(at);
            case Value.Figure.Words words -> words.text();
            case Value.Figure.Never _, Value.Figure.NotComputed _ ->
                    "not within " + bare(Value.of(Section.Timeline.TIME, timeline.horizonS()));
        };
    }

    /** Why it cannot be told whether a limit is reached later; empty where it can. */
    public static String unsettled(Value at) {
        return at.figure() instanceof Value.Figure.NotComputed(String reason) ? reason : "";
    }

    /** What was come to, and of what: {@code 98 °C of 85 °C}. */
    public String against(Value worst, Value limit) {
        return worst.figure() instanceof Value.Figure.Amount
                ? bare(worst) + " of " + bare(limit)
                : bare(worst);
    }

    /** With its amounts in the reader's units. */
    public String sentence(Sentence sentence) {
        return sentence.parts().stream().map(this::part).collect(Collectors.joining());
    }

    /** What the number is called. */
    public static String label(Value value) {
        return Fields.of(value.field()).label();
    }

    /** Whether a sentence already gives the number. */
    public static boolean says(Sentence sentence, Value value) {
        return value.figure() instanceof Value.Figure.Amount judged
                && sentence.parts().stream()
                        .anyMatch(
                                part ->
                                        part instanceof Sentence.Part.Amount said
                                                && Double.compare(said.si(), judged.si()) == 0);
    }

    private String part(Sentence.Part part) {
        return switch (part) {
            case Sentence.Part.Words words -> words.text();
            case Sentence.Part.Amount amount ->
                    amount.band()
                            .map(band -> format.amountWithBand(amount.measure(), amount.si(), band))
                            .orElseGet(() -> format.amount(amount.measure(), amount.si()));
        };
    }

    private static Measure measure(Value value) {
        return Fields.of(value.field()).measure();
    }
}
