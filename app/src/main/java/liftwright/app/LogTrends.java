package liftwright.app;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.AnswerJson;
import liftwright.answer.Outcome;
import liftwright.learning.LearningAnswer;
import liftwright.learning.explain.Departures;
import liftwright.learning.replay.InStep;
import liftwright.learning.replay.NotDrivenException;
import liftwright.learning.trend.DatedTest;
import liftwright.learning.trend.ask.TrendAnswer;
import liftwright.learning.trend.ask.TrendCase;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.StoredTest;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.recording.Recording;
import liftwright.report.PlainText;
import liftwright.report.TextReport;
import liftwright.rig.Rig;

/** {@code log trends}: which parts get worse from test to test. */
record LogTrends(Voice voice, Surroundings around, Options options, Interrupt interrupt) {

    /** Samples of a channel; blocks are far longer. */
    private static final int MOST_SAMPLES = 20_000;

    /**
     * @param words rig and tests
     */
    Exit run(List<String> words) {
        RigSource source =
                RigSource.of(UserFile.of(words.getFirst(), around.folder())).asDeclared(true);
        if (source.read().rig().isEmpty()) {
            voice.answer(CheckVerb.text(source, options));
            return Exit.BAD_INPUT;
        }
        Logbook logbook = Logbook.at(source.file().path());
        boolean watched = options.has(Grammar.PROGRESS) || around.errIsTerminal();
        var progress = new Progress(voice, watched, interrupt);
        try {
            Optional<TrendCase> about = about(source, logbook, words, progress);
            progress.wipe();
            if (about.isEmpty()) {
                say("stopped; nothing is told of trends");
                return Exit.STOPPED_EARLY;
            }
            return show(source, TrendAnswer.of(about.get()));
        } catch (IOException e) {
            throw new UsageException("the logbook cannot be read: " + e.getMessage());
        }
    }

    private Optional<TrendCase> about(
            RigSource source, Logbook logbook, List<String> words, Progress progress)
            throws IOException {
        List<DatedTest> tests = new ArrayList<>();
        List<String> left = new ArrayList<>();
        List<StoredTest> named = named(logbook, words.subList(1, words.size()));
        try (Engine engine = LogVerb.engine(logbook)) {
            for (StoredTest test : named) {
                if (progress.stopped()) {
                    return Optional.empty();
                }
                String name = test.id().text();
                try {
                    Rig rig = rigOf(source, logbook, test);
                    Recording recording = logbook.recording(test, engine::samples, MOST_SAMPLES);
                    Departures departures =
                            Departures.of(rig, InStep.of(rig, recording), threads(), progress);
                    tests.add(new DatedTest(name, test.entry().date(), rig, departures));
                } catch (NotDrivenException
                        | NotToldException
                        | ImpossibleValueException
                        | IllegalArgumentException e) {
                    left.add("test " + name + " is left out: " + e.getMessage());
                }
            }
        }
        return progress.stopped()
                ? Optional.empty()
                : Optional.of(
                        new TrendCase(
                                source.digest(),
                                String.valueOf(logbook.folder().getFileName()),
                                options.seed().orElse(1),
                                tests,
                                left));
    }

    /** Those named, or all; in the order of their days. */
    private static List<StoredTest> named(Logbook logbook, List<String> names) throws IOException {
        if (names.isEmpty()) {
            return logbook.tests();
        }
        List<StoredTest> named = new ArrayList<>();
        for (String name : names) {
            StoredTest test = LogVerb.test(logbook, name);
            if (named.stream().noneMatch(one -> one.id().equals(test.id()))) {
                named.add(test);
            }
        }
        named.sort(
                java.util.Comparator.comparing((StoredTest test) -> test.entry().date())
                        .thenComparing(test -> test.id().text()));
        return named;
    }

    private static Rig rigOf(RigSource source, Logbook logbook, StoredTest test)
            throws IOException {
        if (test.entry().rig().digest().equals(source.digest())) {
            return source.read().rig().orElseThrow();
        }
        return logbook.rigOf(test)
                .rig()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "its rig cannot be read any more: liftwright log check"
                                                + " tells why"));
    }

    private int threads() {
        return options.threads().orElse(Runtime.getRuntime().availableProcessors());
    }

    private Exit show(RigSource source, LearningAnswer answer) {
        String name = source.read().rig().map(Rig::name).orElse("");
        voice.answer(
                options.json()
                        ? AnswerJson.write(answer, name, Program.VERSION) + "\n"
                        : TextReport.write(answer, name, source.file().named(), options.look()));
        return answer.verdict().outcome() == Outcome.HOLDS ? Exit.CLEAR : Exit.STOPS;
    }

    private void say(String sentence) {
        voice.aside(PlainText.of("liftwright: " + sentence, !around.utf8()));
    }
}
