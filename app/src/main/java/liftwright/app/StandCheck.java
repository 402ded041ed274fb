package liftwright.app;

import liftwright.answer.AnswerJson;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.ProblemsJson;
import liftwright.report.PlainText;
import liftwright.report.ProblemReport;
import liftwright.report.TextReport;
import liftwright.review.stand.StandAnswer;
import liftwright.review.stand.StandQuestion;
import liftwright.rig.stand.Stand;
import liftwright.rig.stand.StandReading;

/** {@code check --stand}: how well planned thrust stands will measure. */
final class StandCheck {

    private final Voice voice;
    private final Surroundings around;
    private final Options options;

    StandCheck(Voice voice, Surroundings around, Options options) {
        this.voice = voice;
        this.around = around;
        this.options = options;
    }

    /** What is wrong with one file is no reason to leave out the next. */
    Exit run() {
        options.look(); // a wrong option shall not wait for the answer
        var exit = Exit.CLEAR;
        for (String name : options.names()) {
            exit = exit.worse(check(name));
            if (!options.json() && !name.equals(options.names().getLast())) {
                voice.answer("\n");
            }
        }
        return exit;
    }

    private Exit check(String name) {
        UserFile file;
        StandReading read;
        try {
            file = UserFile.of(name, around.folder(), "stand.yaml");
            read = StandReading.read(file.named(), file.read());
        } catch (UsageException e) {
            voice.aside(PlainText.of("liftwright: " + e.words(), !around.utf8()));
            return Exit.BAD_INPUT;
        }
        if (read.stand().isEmpty()) {
            voice.answer(problems(file, read));
            return Exit.BAD_INPUT;
        }
        Stand stand = read.stand().get();
        StandAnswer answer = StandQuestion.ask(stand, read.digest());
        voice.answer(
                options.json()
                        ? AnswerJson.write(answer, stand.name(), Program.VERSION) + "\n"
                        : TextReport.write(answer, stand.name(), file.named(), options.look()));
        return answer.verdict().outcome() == Outcome.HOLDS
                        && answer.findings().stream()
                                .noneMatch(f -> f.severity() == Finding.Severity.STOPS)
                ? Exit.CLEAR
                : Exit.STOPS;
    }

    private String problems(UserFile file, StandReading read) {
        return options.json()
                ? ProblemsJson.write(
                                file.named(),
                                read.digest(),
                                false,
                                read.problems(),
                                Program.VERSION)
                        + "\n"
                : ProblemReport.write(
                        file.named(), "a thrust stand", "", read.problems(), options.look());
    }
}
