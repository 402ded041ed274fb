package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** What a test measured, beside what was predicted for it. */
final class LearningFields {

    private static final String BANDS = "ReplayTest.bandsHoldWhatHealthyRigsOfARicherModelShow";
    private static final String EVENTS = "EventsTest.plantedEventsAreFound";
    private static final String ANSWER = "LearningTest.saysWhatIsMissingAndWhere";
    private static final String DRIVEN =
            "the rig run on the recorded throttle, in the recorded air, from the recorded start";
    private static final String STEPPED = "heat and charge stepped with the solved network";

    static final List<Field> ROWS =
            List.of(
                    read("log-thrust", "thrust", Measure.THRUST, "Thrust in a recording."),
                    read("log-scale", "scale", Measure.MASS, "What a scale showed."),
                    read("log-moment", "moment", Measure.MOMENT, "Turning moment of the whole."),
                    read("log-current", "current", Measure.CURRENT, "Current in a recording."),
                    read("log-voltage", "voltage", Measure.VOLTAGE, "Voltage in a recording."),
                    read("log-speed", "speed", Measure.ROTATION, "Speed of a rotor."),
                    read("log-temperature", "temperature", Measure.TEMPERATURE, "Of a part."),
                    read("log-charge", "charge used", Measure.CHARGE, "What a pack gave."),
                    read("log-share", "share", Measure.PERCENT, "A share in a recording."),
                    read("log-pressure", "pressure", Measure.PRESSURE, "Of the air."),
                    read("log-wind", "wind", Measure.SPEED, "Speed of the wind."),
                    read(
                            "off-temperature",
                            "off by",
                            Measure.TEMPERATURE_DIFFERENCE,
                            "Difference of temperatures."),
                    words("replayed-channel", "channel", "Name of a channel in the log."),
                    words(
                            "channel-standing",
                            "standing",
                            "Whether a channel stays within its band; from when on it does not."),
                    new Field(
                            "channel-inside",
                            "within band",
                            Measure.PERCENT,
                            "Share of the compared means that lie within their 95 % band.",
                            "blocks within the band over all blocks",
                            "by definition",
                            BANDS),
                    read(
                            "channel-bias",
                            "off by",
                            Measure.RATIO,
                            "Mean of measured less expected; unit of the channel."),
                    read(
                            "channel-scatter",
                            "scatter",
                            Measure.RATIO,
                            "Standard deviation of measured less expected about that mean."),
                    new Field(
                            "channel-correlation",
                            "follows itself",
                            Measure.RATIO,
                            "Correlation of each difference with the next: near 1 it drifts, near 0 it is noise.",
                            "Σ d(k) d(k+1) / Σ d(k)², d about its mean",
                            "by definition",
                            ANSWER),
                    words("happened", "what happened", "What happened, as the recording shows it."),
                    new Field(
                            "happened-at",
                            "time",
                            Measure.TIME,
                            "When it happened, on the clock of the recording.",
                            "first sample nearer to what came after than to what was before",
                            "by definition",
                            EVENTS),
                    words("happened-on", "seen on", "Channel that shows it."),
                    newtons(
                            "lift-promised",
                            "predicted",
                            "Lift predicted for the recorded throttle, as a mean over the time in which it is greatest."),
                    newtons("lift-measured", "measured", "Lift measured over the same time."),
                    newtons(
                            "lift-missing",
                            "missing",
                            "Lift predicted less lift measured; below nought where there is more."),
                    words("why-cause", "cause", "What may be wrong."),
                    cause(
                            "why-share",
                            "probability",
                            Measure.PERCENT,
                            "Probability that a cause is at work, given what was measured."),
                    cause(
                            "why-takes",
                            "takes",
                            Measure.THRUST,
                            "Lift that a cause takes, with what holds 90 % of its probability."),
                    words("why-size", "how large", "Size of a cause in its own unit."),
                    cause(
                            "why-evidence",
                            "evidence",
                            Measure.RATIO,
                            "Natural logarithm of how much more probable the readings are with the cause than without any."),
                    words("next-test", "next test", "A test that would tell more."),
                    words("next-tells", "tells apart", "What it would tell apart."),
                    cause(
                            "next-information",
                            "information",
                            Measure.RATIO,
                            "Expected information in nats, half the logarithm of the ratio of determinants."),
                    cause("next-time", "takes", Measure.TIME, "Time that the test takes."),
                    cause(
                            "next-risk",
                            "risk factor",
                            Measure.RATIO,
                            "Factor on its cost for what can go wrong: 1 where nothing turns."),
                    words("trend-part", "part", "Which part."),
                    words("trend-what", "what changes", "What it may wear by."),
                    trend("trend-first", "first", Measure.RATIO, "What the first test found."),
                    trend("trend-last", "last", Measure.RATIO, "What the last test found."),
                    trend("trend-found", "found", Measure.RATIO, "What a test found."),
                    trend("trend-month", "in 30 days", Measure.RATIO, "Slope of the line."),
                    trend(
                            "trend-limit",
                            "limit",
                            Measure.RATIO,
                            "Where what is counted as declared ends."),
                    trend("trend-ohm", "resistance", Measure.RESISTANCE, "Of a joint or fuse."),
                    trend(
                            "trend-share",
                            "departure",
                            Measure.PERCENT,
                            "How far a part is from what was declared, as a share of it."),
                    words("trend-meets", "meets its limit", "When the line meets the limit."),
                    words("trend-told", "told", "What may be said of it."));

    private LearningFields() {}

    private static Field read(String id, String label, Measure measure, String meaning) {
        return new Field(id, label, measure, meaning, DRIVEN, STEPPED, BANDS);
    }

    private static Field words(String id, String label, String meaning) {
        return new Field(id, label, Measure.COUNT, meaning, "words", "none", ANSWER);
    }

    private static Field newtons(String id, String label, String meaning) {
        return new Field(
                id,
                label,
                Measure.THRUST,
                meaning,
                "mean over the blocks with at least 80 % of the greatest predicted lift",
                STEPPED,
                ANSWER);
    }

    private static Field trend(String id, String label, Measure measure, String meaning) {
        return new Field(
                id,
                label,
                measure,
                meaning,
                "one size for each part and test, least squares of all tests together; a line"
                        + " through them with a scatter from test to test",
                "DerSimonian and Laird, random effects",
                "TrendSearchTest.namesTheJointThatRisesAndFewOthers");
    }

    private static Field cause(String id, String label, Measure measure, String meaning) {
        return new Field(
                id,
                label,
                measure,
                meaning,
                "one cause at a time in the driven plant, each with its probable sizes",
                "Bayes' theorem",
                ANSWER);
    }
}
