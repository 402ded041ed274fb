package liftwright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.reading.Channel;
import liftwright.logbook.reading.Clocked;
import liftwright.logbook.reading.Imported;
import liftwright.logbook.reading.LogMap;
import liftwright.logbook.reading.LogOutcome;
import liftwright.logbook.reading.LogReading;
import liftwright.logbook.reading.MapReading;
import liftwright.logbook.reading.Rejected;
import liftwright.logbook.reading.Source;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Track;
import liftwright.report.ProblemReport;
import liftwright.rig.Problem;
import liftwright.rig.Rig;

/** Logs that are named on the command line. */
record LogFiles(Options options, Surroundings around) {

    /**
     * What was read in of logs that are kept nowhere.
     *
     * @param aside rows that were set aside
     */
    record Read(Recording recording, long aside) {}

    /**
     * Reads them in for once; nothing of it stays.
     *
     * @param most samples of a channel, about
     * @throws UsageException where they do not read
     */
    Read read(List<String> files, Rig rig, int most) throws IOException {
        List<Source> sources = sources(files);
        LogMap map = map();
        Path folder = Files.createTempDirectory("liftwright-log");
        try (Engine engine = Engine.start(folder, sources.stream().map(Source::file).toList())) {
            return switch (LogReading.read(sources, map, rig, engine)) {
                case LogOutcome.Refused(var problems) -> throw refused(problems);
                case LogOutcome.Read(var imported) ->
                        new Read(
                                recording(imported, engine, most),
                                imported.rejected().stream().mapToLong(Rejected::count).sum());
            };
        } finally {
            delete(folder);
        }
    }

    private static Recording recording(Imported imported, Engine engine, int most)
            throws IOException {
        List<Track> tracks = new ArrayList<>();
        for (Clocked table : imported.tables()) {
            Map<String, Samples> read =
                    engine.samples(
                            table.parquet(),
                            table.channels().stream().map(Channel::name).toList(),
                            most);
            for (Channel channel : table.channels()) {
                Optional.ofNullable(read.get(channel.name()))
                        .map(samples -> samples.later(table.shift().seconds()))
                        .map(channel::with)
                        .ifPresent(tracks::add);
            }
        }
        return new Recording(tracks);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }

    UsageException refused(List<Problem> problems) {
        return new UsageException(
                ProblemReport.write(
                                problems.getFirst().at().file(),
                                "a log",
                                "",
                                problems,
                                options.look())
                        .strip());
    }

    List<Source> sources(List<String> files) {
        var sources = new ArrayList<Source>();
        for (String named : files) {
            Path file = UserFile.path(named, around.folder());
            if (!Files.isRegularFile(file)) {
                throw new UsageException("no file " + named);
            }
            sources.add(new Source(named, file));
        }
        return sources;
    }

    LogMap map() {
        Optional<String> named = options.text(LogGrammar.MAP);
        if (named.isEmpty()) {
            return LogMap.NONE;
        }
        var file = new UserFile(named.get(), UserFile.path(named.get(), around.folder()));
        MapReading read = MapReading.read(file.named(), file.read());
        return read.map()
                .orElseThrow(
                        () ->
                                new UsageException(
                                        ProblemReport.write(
                                                        file.named(),
                                                        "a map of a log",
                                                        "",
                                                        read.problems(),
                                                        options.look())
                                                .strip()));
    }
}
