package liftwright.app.bay;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A reader who keeps every line and may leave. */
final class LinesHeard implements Lines {

    private static final JsonMapper REFEREE = JsonMapper.builder().build();

    private final List<JsonNode> heard = new ArrayList<>();
    private final List<Runnable> then = new ArrayList<>();
    private boolean gone;
    private boolean held;
    private boolean waiting;

    @Override
    public synchronized void tell(String json) {
        while (held) {
            waiting = true;
            notifyAll();
            pause();
        }
        if (gone) {
            throw new GoneException();
        }
        heard.add(REFEREE.readTree(json));
        notifyAll();
    }

    @Override
    public synchronized boolean gone() {
        return gone;
    }

    @Override
    public synchronized void onGone(Runnable run) {
        then.add(run);
    }

    void leave() {
        List<Runnable> all;
        synchronized (this) {
            gone = true;
            all = List.copyOf(then);
        }
        all.forEach(Runnable::run);
    }

    /** From now on whoever tells a line waits. */
    synchronized void hold() {
        held = true;
    }

    /** Waits until somebody waits to tell a line. */
    synchronized void awaitHeld() {
        while (!waiting) {
            pause();
        }
    }

    synchronized void release() {
        held = false;
        notifyAll();
    }

    @SuppressWarnings("WaitNotInLoop") // whoever pauses looks again
    private synchronized void pause() {
        try {
            wait(1000);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    synchronized List<JsonNode> heard() {
        return List.copyOf(heard);
    }

    /** Waits until a line is such. */
    synchronized void await(Predicate<JsonNode> such) {
        long until = System.nanoTime() + Duration.ofSeconds(60).toNanos();
        while (heard.stream().noneMatch(such)) {
            pause();
            if (System.nanoTime() > until) {
                throw new AssertionError("not told: " + heard);
            }
        }
    }
}
