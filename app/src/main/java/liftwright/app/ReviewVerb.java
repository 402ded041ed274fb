package liftwright.app;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.AnswerJson;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.report.PlainText;
import liftwright.report.TextReport;
import liftwright.review.HeatAnswer;
import liftwright.review.LiftQuestion;
import liftwright.review.Sensitivities;
import liftwright.review.Settings;
import liftwright.review.WithSections;
import liftwright.review.compare.Puts;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.rig.text.RigText;

/** {@code review}: asks the questions. */
final class ReviewVerb {

    private final Voice voice;
    private final Surroundings around;
    private final Options options;
    private final Interrupt interrupt;
    private final HeatAsking heat;
    private final Asking asking;
    private Optional<Sheet> sheet = Optional.empty();

    ReviewVerb(Voice voice, Surroundings around, Options options, Interrupt interrupt) {
        this.voice = voice;
        this.around = around;
        this.options = options;
        this.interrupt = interrupt;
        heat = new HeatAsking(options, around);
        asking = new Asking(options, around, heat);
    }

    Exit run() {
        options.look(); // a wrong option shall not wait for the answer
        options.settings(Settings.standard());
        List<String> rigs = rigs();
        if (options.keep().isPresent() && rigs.size() > 1) {
            throw new UsageException(Grammar.KEEP + " writes into one rig file; name only one");
        }
        if (options.keep().isPresent() && questions().size() > 1) {
            throw new UsageException(
                    Grammar.KEEP
                            + " needs the question whose remedy is meant: "
                            + String.join(" or ", Grammar.QUESTIONS));
        }
        if (options.keep().isPresent() && asking.changesTheRig()) {
            throw new UsageException(
                    Grammar.KEEP
                            + " writes into the rig file, which "
                            + Grammar.CHARGE
                            + " and "
                            + Grammar.CELL_TEMPERATURE
                            + " leave as it is; use one or the other");
        }
        options.hops(); // a wrong option shall not wait for the answer
        heat.check(rigs);
        if (!options.searches().isEmpty()) {
            belongs(Grammar.SEARCH, Asking.BALANCE);
        }
        if (options.text(Grammar.MEASURED).isPresent()) {
            belongs(Grammar.MEASURED, Asking.BALANCE);
        }
        for (String option : List.of(Grammar.HOPS, Grammar.PAUSE, Grammar.TRACE)) {
            if (options.text(option).isPresent()) {
                belongs(option, Asking.ENDURANCE, Asking.HEAT);
            }
        }
        if (options.has(Grammar.SENSITIVITIES)) {
            for (String other : List.of(Grammar.HOPS, Grammar.TRACE, Grammar.FULL_THROTTLE)) {
                if (options.has(other)) {
                    throw new UsageException(
                            Grammar.SENSITIVITIES
                                    + " tells of the question as the rig file asks it, without "
                                    + other);
                }
            }
        }
        options.pairs(); // a wrong option shall not wait for the answer
        for (String option : Grammar.OF_FAILURES) {
            if (options.has(option)) {
                belongs(option, Asking.FAILURES);
            }
        }
        for (String option : Grammar.OF_HEAT) {
            if (options.has(option)) {
                belongs(option, Asking.HEAT);
            }
        }
        sheet = options.text(Grammar.HTML).map(name -> sheet(name, rigs));
        var exit = Exit.CLEAR;
        for (String name : rigs) {
            exit = exit.worse(EachRig.run(voice, around, options, name, this::review));
            if (exit == Exit.STOPPED_EARLY) {
                return exit;
            }
            if (!options.json() && !name.equals(rigs.getLast())) {
                voice.answer("\n");
            }
        }
        return exit;
    }

    private void belongs(String option, String... to) {
        if (Arrays.stream(to).noneMatch(questions()::contains)) {
            throw new UsageException(
                    option + " belongs to the question of " + String.join(" or ", to));
        }
    }

    private Sheet sheet(String name, List<String> rigs) {
        if (rigs.size() > 1) {
            throw new UsageException(Grammar.HTML + " writes about one rig; name only one");
        }
        if (options.keep().isPresent()) {
            throw new UsageException(
                    Grammar.HTML + " and " + Grammar.KEEP + ": keep first, then ask again");
        }
        return Sheet.at(name, around);
    }

    /** The question named, or all of them. */
    private List<String> questions() {
        return options.question().map(List::of).orElse(Grammar.QUESTIONS);
    }

    private List<String> rigs() {
        List<String> names = options.names();
        if (options.question().isEmpty()) {
            return names;
        }
        if (names.size() == 1) {
            throw new UsageException(
                    "which rig? Name a rig file after "
                            + names.getFirst()
                            + ". See: liftwright review --help");
        }
        return names.subList(1, names.size());
    }

