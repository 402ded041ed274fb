package liftwright.rig.draft;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import liftwright.rig.Change;
import liftwright.rig.file.Disk;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;
import liftwright.rig.text.RigText;
import liftwright.rig.text.YamlText;
import org.jspecify.annotations.Nullable;

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

    private final Path file;
    private final String rig;
    private final Disk disk;
    private final KeptTables tables;
    private final Journal journal;
    private final Past past = new Past();
    private final List<Runnable> watchers = new CopyOnWriteArrayList<>();
    private final List<String> news = new ArrayList<>();

    private Course course;
    private RigReading reading;
    private String revision;

    /** What the disk holds where that could not be merged. */
    private byte @Nullable [] rival;

    /** Why the disk cannot be looked at; empty while it can. */
    private String trouble = "";

    private Draft(Path folder, String rig, Disk disk) throws IOException {
        this.file = folder.resolve(rig);
        this.rig = rig;
        this.disk = disk;
        Path beside = file.toAbsolutePath().getParent();
        this.tables = new KeptTables(new Folder(beside == null ? folder : beside));
        this.journal = new Journal(JournalPlace.of(folder, rig), disk);
        byte[] seen = RigFiles.read(file);
        this.course = recovered(seen);
        this.reading = read(course.text());
        this.revision = reading.digest();
        past.remember(revision, reading.text());
        meet(seen);
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
        return new Draft(folder, rig, disk);
    }

    private Course recovered(byte[] seen) throws IOException {
        Optional<Journal.Left> left;
        try {
            left = journal.left();
        } catch (IOException e) {
            news.add(
                    "What was not saved the last time cannot be read ("
                            + e.getMessage()
                            + "); it was kept as "
                            + journal.setAside().getFileName()
                            + ".");
            return new Course(seen);
        }
        if (left.isEmpty()) {
            return new Course(seen);
        }
        var before = new Course(seen);
        boolean whole = !left.get().torn();
        try {
            left.get().entries().forEach(before::apply);
        } catch (IllegalArgumentException e) {
            whole = false;
        }
        if (before.isClean()) {
            endJournal();
            return new Course(seen);
        }
        if (Arrays.equals(before.text(), seen)) {
            return before; // it was saved, and the journal had not heard of it yet
        }
        news.add(
                "What was not saved the last time is here again"
                        + (whole ? "." : "; its last line was not written to its end."));
        return before;
    }

    /** The draft as it stands; what is to be told is told with it and not again. */
    public synchronized DraftView view() {
        var told = news.isEmpty() ? Optional.<String>empty() : Optional.of(String.join(" ", news));
        news.clear();
        return new DraftView(
                rig,
                revision,
                reading,
                isSaved(),
                course.lastDone().map(Step::label),
                course.lastTakenBack().map(Step::label),
                Optional.ofNullable(rival).map(this::conflict),
                told);
    }

    private DraftView.Conflict conflict(byte[] theirs) {
        String text = theirs.length > YamlText.MOST_BYTES ? "" : RigText.read(rig, theirs).text();
        return new DraftView.Conflict(
                text,
                "Another program wrote this file while edits of yours were not saved. Both texts"
                        + " are kept: choose one.");
    }

    private boolean isSaved() {
        return course.isClean() && rival == null && trouble.isEmpty();
    }

    /** What is declared now, without telling anything. */
    public synchronized RigReading reading() {
        return reading;
    }

    /** Names the state that {@link #reading} gives. */
    public synchronized String revision() {
        return revision;
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
        return new Standing(revision, isSaved());
    }

    /** What is declared now, where it is still what {@code base} names. */
    public synchronized Optional<RigReading> readingAt(String base) {
        return base.equals(revision) ? Optional.of(reading) : Optional.empty();
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
        boolean merged = !base.equals(revision);
        if (merged) {
            var declared = reading.text().declaration();
            var objection =
                    declared.flatMap(
                            now -> Footing.objection(past.declaration(base), now, changes));
            if (objection.isPresent()) {
                return refused("The rig was changed elsewhere meanwhile. " + objection.get());
            }
        }
        return switch (reading.with(changes)) {
            case RigReading.Edit.Refused(var _, var reason) ->
                    refused(merged ? "The rig was changed elsewhere meanwhile. " + reason : reason);
            case RigReading.Edit.Changed(var next, var _) -> {
                if (merged) {
                    news.add(
                            "The rig was changed elsewhere meanwhile; this change was made on top"
                                    + " of that.");
                }
                yield edited(next, Words.label(label), new How.Made(changes));
            }
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
        if (!base.equals(revision)) {
            return stale();
        }
        byte[] bytes =
                LineEnds.kept(reading.text().text(), newText).getBytes(StandardCharsets.UTF_8);
        if (bytes.length > YamlText.MOST_BYTES) {
            return refused(TOO_LARGE);
        }
        RigReading next = read(bytes);
        return edited(next, Words.ofTyping(reading.text(), next.text()), new How.Typed());
    }

    private Outcome edited(RigReading next, String label, How how) throws IOException {
        byte[] bytes = next.text().bytes();
        if (course.text().length > YamlText.MOST_BYTES || bytes.length > YamlText.MOST_BYTES) {
            return refused(TOO_LARGE);
        }
        if (Arrays.equals(bytes, course.text())) {
            return done();
        }
        move(new Entry.Edit(label, how, Patch.between(course.text(), bytes)), next);
        return done();
    }

    /** Takes back the last edit: the bytes are again what they were. */
    public Outcome undo(String base) throws IOException {
        return announced(
                () -> {
                    var step = course.lastDone();
                    if (!base.equals(revision)) {
                        return stale();
                    }
                    if (step.isEmpty()) {
                        return refused("There is nothing to take back.");
                    }
                    move(new Entry.Undo(step.get().label(), step.get().patch().back()));
                    return done();
                });
    }

    /** Does again what was taken back last. */
    public Outcome redo(String base) throws IOException {
        return announced(
                () -> {
                    var step = course.lastTakenBack();
                    if (!base.equals(revision)) {
                        return stale();
                    }
                    if (step.isEmpty()) {
                        return refused("There is nothing to do again.");
                    }
                    move(new Entry.Redo(step.get().label(), step.get().patch()));
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
        if (!base.equals(revision)) {
            return stale();
        }
        lookNow();
        if (rival != null) {
            return new Outcome.Conflicting(
                    view(), "The file on disk is another one: nothing was saved.");
        }
        if (!base.equals(revision)) {
            return stale(); // what was on disk was merged just now: it is to be seen first
        }
        if (course.isClean() && trouble.isEmpty()) {
            return done();
        }
        try {
            if (trouble.isEmpty()) {
                if (!RigFiles.writeOver(file, course.disk(), course.text(), disk)) {
                    lookNow();
                    return new Outcome.Conflicting(
                            view(), "The file on disk has just changed: nothing was saved.");
                }
            } else {
                RigFiles.create(file, course.text(), disk);
            }
        } catch (FileAlreadyExistsException e) {
            lookNow();
            return new Outcome.Conflicting(
                    view(), "A file of that name has just appeared: nothing was saved.");
        }
        trouble = "";
        try {
            move(new Entry.Seen(Patch.between(course.disk(), course.text())));
        } catch (IOException e) {
            news.add("The file is saved, but the journal beside it could not be told so.");
            course.saved();
        }
        endJournal();
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
                    String before = stamp();
                    lookNow();
                    return !before.equals(stamp());
                });
    }

    private void lookNow() throws IOException {
        byte[] seen;
        try {
            seen = RigFiles.read(file);
            trouble = "";
        } catch (IOException e) {
            if (trouble.isEmpty()) {
                news.add(
                        e instanceof NoSuchFileException
                                ? "The file is no longer on the disk. To save writes it again."
                                : "The file on the disk cannot be read now.");
            }
            trouble = "gone";
            return;
        }
        if (tables.refresh()) {
            stand(read(course.text()));
            news.add("A table beside the rig file has changed.");
        }
        meet(seen);
    }

    /** Compares what the disk holds with what it held. */
    private void meet(byte[] seen) throws IOException {
        if (Arrays.equals(seen, course.disk())) {
            rival = null;
            return;
        }
        Patch toSeen = Patch.between(course.disk(), seen);
        if (Arrays.equals(seen, course.text())) {
            rival = null;
            take(new Entry.Seen(toSeen), reading);
            return;
        }
        if (course.isClean()) {
            RigReading next = read(seen);
            rival = null;
            take(new Entry.Taken("what another program wrote", toSeen, toSeen), next);
            news.add("Another program changed the file; undo takes that back.");
            return;
        }
        var merged = replayed(seen);
        if (merged.isEmpty()) {
            rival = seen;
            return;
        }
        rival = null;
        Patch toMerged = Patch.between(course.text(), merged.get().text().bytes());
        take(new Entry.Taken("what another program wrote", toSeen, toMerged), merged.get());
        news.add("Another program changed the file; your unsaved changes were made on top of it.");
    }

    /** The unsaved changes made on another text, where they can be. */
    private Optional<RigReading> replayed(byte[] seen) {
        var batches = course.replay();
        if (batches.isEmpty() || seen.length > YamlText.MOST_BYTES) {
            return Optional.empty();
        }
        var changes = batches.get().stream().flatMap(List::stream).toList();
        RigReading theirs = read(seen);
        var base = RigText.read(rig, course.disk()).declaration();
        var now = theirs.text().declaration();
        if (now.isEmpty() || Footing.objection(base, now.get(), changes).isPresent()) {
            return Optional.empty();
        }
        return theirs.with(changes) instanceof RigReading.Edit.Changed(var next, var _)
                ? Optional.of(next)
                : Optional.empty();
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
                    byte[] theirs = rival;
                    if (!base.equals(revision)) {
                        return stale();
                    }
                    if (theirs == null) {
                        return refused("There is no conflict to end.");
                    }
                    Patch toTheirs = Patch.between(course.disk(), theirs);
                    switch (side) {
                        case MINE -> move(new Entry.Seen(toTheirs));
                        case DISK ->
                                move(
                                        new Entry.Taken(
                                                "taking the text from the disk",
                                                toTheirs,
                                                Patch.between(course.text(), theirs)));
                    }
                    rival = null;
                    return done();
                });
    }

    /** Keeps the entry, then goes where it leads. */
    private void move(Entry entry) throws IOException {
        move(entry, null);
    }

    private void move(Entry entry, @Nullable RigReading known) throws IOException {
        journal.add(course, entry);
        course.apply(entry);
        stand(known == null ? read(course.text()) : known);
    }

    /** As {@link #move}; while nothing is unsaved the journal need not know. */
    private void take(Entry entry, RigReading next) throws IOException {
        if (!course.isClean()) {
            journal.add(course, entry);
        }
        course.apply(entry);
        stand(next);
        if (course.isClean()) {
            endJournal();
        }
    }

    /** What is saved needs no journal; one that stays behind says that nothing is unsaved. */
    private void endJournal() {
        try {
            journal.end();
        } catch (IOException e) {
            news.add("The journal beside the file could not be taken away.");
        }
    }

    private void stand(RigReading next) {
        reading = next;
        revision = next.digest();
        past.remember(revision, next.text());
    }

    private RigReading read(byte[] bytes) {
        return RigReading.read(rig, bytes, tables);
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
                stamps[0] = stamp();
                try {
                    return deed.run();
                } finally {
                    stamps[1] = stamp();
                }
            }
        } finally {
            if (!stamps[0].equals(stamps[1])) {
                watchers.forEach(Runnable::run);
            }
        }
    }

    private synchronized String stamp() {
        return revision + isSaved() + (rival == null ? "" : Arrays.hashCode(rival));
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
        journal.close();
    }
}
