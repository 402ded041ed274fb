package liftwright.rig.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A file of the program's own that is only added to, behind what is good of it. */
public final class GrowingFile implements AutoCloseable {

    private final Disk disk;
    private final FileChannel channel;

    private GrowingFile(Disk disk, FileChannel channel) {
        this.disk = disk;
        this.channel = channel;
    }

    /**
     * Opens a file; makes it where it is missing. What stands behind the good of it goes.
     *
     * @param good bytes from its beginning that stay, ≥ 0
     */
    public static GrowingFile open(Path path, long good, Disk disk) throws IOException {
        FileChannel channel =
                FileChannel.open(
                        path,
                        StandardOpenOption.CREATE,
                        StandardOpenOption.WRITE,
                        LinkOption.NOFOLLOW_LINKS);
        try {
            channel.truncate(good);
            channel.position(good);
            return new GrowingFile(disk, channel);
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    /** Adds all of it. */
    public void add(byte[] bytes) throws IOException {
        disk.write(channel, bytes);
    }

    /** Makes what was added last through a loss of power. */
    public void force() throws IOException {
        disk.force(channel);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
