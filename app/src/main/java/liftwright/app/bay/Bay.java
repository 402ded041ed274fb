package liftwright.app.bay;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/** What all routes share. */
final class Bay {

    private static final int MOST_FAULTS = 10;

    private final AtomicInteger told = new AtomicInteger();
    private final OpenedFolder folder;
    private final String version;
    private final Optional<String> open;
    private final Hub hub = new Hub();
    private final Drafts drafts;
    private final Keys keys = new Keys();
    private final Consumer<Throwable> faults;
    private final Deque<Runnable> atTheEnd = new ArrayDeque<>();

    /**
     * @param version of the program
     * @param open the rig that was named on the command line
     * @param faults is told what went wrong by a mistake of ours
     */
    Bay(OpenedFolder folder, String version, Optional<String> open, Consumer<Throwable> faults) {
        this.folder = folder;
        this.version = version;
        this.open = open;
        this.faults = faults;
        this.drafts = new Drafts(folder, hub);
    }

    OpenedFolder folder() {
        return folder;
    }

    String version() {
        return version;
    }

    /** The rig that was named on the command line. */
    Optional<String> open() {
        return open;
    }

    Hub hub() {
        return hub;
    }

    /** The working copies of its rig files. */
    Drafts drafts() {
        return drafts;
    }

    Keys keys() {
        return keys;
    }

    /** Reports a mistake of ours; the first few, since what fails may be asked at every frame. */
    void fault(Throwable cause) {
        if (told.incrementAndGet() <= MOST_FAULTS) {
            faults.accept(cause);
        }
    }

    /**
     * Asks for something to be done when the server stops, after the last request was answered;
     * what was asked last is done first. It has about a second.
     */
    synchronized void atTheEnd(Runnable then) {
        atTheEnd.push(then);
    }

    /** Does what was asked for at the end, each although another failed. */
    synchronized void end() {
        while (!atTheEnd.isEmpty()) {
            try {
                atTheEnd.pop().run();
            } catch (RuntimeException e) {
                fault(e);
            }
        }
    }
}
