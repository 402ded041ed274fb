package liftwright.logbook.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import liftwright.logbook.entry.EntryReading;
import liftwright.logbook.entry.SheetText;
import liftwright.rig.file.Disk;
import liftwright.rig.file.RigFiles;

/**
 * Files that grow by rows, one a part or pack, in a folder of the logbook. Rows are put behind, in
 * a new file that takes the place of the old one in a single step; what stood there stays byte for
 * byte.
 *
 * @param logbook its folder
 * @param kind name of the folder of sheets
 * @param reads how one is read
 */
record Sheets<T>(
        Path logbook, String kind, Disk disk, BiFunction<String, byte[], EntryReading<T>> reads) {

    private static final ReentrantLock HERE = new ReentrantLock();
    private static final String LOCK = ".lock";
    private static final String YAML = ".yaml";
    private static final Pattern ID = Pattern.compile("[\\p{L}\\p{Nd}][\\p{L}\\p{M}\\p{Nd}_+ .-]*");
    private static final int LONGEST_ID = 120;

    /** Whether a part of that id can have a sheet: as a name it leads nowhere else. */
    static boolean isGood(String id) {
        return id.length() <= LONGEST_ID
                && ID.matcher(id).matches()
                && !id.contains("..")
                && !id.endsWith(" ")
                && !id.endsWith(".");
    }

    private Path among() {
        return logbook.resolve(kind);
    }

    private Path file(String id) throws IOException {
        if (!isGood(id)) {
            throw new IOException("no part is called " + id);
        }
        return among().resolve(id + YAML);
    }

    /**
     * A sheet; empty where there is none.
     *
     * @throws SpoiltException where it is not as it was written
     */
    Optional<T> read(String id) throws IOException {
        Path file = file(id);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        var flaws = new ArrayList<Flaw>();
        Optional<T> sheet = read(file, flaws);
        if (sheet.isEmpty()) {
            throw new SpoiltException(flaws);
        }
        return sheet;
    }

    private Optional<T> read(Path file, List<Flaw> flaws) throws IOException {
        String shown = kind + "/" + file.getFileName();
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            flaws.add(Digests.told(Flaw.Kind.LINK, shown));
            return Optional.empty();
        }
        byte[] bytes = RigFiles.read(file);
        if (!Seals.isWhole(bytes)) {
            flaws.add(Digests.told(Flaw.Kind.CHANGED, shown));
            return Optional.empty();
        }
        EntryReading<T> reading = reads.apply(shown, bytes);
        reading.problems().forEach(problem -> flaws.add(Flaw.unreadable(shown, problem)));
        return reading.entry();
    }

    /**
     * Puts a row behind, and the head before it where there is no sheet yet.
     *
     * @param means what the sheet must read as afterwards
     * @return the sheet as it stands in the logbook
     * @throws IOException if any of it fails; the sheet is then as it was, or, where only the last
     *     step failed, has the row
     */
    T add(String id, SheetText text, Predicate<T> means) throws IOException {
        Path file = file(id);
        Files.createDirectories(among());
        HERE.lock();
        try (var channel =
                        FileChannel.open(
                                logbook.resolve(LOCK),
                                StandardOpenOption.CREATE,
                                StandardOpenOption.WRITE);
                var _ = channel.lock()) {
            boolean fresh = !Files.exists(file, LinkOption.NOFOLLOW_LINKS);
            if (!fresh) {
                read(id); // nothing is put behind what is not as it was written
            }
            byte[] before =
                    fresh ? text.head().getBytes(StandardCharsets.UTF_8) : RigFiles.read(file);
            byte[] after = Seals.sealed(before, (fresh ? text.rowsBegin() : "") + text.row());
            EntryReading<T> again = reads.apply(id, after);
            if (again.entry().filter(means).isEmpty()) {
                throw new IOException(
                        "this could not be read back, so it was not written: " + again.problems());
            }
            if (fresh) {
                RigFiles.create(file, after, disk);
            } else {
                RigFiles.write(file, after, disk);
            }
            return again.entry().orElseThrow();
        } finally {
            HERE.unlock();
        }
    }

    /** All that can be read, by their ids; why others cannot goes to {@code flaws}. */
    SortedMap<String, T> all(List<Flaw> flaws) throws IOException {
        var sheets = new TreeMap<String, T>();
        if (!Files.isDirectory(among(), LinkOption.NOFOLLOW_LINKS)) {
            return sheets;
        }
        List<Path> files;
        try (var all = Files.list(among())) {
            files = all.sorted().toList();
        }
        for (Path file : files) {
            String name = String.valueOf(file.getFileName());
            String shown = kind + "/" + name;
            String id = name.endsWith(YAML) ? name.substring(0, name.length() - 5) : "";
            if (name.startsWith(".")) {
                flaws.add(Flaw.of(Flaw.Kind.REMAINS, shown, Remains.WORDS));
            } else if (!isGood(id)) {
                flaws.add(Digests.told(Flaw.Kind.TOO_MANY, shown));
            } else {
                read(file, flaws).ifPresent(sheet -> sheets.put(id, sheet));
            }
        }
        return sheets;
    }
}
