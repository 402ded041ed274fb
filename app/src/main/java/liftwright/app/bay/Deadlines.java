package liftwright.app.bay;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * Cuts the connections of readers and writers who take too long. An interrupt closes the channel on
 * which a thread waits; nothing milder ends a wait for a peer who sends a byte a minute.
 */
final class Deadlines {

    private final ScheduledThreadPoolExecutor timer =
            new ScheduledThreadPoolExecutor(
                    1, Thread.ofPlatform().daemon().name("bay-deadlines").factory());

    Deadlines() {
        timer.setRemoveOnCancelPolicy(true);
    }

    /** Input or output of the current thread, which is interrupted when it takes too long. */
    <T> T within(Duration most, Io<T> io) throws IOException {
        var wait = new Wait(Thread.currentThread());
        var due = timer.schedule(wait::cut, most.toMillis(), TimeUnit.MILLISECONDS);
        try {
            return io.run();
        } finally {
            due.cancel(false);
            wait.end();
        }
    }

    void stop() {
        timer.shutdownNow();
    }

    /** What may take long. */
    @FunctionalInterface
    interface Io<T> {
        T run() throws IOException;
    }

    private static final class Wait {
        private final Thread who;
        private boolean over;
        private boolean cut;

        Wait(Thread who) {
            this.who = who;
        }

        synchronized void cut() {
            if (!over) {
                cut = true;
                who.interrupt();
            }
        }

        /** The interrupt was for the channel and for nothing that comes after. */
        synchronized void end() {
            over = true;
            if (cut) {
                boolean _ = Thread.interrupted();
            }
        }
    }
}
