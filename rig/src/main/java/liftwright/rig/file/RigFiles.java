package liftwright.rig.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;
import java.util.UUID;
import liftwright.rig.text.YamlText;

/** Reads and saves the builder's files. A file is at any moment the old one or the new one. */
public final class RigFiles {

    private static final int MOST_LINKS = 40;

    private RigFiles() {}

    /**
     * The bytes of a file, and never more than one beyond {@link YamlText#MOST_BYTES}: enough to
     * see that it is too large.
     *
     * @throws IOException if there is no such file or it cannot be read
     */
    public static byte[] read(Path path) throws IOException {
        return read(path, YamlText.MOST_BYTES + 1);
    }

    /**
     * The first {@code most} bytes of a file.
     *
     * @throws IOException if there is no such file or it cannot be read
     */
    public static byte[] read(Path path, int most) throws IOException {
        if (Files.isDirectory(path)) {
            throw new IOException(path + " is a folder");
        }
        try (var in = Files.newInputStream(path)) {
            return in.readNBytes(most);
        }
    }

    /**
     * Saves {@code bytes}: a temporary file in the same folder is written and forced to the disk,
     * takes the place of the old one in a single step, and the folder is forced. Symbolic links
     * stay links, and an existing file keeps its mode.
     *
     * @throws IOException if any of it fails; the old file then stands as it stood, or, where only
     *     forcing the folder failed, the new one stands whole
     */
    public static void write(Path path, byte[] bytes) throws IOException {
        write(path, bytes, new Disk());
    }

    /** As {@link #write(Path, byte[])}, step by step on {@code disk}. */
    public static void write(Path path, byte[] bytes, Disk disk) throws IOException {
        Path target = followLinks(path.toAbsolutePath());
        Path folder = target.getParent();
        if (folder == null || Files.isDirectory(target)) {
            throw new IOException(path + " is a folder");
        }
        Path temporary = temporaryBeside(target, folder);
        try {
            fill(temporary, target, bytes, disk);
            disk.replace(temporary, target);
        } finally {
            Files.deleteIfExists(temporary);
        }
        disk.forceFolder(folder);
    }

    /**
     * Saves {@code bytes} where nothing was, in the same steps; folders on the way are made.
     *
     * @throws java.nio.file.FileAlreadyExistsException if something is there; it stays
     * @throws IOException if any of it fails; nothing is then there, or, where only forcing the
     *     folder failed, the new file stands whole
     */
    public static void create(Path path, byte[] bytes) throws IOException {
        create(path, bytes, new Disk());
    }

    /** As {@link #create(Path, byte[])}, step by step on {@code disk}. */
    public static void create(Path path, byte[] bytes, Disk disk) throws IOException {
        Path target = path.toAbsolutePath();
        Path folder = target.getParent();
        if (folder == null) {
            throw new IOException(path + " is a folder");
        }
        Files.createDirectories(folder);
        Path temporary = temporaryBeside(target, folder);
        try {
            fill(temporary, target, bytes, disk);
            disk.publish(temporary, target, bytes);
        } finally {
            Files.deleteIfExists(temporary);
        }
        disk.forceFolder(folder);
    }

    private static Path temporaryBeside(Path target, Path folder) {
        return folder.resolve("." + target.getFileName() + "." + UUID.randomUUID());
    }

    private static void fill(Path temporary, Path target, byte[] bytes, Disk disk)
            throws IOException {
        // Not createTempFile: a new file shall get the mode that new files get here.
        try (var channel =
                FileChannel.open(
                        temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            keepMode(target, temporary);
            disk.write(channel, bytes);
            disk.force(channel);
        }
    }

    /**
     * Saves {@code bytes} only if the file still holds {@code before}, so that what the builder
     * typed meanwhile is not lost.
     *
     * @return whether it was saved
     * @throws IOException as {@link #read} and {@link #write}
     */
    public static boolean writeOver(Path path, byte[] before, byte[] bytes) throws IOException {
        return writeOver(path, before, bytes, new Disk());
    }

    /** As {@link #writeOver(Path, byte[], byte[])}, step by step on {@code disk}. */
    public static boolean writeOver(Path path, byte[] before, byte[] bytes, Disk disk)
            throws IOException {
        if (!Arrays.equals(read(path, before.length + 1), before)) {
            return false;
        }
        write(path, bytes, disk);
        return true;
    }

    private static Path followLinks(Path path) throws IOException {
        Path target = path;
        for (int links = 0; Files.isSymbolicLink(target); links++) {
            if (links == MOST_LINKS) {
                throw new FileSystemLoopException(path.toString());
            }
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        return target;
    }

    private static void keepMode(Path from, Path to) throws IOException {
        var old =
                Files.getFileAttributeView(
                        from, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        var next = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (old != null && next != null && Files.exists(from, LinkOption.NOFOLLOW_LINKS)) {
            next.setPermissions(old.readAttributes().permissions());
        }
    }
}
