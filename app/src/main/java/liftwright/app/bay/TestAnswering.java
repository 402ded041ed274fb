package liftwright.app.bay;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import liftwright.answer.Answer;
import liftwright.logbook.store.StoredTest;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.review.Stage;
import liftwright.review.Staged;
import liftwright.rig.file.RigReading;

/**
 * What one test taught, down a stream: first what its channels showed, then why; then the list of
 * tests anew, which knows it from now on.
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

    private static final List<Stage> STAGES = List.of(Stage.NOMINAL, Stage.WHOLE);

    /** Answers, and says how it ended. */
    void run() {
        try {
            answer();
        } catch (NotToldException | ImpossibleValueException e) {
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
        String name = onRecord.logbooks().declared(made).name();
        Learned learned = onRecord.learned();
        Optional<Staged> open = Optional.empty();
        for (Stage stage : STAGES) {
            if (work.stopped()) {
                return;
            }
            Optional<? extends Answer> answer = learned.of(test.digest(), stage);
            if (answer.isEmpty()) {
                Staged staged = open.orElseGet(() -> staged(made));
                open = Optional.of(staged);
                answer = staged.answer(stage, work);
                answer.ifPresent(found -> learned.keep(test.digest(), stage, found));
            }
            answer.ifPresent(found -> lines.tell(stage, Question.LEARNING, name, found));
        }
        lines.logbook(name, onRecord.learning(rig, made.digest()).listed());
    }

    private Staged staged(RigReading made) {
        throw new FaultException(
                FaultException.Kind.REFUSED, "This version does not tell it yet: " + made.digest());
    }

    void tellProgress() {
        work.progress().ifPresent(far -> lines.progress(Question.LEARNING, far));
    }
}
