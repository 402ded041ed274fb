package liftwright.app.bay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import liftwright.app.bay.FaultException.Kind;

/**
 * Logs on their way from the page, piece by piece, into files that its owner alone may read. They
 * go when they are let go, and at the latest with the server.
 */
final class Incoming {

    /** Of one log: more than an hour of every channel. */
    static final long MOST_BYTES = 256L << 20;

    /** Of all logs that nobody has let go. */
    static final long MOST_BYTES_OF_ALL = 1L << 30;

    /** Logs of one tab. */
    static final int MOST_LOGS = 16;

    private static final int MOST_NAME = 120;

    /**
     * A log, or the beginning of one.
     *
     * @param id names it on this server
     * @param session whose it is; no other reads it
     * @param name of the file, for the reader
     * @param size bytes so far
     */
    record Log(String id, Session session, String name, Path file, long size) {}

    private final Path own;
    private final Map<String, Log> logs = new LinkedHashMap<>();
    private Path folder;
    private int last;

    /**
     * @param own folder of the server
     */
    Incoming(Path own) {
        this.own = own;
        this.folder = own;
    }

    /** The beginning of a log. */
    synchronized Log begin(Session session, String name) throws IOException {
        if (logs.values().stream().filter(log -> log.session().equals(session)).count()
                >= MOST_LOGS) {
            throw new FaultException(
                    Kind.TOO_LARGE, "A test is read in from at most " + MOST_LOGS + " files.");
        }
        if (folder.equals(own)) {
            folder = Files.createTempDirectory(own, "incoming-");
        }
        String id = "log-" + ++last;
        Path file = Files.createFile(folder.resolve(id));
        var log = new Log(id, session, plain(name), file, 0);
        logs.put(id, log);
        return log;
    }

    /** The last step of a path, with nothing in it that a name should not have. */
    private static String plain(String name) {
        String step = name.replace('\\', '/');
        step = step.substring(step.lastIndexOf('/') + 1).replaceAll("[^\\p{L}\\p{Nd} ._-]", "_");
        step = step.length() > MOST_NAME ? step.substring(step.length() - MOST_NAME) : step;
        return step.replace(".", "").isBlank() ? "log" : step;
    }

    /**
     * The next piece.
     *
     * @param at how much has come before it
     */
    synchronized Log add(Session session, String id, double at, byte[] piece) throws IOException {
        Log log = of(session, id);
        if (at != log.size()) {
            throw new FaultException(
                    Kind.STALE, "A piece of the log is missing: send it from the beginning.");
        }
        long all = logs.values().stream().mapToLong(Log::size).sum() + piece.length;
        if (log.size() + piece.length > MOST_BYTES || all > MOST_BYTES_OF_ALL) {
            throw new FaultException(
                    Kind.TOO_LARGE,
                    "A log may have "
                            + (MOST_BYTES >> 20)
                            + " MB: use liftwright log add for larger ones.");
        }
        Files.write(log.file(), piece, StandardOpenOption.APPEND);
        var longer = new Log(id, session, log.name(), log.file(), log.size() + piece.length);
        logs.put(id, longer);
        return longer;
    }

    /**
     * @throws FaultException where that tab has none of that name
     */
    synchronized Log of(Session session, String id) {
        Log log = logs.get(id);
        if (log == null || !log.session().equals(session)) {
            throw new FaultException(Kind.MISSING, "That log is gone: choose it again.");
        }
        return log;
    }

    /** They are not needed any more; those that are not there are not, either. */
    synchronized void forget(Session session, List<String> ids) throws IOException {
        for (String id : ids) {
            Log log = logs.get(id);
            if (log != null && log.session().equals(session)) {
                logs.remove(id);
                Files.deleteIfExists(log.file());
            }
        }
    }

    /** Takes everything away. */
    synchronized void end() {
        logs.clear();
        if (!folder.equals(own)) {
            delete(folder);
        }
    }

    /** A folder and all in it, as far as it goes: what stays is hidden and harmless. */
    static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.toList().reversed()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException e) {
            folder.toFile().deleteOnExit();
        }
    }
}
