package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Columns of timelines and shares, and what is played over time. */
final class TimelineFields {

    private static final String TIMELINE = "SectionsTest.aTimelineIsATableToo";
    private static final String SHARES = "SectionsTest.sharesAreThoseOfTheWhole";

    static final List<Field> ROWS =
            List.of(
                    new Field(
                            "limit-kind",
                            "limit of",
                            Measure.COUNT,
                            "Which limit of the part a bar is about.",
                            "named",
                            "the rig file and its limits",
                            TIMELINE),
                    new Field(
                            "time-to-limit",
                            "reached after",
                            Measure.TIME,
                            "Time from the start of the task until the part is at its limit.",
                            "root within a step",
                            "the run",
                            TIMELINE),
                    new Field(
                            "extreme",
                            "worst",
                            Measure.COUNT,
                            "The worst that the part came to, in the unit of its limit.",
                            "greatest or least over the run",
                            "the run",
                            TIMELINE),
                    new Field(
                            "limit",
                            "limit",
                            Measure.COUNT,
                            "What the worst is held against.",
                            "as declared",
                            "the rig file and its limits",
                            TIMELINE),
                    new Field(
                            "where",
                            "where",
                            Measure.COUNT,
                            "Where on the part, or when in the task, it is worst.",
                            "place of the greatest",
                            "the run",
                            TIMELINE),
                    new Field(
                            "what",
                            "what",
                            Measure.COUNT,
                            "What a row is about, in words.",
                            "named",
                            "the rig file",
                            SHARES),
                    new Field(
                            "share-of-whole",
                            "share",
                            Measure.PERCENT,
                            "Part of the whole.",
                            "amount over the whole",
                            "definition",
                            SHARES),
                    new Field(
                            "temperature",
                            "temperature",
                            Measure.TEMPERATURE,
                            "Temperature of a part.",
                            "heat made less heat given off, over heat capacity, step by step",
                            "balance of heat",
                            "SectionsTest.whatIsPlayedHasAValueAMoment"));

    private TimelineFields() {}
}
