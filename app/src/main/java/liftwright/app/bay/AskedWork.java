package liftwright.app.bay;

import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import liftwright.numerics.Work;

/** Work that the page waits for: it can be stopped, tells how far it is, and gives way. */
final class AskedWork implements Work {

    /**
     * How far it is.
     *
     * @param stage in words
     * @param done of {@code total}
     */
    record Progress(String stage, long done, long total) {}

    private record Begun(String name, long total, LongAdder done) {}

    private final Runnable giveWay;
    private volatile boolean stopped;
    private volatile Optional<Begun> begun = Optional.empty();

    /**
     * @param giveWay called before each draw: may wait a moment for what is more urgent
     */
    AskedWork(Runnable giveWay) {
        this.giveWay = giveWay;
    }

    /** From now on it ends as soon as it can. */
    void stop() {
        stopped = true;
    }

    /** How far it is, where it has begun anything. */
    Optional<Progress> progress() {
        return begun.map(b -> new Progress(b.name, Math.min(b.total, b.done.sum()), b.total));
    }

    @Override
    public void stage(String name, long total) {
        begun = Optional.of(new Begun(name, total, new LongAdder()));
    }

    @Override
    public void done(long units) {
        begun.ifPresent(b -> b.done.add(units));
    }

    @Override
    public boolean stopped() {
        if (!stopped) {
            giveWay.run();
        }
        return stopped;
    }
}
