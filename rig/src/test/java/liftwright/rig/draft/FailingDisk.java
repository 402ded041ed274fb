package liftwright.rig.draft;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.util.Arrays;
import liftwright.rig.file.Disk;

/** A disk that fails at one of its steps, once or from there on; counted from 0. */
final class FailingDisk extends Disk {

    private final int at;
    private final boolean forGood;
    private int steps;

    FailingDisk(int at, boolean forGood) {
        this.at = at;
        this.forGood = forGood;
    }

    /** How many steps were asked for so far. */
    int steps() {
        return steps;
    }

    private boolean fails() {
        int step = steps++;
        return forGood ? step >= at : step == at;
    }

    @Override
    public void write(FileChannel channel, byte[] bytes) throws IOException {
        if (fails()) {
            if (steps == at + 1) {
                super.write(channel, Arrays.copyOf(bytes, bytes.length / 2));
            }
            throw new IOException("no space left");
        }
        super.write(channel, bytes);
    }

    @Override
    public void force(FileChannel channel) throws IOException {
        if (fails()) {
            throw new IOException("force failed");
        }
        super.force(channel);
    }

    @Override
    public void replace(Path fresh, Path target) throws IOException {
        if (fails()) {
            throw new IOException("rename failed");
        }
        super.replace(fresh, target);
    }

    @Override
    public void publish(Path fresh, Path target, byte[] bytes) throws IOException {
        if (fails()) {
            throw new IOException("link failed");
        }
        super.publish(fresh, target, bytes);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        if (fails()) {
            throw new IOException("force of the folder failed");
        }
        super.forceFolder(folder);
    }

    @Override
    public void remove(Path file) throws IOException {
        if (fails()) {
            throw new IOException("remove failed");
        }
        super.remove(file);
    }
}
