package liftwright.app.bay;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/** Lines down one connection, with a heartbeat where nothing else is told. */
final class LinesToReader implements Lines {

    private final OutputStream out;
    private final Deadlines deadlines;
    private final Duration patience;
    private final String heartbeat;
    private final ReentrantLock writing = new ReentrantLock();
    private final List<Runnable> onGone = new ArrayList<>();
    private final CountDownLatch left = new CountDownLatch(1);
    private volatile long told = System.nanoTime();

    /**
     * @param patience how long one line may wait for a reader who does not read
     * @param heartbeat the line told when no other is
     */
    LinesToReader(OutputStream out, Deadlines deadlines, Duration patience, String heartbeat) {
        this.out = out;
        this.deadlines = deadlines;
        this.patience = patience;
        this.heartbeat = heartbeat;
    }

    @Override
    public void tell(String json) {
        byte[] line = (json + "\n").getBytes(StandardCharsets.UTF_8);
        boolean lost = false;
        writing.lock();
        try {
            if (gone()) {
                throw new GoneException();
            }
            deadlines.within(
                    patience,
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

    /** Tells the heartbeat at this pace until there is no reader. */
    void beat(Duration every) {
        try {
            long wait = every.toNanos();
            while (!left.await(wait, TimeUnit.NANOSECONDS)) {
                wait = every.toNanos() - (System.nanoTime() - told);
                if (wait <= 0) {
                    tell(heartbeat);
                    wait = every.toNanos();
                }
            }
        } catch (GoneException e) {
            return;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** From now on there is no reader. */
    void leave() {
        List<Runnable> then;
        synchronized (onGone) {
            left.countDown();
            then = List.copyOf(onGone);
            onGone.clear();
        }
        then.forEach(Runnable::run);
    }

    @Override
    public boolean gone() {
        return left.getCount() == 0;
    }

    @Override
    public void onGone(Runnable then) {
        synchronized (onGone) {
            if (!gone()) {
                onGone.add(then);
                return;
            }
        }
        then.run();
    }
}
