package liftwright.rig.draft;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.rig.Declaration;
import liftwright.rig.file.Disk;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;
import liftwright.rig.text.RigText;
import liftwright.rig.text.YamlText;
import org.jspecify.annotations.Nullable;

/**
 * A rig's text between what was read and what is saved: its course, the journal that keeps it, and
 * the file on disk that other programs write. For one thread at a time.
 */
final class WorkingCopy {

    private final Path file;
    private final String rig;
    private final Disk disk;
    private final KeptTables tables;
    private final Journal journal;
    private final Past past = new Past();
    private final List<String> news = new ArrayList<>();

    private Course course;
    private RigReading reading;
    private String revision;

    /** What the disk holds where that could not be merged. */
    private byte @Nullable [] rival;

    /** Why the disk cannot be looked at; empty while it can. */
    private String trouble = "";

    WorkingCopy(Path folder, String rig, Disk disk) throws IOException {
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
    DraftView view() {
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

    boolean isSaved() {
        return course.isClean() && rival == null && trouble.isEmpty();
    }

    Course course() {
        return course;
    }

    RigReading reading() {
        return reading;
    }

    String revision() {
        return revision;
    }

    /** What the disk holds where that could not be merged. */
    Optional<byte[]> rival() {
        return Optional.ofNullable(rival);
    }

    /** What the text of an earlier revision said, as far as it is remembered. */
    Optional<Declaration> declaredAt(String earlier) {
        return past.declaration(earlier);
    }

    /** Something that the next view tells. */
    void tell(String sentence) {
        news.add(sentence);
    }

    /** Looks whether another program wrote the file or its tables; see {@link Draft#look}. */
    void look() throws IOException {
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
        var mine = reading.text().declaration();
        var now = theirs.text().declaration();
        if (base.isEmpty()
                || mine.isEmpty()
                || now.isEmpty()
                || Footing.objection(base, now.get(), changes).isPresent()
                || Footing.clash(base.get(), mine.get(), now.get(), changes)) {
            return Optional.empty();
        }
        return theirs.with(changes) instanceof RigReading.Edit.Changed(var next, var _)
                ? Optional.of(next)
                : Optional.empty();
    }

    /**
     * Writes the text over the file.
     *
     * @return false if the file is no longer what it was when it was looked at; nothing is written
     *     then
     */
    boolean write() throws IOException {
        if (!trouble.isEmpty()) {
            try {
                RigFiles.create(file, course.text(), disk);
            } catch (FileAlreadyExistsException e) {
                return false; // it has just appeared again
            }
        } else if (!RigFiles.writeOver(file, course.disk(), course.text(), disk)) {
            return false;
        }
        trouble = "";
        try {
            move(new Entry.Seen(Patch.between(course.disk(), course.text())));
        } catch (IOException e) {
            news.add("The file is saved, but the journal beside it could not be told so.");
            course.saved();
        }
        endJournal();
        return true;
    }

    /** The conflict is over. */
    void settle(Entry entry) throws IOException {
        move(entry);
        rival = null;
    }

    /** Keeps the entry, then goes where it leads. */
    void move(Entry entry) throws IOException {
        move(entry, null);
    }

    void move(Entry entry, @Nullable RigReading known) throws IOException {
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

    RigReading read(byte[] bytes) {
        return RigReading.read(rig, bytes, tables);
    }

    /** Another one whenever anything is other than before. */
    String stamp() {
        return revision + isSaved() + (rival == null ? "" : Arrays.hashCode(rival));
    }

    /** Lets go of the journal; what is unsaved stays in it. */
    void close() {
        journal.close();
    }
}
