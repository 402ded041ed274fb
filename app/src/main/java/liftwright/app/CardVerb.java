package liftwright.app;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.AnswerJson;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.app.record.TrialsRecord;
import liftwright.plant.Plant;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.report.PlainText;
import liftwright.report.ProblemReport;
import liftwright.report.TextReport;
import liftwright.review.Settings;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.csv.TableReader;
import liftwright.rig.csv.TableReading;
import liftwright.rig.file.RigReading;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.table.KillLog;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.ask.Trials;
import liftwright.trials.ask.TrialsCase;
import liftwright.trials.day.Day;
import liftwright.trials.day.DayReading;
import liftwright.trials.proof.KillProof;
import liftwright.trials.proof.ProofPath;
import liftwright.trials.proof.ProofReading;
import liftwright.trials.proof.Proving;

/** {@code card}: the programme of a rig, its cards, and what came of them. */
final class CardVerb {

    private final Voice voice;
    private final Surroundings around;
    private final Options options;
    private final Interrupt interrupt;

    CardVerb(Voice voice, Surroundings around, Options options, Interrupt interrupt) {
        this.voice = voice;
        this.around = around;
        this.options = options;
        this.interrupt = interrupt;
    }

    Exit run() {
        options.look(); // a wrong option shall not wait for the answer
        options.settings(Settings.standard().withoutRemedies());
        LocalDate today = today();
        List<String> words = options.names();
        Optional<String> action =
                Optional.of(words.getFirst()).filter(CardGrammar.ACTIONS::contains);
        List<String> names = words.subList(action.isPresent() ? 1 : 0, words.size());
        if (names.isEmpty()) {
            throw new UsageException(
                    "which rig? Name a rig file after "
                            + words.getFirst()
                            + ". See: liftwright card --help");
        }
        RigSource source =
                RigSource.of(UserFile.of(names.getFirst(), around.folder()))
                        .asDeclared(options.has(Grammar.AS_DECLARED));
        Optional<Rig> rig = source.read().rig();
        if (rig.isEmpty()) {
            voice.answer(CheckVerb.text(source, options));
            return Exit.BAD_INPUT;
        }
        var record = new TrialsRecord(source.file().path());
        TrialsCase about = read(record, source, rig.get(), today);
        List<String> rest = names.subList(1, names.size());
        try {
            return switch (action.orElse("")) {
                case CardGrammar.STATUS -> status(source, about, rest);
                case CardGrammar.PASS ->
                        new CardPass(options, this::say)
                                .write(record, about, trials(source, about), rest);
                case CardGrammar.PROOF -> proof(source, record, about, rest);
                case CardGrammar.TODAY -> today(source, record, about, rest);
                default -> cards(source, about, rest);
            };
        } catch (NotToldException | ImpossibleValueException e) {
            throw new UsageException(source.file().named() + ": " + e.getMessage());
        }
    }

    private static TrialsCase read(
            TrialsRecord record, RigSource source, Rig rig, LocalDate today) {
        try {
            return record.read(rig, source.digest(), today);
        } catch (IOException e) {
            throw new UsageException(
                    "what lies beside "
                            + source.file().named()
                            + " cannot be read: "
                            + e.getMessage());
        }
    }

    /** Judges a log of the kills and keeps the proof, whatever it says. */
    private Exit proof(RigSource source, TrialsRecord record, TrialsCase about, List<String> rest) {
        if (rest.size() != 1) {
            throw new UsageException(
                    "card proof RIG LOG: name the log of the kills. See: liftwright card --help");
        }
        String named = rest.getFirst();
        byte[] bytes = new UserFile(named, UserFile.path(named, around.folder())).read();
        List<String> paths = ProofPath.of(about.rig()).stream().map(ProofPath::name).toList();
        KillProof proof =
                switch (TableReader.kills(named, bytes, paths)) {
                    case TableReading.Whole<KillLog>(var log) ->
                            Proving.of(
                                    Plant.assemble(about.rig()),
                                    log,
                                    about.today(),
                                    about.rigDigest(),
                                    RigReading.digest(bytes));
                    case TableReading.Broken<KillLog>(var problems) ->
                            throw unread("a log of the kills", named, problems);
                };
        Exit exit = show(source, about, trials(source, about).proof(proof));
        try {
            say("wrote " + record.add(proof));
        } catch (IOException e) {
            throw new UsageException("the proof could not be written: " + e.getMessage());
        }
        return exit;
    }

    private Exit today(RigSource source, TrialsRecord record, TrialsCase about, List<String> rest) {
        if (rest.size() > 1) {
            throw new UsageException("card today RIG [DAY]: name one day file");
        }
        UserFile file =
                rest.isEmpty()
                        ? new UserFile(
                                String.valueOf(record.dayFile().getFileName()), record.dayFile())
                        : new UserFile(
                                rest.getFirst(), UserFile.path(rest.getFirst(), around.folder()));
        DayReading read = DayReading.read(file.named(), file.read(), about.rig());
        if (read.day().isEmpty()) {
            throw unread("a day", file.named(), read.problems());
        }
        Day day = read.day().get();
        TrialsCase there = read(record, source, about.rig(), day.date());
        TrialsCase then =
                day.killProof().map(named -> there.with(proof(file, named))).orElse(there);
        var paper = new CardPaper(options, around);
        var progress = progress();
        var answer = trials(source, then).today(day, progress);
        progress.wipe();
        if (answer.isEmpty()) {
            say("stopped; no sheet was made");
            return Exit.STOPPED_EARLY;
        }
        Exit exit = show(source, then, answer.get());
        paper.write(answer.get(), then.rig(), source.file().named())
                .forEach(n -> say("wrote " + n));
        return exit;
    }

