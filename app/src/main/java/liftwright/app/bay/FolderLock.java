package liftwright.app.bay;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One server a folder. The lock is the operating system's, so that it falls with the process that
 * held it; beside it stands, for its owner alone, where that server listens and the secret that
 * gets a link from it.
 */
final class FolderLock implements AutoCloseable {

    private static final String LOCK = "lock";
    private static final String DOOR = "door";
    private static final String PORT = "port";
    private static final int LEAST_PORT = 1024;
    private static final int MOST_PORT = 65_535;
    private static final Pattern DOOR_TEXT =
            Pattern.compile("([0-9]{1,5}) ([A-Za-z0-9_-]{20,100})\n");
    private static final int DOOR_BYTES = 200;

    /**
     * Where the server of a folder listens.
     *
     * @param secret that gets a link from it
     */
    record Listening(int port, String secret) {}

    private final FileLock lock;
    private final Path own;

    private FolderLock(FileLock lock, Path own) {
        this.lock = lock;
        this.own = own;
    }

    /**
     * The lock, or empty where another process has it.
     *
     * @param own the server's folder inside the opened one; made where it is missing
     * @throws IOException when nothing can be written there
     */
    static Optional<FolderLock> take(Path own) throws IOException {
        make(own);
        requireOwn(own);
        FileChannel channel =
                FileChannel.open(
                        own.resolve(LOCK),
                        Set.of(
                                StandardOpenOption.CREATE,
                                StandardOpenOption.WRITE,
                                LinkOption.NOFOLLOW_LINKS),
                        ownersOnly(own, "rw-------"));
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return Optional.of(new FolderLock(lock, own));
            }
        } catch (OverlappingFileLockException e) {
            // this very process has it: as good as another
        } catch (IOException e) {
            channel.close();
            throw e;
        }
        channel.close();
        return Optional.empty();
    }

    private static void make(Path own) throws IOException {
        try {
            Files.createDirectory(own, ownersOnly(own, "rwx------"));
        } catch (FileAlreadyExistsException e) {
            if (!Files.isDirectory(own, LinkOption.NOFOLLOW_LINKS)) {
                // a link to one is none: nothing is written through it
                throw new IOException(own + " is in the way: it is no folder", e);
            }
        }
        Path ignore = own.resolve(".gitignore");
        if (!Files.exists(ignore, LinkOption.NOFOLLOW_LINKS)) {
            Files.writeString(ignore, "*\n", StandardOpenOption.CREATE_NEW);
        }
    }

    /** Whoever owns it could say in it that his own server is the one to go to. */
    private static void requireOwn(Path own) throws IOException {
        Path mine = write(own, "mine", "");
        try {
            if (!Files.getOwner(mine).equals(Files.getOwner(own))) {
                throw new IOException(
                        own + " belongs to " + Files.getOwner(own) + " and not to you");
            }
        } finally {
            Files.deleteIfExists(mine);
        }
    }

    /**
     * Whether a server runs for a folder whose own folder this would be, started by the one to whom
     * {@code mine} belongs.
     */
    static boolean held(Path own, Path mine) {
        Path lock = own.resolve(LOCK);
        try {
            if (!Files.isRegularFile(lock, LinkOption.NOFOLLOW_LINKS)
                    || !Files.getOwner(own, LinkOption.NOFOLLOW_LINKS)
                            .equals(Files.getOwner(mine))) {
                return false;
            }
            try (var channel =
                            FileChannel.open(
                                    lock, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
                    FileLock free = channel.tryLock()) {
                return free == null;
            }
        } catch (OverlappingFileLockException e) {
            return true; // this very process
        } catch (IOException e) {
            return false;
        }
    }

    private static FileAttribute<?>[] ownersOnly(Path at, String mode) {
        return at.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(mode))
                }
                : new FileAttribute<?>[0];
    }

    /** Writes a file that only the owner can read, in place of one that a crash left. */
    static Path write(Path own, String name, String text) throws IOException {
        Path file = own.resolve(name);
        Files.deleteIfExists(file);
        try (var out =
                FileChannel.open(
                        file,
                        Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
                        ownersOnly(own, "rw-------"))) {
            var bytes = StandardCharsets.UTF_8.encode(text);
            while (bytes.hasRemaining()) {
                out.write(bytes);
            }
        }
        return file;
    }

    /**
     * Where the server before this one listened; 0 where that is not known. A tab that is still
     * open, and what a browser keeps for the page, belong to that address.
     */
    int lastPort() {
        try (var in = Files.newInputStream(own.resolve(PORT), LinkOption.NOFOLLOW_LINKS)) {
            String text = new String(in.readNBytes(DOOR_BYTES), StandardCharsets.US_ASCII).strip();
            int port = text.matches("[0-9]{1,5}") ? Integer.parseInt(text) : 0;
            return port >= LEAST_PORT && port <= MOST_PORT ? port : 0;
        } catch (IOException e) {
            return 0;
        }
    }

    /** Says where the server listens. */
    void tell(Listening listening) throws IOException {
        write(own, PORT, listening.port() + "\n");
        write(own, DOOR, listening.port() + " " + listening.secret() + "\n");
    }

    /** What the server that has the lock says; empty when it says nothing (yet), or not to us. */
    static Optional<Listening> told(Path own) {
        try (var in = Files.newInputStream(own.resolve(DOOR), LinkOption.NOFOLLOW_LINKS)) {
            Matcher text =
                    DOOR_TEXT.matcher(
                            new String(in.readNBytes(DOOR_BYTES), StandardCharsets.US_ASCII));
            return text.matches()
                    ? Optional.of(new Listening(Integer.parseInt(text.group(1)), text.group(2)))
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    @Override
    public void close() throws IOException {
        Files.deleteIfExists(own.resolve(DOOR));
        // The file of the lock stays: were it deleted, two could have a lock of that name.
        lock.acquiredBy().close();
    }
}
