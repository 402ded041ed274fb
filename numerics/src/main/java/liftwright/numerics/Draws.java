package liftwright.numerics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Many independent draws on several threads. Each draw writes only into its own place in arrays of
 * the caller, who then reduces them in the order of the draws: the result has the same bits on any
 * number of threads.
 */
public final class Draws {

    /** What happens in one draw. */
    @FunctionalInterface
    public interface Body<C> {

        /**
         * @param context scratch of this worker, used by no other thread
         * @param draw number of the draw
         */
        void run(C context, int draw);
    }

    private record Failure(int draw, Throwable cause) {}

    private Draws() {}

    /**
     * Runs draws 0 to count − 1; the calling thread is one of the workers.
     *
     * @param work asked whether to stop before each draw, told after each; it needs a stage begun
     * @param threads ≥ 1
     * @param context makes the scratch of one worker (called once by each)
     * @return how many draws are complete: all, or, if stopped, the first so many without a gap, so
     *     that the rest can be made later
     * @throws RuntimeException whatever the draw of lowest number threw, the same on any number of
     *     threads
     */
    public static <C> int forEach(
            Work work, int threads, int count, Supplier<C> context, Body<C> body) {
        return forEach(work, threads, 0, count, context, body);
    }

    /** The same for draws {@code from} to {@code to} − 1; the return value counts from 0. */
    public static <C> int forEach(
            Work work, int threads, int from, int to, Supplier<C> context, Body<C> body) {
        if (threads < 1 || from < 0) {
            throw new IllegalArgumentException("draws need a thread and start at 0 or later");
        }
        AtomicInteger next = new AtomicInteger(from);
        AtomicReference<@Nullable Failure> failure = new AtomicReference<>();
        Runnable worker = () -> work(work, next, to, context, body, failure);
        List<Thread> helpers = new ArrayList<>();
        for (int i = 1; i < Math.min(threads, to - from); i++) {
            helpers.add(Thread.ofPlatform().name("draws-" + i).daemon().start(worker));
        }
        worker.run();
        join(helpers);
        Failure first = failure.get();
        if (first != null) {
            rethrow(first.cause);
        }
        return Math.max(from, Math.min(next.get(), to));
    }

    /**
     * The same, where draws that {@link Work#kept} has from before are put back and not made again,
     * and those made now are kept as soon as each is complete.
     *
     * @param form of what a draw wrote
     */
    public static <C> int forEachKept(
            Work work,
            int threads,
            int from,
            int to,
            Supplier<C> context,
            Body<C> body,
            Kept.Form form) {
        Kept.Batch batch = work.kept().batch(to);
        int[] open = new int[Math.max(0, to - from)];
        int missing = 0;
        for (int draw = from; draw < to; draw++) {
            Optional<double[]> before = batch.of(draw);
            if (before.isPresent()) {
                form.putBack(draw, before.get());
            } else {
                open[missing++] = draw;
            }
        }
        if (missing < open.length) {
            work.already(open.length - missing);
        }
        int made =
                forEach(
                        work,
                        threads,
                        missing,
                        context,
                        (scratch, k) -> {
                            body.run(scratch, open[k]);
                            batch.keep(open[k], form.numbers(open[k]));
                        });
        return made < missing ? open[made] : Math.max(from, to);
    }

    private static <C> void work(
            Work work,
            AtomicInteger next,
            int to,
            Supplier<C> context,
            Body<C> body,
            AtomicReference<@Nullable Failure> failure) {
        int draw = -1;
        try {
            C scratch = context.get();
            // A draw once taken is finished, so the draws taken are always a prefix.
            while (failure.get() == null && !work.stopped()) {
                draw = take(next, to);
                if (draw < 0) {
                    return;
                }
                body.run(scratch, draw);
                work.done(1);
            }
        } catch (RuntimeException | Error thrown) {
            Failure mine = new Failure(draw, thrown);
            failure.accumulateAndGet(
                    mine,
                    (old, now) -> old == null || now == null || now.draw < old.draw ? now : old);
        }
    }

    private static int take(AtomicInteger next, int to) {
        int taken = next.getAndUpdate(n -> n < to ? n + 1 : n);
        return taken < to ? taken : -1;
    }

    private static void join(List<Thread> helpers) {
        boolean interrupted = false;
        for (Thread helper : helpers) {
            while (true) {
                try {
                    helper.join();
                    break;
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static void rethrow(Throwable cause) {
        switch (cause) {
            case RuntimeException failure -> throw failure;
            case Error error -> throw error;
            default -> throw new IllegalStateException(cause);
        }
    }
}
