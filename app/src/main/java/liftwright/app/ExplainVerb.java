package liftwright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.answer.AnswerJson;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.learning.LearningAnswer;
import liftwright.learning.ask.Learning;
import liftwright.learning.ask.LearningCase;
import liftwright.learning.replay.NotDrivenException;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.StoredTest;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.recording.Recording;
import liftwright.report.PlainText;
import liftwright.report.TextReport;
import liftwright.review.Settings;
import liftwright.rig.Rig;

/** {@code explain}: why a test did not give what was promised. */
final class ExplainVerb {

    /** Samples of a channel that are looked at: enough to see a fan stop. */
    private static final int MOST_SAMPLES = 20_000;

    private final Voice voice;
    private final Surroundings around;
    private final Options options;
    private final Interrupt interrupt;

    ExplainVerb(Voice voice, Surroundings around, Options options, Interrupt interrupt) {
        this.voice = voice;
        this.around = around;
        this.options = options;
        this.interrupt = interrupt;
    }

    Exit run() {
        options.look(); // a wrong option shall not wait for the answer
        Settings settings = options.settings(Settings.standard().withoutRemedies());
        List<String> words = options.names();
        List<String> rest = words.subList(1, words.size());
        boolean files = !rest.isEmpty() && rest.stream().allMatch(this::isFile);
        if (rest.size() > 1 && !files) {
            throw new UsageException("explain RIG [TEST]: name one test, or logs that are files");
        }
        if (!files && options.text(LogGrammar.MAP).isPresent()) {
            throw new UsageException(
                    LogGrammar.MAP + " is for logs that are files: tests were read in with theirs");
        }
        RigSource source =
                RigSource.of(UserFile.of(words.getFirst(), around.folder()))
                        .asDeclared(options.has(Grammar.AS_DECLARED));
        Optional<Rig> rig = source.read().rig();
        if (rig.isEmpty()) {
            voice.answer(CheckVerb.text(source, options));
            return Exit.BAD_INPUT;
        }
        Optional<Sheet> sheet = options.text(Grammar.HTML).map(named -> Sheet.at(named, around));
        Logbook logbook = Logbook.at(source.file().path());
        try {
            if (files) {
                return explained(source, rig.get(), rest, settings, sheet);
            }
            StoredTest test = test(logbook, words.stream().skip(1).findFirst());
            return explained(source, rig.get(), logbook, test, settings, sheet);
        } catch (IOException e) {
            throw new UsageException(
                    (files ? "the logs" : "the logbook") + " cannot be read: " + e.getMessage());
        } catch (NotDrivenException | NotToldException | ImpossibleValueException e) {
            throw new UsageException(source.file().named() + ": " + e.getMessage());
        }
    }

    private Exit explained(
            RigSource source,
            Rig rig,
            Logbook logbook,
            StoredTest test,
            Settings settings,
            Optional<Sheet> sheet)
            throws IOException {
        Rig then = rigOf(source, rig, logbook, test);
        Recording recording;
        try (Engine engine = Engine.start(logbook.folder())) {
            recording = logbook.recording(test, engine::samples, MOST_SAMPLES);
        }
        return explained(
                source,
                new LearningCase(
                        then,
                        test.entry().rig().digest(),
                        test.id().text(),
                        recording,
                        Optional.empty()),
                settings,
                sheet);
    }

    /** Logs that are in no logbook, on the rig as it is. */
    private Exit explained(
            RigSource source, Rig rig, List<String> files, Settings settings, Optional<Sheet> sheet)
            throws IOException {
        LogFiles.Read read = new LogFiles(options, around).read(files, rig, MOST_SAMPLES);
        if (read.aside() > 0) {
            say(
                    read.aside()
                            + " rows were set aside: liftwright log add keeps them with their"
                            + " reasons");
        }
        return explained(
                source,
                new LearningCase(
                        rig,
                        source.digest(),
                        String.join(", ", files),
                        read.recording(),
                        Optional.empty()),
                settings,
                sheet);
    }

    private boolean isFile(String word) {
        return EntryId.parse(word).isEmpty()
                && Files.isRegularFile(UserFile.path(word, around.folder()));
    }

    private Exit explained(
            RigSource source, LearningCase about, Settings settings, Optional<Sheet> sheet) {
        boolean watched = options.has(Grammar.PROGRESS) || around.errIsTerminal();
        var progress = new Progress(voice, watched, interrupt);
        Optional<LearningAnswer> answer = Learning.ask(about, settings, progress);
        progress.wipe();
        if (answer.isEmpty()) {
            say("stopped; the test was not explained");
            return Exit.STOPPED_EARLY;
        }
        return show(source, about.rig(), answer.get(), sheet);
    }

    /** As it was on the day of the test; with what tests found where it is the same still. */
    private Rig rigOf(RigSource source, Rig rig, Logbook logbook, StoredTest test)
            throws IOException {
        if (test.entry().rig().digest().equals(source.digest())) {
            return rig;
        }
        say(
                "test "
                        + test.id().text()
                        + " was of another revision of the rig file: explained on the rig as it"
                        + " was then");
        return logbook.rigOf(test)
                .rig()
                .orElseThrow(
                        () ->
                                new UsageException(
                                        "the rig of test "
                                                + test.id().text()
                                                + " cannot be read any more: liftwright log check"
                                                + " tells why"));
    }

    private static StoredTest test(Logbook logbook, Optional<String> name) throws IOException {
        List<StoredTest> all = logbook.tests();
        if (all.isEmpty()) {
            throw new UsageException(
                    "there is no test in "
                            + logbook.folder()
                            + ": liftwright log add brings one in");
        }
        if (name.isEmpty()) {
            return all.getLast();
        }
        return EntryId.parse(name.get())
                .flatMap(id -> all.stream().filter(one -> one.id().equals(id)).findFirst())
                .orElseThrow(
                        () ->
                                new UsageException(
                                        "no test "
                                                + name.get()
                                                + " in the logbook; it has "
                                                + all.stream()
                                                        .map(one -> one.id().text())
                                                        .collect(Collectors.joining(", "))));
    }

    private Exit show(RigSource source, Rig rig, LearningAnswer answer, Optional<Sheet> sheet) {
        voice.answer(
                options.json()
                        ? AnswerJson.write(answer, rig.name(), Program.VERSION) + "\n"
                        : TextReport.write(
                                answer, rig.name(), source.file().named(), options.look()));
        sheet.ifPresent(
                of -> {
                    of.add(answer);
                    of.write(rig, source.file().named(), options.look().units());
                    say("wrote " + of.named());
                });
        return answer.verdict().outcome() == Outcome.HOLDS
                        && answer.findings().stream()
                                .noneMatch(f -> f.severity() == Finding.Severity.STOPS)
                ? Exit.CLEAR
                : Exit.STOPS;
    }

    private void say(String sentence) {
        voice.aside(PlainText.of("liftwright: " + sentence, !around.utf8()));
    }
}
