package liftwright.logbook.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.BooleanSupplier;
import liftwright.logbook.entry.EntryId;
import liftwright.rig.file.Disk;
import liftwright.rig.text.FolderGuard;

/**
 * Adds a folder of files to a folder of such folders, whole or not at all: everything is written
 * into a folder under a name that nobody reads, every file and folder is forced to the disk, and
 * the folder takes its name in a single step.
 *
 * @param among the folder of folders; need not be there
 * @param disk steps are taken on
 * @param stopped asked between pieces; when it says so nothing is added
 */
record FreshFolder(Path among, Disk disk, BooleanSupplier stopped) {

    /** How names begin that nobody reads. */
    static final String TEMPORARY = ".adding-";

    private static final int CHUNK = 1 << 20;

    /** Somebody asked to stop; nothing was added. */
    static final class StoppedException extends IOException {
        private static final long serialVersionUID = 1L;

        StoppedException() {
            super("stopped before it was added");
        }
    }

    /**
     * @return the name it got, the next free one of the day
     * @throws IOException if any step fails; nothing is then there under a name, or, where only
     *     forcing the folder of folders failed, all of it
     */
    EntryId add(LocalDate day, List<NewFile> files) throws IOException {
        makeFolders();
        Path fresh = among.resolve(TEMPORARY + UUID.randomUUID());
        try {
            Files.createDirectory(fresh);
            fill(fresh, files);
            EntryId id = publish(fresh, day);
            disk.forceFolder(among);
            return id;
        } finally {
            remove(fresh);
        }
    }

    private void makeFolders() throws IOException {
        Path missing = among.toAbsolutePath();
        var made = new TreeSet<Path>();
        while (missing != null && !Files.isDirectory(missing)) {
            made.add(missing);
            missing = missing.getParent();
        }
        Files.createDirectories(among);
        for (Path folder : made) {
            disk.forceFolder(folder.resolveSibling(""));
        }
    }

    private void fill(Path fresh, List<NewFile> files) throws IOException {
        SortedMap<String, String> hashes = new TreeMap<>();
        var folders = new TreeSet<Path>(Comparator.<Path>reverseOrder());
        for (NewFile file : files) {
            if (FolderGuard.objection(file.name()).isPresent()
                    || file.name().equals(Digests.FILE)
                    || hashes.containsKey(file.name())) {
                throw new IOException("no file of a logbook is called " + file.name());
            }
            Path to = fresh.resolve(file.name());
            for (Path on = to.resolveSibling(""); !on.equals(fresh); on = on.resolveSibling("")) {
                folders.add(on);
            }
            Files.createDirectories(to.resolveSibling(""));
            hashes.put(file.name(), write(file, to));
        }
        write(
                NewFile.Said.of(Digests.FILE, new Digests(hashes).text()),
                fresh.resolve(Digests.FILE));
        for (Path folder : folders) {
            disk.forceFolder(folder);
        }
        disk.forceFolder(fresh);
    }

    private String write(NewFile file, Path to) throws IOException {
        MessageDigest digest = Digests.sha256();
        try (var channel =
                FileChannel.open(to, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            switch (file) {
                case NewFile.Said(var _, var bytes) -> piece(bytes.get(), digest, channel);
                case NewFile.Copied(var _, var from) -> copy(from, digest, channel);
            }
            disk.force(channel);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private void copy(Path from, MessageDigest digest, FileChannel channel) throws IOException {
        try (InputStream in = Files.newInputStream(from)) {
            byte[] chunk = new byte[CHUNK];
            for (int n = in.readNBytes(chunk, 0, CHUNK);
                    n > 0;
                    n = in.readNBytes(chunk, 0, CHUNK)) {
                piece(n == CHUNK ? chunk : Arrays.copyOf(chunk, n), digest, channel);
            }
        }
    }

    private void piece(byte[] bytes, MessageDigest digest, FileChannel channel) throws IOException {
        if (stopped.getAsBoolean()) {
            throw new StoppedException();
        }
        digest.update(bytes);
        disk.write(channel, bytes);
    }

    private EntryId publish(Path fresh, LocalDate day) throws IOException {
        if (stopped.getAsBoolean()) {
            throw new StoppedException();
        }
        for (int number = lastOf(day) + 1; number <= EntryId.MOST; number++) {
            EntryId id = new EntryId(day, number);
            Path target = among.resolve(id.text());
            try {
                if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                    disk.moveFolder(fresh, target);
                    return id;
                }
            } catch (IOException e) {
                if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                    throw e;
                } // somebody else was quicker: the next number
            }
        }
        throw new IOException("no more than " + EntryId.MOST + " on one day: " + day);
    }

    private int lastOf(LocalDate day) throws IOException {
        return Folders.entries(among).keySet().stream()
                .filter(id -> id.date().equals(day))
                .mapToInt(EntryId::number)
                .max()
                .orElse(0);
    }

    /** As far as the disk lets it; what stays is told as remains by whoever checks. */
    private static void remove(Path fresh) {
        if (!Files.isDirectory(fresh, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (var all = Files.walk(fresh)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException e) {
            return; // it does no harm, and what failed before matters more
        }
    }
}
