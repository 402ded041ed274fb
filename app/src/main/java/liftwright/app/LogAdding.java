package liftwright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import liftwright.app.record.TestKeeping;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.entry.EntryReading;
import liftwright.logbook.entry.TestEntry;
import liftwright.logbook.entry.TestEntry.Media;
import liftwright.logbook.entry.TestEntry.Person;
import liftwright.logbook.entry.TestEntry.Snapshot;
import liftwright.logbook.entry.TestEntry.Weather;
import liftwright.logbook.entry.Typed;
import liftwright.logbook.reading.Imported;
import liftwright.logbook.reading.LogMap;
import liftwright.logbook.reading.LogOutcome;
import liftwright.logbook.reading.LogReading;
import liftwright.logbook.reading.Source;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.StoredTest;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.trials.CardId;

/** {@code log add}: reads the logs of a test in and keeps them. */
record LogAdding(
        Options options, Surroundings around, Interrupt interrupt, Supplier<Progress> progress) {

    /** What is said of a test besides its logs. */
    private record Said(
            Optional<CardId> card,
            List<Person> people,
            Weather weather,
            Optional<liftwright.quantity.Quantity> hours,
            List<Media> media) {}

    StoredTest add(RigSource source, Logbook logbook, List<String> files, LocalDate date)
            throws IOException {
        if (files.isEmpty()) {
            throw new UsageException(
                    "log add RIG FILE…: name the logs of the test. See: liftwright log --help");
        }
        LogFiles logs = new LogFiles(options, around);
        List<Source> sources = logs.sources(files);
        Said said = said(source.read().rig().orElseThrow());
        LogMap map = logs.map();
        boolean fresh = !Files.exists(logbook.folder());
        Files.createDirectories(logbook.folder());
        var shown = progress.get();
        shown.stage("reading logs in", 1);
        try (Engine engine =
                Engine.start(logbook.folder(), sources.stream().map(Source::file).toList())) {
            LogOutcome outcome =
                    LogReading.read(sources, map, source.read().rig().orElseThrow(), engine);
            return switch (outcome) {
                case LogOutcome.Refused(var problems) -> throw logs.refused(problems);
                case LogOutcome.Read(var imported) ->
                        keep(source, logbook, sources, imported, said, date);
            };
        } finally {
            shown.wipe();
            if (fresh) {
                removeIfEmpty(logbook.folder());
            }
        }
    }

    /** A logbook that was begun for nothing. */
    private static void removeIfEmpty(Path folder) throws IOException {
        try (var all = Files.list(folder)) {
            if (all.findAny().isPresent()) {
                return;
            }
        }
        Files.delete(folder);
    }

    private Said said(Rig rig) {
        return new Said(
                options.text(LogGrammar.CARD).map(text -> card(text, rig)),
                people(),
                options.text(LogGrammar.WEATHER)
                        .map(text -> whole(LogGrammar.WEATHER, Typed.weather(split(text))))
                        .orElse(Weather.UNKNOWN),
                options.text(LogGrammar.HOURS)
                        .map(text -> whole(LogGrammar.HOURS, Typed.hours(text))),
                media());
    }

    private static CardId card(String text, Rig rig) {
        return CardId.parse(text)
                .orElseThrow(
                        () ->
                                new UsageException(
                                        "no card is called "
                                                + text
                                                + ": liftwright card lists those of "
                                                + (rig.name().isBlank()
                                                        ? "this rig"
                                                        : rig.name())));
    }

    /**
     * @throws UsageException where it does not read
     */
    private <T> T whole(String option, EntryReading<T> reading) {
        return reading.entry()
                .orElseThrow(
                        () ->
                                new UsageException(
                                        option
                                                + " does not read: "
                                                + reading.problems().stream()
                                                        .map(p -> words(p))
                                                        .collect(
                                                                java.util.stream.Collectors.joining(
                                                                        "; "))));
    }

    static String words(Problem problem) {
        return problem.at().path()
                + (problem.at().path().isEmpty() ? "" : ": ")
                + problem.found()
                + "; expected "
                + problem.expected()
                + (problem.advice().isEmpty() ? "" : ". " + problem.advice());
    }

    static List<String> split(String text) {
        return Arrays.stream(text.split(",", -1))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private List<Person> people() {
        return options.text(LogGrammar.BY).map(LogAdding::split).orElse(List.of()).stream()
                .map(
                        word -> {
                            int is = word.indexOf('=');
                            return is < 0
                                    ? new Person(word, "")
                                    : new Person(
                                            word.substring(0, is).strip(),
                                            word.substring(is + 1).strip());
                        })
                .peek(
                        person -> {
                            if (person.name().isEmpty()) {
                                throw new UsageException(
                                        LogGrammar.BY + " is NAME=ROLE, several with commas");
                            }
                        })
                .toList();
    }

    private List<Media> media() {
        var media = new ArrayList<Media>();
        for (String named :
                options.text(LogGrammar.MEDIA).map(LogAdding::split).orElse(List.of())) {
            Path file = UserFile.path(named, around.folder());
            try {
                media.add(
                        new Media(
                                named, "sha256:" + liftwright.logbook.store.FileHash.of(file), ""));
            } catch (IOException e) {
                throw new UsageException("cannot read " + named + ": " + e.getMessage());
            }
        }
        return media;
    }

    private StoredTest keep(
            RigSource source,
            Logbook logbook,
            List<Source> sources,
            Imported imported,
            Said said,
            LocalDate date)
            throws IOException {
        RigReading rig = source.read();
        var entry =
                new TestEntry(
                        said.card(),
                        date,
                        said.people(),
                        said.weather(),
                        options.text(LogGrammar.NOTE).orElse(""),
                        options.text(LogGrammar.COST).orElse(""),
                        said.hours(),
                        said.media(),
                        options.text(LogGrammar.INSTRUMENTS)
                                .map(LogAdding::split)
                                .orElse(List.of()),
                        new Snapshot(
                                String.valueOf(source.file().path().getFileName()),
                                source.digest(),
                                rig.rig().map(Rig::revision).orElse(0)),
                        List.of());
        TestKeeping kept = TestKeeping.of(entry, sources, imported);
        return logbook.add(kept.entry(), rig, kept.files(), interrupt::asked);
    }
}
