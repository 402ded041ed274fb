package liftwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import liftwright.quantity.Measure;

/** What two revisions of a rig say beside each other. */
public final class CompareFields {

    private static final String DIFFERENCE =
            "ComparisonOnRandomRigsTest.bandsOfDifferencesAreThoseOfPairedDraws";
    private static final String SENSITIVE =
            "SensitivitiesOnRandomRigsTest.movesAreThoseOfWholeRecomputation";

    private static final String FILE = "FileChangesTest.whatChangedMakesTheSecondOfTheFirst";
    private static final String VERDICTS =
            "ComparisonOnRandomRigsTest.whatComesFirstIsWhichVerdictsChange";
    private static final String SAME = "the answers to both revisions";

    static final List<Field> ROWS = rows();

    private CompareFields() {}

    /** Field of a change of what is measured so. */
    public static String change(Measure measure) {
        return "change-" + measure.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static List<Field> rows() {
        List<Field> rows = new ArrayList<>();
        rows.add(
                words(
                        "file-place",
                        "place",
                        "Where in the rig file, with the ids of parts.",
                        FILE));
        rows.add(
                words(
                        "file-change",
                        "what became of it",
                        "Changed, added, removed, written otherwise, or in another order.",
                        FILE));
        rows.add(
                words(
                        "file-from",
                        "first file",
                        "What the first revision says there, in its own units.",
                        FILE));
        rows.add(
                words(
                        "file-to",
                        "second file",
                        "What the second revision says there, in its own units.",
                        FILE));
        rows.add(
                words(
                        "compared-question",
                        "question",
                        "Which question was put to both.",
                        VERDICTS));
        rows.add(words("verdict-before", "was", "What the first revision comes to.", VERDICTS));
        rows.add(words("verdict-after", "is", "What the second revision comes to.", VERDICTS));
        rows.add(words("compared-of", "of", "Part or line that the number belongs to.", VERDICTS));
        rows.add(words("compared-what", "what", "Which number of it.", VERDICTS));
        rows.add(
                words(
                        "compared-before",
                        "first",
                        "The number of the first revision, with its own band where it has one.",
                        VERDICTS));
        rows.add(
                words(
                        "compared-after",
                        "second",
                        "The number of the second revision, with its own band where it has one.",
                        VERDICTS));
        rows.add(
                words(
                        "compared-change",
                        "change",
                        "Second less first; its band is that of the differences draw by draw.",
                        DIFFERENCE));
        rows.add(
                words(
                        "sensitivity-input",
                        "declared value",
                        "A value of the rig file, or a default, that is in doubt.",
                        SENSITIVE));
        rows.add(
                words(
                        "sensitivity-low",
                        "lower end",
                        "The lower end of its 95 % band, as it would stand in the file.",
                        SENSITIVE));
        rows.add(
                words(
                        "sensitivity-high",
                        "upper end",
                        "The upper end of its 95 % band, as it would stand in the file.",
                        SENSITIVE));
        rows.add(
                new Field(
                        "sensitivity-share",
                        "share of the variance",
                        Measure.PERCENT,
                        "Share of the variance of the judged number that is due to this value alone; scatters about nought where it does nothing.",
                        "variance of the mean at a given value over the variance, from the draws of the verdict",
                        "[PLISCHKE13]",
                        "SensitivitiesOnRandomRigsTest.sharesAreThoseOfTheRefereesVariance"));
        for (Measure measure : Measure.values()) {
            rows.add(
                    new Field(
                            change(measure),
                            "change",
                            measure == Measure.TEMPERATURE
                                    ? Measure.TEMPERATURE_DIFFERENCE
                                    : measure,
                            "The number of the second revision less that of the first.",
                            "difference of both answers; band of the differences on the same draws",
                            "definition; JCGM 101, propagation of distributions",
                            DIFFERENCE));
        }
        return List.copyOf(rows);
    }

    private static Field words(String id, String label, String meaning, String test) {
        return new Field(id, label, Measure.COUNT, meaning, "as found", SAME, test);
    }
}
