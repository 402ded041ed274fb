package liftwright.app;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.AnswerJson;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.app.flights.FlightsFile;
import liftwright.app.flights.ManyFlights;
import liftwright.app.flights.NotKeptException;
import liftwright.flight.FlightAnswer;
import liftwright.flight.disperse.FlightRange;
import liftwright.flight.disperse.FlightSet;
import liftwright.flight.disperse.FlightsOf;
import liftwright.flight.disperse.RangeFlying;
import liftwright.flight.profile.Profile;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.report.PlainText;
import liftwright.report.TextReport;
import liftwright.review.Settings;
import liftwright.rig.Rig;
import liftwright.rig.file.Disk;
import liftwright.rig.file.RigReading;

/** {@code disperse}: many flights, each with every tolerance drawn. */
final class DisperseVerb {

    private static final int USUAL_FLIGHTS = 200;
    private static final int MOST = 99_999;
    private static final long PAUSE_NS = 5_000_000_000L;

    private final Voice voice;
    private final Surroundings around;
    private final Options options;
    private final Interrupt interrupt;

    DisperseVerb(Voice voice, Surroundings around, Options options, Interrupt interrupt) {
        this.voice = voice;
        this.around = around;
        this.options = options;
        this.interrupt = interrupt;
    }

    /**
     * What is flown.
     *
     * @param command that flies one of its flights again, without number and seed
     * @param stem of the names of its files
     */
    private record Task(
            RigSource source,
            Rig rig,
            Profile profile,
            FlightsOf of,
            String command,
            String stem) {}

    Exit run() {
        options.look(); // a wrong option shall not wait for the answer
        double share = share();
        String named =
                options.text(DisperseGrammar.PROFILE)
                        .orElseThrow(
                                () ->
                                        new UsageException(
                                                "which profile? Name its file with "
                                                        + DisperseGrammar.PROFILE));
        String rigNamed = options.names().getFirst();
        RigSource source =
                RigSource.of(UserFile.of(rigNamed, around.folder()))
                        .asDeclared(options.has(Grammar.AS_DECLARED));
        Optional<Rig> rig = source.read().rig();
        if (rig.isEmpty()) {
            voice.answer(CheckVerb.text(source, options));
            return Exit.BAD_INPUT;
        }
        UserFile file = UserFile.of(named, around.folder(), "profile.yaml");
        Optional<ProfileFile> read = ProfileFile.read(file, rig.get(), voice, options);
        if (read.isEmpty()) {
            return Exit.BAD_INPUT;
        }
        List<FlightSet> merged = merged();
        long seed =
                options.seed()
                        .orElseGet(
                                () ->
                                        merged.isEmpty()
                                                ? Settings.standard().seed()
                                                : merged.getFirst().of().seed());
        var of =
                new FlightsOf(
                        Program.VERSION,
                        source.digest(),
                        rig.get().corrections().isEmpty()
                                ? "none"
                                : rig.get().corrections().digest(),
                        read.get().digest(),
                        seed);
        String command = "liftwright fly " + quoted(rigNamed) + " --profile " + quoted(named);
        if (options.has(Grammar.AS_DECLARED)) {
            command += " " + Grammar.AS_DECLARED;
        }
        var task =
                new Task(source, rig.get(), read.get().profile(), of, command, stem(file.path()));
        try {
            return flown(task, merged, share);
        } catch (NotToldException | ImpossibleValueException e) {
            throw new UsageException(source.file().named() + ": " + e.getMessage());
        } catch (NotKeptException e) {
            throw new UsageException(String.valueOf(e.getMessage()));
        }
    }

    private Exit flown(Task task, List<FlightSet> merged, double share) {
        FlightsFile file = file(task);
        FlightSet kept =
                FlightsFile.together(
                        task.of, file.named(), file.read().stream().toList(), List.of());
        if (!merged.isEmpty()) {
            // What does not belong to this rig is told with the files that hold it.
            kept =
                    FlightsFile.together(
                            task.of,
                            "one of the files after " + DisperseGrammar.MERGE,
                            List.of(kept),
                            merged);
            kept = file.add(kept);
        }
        var flights = new ManyFlights(task.rig, task.profile, task.of, task.command);
        Optional<FlightRange> range = range(task.of, !merged.isEmpty());
        if (range.isPresent()) {
            Optional<FlightAnswer> refusal = flights.refusal();
            if (refusal.isPresent()) {
                say("no flight was flown");
                return show(task, refusal.get());
            }
            RangeFlying.Result result = fly(flights, range.get(), kept, file);
            kept = result.set();
            if (!result.whole()) {
                say(
                        "stopped. "
                                + (range.get().to()
                                        - range.get().from()
                                        + 1
                                        - kept.missing(range.get()).length)
                                + " of these flights are kept in "
                                + file.named()
                                + "; the same command flies the others");
                return Exit.STOPPED_EARLY;
            }
        }
        FlightAnswer answer =
                flights.answer(
                        kept,
                        share,
                        share == ManyFlights.USUAL_SHARE
                                ? "common practice"
                                : "as asked with " + DisperseGrammar.SHARE);
        say("the flights are kept in " + file.named());
        return show(task, answer);
    }