    private Exit review(RigSource found) {
        Optional<Rig> read = found.read().rig();
        if (read.isEmpty()) {
            voice.answer(CheckVerb.text(found, options));
            return Exit.BAD_INPUT;
        }
        RigSource source = asking.under(found, read.get());
        Rig rig = source.read().rig().orElseThrow();
        var exit = Exit.CLEAR;
        for (String question : questions()) {
            var answer = ask(question, source, rig);
            if (answer.isEmpty()) {
                return Exit.STOPPED_EARLY;
            }
            if (options.keep().isPresent()) {
                return keep(question, source, answer.get(), options.keep().getAsInt());
            }
            if (!options.json() && !question.equals(questions().getFirst())) {
                voice.answer("\n");
            }
            sheet.ifPresent(to -> to.add(answer.get()));
            exit = exit.worse(show(source, rig, answer.get()));
            if (answer.get() instanceof HeatAnswer told) {
                heat.write(told).forEach(named -> say("wrote " + named));
            }
        }
        sheet.ifPresent(
                to -> {
                    to.write(rig, source.file().named(), options.look().units());
                    say("wrote " + to.named());
                });
        return exit;
    }

    private Optional<? extends Answer> ask(String question, RigSource source, Rig rig) {
        boolean watched = around.errIsTerminal() || options.has(Grammar.PROGRESS);
        var progress = new Progress(voice, watched, interrupt);
        var answer = answer(question, source, rig, progress);
        progress.wipe();
        if (answer.isEmpty()) {
            say(
                    "stopped before the doubts were known, so without a verdict. Without them: "
                            + TextReport.nominal(LiftQuestion.nominal(rig), options.look()));
        }
        return answer;
    }

    /**
     * @throws UsageException when what was declared or measured makes no rig that can be computed
     */
    private Optional<? extends Answer> answer(
            String question, RigSource source, Rig rig, Progress progress) {
        try {
            Optional<? extends Answer> answer =
                    asking.ask(
                            question, source, rig, options.settings(Settings.standard()), progress);
            return options.has(Grammar.SENSITIVITIES)
                    ? answer.flatMap(told -> withSensitivities(told, source, rig, progress))
                    : answer;
        } catch (NotToldException | ImpossibleValueException e) {
            throw new UsageException(source.file().named() + ": " + e.getMessage());
        }
    }

    /** With what moves the verdict most, of the question as the rig file asks it. */
    private Optional<WithSections> withSensitivities(
            Answer answer, RigSource source, Rig rig, Progress progress) {
        Optional<Sensitivities> found =
                Puts.question(
                                answer.question(),
                                rig,
                                source.digest(),
                                options.settings(Settings.standard()).withoutRemedies())
                        .sensitivities(progress);
        return progress.stopped()
                ? Optional.empty()
                : Optional.of(
                        new WithSections(
                                answer, found.map(Sensitivities::section).stream().toList()));
    }

    private Exit show(RigSource source, Rig rig, Answer answer) {
        voice.answer(
                options.json()
                        ? AnswerJson.write(answer, rig.name(), Program.VERSION) + "\n"
                        : TextReport.write(
                                answer, rig.name(), source.file().named(), options.look()));
        return answer.verdict().outcome() == Outcome.HOLDS
                        && answer.findings().stream().noneMatch(ReviewVerb::stops)
                ? Exit.CLEAR
                : Exit.STOPS;
    }

    private static boolean stops(Finding finding) {
        return finding.severity() == Finding.Severity.STOPS;
    }

    /** Writes a remedy into the file and asks the file as it then stands. */
    private Exit keep(String question, RigSource source, Answer answer, int number) {
        List<Remedy> remedies = answer.remedies();
        if (number > remedies.size()) {
            throw new UsageException(
                    remedies.isEmpty()
                            ? "the answer has no remedy to keep; nothing was written"
                            : "the answer has "
                                    + remedies.size()
                                    + " remedies and none with the number "
                                    + number
                                    + "; nothing was written");
        }
        Remedy remedy = remedies.get(number - 1);
        if (remedy.effect() instanceof Remedy.Effect.Refused) {
            throw new UsageException(
                    "remedy "
                            + number
                            + " would break another limit, as the answer says; nothing was"
                            + " written");
        }
        RigText kept =
                switch (source.read().text().with(remedy.changes())) {
                    case RigText.Edit.Changed(var text, var _) -> text;
                    case RigText.Edit.Refused(var change, var reason) ->
                            throw new UsageException(
                                    "remedy "
                                            + number
                                            + " cannot be written at "
                                            + change.at()
                                            + ": "
                                            + reason
                                            + " Nothing was written");
                };
        RigReading read = RigReading.of(kept, source.read().beside());
        Rig rig =
                read.rig()
                        .orElseThrow(
                                () ->
                                        new IllegalStateException(
                                                "a remedy that was computed does not read: "
                                                        + read.problems()));
        source.file().replace(source.read().text().bytes(), kept.bytes());
        say("wrote remedy " + number + " into " + source.file().named());
        var after = new RigSource(source.file(), read);
        return ask(question, after, rig)
                .map(next -> show(after, rig, next))
                .orElse(Exit.STOPPED_EARLY);
    }

    private void say(String sentence) {
        voice.aside(PlainText.of("liftwright: " + sentence, !around.utf8()));
    }
}
