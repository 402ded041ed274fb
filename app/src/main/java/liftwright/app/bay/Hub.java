package liftwright.app.bay;

import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;

/** Tells every tab that watches a rig that it changed. */
final class Hub {

    /** Tabs beyond these would leave a browser no connection for anything else. */
    static final int MOST_WATCHERS = 4;

    private static final int MOST_WAITING = 16;
    private static final long LOOK_EVERY_MS = 200;

    /**
     * A document is another one than it was.
     *
     * @param rig its path as the page names it
     * @param revision that stands now
     * @param saved whether the file holds it
     */
    record Changed(String rig, String revision, boolean saved) {}

    private record Watcher(String rig, BlockingQueue<Changed> waiting) {}

    private final List<Watcher> watchers = new CopyOnWriteArrayList<>();

    /** Tells all who watch that rig; never waits. */
    void publish(Changed changed) {
        for (Watcher watcher : watchers) {
            if (watcher.rig().equals(changed.rig())) {
                while (!watcher.waiting().offer(changed)) {
                    watcher.waiting().poll(); // only the newest state matters
                }
            }
        }
    }

    /** Whether any tab watches that rig. */
    boolean isWatched(String rig) {
        return watchers.stream().anyMatch(watcher -> watcher.rig().equals(rig));
    }

    /** Whether another tab may watch. */
    boolean full() {
        return watchers.size() >= MOST_WATCHERS;
    }

    /** Tells {@code lines} of each change until its reader leaves. */
    void watch(String rig, Lines lines) {
        var watcher = new Watcher(rig, new ArrayBlockingQueue<>(MOST_WAITING));
        watchers.add(watcher);
        try {
            lines.tell("{}");
            while (!lines.gone()) {
                Changed changed = watcher.waiting().poll(LOOK_EVERY_MS, TimeUnit.MILLISECONDS);
                if (changed != null) {
                    lines.tell(
                            json ->
                                    json.object(
                                            () ->
                                                    json.member("revision", changed.revision())
                                                            .name("saved")
                                                            .truth(changed.saved())));
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            watchers.remove(watcher);
        }
    }
}
