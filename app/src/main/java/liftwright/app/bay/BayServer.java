package liftwright.app.bay;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

/** The server of one opened folder, from the link that it prints to its clean end. */
public final class BayServer implements AutoCloseable {

    /** Longest wait for requests to end by themselves. */
    private static final long PATIENCE_MS = 1_500;

    /** Connections that may wait to be taken. */
    private static final int WAITING = 64;

    private static final String JUMP = "open.html";

    static {
        // Limits that the Java server takes from here and nowhere else; a value that stands wins.
        limit("sun.net.httpserver.maxReqTime", "30"); // s until head and body must be read
        limit("sun.net.httpserver.maxReqHeaders", "60");
        limit("jdk.httpserver.maxConnections", "200");
        // One who sent too much reads why only after all of it went out.
        limit("sun.net.httpserver.drainAmount", Integer.toString(2 * Route.TEXT));
        limit("sun.net.httpserver.nodelay", "true"); // a line is sent when it is told
    }

    private final HttpServer server;
    private final ExecutorService threads;
    private final Door door;
    private final Deadlines deadlines;
    private final Entry entry;
    private final Bay bay;
    private final FolderLock lock;
    private final AtomicBoolean closed = new AtomicBoolean();

    private BayServer(
            HttpServer server,
            ExecutorService threads,
            Door door,
            Deadlines deadlines,
            Entry entry,
            Bay bay,
            FolderLock lock) {
        this.server = server;
        this.threads = threads;
        this.door = door;
        this.deadlines = deadlines;
        this.entry = entry;
        this.bay = bay;
        this.lock = lock;
    }

    private static void limit(String name, String value) {
        if (System.getProperty(name) == null) {
            System.setProperty(name, value);
        }
    }

    /**
     * What to open.
     *
     * @param folder with rig files in it
     * @param rig to show first, its path from the folder
     * @param port to listen on; 0 for a free one
     * @param version of the program, for the reader
     * @param faults is told what went wrong by a mistake of ours
     */
    public record Opening(
            Path folder,
            Optional<String> rig,
            int port,
            String version,
            Consumer<Throwable> faults) {}

    /** What came of opening. */
    public sealed interface Opened {

        /** A server that runs until it is closed. */
        record Here(BayServer server) implements Opened {}

        /**
         * Another process serves that folder already.
         *
         * @param link it gave, good once
         */
        record Already(String link) implements Opened {}

        /**
         * Cannot be opened.
         *
         * @param sentence why, for the user
         */
        record Not(String sentence) implements Opened {}
    }

    /** Whether the page was built into this program. */
    public static boolean hasPage() {
        return PageFiles.present();
    }

    /** Opens a folder: starts a server, or asks the one that runs for another link. */
    public static Opened open(Opening what) {
        return open(what, Limits.STANDARD, List.of());
    }

    /** The same with other limits and more routes. */
    static Opened open(Opening what, Limits limits, List<Route> more) {
        try {
            var folder = new OpenedFolder(what.folder());
            what.rig().ifPresent(folder::rig);
            Optional<FolderLock> lock = FolderLock.take(folder.own());
            if (lock.isEmpty()) {
                return OtherServer.link(folder.own(), what.rig());
            }
            Optional<Path> above = openAbove(folder);
            if (above.isPresent()) {
                lock.get().close();
                return OtherServer.link(
                        above.get().resolve(OpenedFolder.OWN),
                        what.rig().map(rig -> folder.from(above.get(), rig)));
            }
            try {
                return new Opened.Here(start(what, folder, lock.get(), limits, more));
            } catch (IOException | RuntimeException e) {
                lock.get().close();
                throw e;
            }
        } catch (FaultException e) {
            return new Opened.Not(e.sentence());
        } catch (BindException e) {
            return new Opened.Not(
                    "port " + what.port() + " is taken; leave --port out for a free one");
        } catch (NoSuchFileException e) {
            return new Opened.Not("no folder " + what.folder());
        } catch (AccessDeniedException e) {
            return new Opened.Not(
                    "may not write into "
                            + what.folder()
                            + ", where what is not saved yet is kept: copy the folder to a place of"
                            + " your own");
        } catch (IOException e) {
            return new Opened.Not("cannot open " + what.folder() + ": " + e.getMessage());
        }
    }

