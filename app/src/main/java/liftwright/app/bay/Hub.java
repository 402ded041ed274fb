package liftwright.app.bay;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import liftwright.answer.JsonText;

/** Tells every tab that watches a rig that it changed, and how the jobs stand. */
final class Hub {

    /** Tabs beyond these would leave a browser no connection for anything else. */
    static final int MOST_WATCHERS = 4;

    private static final int MOST_WAITING = 16;
    private static final long LOOK_EVERY_MS = 200;

    /** The version that a tab has heard which has just come. */
    private static final long UNHEARD = -1;

    /**
     * A document is another one than it was.
     *
     * @param rig its path as the page names it
     * @param revision that stands now
     * @param saved whether the file holds it
     */
    record Changed(String rig, String revision, boolean saved) {}

    /** What every tab is told whatever rig it watches. */
    interface News {

        /** Grows whenever there is something to tell. */
        long version();

        /** Whether there is nothing that a tab which has just come would want to hear. */
        boolean isEmpty();

        /** Writes all of it as members of an object. */
        void write(JsonText json);
    }

    private record Watcher(String rig, BlockingQueue<Changed> waiting) {}

    private final List<Watcher> watchers = new CopyOnWriteArrayList<>();
    private volatile Optional<News> news = Optional.empty();

    /** From now on tells this too. */
    void tellToo(News more) {
        news = Optional.of(more);
    }

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

    /** Tells what is newer than what was heard, and gives back what is heard then. */
    private long tellNews(long heard, Lines lines) {
        return news.map(
                        all -> {
                            long now = all.version();
                            if (now != heard && !(heard == UNHEARD && all.isEmpty())) {
                                lines.tell(json -> json.object(() -> all.write(json)));
                            }
                            return now;
                        })
                .orElse(heard);
    }

    /** Tells {@code lines} of each change until its reader leaves. */
    void watch(String rig, Lines lines) {
        var watcher = new Watcher(rig, new ArrayBlockingQueue<>(MOST_WAITING));
        watchers.add(watcher);
        try {
            lines.tell("{}");
            long heard = UNHEARD;
            while (!lines.gone()) {
                heard = tellNews(heard, lines);
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
