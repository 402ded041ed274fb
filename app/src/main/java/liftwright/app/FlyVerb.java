package liftwright.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Locale;
import java.util.Optional;
import liftwright.answer.AnswerJson;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.flight.FlightAnswer;
import liftwright.flight.ask.FlightQuestion;
import liftwright.flight.ask.SeriesCsv;
import liftwright.flight.loops.LoopExport;
import liftwright.flight.profile.Profile;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.report.PlainText;
import liftwright.report.TextReport;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.rig.Rig;

/** {@code fly}: a profile flown. */
final class FlyVerb {

    private static final int MOST_FLIGHTS = 10_000_000;

    private final Voice voice;
    private final Surroundings around;
    private final Options options;
    private final Interrupt interrupt;

    FlyVerb(Voice voice, Surroundings around, Options options, Interrupt interrupt) {
        this.voice = voice;
        this.around = around;
        this.options = options;
        this.interrupt = interrupt;
    }

    Exit run() {
        options.look(); // a wrong option shall not wait for the answer
        Settings settings = options.settings(Settings.standard().withoutRemedies());
        int number = number();
        if (options.names().size() > 1) {
            throw new UsageException("fly RIG: name one rig");
        }
        RigSource source =
                RigSource.of(UserFile.of(options.names().getFirst(), around.folder()))
                        .asDeclared(options.has(Grammar.AS_DECLARED));
        Optional<Rig> rig = source.read().rig();
        if (rig.isEmpty()) {
            voice.answer(CheckVerb.text(source, options));
            return Exit.BAD_INPUT;
        }
        Optional<Sheet> sheet = options.text(Grammar.HTML).map(named -> Sheet.at(named, around));
        try {
            Optional<Profile> profile = profile(rig.get());
            return profile.isEmpty()
                    ? Exit.BAD_INPUT
                    : flown(source, rig.get(), profile.get(), settings, number, sheet);
        } catch (NotToldException | ImpossibleValueException e) {
            throw new UsageException(source.file().named() + ": " + e.getMessage());
        }
    }

    /** Empty where it has problems, which are told. */
    private Optional<Profile> profile(Rig rig) {
        Optional<String> named = options.text(FlyGrammar.PROFILE);
        if (named.isEmpty()) {
            return Optional.of(Profile.usual());
        }
        UserFile file = UserFile.of(named.get(), around.folder(), "profile.yaml");
        return ProfileFile.read(file, rig, voice, options).map(ProfileFile::profile);
    }

    private Exit flown(
            RigSource source,
            Rig rig,
            Profile profile,
            Settings settings,
            int number,
            Optional<Sheet> sheet) {
        FlightQuestion question =
                FlightQuestion.ofNumber(rig, source.digest(), profile, settings, number);
        boolean watched = options.has(Grammar.PROGRESS) || around.errIsTerminal();
        var progress = new Progress(voice, watched, interrupt);
        Optional<FlightAnswer> answer = question.answer(Stage.WHOLE, progress);
        progress.wipe();
        if (answer.isEmpty()) {
            say("stopped; the profile was not flown to its end");
            return Exit.STOPPED_EARLY;
        }
        voice.answer(
                options.json()
                        ? AnswerJson.write(answer.get(), rig.name(), Program.VERSION) + "\n"
                        : TextReport.write(
                                answer.get(), rig.name(), source.file().named(), options.look()));
        sheet.ifPresent(
                of -> {
                    of.add(answer.get());
                    of.write(rig, source.file().named(), options.look().units());
                    say("wrote " + of.named());
                });
        options.text(FlyGrammar.CSV)
                .ifPresent(
                        named ->
                                write(
                                        named,
                                        question.shown().map(one -> SeriesCsv.of(one.series())),
                                        "nothing was flown"));
        options.text(FlyGrammar.LOOPS)
                .ifPresent(named -> write(named, loops(question, named), "no loops are granted"));
        options.text(FlyGrammar.ALLOCATION)
                .ifPresent(
                        named ->
                                write(
                                        named,
                                        export(question).map(LoopExport::matrixCsv),
                                        "no loops are granted"));
        boolean clear =
                answer.get().verdict().outcome() == Outcome.HOLDS
                        && answer.get().findings().stream()
                                .noneMatch(f -> f.severity() == Finding.Severity.STOPS);
        return clear ? Exit.CLEAR : Exit.STOPS;
    }

    private static Optional<LoopExport> export(FlightQuestion question) {
        return question.granted().map(LoopExport::new);
    }

    private static Optional<String> loops(FlightQuestion question, String named) {
        boolean json = named.toLowerCase(Locale.ROOT).endsWith(".json");
        return export(question).map(json ? LoopExport::json : LoopExport::gainsCsv);
    }

    private void write(String named, Optional<String> text, String whyNot) {
        if (text.isEmpty()) {
            say(whyNot + ": " + named + " was not written");
            return;
        }
        new UserFile(named, UserFile.path(named, around.folder()))
                .create(text.get().getBytes(UTF_8));
        say("wrote " + named);
    }

    private int number() {
        Optional<String> text = options.text(FlyGrammar.FLIGHT);
        if (text.isEmpty()) {
            return 0;
        }
        if (!text.get().matches("[0-9]{1,8}") || Integer.parseInt(text.get()) > MOST_FLIGHTS) {
            throw new UsageException(
                    FlyGrammar.FLIGHT
                            + " is a whole number from 0 to "
                            + MOST_FLIGHTS
                            + ", not "
                            + text.get());
        }
        return Integer.parseInt(text.get());
    }

    private void say(String sentence) {
        voice.aside(PlainText.of("liftwright: " + sentence, !around.utf8()));
    }
}
