package liftwright.app.bay;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;
import liftwright.learning.LearningAnswer;
import liftwright.logbook.ask.Listed;
import liftwright.logbook.store.Flaw;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.StoredTest;
import liftwright.numerics.Work;
import liftwright.review.Stage;
import liftwright.review.Staged;
import liftwright.trials.evidence.Pass;

/**
 * What stands in the logbook of a rig, the newest test first, and what was learned of that one so
 * far. What a test taught does not change with the rig: a test keeps the rig that it was made with.
 *
 * @param logbook of the rig
 * @param passes of its cards
 * @param learned what tests taught
 * @param digest of the rig as it stands
 */
record StagedLearning(Logbook logbook, List<Pass> passes, Learned learned, String digest)
        implements Staged {

    @Override
    public Optional<? extends Answer> answer(Stage stage, Work work) {
        return work.stopped() ? Optional.empty() : Optional.of(listed());
    }

    /** The list, as it is now. */
    LearningAnswer listed() {
        Logbook.Listing listing = Logbooks.fromDisk(logbook::listing);
        List<StoredTest> tests = listing.tests().reversed();
        return new LearningAnswer(
                verdict(listing, tests),
                List.of(),
                tests.isEmpty() ? List.of() : List.<Section>of(Listed.table(tests, passes)),
                evidence());
    }

    private Verdict verdict(Logbook.Listing listing, List<StoredTest> tests) {
        List<String> spoilt =
                listing.flaws().stream()
                        .filter(flaw -> !flaw.isHarmless())
                        .map(StagedLearning::words)
                        .toList();
        Optional<Answer> last =
                tests.isEmpty() ? Optional.empty() : learned.of(tests.getFirst().digest());
        return new Verdict(
                last.map(answer -> answer.verdict().outcome()).orElse(Outcome.CANNOT_BE_TOLD),
                last.map(answer -> of(tests.getFirst(), answer.verdict().sentence()))
                        .orElseGet(() -> unread(tests)),
                Optional.empty(),
                spoilt);
    }

    private static String words(Flaw flaw) {
        return flaw.file() + ": " + flaw.words();
    }

    private static Sentence of(StoredTest test, Sentence sentence) {
        return Sentence.words("test " + test.id().text() + ": ").then(sentence);
    }

    private static Sentence unread(List<StoredTest> tests) {
        if (tests.isEmpty()) {
            return Sentence.words("no test of this rig is written down yet");
        }
        String count = tests.size() == 1 ? "1 test is" : tests.size() + " tests are";
        return Sentence.words(
                count
                        + " written down; the last, "
                        + tests.getFirst().id().text()
                        + ", tells why when it is opened");
    }

    private Evidence evidence() {
        return new Evidence(
                digest, "none", 0, 0, Sentence.start(), List.of(), List.of(), List.of());
    }
}
