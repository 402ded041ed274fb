package liftwright.app.bay;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;

/** What follows a hand goes first: a long answer waits while something is dragged. */
final class RightOfWay {

    private static final long LOOK_EVERY_NS = 500_000;

    /** A long answer goes on in small steps even while one drag follows the other. */
    private static final long LONGEST_NS = 50_000_000;

    private final AtomicInteger urgent = new AtomicInteger();

    /** Does it with the right of way. */
    void first(Runnable work) {
        urgent.incrementAndGet();
        try {
            work.run();
        } finally {
            urgent.decrementAndGet();
        }
    }

    /** Waits while something has the right of way, for a moment at most. */
    void give() {
        if (urgent.get() == 0) {
            return;
        }
        long until = System.nanoTime() + LONGEST_NS;
        while (urgent.get() > 0 && System.nanoTime() < until) {
            LockSupport.parkNanos(LOOK_EVERY_NS);
        }
    }
}