    /** A folder around this one that is open: its page shows this one's rigs too. */
    private static Optional<Path> openAbove(OpenedFolder folder) {
        for (Path above = folder.path().getParent(); above != null; above = above.getParent()) {
            if (FolderLock.held(above.resolve(OpenedFolder.OWN), folder.own())) {
                return Optional.of(above);
            }
        }
        return Optional.empty();
    }

    private static BayServer start(
            Opening what, OpenedFolder folder, FolderLock lock, Limits limits, List<Route> more)
            throws IOException {
        HttpServer server = listening(what.port(), lock.lastPort());
        int port = server.getAddress().getPort();
        var bay = new Bay(folder, what.version(), what.rig(), what.faults());
        String secret = bay.keys().secret();
        var entry = new Entry(bay, "http://127.0.0.1:" + port, secret);
        var deadlines = new Deadlines();
        Map<String, Route> routes = new HashMap<>(AllRoutes.of(bay));
        more.forEach(route -> routes.put(route.name(), route));
        var door = new Door(new Gate(port), entry, routes, bay, deadlines, limits);
        ExecutorService threads = Executors.newVirtualThreadPerTaskExecutor();
        server.setExecutor(threads);
        server.createContext("/", door);
        server.start();
        var started = new BayServer(server, threads, door, deadlines, entry, bay, lock);
        try {
            lock.tell(new FolderLock.Listening(port, secret));
        } catch (IOException e) {
            started.close();
            throw e;
        }
        return started;
    }

    /** On the port that is wanted; where none is, on the last one if it is free. */
    private static HttpServer listening(int wanted, int last) throws IOException {
        if (wanted == 0 && last != 0) {
            try {
                return listening(last);
            } catch (BindException e) {
                return listening(0);
            }
        }
        return listening(wanted);
    }

    private static HttpServer listening(int port) throws IOException {
        var loopback = InetAddress.getByAddress(new byte[] {127, 0, 0, 1});
        return HttpServer.create(new InetSocketAddress(loopback, port), WAITING);
    }

    /** Reads the rig that was named before the page asks for it; returns at once. */
    public void readAhead() {
        new ReadAhead(bay).start();
    }

    /** Where it listens. */
    public int port() {
        return server.getAddress().getPort();
    }

    /** A fresh link, good once. */
    public String link() {
        return entry.link(Optional.empty());
    }

    /**
     * Writes a file that sends a browser to a link, for its owner alone: what stands in a command
     * line, every user of the machine can read.
     *
     * @param folder that is open
     * @param link to go to
     * @return the file
     * @throws IOException when it cannot be written
     */
    public static Path jump(Path folder, String link) throws IOException {
        return FolderLock.write(
                new OpenedFolder(folder).own(),
                JUMP,
                """
                <!doctype html>
                <meta charset="utf-8">
                <meta name="referrer" content="no-referrer">
                <meta http-equiv="refresh" content="0;url=%s">
                <title>Liftwright</title>
                """
                        .replace("%s", link));
    }

    /**
     * Stops: streams are ended, requests that run get a moment, what is not kept yet is kept, the
     * folder is given free.
     */
    @Override
    public void close() throws IOException {
        if (closed.getAndSet(true)) {
            return;
        }
        door.stop();
        long until = System.nanoTime() + PATIENCE_MS * 1_000_000;
        try {
            while (door.busy() && System.nanoTime() < until) {
                Thread.sleep(10);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        server.stop(0);
        threads.shutdownNow();
        deadlines.stop();
        bay.end();
        Files.deleteIfExists(bay.folder().own().resolve(JUMP));
        lock.close();
    }
}
