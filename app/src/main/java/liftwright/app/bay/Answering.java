package liftwright.app.bay;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import liftwright.answer.Answer;
import liftwright.answer.AnswerJson;
import liftwright.answer.Texts;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.report.ReaderTexts;
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

    /** A sentence may quote the file. */
    private static final liftwright.report.Door HARMLESS = new liftwright.report.Door(false);

    /** A sentence that may quote a file, for the page. */
    static String harmless(String sentence) {
        return HARMLESS.plain(sentence);
    }

    private final Asked asked;
    private final String version;
    private final AskedWork work;
    private final Lines lines;
    private final Consumer<Throwable> faults;
    private final Texts texts;
    private volatile Optional<Question> current = Optional.empty();

    /**
     * @param version of the program
     * @param work stopped when nobody waits any more
     * @param lines to whoever asked
     * @param faults is told what went wrong by a mistake of ours
     */
    Answering(
            Asked asked, String version, AskedWork work, Lines lines, Consumer<Throwable> faults) {
        this.asked = asked;
        this.version = version;
        this.work = work;
        this.lines = lines;
        this.faults = faults;
        texts = new ReaderTexts(asked.units());
    }

    /** Answers, and says how it ended. */
    void run() {
        Optional<Rig> rig = asked.reading().rig();
        if (rig.isPresent()) {
            answer(rig.get());
            end();
        } else {
            refuse(unreadable(asked.reading().problems()));
        }
    }

    /** Refuses everything that was asked. */
    void refuse(String sentence) {
        refuse(Optional.empty(), sentence);
        end();
    }

    private void end() {
        lines.tell(
                json -> json.object(() -> json.member("end", work.stopped() ? "stopped" : "done")));
    }

    /** First all at a glance; then what takes long only when the others are whole. */
    private void answer(Rig rig) {
        Map<Question, Staged> open = new EnumMap<>(Question.class);
        answer(Stage.NOMINAL, asked.questions(), open, rig);
        for (boolean takesLong : new boolean[] {false, true}) {
            List<Question> some =
                    asked.questions().stream().filter(q -> q.takesLong() == takesLong).toList();
            answer(Stage.BANDED, some, open, rig);
            answer(Stage.WHOLE, some, open, rig);
        }
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
        return question.staged(rig, asked.reading().digest(), Settings.standard());
    }

    /** A question that fails once is not asked again. */
    private void attempt(Question question, Map<Question, Staged> open, Runnable then) {
        try {
            then.run();
        } catch (NotToldException | ImpossibleValueException e) {
            open.remove(question);
            refuse(Optional.of(question), String.valueOf(e.getMessage()));
        } catch (Lines.GoneException e) {
            throw e;
        } catch (RuntimeException e) {
            open.remove(question);
            faults.accept(e);
            refuse(Optional.of(question), "A fault of the program, not of your rig.");
        }
    }

    private void tell(Stage stage, Question question, Rig rig, Answer answer) {
        lines.tell(
                "{\"stage\":\""
                        + stage.label()
                        + "\",\"question\":\""
                        + question.word()
                        + "\",\"document\":"
                        + AnswerJson.write(answer, rig.name(), version, texts)
                        + "}");
    }

    /** Tells how far it is, where something that takes long has begun. */
    void tellProgress() {
        Optional<Question> question = current;
        Optional<AskedWork.Progress> progress = work.progress();
        if (question.isPresent() && progress.isPresent()) {
            AskedWork.Progress far = progress.get();
            lines.tell(
                    json ->
                            json.object(
                                    () ->
                                            json.name("progress")
                                                    .object(
                                                            () -> {
                                                                json.member(
                                                                        "question",
                                                                        question.get().word());
                                                                json.member("stage", far.stage());
                                                                json.name("done").whole(far.done());
                                                                json.name("total")
                                                                        .whole(far.total());
                                                            })));
        }
    }

    private void refuse(Optional<Question> question, String sentence) {
        lines.tell(
                json ->
                        json.object(
                                () -> {
                                    json.member("refused", HARMLESS.plain(sentence));
                                    json.member("question", question.map(Question::word));
                                }));
    }

    private static String unreadable(List<Problem> problems) {
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
