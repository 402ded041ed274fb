package liftwright.app.bay;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private final Map<Question, Stage> told = new EnumMap<>(Question.class);
    private final Set<Question> failed = EnumSet.noneOf(Question.class);
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
     * Tells what is known of that very state of the rig, once; what is missing of it is answered
     * later. May be left out.
     */
    void recall() {
        Optional<Rig> rig = asked.reading().rig();
        if (rig.isEmpty() || asked.anew() || asked.to() != Stage.WHOLE) {
            return;
        }
        for (Question question : some(Question.OF_REVIEW::contains)) {
            onRecord.reviewed()
                    .of(asked.reading().digest(), rig.get(), question.word())
                    .ifPresent(
                            kept -> {
                                lines.tell(kept.stage(), question, rig.get().name(), kept.answer());
                                told.put(question, kept.stage());
                            });
        }
    }

    /**
     * First at a glance what is quickly answered, and the bands of what was asked first, which lies
     * open before a reader; then all at a glance; then what takes long only when the others are
     * whole. Trials rest on the others and are answered again after each lot.
     */
    private void answer(Rig rig) {
        Map<Question, Staged> open = new EnumMap<>(Question.class);
        answer(Stage.NOMINAL, some(q -> !q.takesLong()), open, rig);
        answer(Stage.BANDED, firstAsked(), open, rig);
        answer(Stage.NOMINAL, some(Question::takesLong), open, rig);
        answer(Stage.WHOLE, some(q -> q == Question.LEARNING), open, rig);
        for (boolean takesLong : new boolean[] {false, true}) {
            List<Question> some = some(q -> q.restsOnNoOther() && q.takesLong() == takesLong);
            answer(Stage.BANDED, some, open, rig);
            answer(Stage.WHOLE, some, open, rig);
            List<Question> trials = some(q -> q == Question.TRIALS);
            answer(takesLong ? Stage.WHOLE : Stage.BANDED, trials, open, rig);
        }
    }

    private List<Question> some(Predicate<Question> wanted) {
        return asked.questions().stream().filter(wanted).toList();
    }

    private List<Question> firstAsked() {
        return asked.questions().stream()
                .limit(1)
                .filter(q -> q.restsOnNoOther() && !q.takesLong())
                .toList();
    }

    private void answer(
            Stage stage, List<Question> questions, Map<Question, Staged> open, Rig rig) {
        for (Question question : questions) {
            if (work.stopped() || stage.compareTo(asked.to()) > 0) {
                return;
            }
            if (isTold(question, stage) || failed.contains(question)) {
                continue;
            }
            current = Optional.of(question);
            attempt(
                    question,
                    () -> {
                        Staged staged = open.computeIfAbsent(question, q -> staged(q, rig));
                        staged.answer(stage, work)
                                .ifPresent(answer -> tell(stage, question, rig, answer));
                    });
        }
    }

    private boolean isTold(Question question, Stage stage) {
        return Optional.ofNullable(told.get(question))
                .filter(far -> far.compareTo(stage) >= 0)
                .isPresent();
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
    private void attempt(Question question, Runnable then) {
        try {
            then.run();
        } catch (NotToldException | ImpossibleValueException e) {
            failed.add(question);
            lines.refuse(Optional.of(question), String.valueOf(e.getMessage()));
        } catch (FaultException e) {
            failed.add(question);
            lines.refuse(Optional.of(question), e.sentence());
        } catch (Lines.GoneException e) {
            throw e;
        } catch (RuntimeException e) {
            failed.add(question);
            faults.accept(e);
            lines.refuse(Optional.of(question), "A fault of the program, not of your rig.");
        }
    }

    private void tell(Stage stage, Question question, Rig rig, Answer answer) {
        told.put(question, stage);
        if (asked.to() != Stage.NOMINAL && Question.OF_REVIEW.contains(question)) {
            onRecord.reviewed().keep(asked.reading().digest(), rig, stage, answer);
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
