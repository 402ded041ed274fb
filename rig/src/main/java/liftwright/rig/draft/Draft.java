package liftwright.rig.draft;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import liftwright.rig.Change;
import liftwright.rig.file.Disk;
import liftwright.rig.file.RigReading;
import liftwright.rig.text.YamlText;

/**
 * The working copy of one rig file: what several tabs and several programs edit together. Every
 * edit says which revision it was made on, can be taken back byte by byte, and is forced into a
 * journal before it counts. Safe for use from several threads.
 */
public final class Draft implements AutoCloseable {

    /** Most changes in one edit. */
    public static final int MOST_CHANGES = 500;

    private static final String TOO_LARGE =
            "A rig file has at most " + YamlText.MOST_BYTES + " bytes: nothing was changed.";

    private final WorkingCopy work;
    private final List<Runnable> watchers = new CopyOnWriteArrayList<>();

    private Draft(WorkingCopy work) {
        this.work = work;
    }

    /**
     * Opens a rig file, with whatever an earlier run did not save.
     *
     * @param folder the opened folder; journals stand in it
     * @param rig the file in the folder, parts joined by {@code /}; the caller has made sure that
     *     it leads nowhere else
     * @throws IOException if there is no such file or it cannot be read
     */
    public static Draft open(Path folder, String rig) throws IOException {
        return open(folder, rig, new Disk());
    }

    static Draft open(Path folder, String rig, Disk disk) throws IOException {
        return new Draft(new WorkingCopy(folder, rig, disk));
    }

    /** The draft as it stands; what is to be told is told with it and not again. */
    public synchronized DraftView view() {
        return work.view();
    }

    /** What is declared now, without telling anything. */
    public synchronized RigReading reading() {
        return work.reading();
    }

    /** Names the state that {@link #reading} gives. */
    public synchronized String revision() {
        return work.revision();
    }

    /**
     * Which state a draft is in, for those who only want to know whether it is another one.
     *
     * @param revision names text and tables
     * @param saved whether the file holds them
     */
    public record Standing(String revision, boolean saved) {}

    /** The state now, without telling anything. */
    public synchronized Standing standing() {
        return new Standing(work.revision(), work.isSaved());
    }

    /** What is declared now, where it is still what {@code base} names. */
    public synchronized Optional<RigReading> readingAt(String base) {
        return base.equals(work.revision()) ? Optional.of(work.reading()) : Optional.empty();
    }

    /**
     * Makes changes, all or none. On an older base they are made on the text as it stands, if what
     * they name is still there.
     *
     * @param base revision they were thought out on
     * @param label what undo would take back, in words
     * @throws IOException if the journal could not be written; nothing was changed then
     */
    public Outcome change(String base, List<Change> changes, String label) throws IOException {
        return announced(() -> changed(base, changes, label));
    }

    private Outcome changed(String base, List<Change> changes, String label) throws IOException {
        if (changes.size() > MOST_CHANGES) {
            return refused("One edit has at most " + MOST_CHANGES + " changes.");
        }
        boolean merged = !base.equals(work.revision());
        if (merged) {
            var declared = work.reading().text().declaration();
            var objection =
                    declared.flatMap(now -> Footing.objection(work.declaredAt(base), now, changes));
            if (objection.isPresent()) {
                return refused("The rig was changed elsewhere meanwhile. " + objection.get());
            }
        }
        return switch (work.reading().with(changes)) {
            case RigReading.Edit.Refused(var _, var reason) ->
                    refused(merged ? "The rig was changed elsewhere meanwhile. " + reason : reason);
            case RigReading.Edit.Changed(var next, var _) ->
                    edited(next, Words.label(label), new How.Made(changes), merged);
        };
    }

    /**
     * Takes any text, good or broken. Where every line ended with carriage return and line feed and
     * the new text has no carriage return at all, as editors of web pages give it, line ends stay.
     *
     * @throws IOException if the journal could not be written; nothing was changed then
     */
    public Outcome text(String base, String newText) throws IOException {
        return announced(() -> typed(base, newText));
    }

    private Outcome typed(String base, String newText) throws IOException {
        if (!base.equals(work.revision())) {
            return stale();
        }
        byte[] bytes =
                LineEnds.kept(work.reading().text().text(), newText)
                        .getBytes(StandardCharsets.UTF_8);
        if (bytes.length > YamlText.MOST_BYTES) {
            return refused(TOO_LARGE);
        }
        RigReading next = work.read(bytes);
        return edited(
                next, Words.ofTyping(work.reading().text(), next.text()), new How.Typed(), false);
    }

    private Outcome edited(RigReading next, String label, How how, boolean merged)
            throws IOException {
        byte[] bytes = next.text().bytes();
        if (work.course().text().length > YamlText.MOST_BYTES
                || bytes.length > YamlText.MOST_BYTES) {
            return refused(TOO_LARGE);
        }
        if (Arrays.equals(bytes, work.course().text())) {
            return done();
        }
        work.move(new Entry.Edit(label, how, Patch.between(work.course().text(), bytes)), next);
        if (merged) {
            work.tell(
                    "The rig was changed elsewhere meanwhile; this change was made on top of"
                            + " that.");
        }
        return done();
    }

