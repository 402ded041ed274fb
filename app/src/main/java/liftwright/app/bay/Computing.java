package liftwright.app.bay;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * Computes on a thread of its own: a request's thread is one of few that all requests share, and
 * only waits here and tells how far it is.
 *
 * @param progress how often it is told
 */
record Computing(Duration progress) {

    /**
     * Returns when {@code compute} has ended, or fails as it does.
     *
     * @param work stopped when this thread is interrupted
     * @param tell says how far it is
     */
    void run(AskedWork work, Runnable compute, Runnable tell) {
        var failed = new AtomicReference<@Nullable Throwable>();
        Thread computing =
                Thread.ofPlatform()
                        .daemon()
                        .name("answering")
                        .uncaughtExceptionHandler((_, failure) -> failed.set(failure))
                        .start(compute);
        try {
            while (!computing.join(progress)) {
                tell.run();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            work.stop();
        }
        switch (failed.get()) {
            case null -> {}
            case RuntimeException failure -> throw failure;
            case Error error -> throw error;
            case Throwable other -> throw new IllegalStateException(other);
        }
    }
}
