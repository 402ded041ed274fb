package liftwright.rig.draft;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.rig.file.Disk;
import liftwright.rig.file.RigFiles;
import org.jspecify.annotations.Nullable;

/**
 * Keeps on disk what is not saved yet: a file to which every edit is added, and forced, before the
 * edit counts. It begins with the file as it was on disk, so it makes sense alone. While nothing is
 * unsaved there is no such file.
 */
final class Journal implements AutoCloseable {

    /** Beyond this it is begun anew with what is unsaved, bytes. */
    static final int MOST_BYTES = 8 << 20;

    /** More than any journal has: a folder may come from anywhere. */
    private static final int MOST_READ_BYTES = 4 * MOST_BYTES;

    private static final byte[] HEAD = "liftwright journal 1\n".getBytes(StandardCharsets.US_ASCII);

    private final Path file;
    private final Disk disk;
    private @Nullable FileChannel channel;

    /** Where the next entry goes; what stands behind was never acknowledged. */
    private long end;

    /**
     * @param file where it is kept; its folder is made when it is needed
     */
    Journal(Path file, Disk disk) {
        this.file = file;
        this.disk = disk;
    }

    /**
     * What a journal left behind.
     *
     * @param entries all that are whole; the first is an {@link Entry.Start}
     * @param torn whether something that could not be read follows
     */
    record Left(List<Entry> entries, boolean torn) {
        Left {
            entries = List.copyOf(entries);
        }
    }

    /**
     * Reads what an earlier run left; empty when it left nothing.
     *
     * @throws IOException if there is something that cannot be read, or that no journal is
     */
    Optional<Left> left() throws IOException {
        byte[] bytes;
        if (leadsThroughLinks()) {
            return Optional.empty(); // none of ours: we never write there
        }
        try (var in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_READ_BYTES + 1);
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
        if (!Arrays.equals(bytes, 0, Math.min(bytes.length, HEAD.length), HEAD, 0, HEAD.length)) {
            throw new IOException(file + " is no journal");
        }
        var read = Frames.read(bytes, HEAD.length);
        if (read.entries().isEmpty() || !(read.entries().getFirst() instanceof Entry.Start)) {
            throw new IOException(file + " has no beginning");
        }
        return Optional.of(new Left(read.entries(), read.end() < bytes.length));
    }

    /** Puts what cannot be read out of the way, under a name that nothing has. */
    Path setAside() throws IOException {
        Path aside = file.resolveSibling(file.getFileName() + ".unread");
        for (int number = 2; Files.exists(aside, LinkOption.NOFOLLOW_LINKS); number++) {
            aside = file.resolveSibling(file.getFileName() + ".unread-" + number);
        }
        return Files.move(file, aside);
    }

    /**
     * Adds an entry and forces it to the disk.
     *
     * @param before where things stand without it: what the journal begins with when it has to
     *     begin
     * @throws IOException if any of it fails; then the entry does not count
     */
    void add(Course before, Entry entry) throws IOException {
        byte[] frame = Frames.frame(entry);
        if (channel == null || end + frame.length > MOST_BYTES) {
            begin(before.summary());
        }
        FileChannel open = channel;
        if (open == null) {
            throw new IOException("the journal is closed");
        }
        try {
            open.position(end);
            disk.write(open, frame);
            disk.force(open);
            end += frame.length;
        } catch (IOException e) {
            // What the disk holds now nobody knows: the next entry begins a new file.
            close();
            throw e;
        }
    }

    /** Begins the file anew with one entry; the old one stands until the new one does. */
    private void begin(Entry.Start start) throws IOException {
        close();
        makeFolder();
        byte[] frame = Frames.frame(start);
        byte[] bytes = Arrays.copyOf(HEAD, HEAD.length + frame.length);
        System.arraycopy(frame, 0, bytes, HEAD.length, frame.length);
        RigFiles.write(file, bytes, disk);
        channel = FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        end = bytes.length;
    }

    private void makeFolder() throws IOException {
        if (leadsThroughLinks()) {
            throw new IOException(file + " leads through a link: the journal must not");
        }
        Path folder = folder();
        Path above = folder.getParent();
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder);
            if (above != null && above.getParent() != null) {
                disk.forceFolder(above);
                disk.forceFolder(above.getParent());
            }
        }
    }

    /** A folder that came from elsewhere must not make us write in another place. */
    private boolean leadsThroughLinks() {
        Path folder = folder();
        Path above = folder.getParent();
        return Files.isSymbolicLink(file)
                || Files.isSymbolicLink(folder)
                || (above != null && Files.isSymbolicLink(above));
    }

    private Path folder() {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            throw new IllegalStateException(file + " has no folder");
        }
        return folder;
    }

    /** Nothing is unsaved any more. */
    void end() throws IOException {
        close();
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            disk.remove(file);
            disk.forceFolder(folder());
        }
    }

    @Override
    public void close() {
        FileChannel open = channel;
        channel = null;
        if (open != null) {
            try {
                open.close();
            } catch (IOException e) {
                // All that counts was forced; what a failing close loses was never acknowledged.
                return;
            }
        }
    }
}
