package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** Columns of tables that name things instead of measuring them. */
final class NameFields {

    private static final String FILE = "the rig file";
    private static final String TEST = "AnswerJsonTest.wordsAreWrittenAsWords";

    static final List<Field> ROWS =
            List.of(
                    new Field(
                            "part",
                            "part",
                            Measure.COUNT,
                            "Id of a part.",
                            "as declared, or generated from its group's",
                            FILE,
                            TEST),
                    new Field(
                            "count",
                            "number",
                            Measure.COUNT,
                            "How many of them.",
                            "counted",
                            FILE,
                            TEST),
                    new Field(
                            "input",
                            "input",
                            Measure.COUNT,
                            "Path of a declared value.",
                            "as declared",
                            FILE,
                            TEST),
                    new Field(
                            "band-share",
                            "band with half its doubt",
                            Measure.PERCENT,
                            "Width of the verdict's band with one doubt halved, over its width now.",
                            "both widths from the same draws",
                            "definition",
                            TEST));

    private NameFields() {}
}
