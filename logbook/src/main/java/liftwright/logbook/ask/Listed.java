package liftwright.logbook.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.logbook.ask.LogbookAnswer.About;
import liftwright.logbook.entry.SampleTable;
import liftwright.logbook.entry.TestEntry;
import liftwright.logbook.store.Flaw;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.StoredTest;
import liftwright.trials.CardId;
import liftwright.trials.evidence.Pass;

/** The tests of a logbook, and whether it is as it was written. */
public final class Listed {

    private static final List<String> COLUMNS =
            List.of(
                    "test",
                    "test-date",
                    "test-card",
                    "test-outcome",
                    "test-lasts",
                    "test-channels",
                    "log-rows",
                    "rows-aside");

    private static final String MISSING = "test-missing";

    private Listed() {}

    /**
     * The list of tests.
     *
     * @param passes what came of cards
     */
    public static LogbookAnswer of(About about, Logbook.Listing listing, List<Pass> passes) {
        return of(about, listing, table(listing.tests(), passes));
    }

    /**
     * The list of tests with the lift that each lacks, in the last column: a program that counts
     * columns finds the others where they were.
     *
     * @param missing of each test, N, or why it is not told
     */
    public static LogbookAnswer of(
            About about,
            Logbook.Listing listing,
            List<Pass> passes,
            Function<StoredTest, Value.Figure> missing) {
        Section.Table plain = table(listing.tests(), passes);
        var columns = new ArrayList<>(plain.columns());
        columns.add(MISSING);
        var rows = new ArrayList<List<Value>>();
        for (int k = 0; k < plain.rows().size(); k++) {
            var row = new ArrayList<>(plain.rows().get(k));
            row.add(new Value(MISSING, missing.apply(listing.tests().get(k))));
            rows.add(row);
        }
        return of(about, listing, new Section.Table(plain.id(), plain.title(), columns, rows));
    }

    private static LogbookAnswer of(About about, Logbook.Listing listing, Section.Table table) {
        List<Flaw> flaws = listing.flaws();
        long serious = LogbookAnswer.serious(flaws);
        String tests = LogbookAnswer.counted(listing.tests().size(), "test", "tests");
        return LogbookAnswer.of(
                about,
                serious == 0 ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD,
                Sentence.words(
                        tests
                                + " in "
                                + about.folder()
                                + span(listing.tests())
                                + (serious == 0
                                        ? ", each listed as it was written"
                                        : "; "
                                                + LogbookAnswer.counted(
                                                        serious,
                                                        "thing is not as it was written",
                                                        "things are not as they were written"))),
                LogbookAnswer.findings(flaws),
                listing.tests().isEmpty() ? List.of() : List.of(table));
    }

    private static String span(List<StoredTest> tests) {
        return tests.isEmpty()
                ? ""
                : " from " + tests.getFirst().id().date() + " to " + tests.getLast().id().date();
    }

    /** Every file of the logbook held against its digest. */
    public static LogbookAnswer checked(About about, List<Flaw> flaws, int tests) {
        long serious = LogbookAnswer.serious(flaws);
        return LogbookAnswer.of(
                about,
                serious == 0 ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD,
                Sentence.words(
                        serious == 0
                                ? "every file of "
                                        + about.folder()
                                        + " is as it was written, "
                                        + LogbookAnswer.counted(tests, "test", "tests")
                                        + " among them"
                                : LogbookAnswer.counted(serious, "thing is", "things are")
                                        + " not as written in "
                                        + about.folder()),
                LogbookAnswer.findings(flaws),
                List.of());
    }

    /** Tests as a table, a row each; also what the page lists. */
    public static Section.Table table(List<StoredTest> tests, List<Pass> passes) {
        var rows = new ArrayList<List<Value>>();
        for (StoredTest test : tests) {
            rows.add(row(test, passes));
        }
        return new Section.Table("tests", "Tests", COLUMNS, rows);
    }

    private static List<Value> row(StoredTest test, List<Pass> passes) {
        TestEntry entry = test.entry();
        return List.of(
                Value.words("test", test.id().text()),
                Value.words("test-date", entry.date().toString()),
                Value.words("test-card", entry.card().map(CardId::text).orElse("")),
                Value.words("test-outcome", outcome(entry, passes)),
                Value.of("test-lasts", lastsS(entry)),
                Value.of(
                        "test-channels",
                        entry.tables().stream().mapToInt(t -> t.channels().size()).sum()),
                Value.of(
                        "log-rows",
                        (double) entry.tables().stream().mapToLong(SampleTable::rows).sum()),
                Value.of(
                        "rows-aside",
                        (double)
                                entry.tables().stream()
                                        .mapToLong(SampleTable::rowsRejected)
                                        .sum()));
    }

    /** What was written down of the test's card on its day. */
    static String outcome(TestEntry entry, List<Pass> passes) {
        return passes.stream()
                .filter(pass -> entry.card().filter(pass.card()::equals).isPresent())
                .filter(pass -> pass.on().equals(entry.date()))
                .map(pass -> pass.outcome().word())
                .distinct()
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
    }

    /** From the first sample of any table to the last, on the clock of the test, s. */
    static double lastsS(TestEntry entry) {
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        for (SampleTable table : entry.tables()) {
            first = Math.min(first, table.firstS() + table.clock().shiftS());
            last = Math.max(last, table.lastS() + table.clock().shiftS());
        }
        return Math.max(0, last - first);
    }
}
