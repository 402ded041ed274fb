package liftwright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import liftwright.answer.AnswerJson;
import liftwright.answer.Outcome;
import liftwright.logbook.ask.Listed;
import liftwright.logbook.ask.LogbookAnswer;
import liftwright.logbook.ask.LogbookAnswer.About;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.StoredTest;
import liftwright.report.PlainText;
import liftwright.report.TextReport;
import liftwright.rig.Rig;
import liftwright.rig.shape.kind.Nearest;
import liftwright.trials.evidence.Pass;
import liftwright.trials.evidence.PassFolder;

/** {@code log}: what was measured on a rig, kept and asked. */
final class LogVerb {

    private final Voice voice;
    private final Surroundings around;
    private final Options options;
    private final Interrupt interrupt;

    LogVerb(Voice voice, Surroundings around, Options options, Interrupt interrupt) {
        this.voice = voice;
        this.around = around;
        this.options = options;
        this.interrupt = interrupt;
    }

    Exit run() {
        options.look(); // a wrong option shall not wait for the answer
        List<String> words = options.names();
        String action = words.getFirst();
        if (!LogGrammar.ACTIONS.contains(action)) {
            throw new UsageException(
                    "log does not "
                            + action
                            + Nearest.to(action, new TreeSet<>(LogGrammar.ACTIONS))
                                    .map(near -> ": perhaps " + near + " was meant")
                                    .orElse("")
                            + ". It does: "
                            + String.join(", ", LogGrammar.ACTIONS));
        }
        if (words.size() < 2) {
            throw new UsageException(
                    "which rig? log "
                            + action
                            + " RIG …, a rig file or its folder. See: liftwright log --help");
        }
        if (action.equals(LogSoundGrammar.SOUND)) {
            return new LogSound(voice, around, options).run(words.subList(1, words.size()));
        }
        if (action.equals(LogGrammar.TRENDS)) {
            return new LogTrends(voice, around, options, interrupt)
                    .run(words.subList(1, words.size()));
        }
        RigSource source = RigSource.of(UserFile.of(words.get(1), around.folder()));
        Logbook logbook = Logbook.at(source.file().path());
        List<String> rest = words.subList(2, words.size());
        try {
            return act(action, source, logbook, rest);
        } catch (IOException e) {
            if (interrupt.asked()) {
                say("stopped; nothing was added");
                return Exit.STOPPED_EARLY;
            }
            throw new UsageException(e.getMessage() == null ? e.toString() : e.getMessage());
        }
    }

    private Exit act(String action, RigSource source, Logbook logbook, List<String> rest)
            throws IOException {
        var about =
                new About(
                        source.digest(),
                        String.valueOf(logbook.folder().getFileName()),
                        options.seed().orElse(1),
                        0);
        return switch (action) {
            case LogGrammar.ADD -> {
                if (source.read().rig().isEmpty()) {
                    voice.answer(CheckVerb.text(source, options));
                    yield Exit.BAD_INPUT;
                }
                StoredTest test =
                        new LogAdding(options, around, interrupt, this::progress)
                                .add(source, logbook, rest, date());
                say("wrote " + logbook.folder().getFileName() + "/tests/" + test.id());
                yield new LogShowing(options, this::show)
                        .show(about, source, logbook, test, passes(source), around.today());
            }
            case LogGrammar.LIST -> {
                none(action, rest);
                Logbook.Listing listing = logbook.listing();
                yield show(
                        source,
                        options.has(LogGrammar.NO_LIFT) || listing.tests().isEmpty()
                                ? Listed.of(about, listing, passes(source))
                                : Listed.of(
                                        about,
                                        listing,
                                        passes(source),
                                        new LogLift(options, this::progress)
                                                .of(source, logbook, listing.tests())));
            }
            case LogGrammar.CHECK -> {
                none(action, rest);
                yield show(
                        source,
                        Listed.checked(about, logbook.check(), logbook.listing().tests().size()));
            }
            case LogGrammar.SHOW ->
                    new LogShowing(options, this::show)
                            .show(
                                    about,
                                    source,
                                    logbook,
                                    test(logbook, one(action, "TEST", rest)),
                                    passes(source),
                                    around.today());
            case LogGrammar.COMPARE -> {
                if (rest.size() != 2) {
                    throw new UsageException("log compare RIG TEST TEST: name two tests");
                }
                StoredTest first = test(logbook, rest.getFirst());
                StoredTest second = test(logbook, rest.getLast());
                yield new LogShowing(options, this::show)
                        .compare(about, source, logbook, first, second);
            }
            case LogGrammar.QUERY ->
                    new LogQuery(voice, options).ask(logbook, one(action, "\"SELECT …\"", rest));
            case LogGrammar.NOTE_ON, LogGrammar.PART, LogGrammar.PACK, LogGrammar.INCIDENT ->
                    new LogRecording(options, around, date(), this::say, this::show)
                            .act(action, about, source, logbook, rest);
            default -> throw new IllegalStateException(action);
        };
    }

    private static void none(String action, List<String> rest) {
        if (!rest.isEmpty()) {
            throw new UsageException("log " + action + " RIG: nothing is done with " + rest);
        }
    }

    private static String one(String action, String what, List<String> rest) {
        if (rest.size() != 1) {
            throw new UsageException("log " + action + " RIG " + what + ": name one");
        }
        return rest.getFirst();
    }

    /**
     * @throws UsageException naming the tests that there are
     */
    static StoredTest test(Logbook logbook, String named) throws IOException {
        Optional<EntryId> id = EntryId.parse(named);
        Optional<StoredTest> test = id.isPresent() ? logbook.test(id.get()) : Optional.empty();
        if (test.isPresent()) {
            return test.get();
        }
        List<String> known = logbook.tests().stream().map(one -> one.id().text()).toList();
        throw new UsageException(
                "no test "
                        + named
                        + " in "
                        + logbook.folder().getFileName()
                        + (known.isEmpty()
                                ? "; none was added yet"
                                : ". There are: " + String.join(", ", known)));
    }

    private static List<Pass> passes(RigSource source) throws IOException {
        return PassFolder.beside(source.file().path()).read().passes();
    }

    private LocalDate date() {
        Optional<String> given = options.text(LogGrammar.DATE);
        if (given.isEmpty()) {
            return around.today();
        }
        try {
            return LocalDate.parse(given.get());
        } catch (DateTimeParseException e) {
            throw new UsageException(
                    LogGrammar.DATE + " is a date such as 2026-03-14, not " + given.get());
        }
    }

    private Exit show(RigSource source, LogbookAnswer answer) {
        String name = source.read().rig().map(Rig::name).orElse("");
        voice.answer(
                options.json()
                        ? AnswerJson.write(answer, name, Program.VERSION) + "\n"
                        : TextReport.write(answer, name, source.file().named(), options.look()));
        return answer.verdict().outcome() == Outcome.HOLDS ? Exit.CLEAR : Exit.STOPS;
    }

    private Progress progress() {
        boolean watched = around.errIsTerminal() || options.has(Grammar.PROGRESS);
        return new Progress(voice, watched, interrupt);
    }

    private void say(String sentence) {
        voice.aside(PlainText.of("liftwright: " + sentence, !around.utf8()));
    }

    /** An engine that reads the logbook; there has to be one. */
    static Engine engine(Logbook logbook) throws IOException {
        if (!Files.isDirectory(logbook.folder())) {
            throw new UsageException(
                    "there is no "
                            + logbook.folder().getFileName()
                            + " yet: liftwright log add begins it");
        }
        return Engine.start(logbook.folder());
    }
}
