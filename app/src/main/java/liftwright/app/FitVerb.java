package liftwright.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.learning.correct.CorrectionFit;
import liftwright.learning.correct.FitResult;
import liftwright.learning.correct.FitTest;
import liftwright.learning.replay.Driven;
import liftwright.learning.replay.InStep;
import liftwright.learning.replay.NotDrivenException;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.StoredTest;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.report.PlainText;
import liftwright.rig.Rig;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.Grounds;
import liftwright.rig.file.CorrectionsFile;

/** {@code fit}: what the tests of a logbook find of the numbers of a rig. */
final class FitVerb {

    /** Samples of a channel that are looked at; blocks are made of them. */
    private static final int MOST_SAMPLES = 5000;

    private final Voice voice;
    private final Surroundings around;
    private final Options options;
    private final Interrupt interrupt;

    FitVerb(Voice voice, Surroundings around, Options options, Interrupt interrupt) {
        this.voice = voice;
        this.around = around;
        this.options = options;
        this.interrupt = interrupt;
    }

    Exit run() {
        options.look(); // a wrong option shall not wait for the answer
        List<String> words = options.names();
        // What was found before is no ground for what is found now: it would count twice.
        RigSource source =
                RigSource.of(UserFile.of(words.getFirst(), around.folder())).asDeclared(true);
        Optional<Rig> rig = source.read().rig();
        if (rig.isEmpty()) {
            voice.answer(CheckVerb.text(source, options));
            return Exit.BAD_INPUT;
        }
        Logbook logbook = Logbook.at(source.file().path());
        try {
            List<StoredTest> tests = tests(logbook, words.subList(1, words.size()));
            List<FitTest> driven = driven(logbook, tests, source, rig.get());
            boolean watched = options.has(Grammar.PROGRESS) || around.errIsTerminal();
            var progress = new Progress(voice, watched, interrupt);
            Optional<FitResult> found = CorrectionFit.of(rig.get(), driven, threads(), progress);
            progress.wipe();
            return found.map(one -> told(source, rig.get(), one, driven))
                    .orElse(Exit.STOPPED_EARLY);
        } catch (IOException e) {
            throw new UsageException("the logbook cannot be read: " + e.getMessage());
        } catch (NotToldException | ImpossibleValueException | IllegalArgumentException e) {
            throw new UsageException(source.file().named() + ": " + e.getMessage());
        }
    }

    private int threads() {
        return options.threads().orElse(Runtime.getRuntime().availableProcessors());
    }

    /** Those named, or all. */
    private static List<StoredTest> tests(Logbook logbook, List<String> names) throws IOException {
        List<StoredTest> all = logbook.tests();
        if (all.isEmpty()) {
            throw new UsageException(
                    "there is no test in "
                            + logbook.folder()
                            + ": liftwright log add brings one in");
        }
        if (names.isEmpty()) {
            return all;
        }
        List<StoredTest> named = new ArrayList<>();
        for (String name : names) {
            StoredTest test =
                    EntryId.parse(name)
                            .flatMap(
                                    id ->
                                            all.stream()
                                                    .filter(one -> one.id().equals(id))
                                                    .findFirst())
                            .orElseThrow(
                                    () ->
                                            new UsageException(
                                                    "no test "
                                                            + name
                                                            + " in the logbook; it has "
                                                            + all.stream()
                                                                    .map(one -> one.id().text())
                                                                    .collect(
                                                                            Collectors.joining(
                                                                                    ", "))));
            if (!named.contains(test)) {
                named.add(test);
            }
        }
        return named;
    }

    private List<FitTest> driven(Logbook logbook, List<StoredTest> tests, RigSource source, Rig rig)
            throws IOException {
        List<FitTest> driven = new ArrayList<>();
        try (Engine engine = Engine.start(logbook.folder())) {
            for (StoredTest test : tests) {
                if (!test.entry().rig().digest().equals(source.digest())) {
                    say(
                            "test "
                                    + test.id().text()
                                    + " was of another revision of the rig file: it is fitted to"
                                    + " this one");
                }
                try {
                    driven.add(
                            new FitTest(
                                    new Grounds.Test(test.id().text(), test.digest()),
                                    Driven.of(
                                            rig,
                                            InStep.of(
                                                    rig,
                                                    logbook.recording(
                                                            test,
                                                            engine::samples,
                                                            MOST_SAMPLES)))));
                } catch (NotDrivenException e) {
                    say("test " + test.id().text() + " is left out: " + e.getMessage());
                }
            }
        }
        if (driven.isEmpty()) {
            throw new UsageException("none of these tests recorded a throttle: nothing to fit");
        }
        return driven;
    }

    private Exit told(RigSource source, Rig rig, FitResult found, List<FitTest> driven) {
        List<String> tests = driven.stream().map(test -> test.name().id()).toList();
        voice.answer(PlainText.ofHelp(FitText.of(rig.name(), found, tests), !around.utf8()));
        if (!options.has(FitGrammar.WRITE)) {
            say("nothing was written; " + FitGrammar.WRITE + " writes the corrections");
            return Exit.CLEAR;
        }
        if (found.correction().isEmpty()) {
            say("nothing was written: there is nothing that these tests tell");
            return Exit.STOPS;
        }
        var file = CorrectionsFile.beside(source.file().path());
        try {
            Optional<Path> copy =
                    file.write(
                            new Corrections(
                                    source.digest(),
                                    rig.revision(),
                                    List.of(found.correction().get())));
            say("wrote " + file.path());
            copy.ifPresent(kept -> say("what it held before is kept as " + kept));
        } catch (IOException e) {
            throw new UsageException("cannot write " + file.path() + ": " + e.getMessage());
        }
        return Exit.CLEAR;
    }

    private void say(String sentence) {
        voice.aside(PlainText.of("liftwright: " + sentence, !around.utf8()));
    }
}
