package liftwright.app.bay;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;

/** One lane of work for each tab: what is asked anew stops what still runs there. */
final class Lanes {

    private static final class Lane {
        private final ReentrantLock running = new ReentrantLock();
        private Optional<AskedWork> newest = Optional.empty();

        private synchronized void take(AskedWork work) {
            newest.ifPresent(AskedWork::stop);
            newest = Optional.of(work);
        }
    }

    private final Map<Session, Lane> lanes = new ConcurrentHashMap<>();

    /**
     * Stops what runs in the lane of that tab, waits until it has ended and does {@code then},
     * which finds its own work stopped where something newer came meanwhile.
     */
    void run(Session session, AskedWork work, Runnable then) {
        Lane lane = lanes.computeIfAbsent(session, _ -> new Lane());
        lane.take(work);
        lane.running.lock();
        try {
            then.run();
        } finally {
            lane.running.unlock();
        }
    }
}