    /** Takes back the last edit: the bytes are again what they were. */
    public Outcome undo(String base) throws IOException {
        return announced(
                () -> {
                    var step = work.course().lastDone();
                    if (!base.equals(work.revision())) {
                        return stale();
                    }
                    if (step.isEmpty()) {
                        return refused("There is nothing to take back.");
                    }
                    work.move(new Entry.Undo(step.get().label(), step.get().patch().back()));
                    return done();
                });
    }

    /** Does again what was taken back last. */
    public Outcome redo(String base) throws IOException {
        return announced(
                () -> {
                    var step = work.course().lastTakenBack();
                    if (!base.equals(work.revision())) {
                        return stale();
                    }
                    if (step.isEmpty()) {
                        return refused("There is nothing to do again.");
                    }
                    work.move(new Entry.Redo(step.get().label(), step.get().patch()));
                    return done();
                });
    }

    /**
     * Saves the text, unless the file was changed by another program since it was read.
     *
     * @throws IOException if it could not be written; the file is the old one or the new one, and
     *     the text is in the journal still
     */
    public Outcome save(String base) throws IOException {
        return announced(() -> saved(base));
    }

    private Outcome saved(String base) throws IOException {
        if (!base.equals(work.revision())) {
            return stale();
        }
        work.look();
        if (work.rival().isPresent()) {
            return new Outcome.Conflicting(
                    view(), "The file on disk is another one: nothing was saved.");
        }
        if (!base.equals(work.revision())) {
            return stale(); // what was on disk was merged just now: it is to be seen first
        }
        if (work.isSaved()) {
            return done();
        }
        if (!work.write()) {
            work.look();
            return new Outcome.Conflicting(
                    view(), "The file on disk has just changed: nothing was saved.");
        }
        return done();
    }

    /**
     * Looks whether another program wrote the file or its tables. Where nothing is unsaved, that is
     * an edit as any other; where only changes are unsaved, they are made again on the new text;
     * else both texts are kept.
     *
     * @return whether anything is other than before
     * @throws IOException if the journal could not be written; the disk is looked at again next
     *     time
     */
    public boolean look() throws IOException {
        return announced(
                () -> {
                    String before = work.stamp();
                    work.look();
                    return !before.equals(work.stamp());
                });
    }

    /** Which of two texts goes on. */
    public enum Side {
        /** The text of this draft is the one to save over what the disk holds. */
        MINE,
        /** What the disk holds is the text, and this draft's is one undo away. */
        DISK
    }

    /** Ends a conflict. */
    public Outcome resolve(String base, Side side) throws IOException {
        return announced(
                () -> {
                    byte[] theirs = work.rival().orElse(null);
                    if (!base.equals(work.revision())) {
                        return stale();
                    }
                    if (theirs == null) {
                        return refused("There is no conflict to end.");
                    }
                    Patch toTheirs = Patch.between(work.course().disk(), theirs);
                    switch (side) {
                        case MINE -> work.settle(new Entry.Seen(toTheirs));
                        case DISK ->
                                work.settle(
                                        new Entry.Taken(
                                                "taking the text from the disk",
                                                toTheirs,
                                                Patch.between(work.course().text(), theirs)));
                    }
                    return done();
                });
    }

    private Outcome done() {
        return new Outcome.Done(view());
    }

    private Outcome stale() {
        return new Outcome.Stale(
                view(), "The rig was changed elsewhere meanwhile: nothing was done.");
    }

    private Outcome refused(String sentence) {
        return new Outcome.Refused(view(), sentence);
    }

    /** Something that may fail on the disk. */
    private interface Deed<T> {
        T run() throws IOException;
    }

    /** Does it alone, and tells the watchers afterwards if anything is other than before. */
    private <T> T announced(Deed<T> deed) throws IOException {
        var stamps = new String[2];
        try {
            synchronized (this) {
                stamps[0] = work.stamp();
                try {
                    return deed.run();
                } finally {
                    stamps[1] = work.stamp();
                }
            }
        } finally {
            if (!stamps[0].equals(stamps[1])) {
                watchers.forEach(Runnable::run);
            }
        }
    }

    /** Calls {@code watcher} after every change, until what is returned is closed. */
    public Watch watch(Runnable watcher) {
        watchers.add(watcher);
        return () -> watchers.remove(watcher);
    }

    /** Ends a watch. */
    @FunctionalInterface
    public interface Watch extends AutoCloseable {
        @Override
        void close();
    }

    /** Lets go of the journal; what is unsaved stays in it. */
    @Override
    public synchronized void close() {
        work.close();
    }
}
