package liftwright.app;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Turns an interrupt (Ctrl-C, SIGTERM) into a question that work asks of itself. The process then
 * ends by its own hand, with what is done written out.
 */
final class Interrupt {

    private static final long PATIENCE_S = 5;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final CountDownLatch asked = new CountDownLatch(1);
    private volatile int code = Exit.STOPPED_EARLY.code();

    /** Listens to the process's signals. */
    void listen() {
        Runtime.getRuntime().addShutdownHook(new Thread(this::shutDown, "liftwright-interrupt"));
    }

    boolean asked() {
        return asked.getCount() == 0;
    }

    /** Waits for the user to interrupt: what a server does. */
    void await() throws InterruptedException {
        asked.await();
    }

    /** As if the user had interrupted. */
    void ask() {
        asked.countDown();
    }

    /** The work is over; the process may end. */
    void ended(int exitCode) {
        code = exitCode;
        ended.countDown();
    }

    private void shutDown() {
        if (ended.getCount() == 0) {
            return; // an orderly end
        }
        ask();
        try {
            boolean orderly = ended.await(PATIENCE_S, TimeUnit.SECONDS);
            Runtime.getRuntime().halt(orderly ? code : Exit.STOPPED_EARLY.code());
        } catch (InterruptedException e) {
            Runtime.getRuntime().halt(Exit.STOPPED_EARLY.code());
        }
    }
}
