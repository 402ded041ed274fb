package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Columns of the logbook: tests, what their channels showed, packs, parts, incidents. */
final class LogbookFields {

    private static final String LISTED = "LogVerbTest.whatWasAddedIsListedAndShown";
    private static final String COMPARED = "LogVerbTest.twoTestsAreComparedStepByStep";
    private static final String LIFE = "PackLifeTest.resistancesAndTheRuleAreThoseOfAPlainLoop";
    private static final String INTERVAL = "PackLifeTest.theIntervalIsThatOfTheLawOfPropagation";
    private static final String PART = "LogVerbTest.partsAreInspectedAndPacksGrowOld";
    private static final String INCIDENT = "LogVerbTest.anIncidentFreezesItsLogs";
    private static final String FILE = "the logbook";
    private static final String SAMPLES = "the table of samples";
    private static final String COUNTED = "counted";
    private static final String ARRHENIUS =
            "Arrhenius form, Plett, Battery Management Systems 1, 2015 (from memory)";
    private static final String RULE = "the rule of the sheet; usual limits are common practice";

    static final List<Field> ROWS =
            List.of(
                    words("test", "test", "Name of a test: its day and number.", LISTED),
                    words("test-date", "date", "Day of a test.", LISTED),
                    words("test-card", "card", "The card that was run.", LISTED),
                    words(
                            "test-outcome",
                            "outcome",
                            "What was written down of the card on that day.",
                            LISTED),
                    row(
                            "test-lasts",
                            "lasts",
                            Measure.TIME,
                            "From the first sample to the last.",
                            "last time less first, on the clock of the test",
                            SAMPLES,
                            LISTED),
                    row(
                            "test-channels",
                            "channels",
                            Measure.COUNT,
                            "Channels that were recorded.",
                            COUNTED,
                            SAMPLES,
                            LISTED),
                    new Field(
                            "test-missing",
                            "missing lift",
                            Measure.THRUST,
                            "Lift predicted for the recorded throttle less lift measured, over the"
                                    + " time in which it is greatest; below nought where there is"
                                    + " more.",
                            "mean over the blocks with at least 80 % of the greatest predicted lift",
                            "the rig run on the recorded throttle, as explain does, by fewer draws",
                            "LogLiftTest.listsWhatExplainFinds"),
                    row(
                            "log-rows",
                            "rows",
                            Measure.COUNT,
                            "Rows that were taken.",
                            COUNTED,
                            SAMPLES,
                            LISTED),
                    row(
                            "rows-aside",
                            "set aside",
                            Measure.COUNT,
                            "Rows that were set aside, with a reason each.",
                            COUNTED,
                            "the file of rejected rows",
                            LISTED),
                    words("log-fact", "what", "What is told.", LISTED),
                    words("log-said", "as written", "As it stands in the logbook.", LISTED),
                    words("log-source", "file", "The file as it came.", LISTED),
                    row(
                            "clock-shift",
                            "clock shifted by",
                            Measure.TIME,
                            "Added to a file's own time to get that of the test.",
                            "greatest correlation with another file",
                            "reading of logs",
                            LISTED),
                    row(
                            "clock-confidence",
                            "confidence",
                            Measure.PERCENT,
                            "That the clocks were brought together rightly.",
                            "as found when the logs were read in",
                            "reading of logs",
                            LISTED),
                    words("clock-how", "aligned", "By what clocks were aligned.", LISTED),
                    words("channel", "channel", "What was measured, of what.", LISTED),
                    row(
                            "channel-samples",
                            "samples",
                            Measure.COUNT,
                            "Values of a channel.",
                            COUNTED,
                            SAMPLES,
                            LISTED),
                    words("channel-least", "least", "Least value of a channel.", LISTED),
                    words("channel-mean", "mean", "Mean of a channel's values.", LISTED),
                    words("channel-greatest", "greatest", "Greatest value of a channel.", LISTED),
                    words(
                            "channel-error",
                            "instrument ±",
                            "95 % of the instrument's errors are smaller.",
                            LISTED),
                    read("read-share", Measure.PERCENT),
                    read("read-force", Measure.THRUST),
                    read("read-mass", Measure.MASS),
                    read("read-moment", Measure.MOMENT),
                    read("read-current", Measure.CURRENT),
                    read("read-voltage", Measure.VOLTAGE),
                    read("read-rotation", Measure.ROTATION),
                    read("read-temperature", Measure.TEMPERATURE),
                    read("read-difference", Measure.TEMPERATURE_DIFFERENCE),
                    read("read-charge", Measure.CHARGE),
                    read("read-pressure", Measure.PRESSURE),
                    read("read-speed", Measure.SPEED),
                    words("changed-path", "path", "Path of what differs.", COMPARED),
                    words("in-first", "in the first", "As it was in the first test.", COMPARED),
                    words("in-second", "in the second", "As it was in the second.", COMPARED),
                    row(
                            "step-throttle",
                            "throttle",
                            Measure.PERCENT,
                            "Level of a step of throttle.",
                            "mean over the step",
                            SAMPLES,
                            COMPARED),
                    words("step-first", "first", "Mean over the step of the first test.", COMPARED),
                    words("step-second", "second", "Mean over that of the second.", COMPARED),
                    words(
                            "step-difference",
                            "second less first",
                            "Difference of the means, with its interval.",
                            COMPARED),
                    words(
                            "step-told",
                            "told",
                            "Whether the difference is more than doubt.",
                            COMPARED),
                    words("pack-row", "date", "Day of a row of a life sheet.", LIFE),
                    row(
                            "pack-resistance",
                            "resistance",
                            Measure.RESISTANCE,
                            "Of the whole pack, as measured.",
                            "as written",
                            FILE,
                            LIFE),
                    row(
                            "pack-temperature",
                            "at",
                            Measure.TEMPERATURE,
                            "Temperature of the cells at that.",
                            "as written",
                            FILE,
                            LIFE),
                    row(
                            "pack-resistance-25",
                            "at 25 °C",
                            Measure.RESISTANCE,
                            "The resistance brought to 25 °C.",
                            "R / exp(B (1/T − 1/298.15 K))",
                            ARRHENIUS,
                            INTERVAL),
                    row(
                            "pack-resistance-share",
                            "of new",
                            Measure.PERCENT,
                            "Resistance at 25 °C over that when new.",
                            "both at 25 °C, from the same draws",
                            ARRHENIUS,
                            LIFE),
                    row(
                            "pack-capacity",
                            "capacity",
                            Measure.CHARGE,
                            "Charge that it gave from full to empty.",
                            "as written",
                            FILE,
                            LIFE),
                    row(
                            "pack-capacity-share",
                            "of new",
                            Measure.PERCENT,
                            "Capacity over that when new.",
                            "both as written",
                            FILE,
                            LIFE),
                    row(
                            "pack-swelling",
                            "swelling",
                            Measure.PERCENT,
                            "Growth of its thickness since new.",
                            "as written",
                            FILE,
                            LIFE),
                    row(
                            "pack-stored",
                            "stored days",
                            Measure.COUNT,
                            "Days that it lay since the row before.",
                            "as written",
                            FILE,
                            LIFE),
                    row(
                            "pack-stored-at",
                            "at charge",
                            Measure.PERCENT,
                            "Charge at which it lay.",
                            "as written",
                            FILE,
                            LIFE),
                    words("pack-note", "seen", "Crash and notes of a row.", LIFE),
                    words("retire-kind", "what", "What a pack can go for.", LIFE),
                    words("retire-limit", "goes at", "Limit of the rule of retirement.", LIFE),
                    words("retire-found", "found", "What the last row that tells it says.", LIFE),
                    words("retire-outcome", "outcome", "Found against limit, " + RULE + ".", LIFE),
                    words("part-measured", "measured", "What was measured of a part.", PART),
                    words("part-found", "found", "As it was found.", PART),
                    words("part-declared", "declared", "As it should be.", PART),
                    words("part-told", "told", "Whether the two agree within their doubts.", PART),
                    words("inspection", "inspection", "Day, serial number, who, accepted.", PART),
                    row(
                            "event-time",
                            "time",
                            Measure.TIME,
                            "Of an event, on the clock of the incident.",
                            "time on its own clock and that clock's shift",
                            FILE,
                            INCIDENT),
                    words("event", "seen", "What was seen.", INCIDENT),
                    words("event-clock", "clock", "The clock it was read on.", INCIDENT),
                    words("incident-cause", "cause", "A cause that was thought of.", INCIDENT),
                    words("speaks-for", "for", "What was observed that it explains.", INCIDENT),
                    words(
                            "speaks-against",
                            "against",
                            "What was observed that it does not explain.",
                            INCIDENT));

    private LogbookFields() {}

    private static Field words(String id, String label, String meaning, String test) {
        return row(id, label, Measure.COUNT, meaning, "as written", FILE, test);
    }

    /** A number of a channel, by what it measures. */
    private static Field read(String id, Measure measure) {
        return row(
                id,
                "reading",
                measure,
                "Least, mean or greatest value of a channel, or its instrument's error.",
                "over all values of the channel, or of a step",
                SAMPLES,
                COMPARED);
    }

    private static Field row(
            String id,
            String label,
            Measure measure,
            String meaning,
            String formula,
            String source,
            String test) {
        return new Field(id, label, measure, meaning, formula, source, test);
    }
}
