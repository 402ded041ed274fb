package liftwright.app.bay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.reading.Imported;
import liftwright.logbook.reading.LogMap;
import liftwright.logbook.reading.LogOutcome;
import liftwright.logbook.reading.LogReading;
import liftwright.logbook.reading.Source;
import liftwright.rig.Rig;

/**
 * Logs of one test that are read in and not kept yet. What came of it lies in a folder of its own
 * until this is closed.
 */
final class ReadIn implements AutoCloseable {

    private final String id;
    private final List<Source> sources;
    private final Path folder;
    private final AtomicReference<Optional<Engine>> engine =
            new AtomicReference<>(Optional.empty());
    private volatile Optional<Imported> imported = Optional.empty();
    private volatile boolean closed;

    /**
     * @param id names it on this server
     * @param own folder of the server
     */
    ReadIn(String id, List<Source> sources, Path own) throws IOException {
        this.id = id;
        this.sources = List.copyOf(sources);
        folder = Files.createTempDirectory(own, "reading-");
    }

    String id() {
        return id;
    }

    List<Source> sources() {
        return sources;
    }

    /** What was understood; empty before it was read, and where it was refused. */
    Optional<Imported> imported() {
        return closed ? Optional.empty() : imported;
    }

    /** Reads it. */
    LogOutcome read(LogMap map, Rig rig) throws IOException {
        Engine started = Engine.start(folder, sources.stream().map(Source::file).toList());
        engine.set(Optional.of(started));
        if (closed) {
            close();
        }
        LogOutcome outcome = LogReading.read(sources, map, rig, started);
        if (outcome instanceof LogOutcome.Read(Imported read)) {
            imported = Optional.of(read);
        }
        return outcome;
    }

    /** Ends it, also while it is read: reading then fails. */
    @Override
    public void close() {
        closed = true;
        engine.getAndSet(Optional.empty()).ifPresent(Engine::close);
        Incoming.delete(folder);
    }
}
