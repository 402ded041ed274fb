package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Rows of one fan on a stand. */
final class BenchFields {

    private static final String ROWS_SOURCE = "the bench table";
    private static final String FIT = "weighted least squares, docs/explanation/fitting-a-fan.md";
    private static final String TOLD = "BenchQuestionTest.theTablesRepeatTheRows";
    private static final String LEFT = "BenchQuestionTest.theFitFindsTheFanBehindTheRows";
    private static final String LOT = "BenchQuestionTest.singleFansStandBesideTheirMean";

    static final List<Field> ROWS =
            List.of(
                    words("bench-what", "value", "What the rows tell about a fan.", FIT, LEFT),
                    new Field(
                            "bench-coefficient",
                            "from the rows",
                            Measure.RATIO,
                            "A coefficient of the fan in still air of 1.225 kg/m3, in the unit named beside it.",
                            "T = k_T w^2, Q = k_Q w^2, d V = R I + w/K_v, (I - I_0)/K_v = Q",
                            FIT,
                            LEFT),
                    words("bench-unit", "unit", "SI unit of a coefficient.", "SI", LEFT),
                    words(
                            "bench-origin",
                            "rests on",
                            "Whether rows tell a coefficient, or it is still what was assumed.",
                            FIT,
                            LEFT),
                    new Field(
                            "bench-declared",
                            "declared",
                            Measure.RATIO,
                            "A declared value of the fan, SI.",
                            "as declared",
                            "the rig file",
                            "BenchQuestionTest.whatIsDeclaredStandsBesideWhatIsFound"),
                    new Field(
                            "bench-difference",
                            "difference",
                            Measure.PERCENT,
                            "What the rows say over what is declared, less one.",
                            "found / declared - 1",
                            FIT,
                            "BenchQuestionTest.whatIsDeclaredStandsBesideWhatIsFound"),
                    new Field(
                            "bench-line",
                            "line",
                            Measure.COUNT,
                            "Line of the table, from 1.",
                            "counted",
                            ROWS_SOURCE,
                            TOLD),
                    new Field(
                            "bench-speed",
                            "speed",
                            Measure.ROTATION,
                            "Speed of the rotor as read.",
                            "as measured",
                            ROWS_SOURCE,
                            TOLD),
                    new Field(
                            "bench-thrust",
                            "thrust",
                            Measure.THRUST,
                            "Thrust on the stand as read; in a plot brought to 1.225 kg/m3.",
                            "as measured; in a plot over density / 1.225 kg/m3",
                            ROWS_SOURCE,
                            TOLD),
                    left("thrust"),
                    left("current"),
                    left("torque"),
                    left("speed"),
                    new Field(
                            "bench-ideal",
                            "ideal power",
                            Measure.PERCENT,
                            "Share of a row's power that its thrust alone needs: electrical power, or of the shaft where only that is told.",
                            "T^1.5 / sqrt(4 rho A_e) / power",
                            "momentum theory of the ducted fan",
                            "BenchQuestionTest.aRowThatNeedsMoreThanItsPowerStops"),
                    words("bench-remark", "remark", "What is special about a row.", FIT, LEFT),
                    words("bench-fan", "fan", "A single fan.", ROWS_SOURCE, LOT),
                    new Field(
                            "bench-rows",
                            "rows",
                            Measure.COUNT,
                            "How many rows are of this fan.",
                            "counted",
                            ROWS_SOURCE,
                            LOT),
                    new Field(
                            "bench-fan-thrust",
                            "thrust of mean",
                            Measure.PERCENT,
                            "Thrust of a single fan over the mean of the table at equal speed.",
                            "1 + mean of what the fit leaves of its rows",
                            FIT,
                            LOT),
                    new Field(
                            "bench-fan-current",
                            "current of mean",
                            Measure.PERCENT,
                            "Current of a single fan over the mean of the table at equal speed.",
                            "1 + mean of what the fit leaves of its rows",
                            FIT,
                            LOT));

    private BenchFields() {}

    private static Field words(
            String id, String label, String meaning, String source, String test) {
        return new Field(id, label, Measure.COUNT, meaning, "in words", source, test);
    }

    private static Field left(String of) {
        return new Field(
                "bench-left-" + of,
                of + " left",
                Measure.PERCENT,
                "What the fit leaves of a row's " + of + ": measured over expected, less one.",
                "measured / expected - 1",
                FIT,
                LEFT);
    }
}
