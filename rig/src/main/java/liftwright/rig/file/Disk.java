package liftwright.rig.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The steps in which a file is saved. Each may fail: a test fails them one after the other. */
public class Disk {

    /** Writes all of it at the channel's position. */
    public void write(FileChannel channel, byte[] bytes) throws IOException {
        var left = ByteBuffer.wrap(bytes);
        while (left.hasRemaining()) {
            channel.write(left);
        }
    }

    /** Makes what was written last through a loss of power. */
    public void force(FileChannel channel) throws IOException {
        channel.force(true);
    }

    /** In one step: the old file stands until the new one does. */
    public void replace(Path fresh, Path target) throws IOException {
        Files.move(
                fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** A link appears whole and fails where something is; where links are unknown, so does this. */
    public void publish(Path fresh, Path target, byte[] bytes) throws IOException {
        try {
            Files.createLink(target, fresh);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (UnsupportedOperationException | FileSystemException e) {
            Files.write(target, bytes, StandardOpenOption.CREATE_NEW);
        }
    }

    /**
     * A whole folder appears under its name in one step, and fails where something stands there.
     */
    public void moveFolder(Path fresh, Path target) throws IOException {
        Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Makes a new name last through a loss of power. */
    public void forceFolder(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (var channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    /** Takes a file of the program's own away; it is no error if there is none. */
    public void remove(Path file) throws IOException {
        Files.deleteIfExists(file);
    }
}
