package liftwright.app.bay;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import liftwright.answer.Answer;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.review.Staged;
import liftwright.rig.Problem;
import liftwright.rig.Rig;

/**
 * Answers questions about one rig down a stream: every question at one stage before the first goes
 * on to the next, and those that take long after all others. What cannot be answered is refused
 * with a sentence, and the others go on.
 */
final class Answering {

    private final Asked asked;
    private final OnRecord onRecord;
    private final AskedWork work;
    private final AnswerLines lines;
    private final Consumer<Throwable> faults;
    private volatile Optional<Question> current = Optional.empty();

    /**
     * @param onRecord what trials rest on; keeps what is answered here
     * @param work stopped when nobody waits any more
     * @param lines to whoever asked
     * @param faults is told what went wrong by a mistake of ours
     */
    Answering(
            Asked asked,
            OnRecord onRecord,
            AskedWork work,
            AnswerLines lines,
            Consumer<Throwable> faults) {
        this.asked = asked;
        this.onRecord = onRecord;
        this.work = work;
        this.lines = lines;
        this.faults = faults;
    }

    /** Answers, and says how it ended. */
    void run() {
        Optional<Rig> rig = asked.reading().rig();
        if (rig.isPresent()) {
            answer(rig.get());
            lines.end(work.stopped());
        } else {
            refuse(unreadable(asked.reading().problems()));
        }
    }

    /** Refuses everything that was asked. */
    void refuse(String sentence) {
        lines.refuse(Optional.empty(), sentence);
        lines.end(work.stopped());
    }

    /**
     * First all at a glance; then what takes long only when the others are whole. Trials rest on
     * the others and are answered again after each lot.
     */
    private void answer(Rig rig) {
        Map<Question, Staged> open = new EnumMap<>(Question.class);
        answer(Stage.NOMINAL, asked.questions(), open, rig);
        answer(Stage.WHOLE, some(q -> q == Question.LEARNING), open, rig);
        for (boolean takesLong : new boolean[] {false, true}) {
            List<Question> some =
                    some(
                            q ->
                                    q != Question.TRIALS
                                            && q != Question.LEARNING
                                            && q.takesLong() == takesLong);
            answer(Stage.BANDED, some, open, rig);
            answer(Stage.WHOLE, some, open, rig);
            List<Question> trials = some(q -> q == Question.TRIALS);
            answer(takesLong ? Stage.WHOLE : Stage.BANDED, trials, open, rig);
        }
    }

    private List<Question> some(Predicate<Question> wanted) {
        return asked.questions().stream().filter(wanted).toList();
    }

    private void answer(
            Stage stage, List<Question> questions, Map<Question, Staged> open, Rig rig) {
        for (Question question : questions) {
            if (work.stopped() || stage.compareTo(asked.to()) > 0) {
                return;
            }
            current = Optional.of(question);
            if (stage == Stage.NOMINAL || open.containsKey(question)) {
                attempt(
                        question,
                        open,
                        () -> {
                            Staged staged = open.computeIfAbsent(question, q -> staged(q, rig));
                            staged.answer(stage, work)
                                    .ifPresent(answer -> tell(stage, question, rig, answer));
                        });
            }
        }
    }

    private Staged staged(Question question, Rig rig) {
        String digest = asked.reading().digest();
        return switch (question) {
            case FLIGHT -> onRecord.flight(asked.rig(), rig, digest, asked.profile());
            case TRIALS -> onRecord.trials(asked.rig(), rig, digest);
            case LEARNING -> onRecord.learning(asked.rig(), digest);
            case LIFT, ENDURANCE, HEAT, BALANCE, FAILURES, RESTRAINT ->
                    question.staged(rig, digest, Settings.standard());
        };
    }

    /** A question that fails once is not asked again. */
    private void attempt(Question question, Map<Question, Staged> open, Runnable then) {
        try {
            then.run();
        } catch (NotToldException | ImpossibleValueException e) {
            open.remove(question);
            lines.refuse(Optional.of(question), String.valueOf(e.getMessage()));
        } catch (FaultException e) {
            open.remove(question);
            lines.refuse(Optional.of(question), e.sentence());
        } catch (Lines.GoneException e) {
            throw e;
        } catch (RuntimeException e) {
            open.remove(question);
            faults.accept(e);
            lines.refuse(Optional.of(question), "A fault of the program, not of your rig.");
        }
    }

    private void tell(Stage stage, Question question, Rig rig, Answer answer) {
        if (stage == Stage.WHOLE) {
            onRecord.reviewed().keep(asked.reading().digest(), answer);
        }
        lines.tell(stage, question, rig.name(), answer);
    }

    /** Tells how far it is, where something that takes long has begun. */
    void tellProgress() {
        current.ifPresent(
                question -> work.progress().ifPresent(far -> lines.progress(question, far)));
    }

    /** Why there is no rig to ask. */
    static String unreadable(List<Problem> problems) {
        List<Problem> errors = problems.stream().filter(p -> p.code().isError()).toList();
        if (errors.isEmpty()) {
            return "The file does not read as a rig.";
        }
        Problem first = errors.getFirst();
        return (errors.size() == 1
                        ? "An error keeps the file"
                        : errors.size() + " errors keep the file")
                + " from being read as a rig; the first is in line "
                + first.at().line()
                + ": found "
                + first.found()
                + ", expected "
                + first.expected()
                + ".";
    }
}
