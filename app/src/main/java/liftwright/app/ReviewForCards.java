package liftwright.app;

import java.util.Optional;
import java.util.function.Supplier;
import liftwright.answer.Answer;
import liftwright.review.BalanceQuestion;
import liftwright.review.EnduranceQuestion;
import liftwright.review.FailureCase;
import liftwright.review.FailuresQuestion;
import liftwright.review.HeatCase;
import liftwright.review.HeatQuestion;
import liftwright.review.LiftQuestion;
import liftwright.review.RestraintQuestion;
import liftwright.review.Settings;
import liftwright.review.Task;
import liftwright.rig.Rig;

/** Answers of the review that gates ask for, each for the flight that the rig file demands. */
record ReviewForCards(RigSource source, Rig rig, Settings settings, Supplier<Progress> progress) {

    /**
     * @throws StoppedException when the user stops it
     */
    Answer answer(String question) {
        Progress work = progress.get();
        Optional<? extends Answer> answer = ask(question, work);
        work.wipe();
        return answer.orElseThrow(StoppedException::new);
    }

    private Optional<? extends Answer> ask(String question, Progress work) {
        String digest = source.digest();
        return switch (question) {
            case Asking.LIFT -> LiftQuestion.ask(rig, digest, settings, work);
            case Asking.ENDURANCE ->
                    EnduranceQuestion.ask(rig, digest, new Task.Hover(), settings, work);
            case Asking.BALANCE ->
                    BalanceQuestion.ask(
                            rig, digest, settings, java.util.Set.of(), Optional.empty(), work);
            case Asking.HEAT ->
                    HeatQuestion.ask(
                            rig, digest, HeatCase.of(HeatQuestion.demanded(rig)), settings, work);
            case Asking.FAILURES ->
                    FailuresQuestion.ask(rig, digest, FailureCase.usual(), settings, work);
            case Asking.RESTRAINT -> RestraintQuestion.ask(rig, digest, settings, work);
            default -> throw new IllegalStateException("no question " + question);
        };
    }

    /** Somebody does not want to wait. */
    static final class StoppedException extends RuntimeException {
        private static final long serialVersionUID = 1;
    }
}