    /** The proof that a day file names, beside it. */
    private KillProof proof(UserFile dayFile, String named) {
        if (named.contains("/") || named.contains("\\") || named.equals("..")) {
            throw new UsageException(
                    dayFile.named()
                            + " names the proof "
                            + named
                            + ": it lies beside the day file and is named without a folder");
        }
        var file = new UserFile(named, UserFile.path(named, folderOf(dayFile)));
        ProofReading read = ProofReading.read(named, file.read());
        return read.proof()
                .orElseThrow(() -> unread("a proof of the kills", named, read.problems()));
    }

    private static Path folderOf(UserFile file) {
        return file.path().toAbsolutePath().resolveSibling("");
    }

    private UsageException unread(String what, String named, List<Problem> problems) {
        return new UsageException(
                ProblemReport.write(named, what, "", problems, options.look()).strip());
    }

    private Exit status(RigSource source, TrialsCase about, List<String> rest) {
        if (!rest.isEmpty()) {
            throw new UsageException(
                    "status tells of all cards; the one that shall open is named with "
                            + CardGrammar.FOR);
        }
        Trials trials = trials(source, about);
        Optional<CardId> goal = options.text(CardGrammar.FOR).map(text -> named(trials, text));
        return show(source, about, trials.programme(goal));
    }

    private Exit cards(RigSource source, TrialsCase about, List<String> rest) {
        Trials trials = trials(source, about);
        boolean all = options.has(CardGrammar.ALL);
        if (rest.isEmpty() && !all) {
            if (options.text(Grammar.HTML).isPresent()
                    || options.text(CardGrammar.PDF).isPresent()) {
                throw new UsageException(
                        "which card is to be printed? Name one, or " + CardGrammar.ALL);
            }
            return show(source, about, trials.programme(Optional.empty()));
        }
        List<CardId> ids =
                all
                        ? trials.programme().cards().stream().map(Planned::id).toList()
                        : rest.stream().map(text -> named(trials, text)).toList();
        var paper = new CardPaper(options, around);
        var progress = progress();
        var answer = trials.cards(ids, progress);
        progress.wipe();
        if (answer.isEmpty()) {
            say("stopped; no card was made");
            return Exit.STOPPED_EARLY;
        }
        Exit exit = show(source, about, answer.get());
        paper.write(answer.get(), about.rig(), source.file().named())
                .forEach(n -> say("wrote " + n));
        return exit;
    }

    /**
     * @throws UsageException naming the nearest card
     */
    static CardId named(Trials trials, String text) {
        return CardId.parse(text)
                .filter(id -> trials.programme().card(id).isPresent())
                .orElseThrow(
                        () -> {
                            List<String> known =
                                    trials.programme().cards().stream()
                                            .map(card -> card.id().text())
                                            .toList();
                            return new UsageException(
                                    "this rig has no card "
                                            + text
                                            + Nearest.to(text, new java.util.TreeSet<>(known))
                                                    .map(near -> ": perhaps " + near + " was meant")
                                                    .orElse("")
                                            + ". Its cards: "
                                            + String.join(", ", known));
                        });
    }

    private Trials trials(RigSource source, TrialsCase about) {
        var review =
                new ReviewForCards(
                        source,
                        about.rig(),
                        options.settings(Settings.standard().withoutRemedies()),
                        this::progress);
        return new Trials(
                about, options.settings(Settings.standard().withoutRemedies()), review::answer);
    }

    private Progress progress() {
        boolean watched = around.errIsTerminal() || options.has(Grammar.PROGRESS);
        return new Progress(voice, watched, interrupt);
    }

    private Exit show(RigSource source, TrialsCase about, Answer answer) {
        voice.answer(
                options.json()
                        ? AnswerJson.write(answer, about.rig().name(), Program.VERSION) + "\n"
                        : TextReport.write(
                                answer, about.rig().name(), source.file().named(), options.look()));
        return answer.verdict().outcome() == Outcome.HOLDS
                        && answer.findings().stream()
                                .noneMatch(f -> f.severity() == Finding.Severity.STOPS)
                ? Exit.CLEAR
                : Exit.STOPS;
    }

    /** The day it is, or that was asked for. */
    private LocalDate today() {
        Optional<String> given = options.text(CardGrammar.ON);
        if (given.isEmpty()) {
            return around.today();
        }
        try {
            return LocalDate.parse(given.get());
        } catch (DateTimeParseException e) {
            throw new UsageException(
                    CardGrammar.ON + " is a date such as 2026-03-14, not " + given.get());
        }
    }

    private void say(String sentence) {
        voice.aside(PlainText.of("liftwright: " + sentence, !around.utf8()));
    }
}
