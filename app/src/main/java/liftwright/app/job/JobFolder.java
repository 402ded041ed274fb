package liftwright.app.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import liftwright.quantity.UnitSystem;
import liftwright.rig.file.Disk;
import liftwright.rig.file.RigFiles;

/**
 * Where jobs are written down: a folder each, with what it is, what was done of it, and what came
 * of it. Every file is whole at every moment.
 */
public final class JobFolder {

    private static final String NOTE = "job.txt";
    private static final String FLIGHTS = "flights.csv";

    private static final String PARTS = "parts.bin";

    /** An answer with many tables has some hundred thousand bytes. */
    private static final int MOST_ANSWER = 1 << 26;

    private static final int MOST_NOTE = 1 << 14;

    private final Path path;
    private final Disk disk;

    /**
     * @param path of the folder; made where it is missing
     */
    public JobFolder(Path path, Disk disk) {
        this.path = path;
        this.disk = disk;
    }

    /**
     * All that are written down, by their numbers; what is none, or no whole one, is passed over.
     */
    List<JobNote> read() throws IOException {
        if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        List<JobNote> notes = new ArrayList<>();
        try (Stream<Path> all = Files.list(path)) {
            for (Path each : (Iterable<Path>) all::iterator) {
                note(each).ifPresent(notes::add);
            }
        }
        notes.sort(Comparator.comparingInt(JobNote::id));
        return notes;
    }

    private static Optional<JobNote> note(Path folder) throws IOException {
        String name = String.valueOf(folder.getFileName());
        Path file = folder.resolve(NOTE);
        if (!name.matches("[1-9][0-9]{0,8}")
                || !Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)
                || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        String text = new String(RigFiles.read(file, MOST_NOTE), StandardCharsets.UTF_8);
        return JobText.read(Integer.parseInt(name), text);
    }

    /** A number that no folder here has. */
    int free() throws IOException {
        if (!Files.isDirectory(path)) {
            return 1;
        }
        try (Stream<Path> all = Files.list(path)) {
            return 1
                    + all.map(each -> String.valueOf(each.getFileName()))
                            .filter(name -> name.matches("[1-9][0-9]{0,8}"))
                            .mapToInt(Integer::parseInt)
                            .max()
                            .orElse(0);
        }
    }

    /** Writes down how it stands. */
    void write(JobNote note) throws IOException {
        write(note.id(), NOTE, JobText.of(note));
    }

    /** Keeps what came of it, in the units of a reader. */
    void keepAnswer(int id, UnitSystem units, String document) throws IOException {
        write(id, answer(units), document);
    }

    private void write(int id, String name, String text) throws IOException {
        Path folder = of(id);
        Files.createDirectories(folder);
        RigFiles.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8), disk);
    }

    /** What came of it, where something did. */
    Optional<String> answer(int id, UnitSystem units) throws IOException {
        Path file = of(id).resolve(answer(units));
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                ? Optional.of(new String(RigFiles.read(file, MOST_ANSWER), StandardCharsets.UTF_8))
                : Optional.empty();
    }

    /** What came of it before is no more: it goes on. */
    void dropAnswers(int id) throws IOException {
        for (UnitSystem units : UnitSystem.values()) {
            disk.remove(of(id).resolve(answer(units)));
        }
    }

    /** Takes a job away with all that came of it, since the reader said so. */
    void remove(int id) throws IOException {
        Path folder = of(id);
        disk.remove(folder.resolve(NOTE)); // without it, it is no job any more
        dropAnswers(id);
        disk.remove(folder.resolve(FLIGHTS));
        dropParts(id);
        Files.deleteIfExists(folder);
    }

    /** Parts that are finished, of one that is not: {@link KeptParts}. */
    public Path parts(int id) {
        return of(id).resolve(PARTS);
    }

    /** They are all in what came of it. */
    void dropParts(int id) throws IOException {
        disk.remove(parts(id));
    }

    /** Where the flights of a job are kept, in the format of the command line. */
    public Path flights(int id) {
        return of(id).resolve(FLIGHTS);
    }

    /** The same, as the reader knows it. */
    public String flightsNamed(int id) {
        return Path.of(".liftwright", "jobs", Integer.toString(id), FLIGHTS).toString();
    }

    Disk disk() {
        return disk;
    }

    private Path of(int id) {
        return path.resolve(Integer.toString(id));
    }

    private static String answer(UnitSystem units) {
        return switch (units) {
            case SI -> "answer-si.json";
            case US -> "answer-us.json";
        };
    }
}
