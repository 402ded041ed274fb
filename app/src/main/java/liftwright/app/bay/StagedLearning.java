package liftwright.app.bay;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Outcome;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;
import liftwright.learning.LearningAnswer;
import liftwright.numerics.Work;
import liftwright.review.Stage;
import liftwright.review.Staged;

/**
 * What stands in the logbook of a rig, and what was learned of it so far. What a test taught does
 * not change with the rig: a test keeps the rig that it was made with.
 *
 * @param rigFile the logbook lies beside it
 * @param digest of the rig as it stands
 */
record StagedLearning(Path rigFile, String digest) implements Staged {

    @Override
    public Optional<? extends Answer> answer(Stage stage, Work work) {
        return work.stopped() ? Optional.empty() : Optional.of(nothingYet());
    }

    private LearningAnswer nothingYet() {
        return new LearningAnswer(
                new Verdict(
                        Outcome.CANNOT_BE_TOLD,
                        Sentence.words("no test of this rig is written down yet"),
                        Optional.empty(),
                        List.of()),
                List.of(),
                List.of(),
                new Evidence(
                        digest, "none", 0, 0, Sentence.start(), List.of(), List.of(), List.of()));
    }
}
