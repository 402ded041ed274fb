package liftwright.logbook.engine;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.ReentrantLock;
import liftwright.logbook.engine.EngineException.Kind;
import liftwright.plant.recording.Samples;

/**
 * The SQL engine in a process of its own, which ends with this one. Before its first statement it
 * is locked: it reads and writes in one folder, reads the single files it was given, and no
 * statement opens it again. One statement at a time; others wait.
 */
public final class Engine implements AutoCloseable {

    /** To start and to lock itself. */
    private static final Duration START = Duration.ofSeconds(60);

    /** What it may take beyond the time of a statement, which it watches itself. */
    private static final Duration GRACE = Duration.ofSeconds(5);

    private final Path folder;
    private final Path scratch;
    private final List<Path> sources;
    private final Child child;
    private final ReentrantLock turn = new ReentrantLock();
    private final AtomicInteger numbers = new AtomicInteger();

    private Engine(Path folder, Path scratch, List<Path> sources, Child child) {
        this.folder = folder;
        this.scratch = scratch;
        this.sources = List.copyOf(sources);
        this.child = child;
    }

    /** An engine for one folder. */
    public static Engine start(Path folder) throws IOException {
        return start(folder, List.of());
    }

    /**
     * Starts an engine and locks it.
     *
     * @param folder all of it is the engine's: the logbook
     * @param sources files elsewhere that it may read
     * @throws IOException if it cannot be started
     */
    public static Engine start(Path folder, List<Path> sources) throws IOException {
        Path real = folder.toRealPath();
        Path scratch = scratchIn(real);
        var others = new ArrayList<Path>();
        for (Path source : sources) {
            others.add(source.toRealPath());
        }
        var folders =
                scratch.startsWith(real)
                        ? List.of(real.toString())
                        : List.of(real.toString(), scratch.toString());
        var confines =
                new Confines(
                        scratch.toString(), folders, others.stream().map(Path::toString).toList());
        try {
            Child child = Child.start(confines);
            var engine = new Engine(real, scratch, others, child);
            engine.awaitReady();
            return engine;
        } catch (IOException e) {
            delete(scratch);
            throw e;
        }
    }

    /** In the folder, or beside all others where the folder cannot be written. */
    private static Path scratchIn(Path folder) throws IOException {
        return Files.isWritable(folder)
                ? Files.createTempDirectory(folder, ".engine-")
                : Files.createTempDirectory("liftwright-engine-").toRealPath();
    }

    private void awaitReady() throws IOException {
        Frame first = child.next(START);
        if (first.kind() != Frame.Kind.READY) {
            child.kill();
            throw Answers.error(first);
        }
    }

    /** For temporary files: within the engine's reach, and gone when it is closed. */
    public Path scratch() {
        return scratch;
    }

    /** Whether it may read a file, or write one that is not there yet. */
    public boolean reaches(Path file) throws IOException {
        Path real = real(file);
        return real.startsWith(folder) || real.startsWith(scratch) || sources.contains(real);
    }

    /** Links followed; of a file that is not there yet, those of its folder. */
    private static Path real(Path file) throws IOException {
        Path absolute = file.toAbsolutePath().normalize();
        Path parent = absolute.getParent();
        return Files.exists(absolute, LinkOption.NOFOLLOW_LINKS) || parent == null
                ? absolute.toRealPath()
                : parent.toRealPath().resolve(String.valueOf(absolute.getFileName()));
    }

    /** A number that none before it had, for names of temporary files. */
    public int fresh() {
        return numbers.incrementAndGet();
    }

    public boolean isAlive() {
        return child.isAlive();
    }

    /** The engine's process, for those who want to see that it ends. */
    public long pid() {
        return child.pid();
    }

    /**
     * Answers a statement of the user: one question to the views {@code tests}, {@code tracks},
     * {@code samples}. Whatever else it is, it is refused with a reason.
     */
    public Rows ask(String sql, Limits limits) throws EngineException {
        return rows(Frame.Kind.ASK, sql, limits);
    }

    /**
     * Makes a view that the user may ask.
     *
     * @param name one of {@code tests}, {@code tracks}, {@code samples}
     * @param sql what it shows, a text of the program
     */
    public void define(String name, String sql) throws EngineException {
        run("CREATE OR REPLACE VIEW " + Sql.name(name) + " AS " + sql);
    }

    /** Runs a statement that the program wrote, never the user. */
    public Rows run(String sql) throws EngineException {
        return rows(Frame.Kind.RUN, sql, Limits.OF_OURS);
    }

    /** As {@link #run}, with limits. */
    public Rows run(String sql, Limits limits) throws EngineException {
        return rows(Frame.Kind.RUN, sql, limits);
    }

    /**
     * Runs a statement of the program all of whose columns are numbers.
     *
     * @return column by column; no number where nothing is
     */
    public double[][] numbers(String sql, Limits limits) throws EngineException {
        turn.lock();
        try {
            child.say(message(Frame.Kind.NUMBERS, sql, limits));
            return new Answers(child, limits.time().plus(GRACE)).numbers();
        } finally {
            turn.unlock();
        }
    }

    private Rows rows(Frame.Kind kind, String sql, Limits limits) throws EngineException {
        turn.lock();
        try {
            child.say(message(kind, sql, limits));
            return new Answers(child, limits.time().plus(GRACE)).rows();
        } finally {
            turn.unlock();
        }
    }

    private static Frame message(Frame.Kind kind, String sql, Limits limits) {
        return Frame.of(
                kind,
                out -> {
                    out.writeInt(limits.rows());
                    out.writeInt(limits.bytes());
                    out.writeInt((int) limits.time().toMillis());
                    Frame.writeText(out, sql);
                });
    }

    /** Stops the statement that runs, from another thread; its answer is then an error. */
    public void stop() throws EngineException {
        child.say(new Frame(Frame.Kind.STOP, new byte[0]));
    }

    /**
     * Samples of columns of a Parquet file of a test, thinned to what is asked for.
     *
     * @param file within reach
     * @param columns without {@code time}; those that the file lacks are left out
     * @param fromS first time by the clock of the file, s
     * @param toS last time, s
     * @param atMost samples a column, ≥ 4; where there are more, each stretch of time gives its
     *     least and its greatest
     * @return by column; without those that have no sample there
     */
    public Map<String, Samples> samples(
            Path file, List<String> columns, double fromS, double toS, int atMost)
            throws IOException {
        return new Thinning(this, file).samples(columns, fromS, toS, atMost);
    }

    /** All samples of columns, or about {@code atMost} of each, every n-th. */
    public Map<String, Samples> samples(Path file, List<String> columns, int atMost)
            throws IOException {
        return new Thinning(this, file).every(columns, atMost);
    }

    /** The path of a file within reach, as a text of a statement. */
    public String path(Path file) throws IOException {
        if (!reaches(file)) {
            throw new EngineException(
                    Kind.NOT_ALLOWED,
                    file.getFileName() + " is outside the folder of the logbook.");
        }
        return Sql.text(real(file).toString());
    }

    /** Ends the process and takes its scratch folder away. */
    @Override
    public void close() {
        child.kill();
        delete(scratch);
    }

    private static void delete(Path scratch) {
        try (var files = Files.walk(scratch)) {
            for (Path file : files.toList().reversed()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | java.io.UncheckedIOException e) {
            scratch.toFile().deleteOnExit(); // its owner is dead and may delete it itself just now
        }
    }
}
