package liftwright.app.job;

import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;

/** Work of a job: can be stopped from elsewhere, and tells how far it is and how long it lasts. */
final class JobWork implements JobTask.Progress {

    private static final double TOO_EARLY = 0.005;

    private record Stage(
            String name, long total, long startNs, AtomicLong already, AtomicLong done) {}

    private final LongSupplier nanoTime;
    private final Runnable moved;
    private volatile Stage stage;
    private volatile boolean stopped;

    /**
     * @param moved called when it is further than before
     */
    JobWork(LongSupplier nanoTime, Runnable moved) {
        this.nanoTime = nanoTime;
        this.moved = moved;
        stage = new Stage("", 1, nanoTime.getAsLong(), new AtomicLong(), new AtomicLong());
    }

    void stop() {
        stopped = true;
    }

    @Override
    public void stage(String name, long total) {
        stage =
                new Stage(
                        name,
                        Math.max(1, total),
                        nanoTime.getAsLong(),
                        new AtomicLong(),
                        new AtomicLong());
        moved.run();
    }

    @Override
    public void done(long units) {
        stage.done.addAndGet(units);
        moved.run();
    }

    @Override
    public void already(long units) {
        stage.already.addAndGet(units);
        moved.run();
    }

    @Override
    public boolean stopped() {
        return stopped;
    }

    /** How far it is. */
    Job.Far far() {
        Stage now = stage;
        long already = now.already.get();
        long done = Math.min(now.total, already + now.done.get());
        double share = (double) (done - already) / Math.max(1, now.total - already);
        double spentS = (nanoTime.getAsLong() - now.startNs) * 1e-9;
        return new Job.Far(
                now.name, done, now.total, share > TOO_EARLY ? spentS * (1 - share) / share : -1);
    }
}