    private RangeFlying.Result fly(
            ManyFlights flights, FlightRange range, FlightSet kept, FlightsFile file) {
        boolean watched = options.has(Grammar.PROGRESS) || around.errIsTerminal();
        var progress = new Progress(voice, watched, interrupt);
        RangeFlying.Result result =
                flights.fly(
                        range,
                        kept,
                        file,
                        new ManyFlights.Pace(threads(), RangeFlying.USUAL_BLOCK, PAUSE_NS),
                        progress);
        progress.wipe();
        return result;
    }

    private Exit show(Task task, FlightAnswer answer) {
        voice.answer(
                options.json()
                        ? AnswerJson.write(answer, task.rig.name(), Program.VERSION) + "\n"
                        : TextReport.write(
                                answer,
                                task.rig.name(),
                                task.source.file().named(),
                                options.look()));
        return answer.verdict().outcome() == Outcome.HOLDS
                        && answer.findings().stream()
                                .noneMatch(f -> f.severity() == Finding.Severity.STOPS)
                ? Exit.CLEAR
                : Exit.STOPS;
    }

    /** What other runs kept. */
    private List<FlightSet> merged() {
        List<FlightSet> sets = new ArrayList<>();
        for (String named : options.texts(DisperseGrammar.MERGE)) {
            var file = new FlightsFile(named, UserFile.path(named, around.folder()), new Disk());
            try {
                sets.add(file.read().orElseThrow(() -> new UsageException("no file " + named)));
            } catch (NotKeptException e) {
                throw new UsageException(String.valueOf(e.getMessage()));
            }
        }
        return sets;
    }

    /** What is to be flown; empty where files are put together and nothing more is asked. */
    private Optional<FlightRange> range(FlightsOf of, boolean merging) {
        var flights = options.counted(DisperseGrammar.FLIGHTS, MOST);
        var from = options.counted(DisperseGrammar.FROM, MOST);
        var to = options.counted(DisperseGrammar.TO, MOST);
        if (merging && flights.isEmpty() && from.isEmpty() && to.isEmpty()) {
            return Optional.empty();
        }
        int last = to.orElse(flights.orElse(Math.max(USUAL_FLIGHTS, from.orElse(1))));
        if (from.orElse(1) > last) {
            throw new UsageException(
                    DisperseGrammar.FROM + " " + from.orElse(1) + " lies behind the last, " + last);
        }
        return Optional.of(new FlightRange(of, from.orElse(1), last));
    }

    /** Its name tells what is in it, so that flights of a changed rig get a file of their own. */
    private FlightsFile file(Task task) {
        Optional<String> into = options.text(DisperseGrammar.INTO);
        if (into.isPresent()) {
            return new FlightsFile(
                    into.get(), UserFile.path(into.get(), around.folder()), new Disk());
        }
        String digest =
                RigReading.digest(task.of.toString().getBytes(StandardCharsets.UTF_8))
                        .substring("sha256:".length())
                        .substring(0, 8);
        String name = task.stem + "-" + task.of.seed() + "-" + digest + ".csv";
        Path path = task.source.file().path().toAbsolutePath().resolveSibling("flights");
        return new FlightsFile(
                Path.of("flights", name) + " beside the rig file", path.resolve(name), new Disk());
    }

    private static String stem(Path profile) {
        String name = String.valueOf(profile.getFileName());
        String stem = name.replaceFirst("\\.ya?ml$", "").replaceAll("[^A-Za-z0-9_-]", "-");
        return stem.substring(0, Math.min(60, stem.length()));
    }

    private double share() {
        String text = options.text(DisperseGrammar.SHARE).orElse("95%");
        String number = text.strip().replaceFirst("\\s*%$", "");
        double share =
                number.matches("[0-9]{1,3}(\\.[0-9]{1,6})?") ? Double.parseDouble(number) : 0;
        if (text.strip().endsWith("%")) {
            share /= 100;
        }
        if (!(share > 0 && share < 1)) {
            throw new UsageException(
                    DisperseGrammar.SHARE + " is a share between 0 % and 100 %, not " + text);
        }
        return share;
    }

    private static String quoted(String name) {
        return name.matches("[A-Za-z0-9_./+-]+") ? name : "'" + name.replace("'", "'\\''") + "'";
    }

    private int threads() {
        return options.threads().orElse(Runtime.getRuntime().availableProcessors());
    }

    private void say(String sentence) {
        voice.aside(PlainText.of("liftwright: " + sentence, !around.utf8()));
    }
}
