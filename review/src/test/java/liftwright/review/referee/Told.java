package liftwright.review.referee;

import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.answer.Answer;
import liftwright.answer.Outcome;
import liftwright.numerics.Work;
import liftwright.review.Judged;
import liftwright.review.Stage;
import liftwright.review.Staged;

/**
 * The verdict of a question. Where its numbers leave it undecided no answer can decide it, and most
 * of the answer's time goes into which measurement would tell, which others ask: of these one in
 * eight is answered whole.
 *
 * @param nominal the judged number at the declared values
 * @param whole the answer, where it was asked
 */
record Told(Outcome outcome, double nominal, Optional<Answer> whole) {

    private static final int WHOLE = 8;

    static Told of(Staged question, RandomGenerator random) {
        Judged judged = question.judged(Work.quiet()).orElseThrow();
        boolean whole = random.nextInt(WHOLE) == 0;
        if (judged.outcome() == Outcome.CANNOT_BE_TOLD && !whole) {
            return new Told(judged.outcome(), judged.nominal(), Optional.empty());
        }
        Answer answer = question.answer(Stage.WHOLE, Work.quiet()).orElseThrow();
        return new Told(answer.verdict().outcome(), judged.nominal(), Optional.of(answer));
    }
}
