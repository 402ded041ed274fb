package liftwright.app.bay;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.locks.ReentrantLock;

/** Lines down one connection, with a heartbeat where nothing else is told. */
final class LinesToReader implements Lines {

    /** How long one line may wait for a reader who does not read. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final OutputStream out;
    private final Deadlines deadlines;
    private final String heartbeat;
    private final ReentrantLock writing = new ReentrantLock();
    private final List<Runnable> onGone = new ArrayList<>();
    private volatile boolean gone;
    private volatile long told = System.nanoTime();

    LinesToReader(OutputStream out, Deadlines deadlines, String heartbeat) {
        this.out = out;
        this.deadlines = deadlines;
        this.heartbeat = heartbeat;
    }

    @Override
    public void tell(String json) {
        byte[] line = (json + "\n").getBytes(StandardCharsets.UTF_8);
        boolean lost = false;
        writing.lock();
        try {
            if (gone) {
                throw new GoneException();
            }
            deadlines.within(
                    PATIENCE,
                    () -> {
                        out.write(line);
                        out.flush();
                        return true;
                    });
            told = System.nanoTime();
        } catch (IOException e) {
            lost = true;
        } finally {
            writing.unlock();
        }
        if (lost) {
            leave();
            throw new GoneException();
        }
    }

    /** Tells the heartbeat at this pace until the reader leaves; ends when interrupted. */
    void beat(Duration every) {
        try {
            while (!gone) {
                long idle = System.nanoTime() - told;
                long left = every.toNanos() - idle;
                if (left <= 0) {
                    tell(heartbeat);
                } else {
                    Thread.sleep(Duration.ofNanos(left));
                }
            }
        } catch (GoneException | InterruptedException e) {
            return;
        }
    }

    /** From now on there is no reader. */
    void leave() {
        List<Runnable> then;
        synchronized (onGone) {
            gone = true;
            then = List.copyOf(onGone);
            onGone.clear();
        }
        then.forEach(Runnable::run);
    }

    @Override
    public boolean gone() {
        return gone;
    }

    @Override
    public void onGone(Runnable then) {
        synchronized (onGone) {
            if (!gone) {
                onGone.add(then);
                return;
            }
        }
        then.run();
    }
}
