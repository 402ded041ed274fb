package liftwright.app;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.AnswerJson;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.StoredTest;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.report.PlainText;
import liftwright.report.TextReport;
import liftwright.review.Settings;
import liftwright.review.compare.CompareAnswer;
import liftwright.review.compare.Comparison;
import liftwright.review.compare.Put;
import liftwright.review.compare.Puts;
import liftwright.review.compare.Revision;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;

/** {@code compare}: two revisions of a rig beside each other. */
final class CompareVerb {

    private final Voice voice;
    private final Surroundings around;
    private final Options options;
    private final Interrupt interrupt;

    CompareVerb(Voice voice, Surroundings around, Options options, Interrupt interrupt) {
        this.voice = voice;
        this.around = around;
        this.options = options;
        this.interrupt = interrupt;
    }

    Exit run() {
        options.look(); // a wrong option shall not wait for the answer
        Settings settings = options.settings(Settings.standard().withoutRemedies());
        List<String> questions = questions();
        List<String> names = options.names();
        Optional<String> test = options.text(CompareGrammar.TEST);
        if (test.isPresent() == (names.size() == 2)) {
            throw new UsageException(
                    "compare RIG OTHER, or compare --test TEST RIG: name what it is compared with"
                            + " once");
        }
        RigSource own = source(names.getFirst());
        if (own.read().rig().isEmpty()) {
            voice.answer(CheckVerb.text(own, options));
            return Exit.BAD_INPUT;
        }
        RigSource other = test.map(id -> ofTest(own, id)).orElseGet(() -> source(names.get(1)));
        if (other.read().rig().isEmpty()) {
            voice.answer(CheckVerb.text(other, options));
            return Exit.BAD_INPUT;
        }
        Revision one = revision(own, own.file().named());
        Revision two = revision(other, test.map(id -> "test " + id).orElse(other.file().named()));
        Optional<Sheet> sheet = options.text(Grammar.HTML).map(named -> Sheet.at(named, around));
        return test.isPresent()
                ? compared(two, one, questions, settings, sheet)
                : compared(one, two, questions, settings, sheet);
    }

    private RigSource source(String named) {
        return RigSource.of(UserFile.of(named, around.folder()))
                .asDeclared(options.has(Grammar.AS_DECLARED));
    }

    private static Revision revision(RigSource source, String name) {
        return new Revision(
                name, source.read().rig().orElseThrow(), source.digest(), source.read().tables());
    }

    /** The rig file as it was when a test was made, with what tests found counted as it is now. */
    private RigSource ofTest(RigSource own, String id) {
        try {
            Logbook logbook = Logbook.at(own.file().path());
            Optional<EntryId> named = EntryId.parse(id);
            Optional<StoredTest> test =
                    named.isEmpty() ? Optional.empty() : logbook.test(named.get());
            if (test.isEmpty()) {
                throw new UsageException(
                        "no test " + id + " in the logbook. See: liftwright log list");
            }
            RigReading reading = logbook.rigOf(test.get());
            return new RigSource(own.file(), reading);
        } catch (IOException e) {
            throw new UsageException("the logbook cannot be read: " + e.getMessage());
        }
    }

    private Exit compared(
            Revision first,
            Revision second,
            List<String> questions,
            Settings settings,
            Optional<Sheet> sheet) {
        boolean watched = options.has(Grammar.PROGRESS) || around.errIsTerminal();
        var progress = new Progress(voice, watched, interrupt);
        Optional<CompareAnswer> answer;
        try {
            List<Put> puts = new ArrayList<>();
            for (String question : questions) {
                puts.add(Puts.of(question, first, second, settings));
            }
            answer = Comparison.of(first, second, puts, settings, progress);
        } catch (NotToldException | ImpossibleValueException e) {
            throw new UsageException(second.name() + ": " + e.getMessage());
        }
        progress.wipe();
        return answer.map(told -> show(first, second, told, sheet))
                .orElseGet(
                        () -> {
                            say("stopped before everything was compared, so without a verdict");
                            return Exit.STOPPED_EARLY;
                        });
    }

    private Exit show(
            Revision first, Revision second, CompareAnswer answer, Optional<Sheet> sheet) {
        Rig rig = second.rig();
        String names = first.name() + " against " + second.name();
        voice.answer(
                options.json()
                        ? AnswerJson.write(answer, rig.name(), Program.VERSION) + "\n"
                        : TextReport.write(answer, rig.name(), names, options.look()));
        sheet.ifPresent(
                to -> {
                    to.add(answer);
                    to.write(rig, names, options.look().units());
                    say("wrote " + to.named());
                });
        boolean clear =
                answer.verdict().outcome() == Outcome.HOLDS
                        && answer.findings().stream()
                                .noneMatch(f -> f.severity() == Finding.Severity.STOPS);
        return clear ? Exit.CLEAR : Exit.STOPS;
    }

    private List<String> questions() {
        Optional<String> named = options.text(CompareGrammar.QUESTION);
        if (named.isEmpty()) {
            return Puts.QUESTIONS;
        }
        List<String> questions = new ArrayList<>();
        for (String word : named.get().split(",", -1)) {
            if (!Puts.QUESTIONS.contains(word.strip())) {
                throw new UsageException(
                        CompareGrammar.QUESTION
                                + " is "
                                + String.join(", ", Puts.QUESTIONS)
                                + ", not "
                                + word);
            }
            questions.add(word.strip());
        }
        return questions.stream().distinct().toList();
    }

    private void say(String sentence) {
        voice.aside(PlainText.of("liftwright: " + sentence, !around.utf8()));
    }
}
