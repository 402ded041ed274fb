package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.review.cause.Attribution;
import liftwright.rig.table.TurningTable.Axis;

/** What measured turning says of its causes, as it is told. */
public final class MeasuredTurning {

    /** A cause above this share is worth a finding. */
    private static final double LIKELY = 0.5;

    private MeasuredTurning() {}

    /** Tables: causes, what is not told apart, row by row. */
    public static List<Section> sections(Attribution told) {
        List<Section> sections = new ArrayList<>();
        sections.add(causes(told));
        if (!told.unlike().isEmpty()) {
            sections.add(pairs(told));
        }
        sections.add(rows(told));
        return sections;
    }

    private static Section causes(Attribution told) {
        List<List<Value>> rows = new ArrayList<>();
        for (Attribution.Ranked each : told.ranked()) {
            rows.add(
                    List.of(
                            Value.words("measured-cause", each.blame().words()),
                            Value.of("cause-probability", each.probability()),
                            Value.words("cause-place", words(each.place())),
                            Value.words("cause-size", words(each.size()))));
        }
        return new Section.Table(
                "measured-causes",
                "What explains the turning that was measured",
                List.of("measured-cause", "cause-probability", "cause-place", "cause-size"),
                rows);
    }

    private static String words(String text) {
        return text.isEmpty() ? "–" : text;
    }

    private static Section pairs(Attribution told) {
        List<List<Value>> rows = new ArrayList<>();
        for (Attribution.Inseparable pair : told.unlike()) {
            List<Value> row = new ArrayList<>();
            row.add(Value.words("cause-or", pair.other().blame().words()));
            if (pair.swap().isPresent()) {
                Attribution.Told swap = pair.swap().get();
                row.add(Value.words("separating-swap", swap.words()));
                row.add(Value.words("axis", turn(swap.axis()).word()));
                row.add(
                        Value.of(
                                "if-first",
                                swap.firstRadps2(),
                                band(swap.firstRadps2(), swap.doubtRadps2())));
                row.add(
                        Value.of(
                                "if-other",
                                swap.otherRadps2(),
                                band(swap.otherRadps2(), swap.doubtRadps2())));
                row.add(Value.of("swap-deviations", swap.deviations()));
            } else {
                row.add(Value.words("separating-swap", "none of the swaps tried"));
                row.add(Value.words("axis", "–"));
                for (String field : List.of("if-first", "if-other", "swap-deviations")) {
                    row.add(new Value(field, new Value.Figure.NotComputed("no swap")));
                }
            }
            rows.add(row);
        }
        return new Section.Table(
                "inseparable-causes",
                "Not told apart from the first, and the swap that would",
                List.of(
                        "cause-or",
                        "separating-swap",
                        "axis",
                        "if-first",
                        "if-other",
                        "swap-deviations"),
                rows);
    }

    private static Section rows(Attribution told) {
        List<List<Value>> rows = new ArrayList<>();
        for (Attribution.Row each : told.rows()) {
            double measured = each.rate().radps2();
            rows.add(
                    List.of(
                            Value.of("table-line", each.line()),
                            Value.words("axis", turn(each.rate().axis()).word()),
                            Value.of(
                                    "measured-turning",
                                    measured,
                                    band(measured, each.rate().doubtRadps2())),
                            Value.of(
                                    "declared-turning",
                                    Rounding.off(each.declaredRadps2(), Rounding.RADPS2),
                                    band(each.declaredRadps2(), each.declaredDoubt())),
                            Value.of(
                                    "explained-turning",
                                    Rounding.off(each.explainedRadps2(), Rounding.RADPS2))));
        }
        return new Section.Table(
                "measured-rows",
                "Measured, declared, and with the first cause",
                List.of(
                        "table-line",
                        "axis",
                        "measured-turning",
                        "declared-turning",
                        "explained-turning"),
                rows);
    }

    private static Band band(double middle, double half) {
        return new Band(
                middle - half, middle + half, 0.95, "normal, from the model of one cause", 1, 0);
    }

    private static Turn turn(Axis axis) {
        return switch (axis) {
            case ROLL -> Turn.ROLL;
            case PITCH -> Turn.PITCH;
            case YAW -> Turn.YAW;
        };
    }

    /** The likeliest cause, and what is not told apart from it. */
    public static List<Finding> findings(Attribution told) {
        List<Finding> findings = new ArrayList<>();
        Attribution.Ranked first = told.ranked().getFirst();
        Sentence sentence =
                Sentence.words(
                                "what was measured is best explained by "
                                        + first.blame().words()
                                        + (first.place().isEmpty() ? "" : ", " + first.place())
                                        + (first.size().isEmpty() ? "" : ", " + first.size())
                                        + ": ")
                        .then(Measure.PERCENT, first.probability())
                        .then(first.probability() < LIKELY ? ", which settles nothing" : "");
        findings.add(
                Finding.of(
                        Severity.NOTES,
                        "turning-explained",
                        sentence,
                        "Bayes factors of one cause at a time on the same model; see the table"));
        for (Attribution.Inseparable pair : told.unlike()) {
            findings.add(
                    Finding.of(
                            Severity.NOTES,
                            "causes-inseparable",
                            Sentence.words(
                                    "this does not tell "
                                            + pair.first().blame().words()
                                            + " from "
                                            + pair.other().blame().words()),
                            pair.swap()
                                    .map(swap -> "to tell them apart: " + swap.words())
                                    .orElse("none of the swaps tried tells them apart")));
        }
        return findings;
    }

    /** What the ranking rests on. */
    public static List<Evidence.Assumption> assumptions() {
        return List.of(
                new Evidence.Assumption(
                        "sizes of faults",
                        "every octave as likely, from the declared ± (or from fan 3 %, seat and jet in its"
                                + " fan 0.5°, mount 0.25°, joint 2°, centre 3 mm) to fan 100 %, seat 16°,"
                                + " jet in its fan 2°, mount 8°, joint 32°, centre 100 mm",
                        "from memory"),
                new Evidence.Assumption(
                        "what the model leaves out",
                        "moments of 0.1 % of thrust × arm in all rows, 0.08 % anew in each; inertia ± 6 %;"
                                + " 4 % of an effect; centre of mass ± 6 mm; what jets give ± 40 %; any"
                                + " part of how arms were held the same in all rows",
                        "from memory"));
    }
}
