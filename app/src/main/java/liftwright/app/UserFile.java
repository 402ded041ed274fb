package liftwright.app;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import liftwright.rig.csv.Beside;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigFiles;
import liftwright.rig.text.YamlText;

/**
 * A file of the user's: read whole within a limit, written whole or not at all (architecture
 * contract 13).
 *
 * @param named as the user wrote it
 * @param path where it is
 */
record UserFile(String named, Path path) {

    /** All cards of a large rig have some three million bytes. */
    private static final int MOST_PRINTED = 1 << 27;

    /** The file of a name: a folder means its rig.yaml. */
    static UserFile of(String named, Path folder) {
        return of(named, folder, "rig.yaml");
    }

    /** The file of a name: a folder means the file {@code inside} it. */
    static UserFile of(String named, Path folder, String inside) {
        Path path = path(named, folder);
        return Files.isDirectory(path)
                ? new UserFile(Path.of(named, inside).toString(), path.resolve(inside))
                : new UserFile(named, path);
    }

    static Path path(String named, Path folder) {
        if (named.isBlank()) {
            throw new UsageException("an empty name is no file");
        }
        try {
            return folder.resolve(named);
        } catch (InvalidPathException e) {
            throw new UsageException("no file can have the name " + named);
        }
    }

    /**
     * What a user wrote; never more than a rig file may have and one byte.
     *
     * @throws UsageException with a sentence for the user when it cannot be read
     */
    byte[] read() {
        return read(YamlText.MOST_BYTES + 1);
    }

    /**
     * What this program printed: far longer than what a user writes.
     *
     * @throws UsageException as {@link #read()}
     */
    byte[] printed() {
        return read(MOST_PRINTED);
    }

    private byte[] read(int mostBytes) {
        try {
            return RigFiles.read(path, mostBytes);
        } catch (NoSuchFileException e) {
            throw new UsageException("no file or folder " + named);
        } catch (AccessDeniedException e) {
            throw new UsageException("may not read " + named + ": permission denied");
        } catch (IOException e) {
            throw new UsageException("cannot read " + named + ": " + e.getMessage());
        }
    }

    /** What stands beside it. */
    Beside folder() {
        return new Folder(folderOf(path));
    }

    /**
     * Puts other bytes in the place of those it had.
     *
     * @param before what it must still hold
     * @throws UsageException when it changed meanwhile, or cannot be written
     */
    void replace(byte[] before, byte[] after) {
        try {
            if (!RigFiles.writeOver(path, before, after)) {
                throw new UsageException(
                        named + " was changed by somebody else meanwhile; nothing was written");
            }
        } catch (IOException e) {
            throw new UsageException("cannot write " + named + ": " + e.getMessage());
        }
    }

    /**
     * Writes it where nothing was.
     *
     * @throws UsageException when something is there, or it cannot be written
     */
    void create(byte[] content) {
        try {
            RigFiles.create(path, content);
        } catch (FileAlreadyExistsException e) {
            throw new UsageException(
                    named + " exists, and what exists is not overwritten: give another name");
        } catch (IOException e) {
            throw new UsageException("cannot write " + named + ": " + e.getMessage());
        }
    }

    private static Path folderOf(Path file) {
        Path parent = file.toAbsolutePath().getParent();
        if (parent == null) {
            throw new UsageException(file + " is no file");
        }
        return parent;
    }
}
