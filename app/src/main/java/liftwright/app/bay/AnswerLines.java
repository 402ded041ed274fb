package liftwright.app.bay;

import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.AnswerJson;
import liftwright.answer.Texts;
import liftwright.quantity.UnitSystem;
import liftwright.report.Door;
import liftwright.report.ReaderTexts;
import liftwright.review.Stage;

/**
 * What is told of answers down a stream, a line each.
 *
 * @param lines to whoever asked
 * @param version of the program
 * @param texts in the units of the reader
 */
record AnswerLines(Lines lines, String version, Texts texts) {

    /** A sentence may quote the file. */
    private static final Door HARMLESS = new Door(false);

    static AnswerLines of(Lines lines, String version, UnitSystem units) {
        return new AnswerLines(lines, version, new ReaderTexts(units));
    }

    /** A sentence that may quote a file, for the page. */
    static String harmless(String sentence) {
        return HARMLESS.plain(sentence);
    }

    void tell(Stage stage, Question question, String rigName, Answer answer) {
        lines.tell(
                "{\"stage\":\""
                        + stage.label()
                        + "\",\"question\":\""
                        + question.word()
                        + "\",\"document\":"
                        + AnswerJson.write(answer, rigName, version, texts)
                        + "}");
    }

    /** The list of tests as it is now, where something was learned of one. */
    void logbook(String rigName, Answer list) {
        lines.tell("{\"logbook\":" + AnswerJson.write(list, rigName, version, texts) + "}");
    }

    /** Tells how far something is that takes long. */
    void progress(Question question, AskedWork.Progress far) {
        lines.tell(
                json ->
                        json.object(
                                () ->
                                        json.name("progress")
                                                .object(
                                                        () -> {
                                                            json.member(
                                                                    "question", question.word());
                                                            json.member("stage", far.stage());
                                                            json.name("done").whole(far.done());
                                                            json.name("total").whole(far.total());
                                                        })));
    }

    /**
     * @param question that cannot be answered; empty where none can
     */
    void refuse(Optional<Question> question, String sentence) {
        lines.tell(
                json ->
                        json.object(
                                () -> {
                                    json.member("refused", harmless(sentence));
                                    json.member("question", question.map(Question::word));
                                }));
    }

    void end(boolean stopped) {
        lines.tell(json -> json.object(() -> json.member("end", stopped ? "stopped" : "done")));
    }
}
