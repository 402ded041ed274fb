package liftwright.logbook.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.util.Arrays;
import liftwright.rig.file.Disk;

/** Fails at one step and everything after it, writing half of what it should. */
class FailingDisk extends Disk {

    private final int at;
    private int steps;

    FailingDisk(int at) {
        this.at = at;
    }

    int steps() {
        return steps;
    }

    private void step() throws IOException {
        if (steps++ >= at) {
            throw new IOException("the disk is gone");
        }
    }

    @Override
    public void write(FileChannel channel, byte[] bytes) throws IOException {
        if (steps >= at) {
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
