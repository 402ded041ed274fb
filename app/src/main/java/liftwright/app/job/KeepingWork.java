package liftwright.app.job;

import liftwright.numerics.Kept;
import liftwright.numerics.Work;

/**
 * Work of a job that keeps what is finished.
 *
 * @param work tells how far it is
 */
public record KeepingWork(JobTask.Progress work, Kept kept) implements Work {

    @Override
    public void stage(String name, long total) {
        work.stage(name, total);
    }

    @Override
    public void done(long units) {
        work.done(units);
    }

    @Override
    public void already(long units) {
        work.already(units);
    }

    @Override
    public boolean stopped() {
        return work.stopped();
    }
}
