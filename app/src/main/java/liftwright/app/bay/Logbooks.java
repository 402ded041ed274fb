package liftwright.app.bay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import liftwright.app.bay.FaultException.Kind;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.entry.SampleTable;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.StoredTest;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;

/**
 * The logbooks beside the rigs of the opened folder. Each has an engine of its own from when its
 * samples are first asked for until the server stops.
 */
final class Logbooks {

    /** Samples of a channel that a test is learned from, about. */
    private static final int LEARNED_FROM = 200_000;

    private final Records records;
    private final Path folder;
    private final Map<Path, Engine> engines = new HashMap<>();

    /** Files that were found as they were written, as they are now. */
    private final Set<Seen> whole = ConcurrentHashMap.newKeySet();

    private record Seen(Path file, long size, long changedMs) {}

    /**
     * @param records say where a rig lies
     * @param folder that is open; a logbook elsewhere is none
     */
    Logbooks(Records records, Path folder) {
        this.records = records;
        this.folder = folder;
    }

    /**
     * That of a rig; it need not be there yet.
     *
     * @param rig its path from the folder
     * @throws FaultException where it leads out of the folder
     */
    Logbook of(String rig) {
        Logbook logbook = Logbook.at(records.of(rig).rigFile());
        Path at = logbook.folder();
        if (Files.isSymbolicLink(at) || (logbook.isThere() && !isWithin(at))) {
            throw new FaultException(
                    Kind.MISSING, "The logbook beside the rig file leads out of the folder.");
        }
        return logbook;
    }

    private boolean isWithin(Path at) {
        try {
            return at.toRealPath().startsWith(folder);
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * One test.
     *
     * @throws FaultException where there is none, or it is not as it was written
     */
    StoredTest test(String rig, String id) {
        return fromDisk(
                () ->
                        EntryId.parse(id)
                                .flatMap(
                                        parsed -> {
                                            try {
                                                return of(rig).test(parsed);
                                            } catch (IOException e) {
                                                throw refused(e);
                                            }
                                        })
                                .orElseThrow(
                                        () ->
                                                new FaultException(
                                                        Kind.MISSING,
                                                        "There is no such test in the logbook.")));
    }

    /** The rig that a test was made with. */
    RigReading rigOf(String rig, StoredTest test) {
        return fromDisk(() -> of(rig).rigOf(test));
    }

    /** The rig that a test was made with, where it reads. */
    Rig declared(RigReading reading) {
        return reading.rig()
                .orElseThrow(
                        () ->
                                new FaultException(
                                        Kind.REFUSED,
                                        "The rig that was written down with this test does not"
                                                + " read as a rig."));
    }

    /** What a test's channels showed, to learn from. */
    Recording recording(String rig, StoredTest test) {
        Logbook logbook = of(rig);
        return fromDisk(() -> logbook.recording(test, engine(logbook)::samples, LEARNED_FROM));
    }

    /**
     * Samples of channels of one table, thinned to their least and greatest where there are more
     * than asked for.
     *
     * @param fromS by the clock of the table, s
     */
    Map<String, Samples> samples(
            String rig,
            StoredTest test,
            SampleTable table,
            List<String> channels,
            double fromS,
            double toS,
            int most) {
        Logbook logbook = of(rig);
        return fromDisk(
                () ->
                        engine(logbook)
                                .samples(
                                        verified(logbook, test, table.file()),
                                        channels,
                                        fromS,
                                        toS,
                                        most));
    }

    /** Held against its digest once, and again when it has changed. */
    private Path verified(Logbook logbook, StoredTest test, String name) throws IOException {
        Path file = test.folder().resolve(name);
        if (!Files.isSymbolicLink(file) && Files.exists(file) && whole.contains(seen(file))) {
            return file;
        }
        Path found = logbook.whole(test, name);
        whole.add(seen(found));
        return found;
    }

    private static Seen seen(Path file) throws IOException {
        return new Seen(file, Files.size(file), Files.getLastModifiedTime(file).toMillis());
    }

    /** That of a logbook, started where none runs. */
    private synchronized Engine engine(Logbook logbook) throws IOException {
        Engine there = engines.get(logbook.folder());
        if (there != null && there.isAlive()) {
            return there;
        }
        if (there != null) {
            there.close();
        }
        Engine fresh = Engine.start(logbook.folder());
        engines.put(logbook.folder(), fresh);
        return fresh;
    }

    /** Ends every engine. */
    synchronized void end() {
        engines.values().forEach(Engine::close);
        engines.clear();
    }

    /** What is read, or cannot be. */
    static <T> T fromDisk(Records.Read<T> read) {
        try {
            return read.now();
        } catch (IOException e) {
            throw refused(e);
        }
    }

    private static FaultException refused(IOException why) {
        return new FaultException(
                Kind.REFUSED,
                AnswerLines.harmless("The logbook cannot be read: " + why.getMessage()));
    }
}
