package liftwright.app.bay;

import java.util.Optional;
import java.util.function.Consumer;
import liftwright.answer.Answer;
import liftwright.learning.LearningAnswer;
import liftwright.learning.ask.Learning;
import liftwright.learning.ask.LearningCase;
import liftwright.learning.replay.NotDrivenException;
import liftwright.logbook.store.StoredTest;
import liftwright.numerics.Work;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.trials.CardId;

/**
 * What one test taught, down a stream; then the list of tests anew, which knows it from now on.
 *
 * @param onRecord has the logbooks, and keeps what was learned
 * @param rig its path from the folder
 * @param work stopped when nobody waits any more
 * @param lines to whoever asked
 * @param faults is told what went wrong by a mistake of ours
 */
record TestAnswering(
        OnRecord onRecord,
        String rig,
        StoredTest test,
        AskedWork work,
        AnswerLines lines,
        Consumer<Throwable> faults) {

    /** Answers, and says how it ended. */
    void run() {
        try {
            answer();
        } catch (NotToldException | ImpossibleValueException | NotDrivenException e) {
            lines.refuse(Optional.of(Question.LEARNING), String.valueOf(e.getMessage()));
        } catch (FaultException e) {
            lines.refuse(Optional.of(Question.LEARNING), e.sentence());
        } catch (Lines.GoneException e) {
            throw e;
        } catch (RuntimeException e) {
            faults.accept(e);
            lines.refuse(
                    Optional.of(Question.LEARNING), "A fault of the program, not of your test.");
        }
        lines.end(work.stopped());
    }

    private void answer() {
        RigReading made = onRecord.logbooks().rigOf(rig, test);
        Rig declared = onRecord.logbooks().declared(made);
        Learned learned = onRecord.learned();
        Optional<Answer> known = learned.of(test.digest());
        Optional<? extends Answer> answer =
                known.isPresent() ? known : explained(onRecord, rig, test, declared, work);
        answer.ifPresent(
                found -> {
                    learned.keep(test.digest(), found);
                    lines.tell(Stage.WHOLE, Question.LEARNING, declared.name(), found);
                    lines.logbook(declared.name(), onRecord.learning(rig, made.digest()).listed());
                });
    }

    /**
     * Why a test went as it did.
     *
     * @param declared the rig that it was made with
     * @return empty where it was stopped
     */
    static Optional<LearningAnswer> explained(
            OnRecord onRecord, String rig, StoredTest test, Rig declared, Work work) {
        var about =
                new LearningCase(
                        declared,
                        test.entry().rig().digest(),
                        test.id().text(),
                        onRecord.logbooks().recording(rig, test),
                        test.entry().card().map(CardId::text));
        return Learning.ask(about, Settings.standard(), work);
    }

    void tellProgress() {
        work.progress().ifPresent(far -> lines.progress(Question.LEARNING, far));
    }
}
