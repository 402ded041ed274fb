package liftwright.logbook.reading;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import liftwright.logbook.engine.Engine;
import liftwright.plant.recording.Samples;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;

/** An engine and a rig (Curlew: fans {@code fan.1} to {@code fan.8}, packs {@code p.1} to 4). */
final class Logs implements AutoCloseable {

    final Path folder;
    final Engine engine;
    final Rig rig;
    private int written;

    Logs(Path folder) throws IOException {
        this.folder = folder;
        engine = Engine.start(folder);
        Path curlew = Path.of("..", "examples", "curlew");
        rig =
                RigReading.read(
                                "rig.yaml",
                                RigFiles.read(curlew.resolve("rig.yaml")),
                                new Folder(curlew))
                        .rig()
                        .orElseThrow();
    }

    Source file(String text) throws IOException {
        return file(text.getBytes(StandardCharsets.UTF_8));
    }

    Source file(byte[] bytes) throws IOException {
        Path file = folder.resolve("log" + ++written + ".csv");
        return new Source("log.csv", Files.write(file, bytes));
    }

    LogOutcome read(Source... sources) throws IOException {
        return LogReading.read(List.of(sources), LogMap.NONE, rig, engine);
    }

    LogOutcome read(LogMap map, Source... sources) throws IOException {
        return LogReading.read(List.of(sources), map, rig, engine);
    }

    Imported whole(LogOutcome outcome) {
        return switch (outcome) {
            case LogOutcome.Read(var imported) -> imported;
            case LogOutcome.Refused(var problems) ->
                    throw new AssertionError(problems.stream().map(Logs::told).toList());
        };
    }

    Map<String, Samples> samples(Clocked table) throws IOException {
        var names = table.channels().stream().map(Channel::name).toList();
        return engine.samples(table.parquet(), names, Integer.MAX_VALUE);
    }

    Samples samples(Clocked table, String column) throws IOException {
        Samples samples = samples(table).get(column);
        if (samples == null) {
            throw new AssertionError("no samples of " + column);
        }
        return samples;
    }

    static String told(Problem p) {
        return p.code()
                + " "
                + p.at().line()
                + ":"
                + p.at().column()
                + " found "
                + p.found()
                + " | expected "
                + p.expected()
                + (p.advice().isEmpty() ? "" : " | " + p.advice());
    }

    @Override
    public void close() {
        engine.close();
    }
}
