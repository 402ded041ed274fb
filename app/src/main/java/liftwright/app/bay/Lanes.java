package liftwright.app.bay;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;

/**
 * One lane of work for each tab: what is asked anew stops what still runs there. Requests of one
 * page can overtake each other on their way, so a page numbers them, and the higher number is the
 * newer request whenever it arrives.
 */
final class Lanes {

    private record Held(AskedWork work, OptionalDouble turn) {}

    private static final class Lane {
        private final ReentrantLock running = new ReentrantLock();
        private Optional<Held> newest = Optional.empty();

        /** Whether it is the newest now. */
        private synchronized boolean take(Held next) {
            if (newest.filter(held -> isNewer(held, next)).isPresent()) {
                return false;
            }
            newest.ifPresent(held -> held.work.stop());
            newest = Optional.of(next);
            return true;
        }

        private synchronized void end(Held ended) {
            newest = newest.filter(held -> held.work != ended.work);
        }

        private static boolean isNewer(Held one, Held other) {
            return one.turn.isPresent()
                    && other.turn.isPresent()
                    && one.turn.getAsDouble() > other.turn.getAsDouble();
        }
    }

    private final Map<Session, Lane> lanes = new ConcurrentHashMap<>();

    /** The same with nothing that can be done at once. */
    void run(Session session, OptionalDouble turn, AskedWork work, Runnable then) {
        run(session, turn, work, () -> {}, then);
    }

    /**
     * Stops what runs in the lane of that tab, waits until it has ended and does {@code then},
     * which finds its own work stopped where something newer came meanwhile or before.
     *
     * @param turn number of the request among those of its page; empty counts as the newest
     * @param atOnce done before it waits, where nothing newer came before
     */
    void run(Session session, OptionalDouble turn, AskedWork work, Runnable atOnce, Runnable then) {
        Lane lane = lanes.computeIfAbsent(session, _ -> new Lane());
        var held = new Held(work, turn);
        if (!lane.take(held)) {
            work.stop();
            then.run();
            return;
        }
        atOnce.run();
        lane.running.lock();
        try {
            then.run();
        } finally {
            lane.running.unlock();
            lane.end(held);
        }
    }
}
