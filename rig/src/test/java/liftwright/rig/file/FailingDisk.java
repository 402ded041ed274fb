package liftwright.rig.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * A disk that fails at one of its steps, once or from there on; a write that fails has written
 * half. Taking a file away is no step of it.
 */
public class FailingDisk extends Disk {

    private final int at;
    private final boolean forGood;
    private int steps;

    /**
     * @param at which step fails, from 0
     * @param forGood whether all after it fail too
     */
    public FailingDisk(int at, boolean forGood) {
        this.at = at;
        this.forGood = forGood;
    }

    /** How many steps were asked for so far. */
    public int steps() {
        return steps;
    }

    private boolean fails() {
        return forGood ? steps >= at : steps == at;
    }

    protected final void step() throws IOException {
        boolean fails = fails();
        int step = steps++;
        if (fails) {
            throw new IOException("the disk failed at step " + step);
        }
    }

    @Override
    public void write(FileChannel channel, byte[] bytes) throws IOException {
        if (fails()) {
            super.write(channel, Arrays.copyOf(bytes, bytes.length / 2));
        }
        step();
        super.write(channel, bytes);
    }

    @Override
    public void force(FileChannel channel) throws IOException {
        step();
        super.force(channel);
    }

    @Override
    public void replace(Path fresh, Path target) throws IOException {
        step();
        super.replace(fresh, target);
    }

    @Override
    public void publish(Path fresh, Path target, byte[] bytes) throws IOException {
        step();
        super.publish(fresh, target, bytes);
    }

    @Override
    public void moveFolder(Path fresh, Path target) throws IOException {
        step();
        super.moveFolder(fresh, target);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        step();
        super.forceFolder(folder);
    }
}
