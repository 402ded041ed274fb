package liftwright.rig.draft;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import liftwright.rig.Change;

/**
 * What happened to a text so far. It moves by {@link Entry}s alone, so that the ones of a journal
 * lead again to where it stood.
 */
final class Course {

    /** More steps than anybody takes back one by one. */
    static final int MOST_STEPS = 1000;

    /** Most bytes of all steps together. */
    static final int MOST_BYTES = 32 << 20;

    /** Most bytes of the steps that a journal begins with. */
    private static final int MOST_KEPT_BYTES = 1 << 20;

    /** More unsaved changes than this are not made again on another text. */
    private static final int MOST_REPLAYED = 2000;

    private static final How.Typed TYPED = new How.Typed();

    /**
     * An edit that the disk does not have.
     *
     * @param step what was done or taken back; empty where it is no longer known
     * @param back whether it was taken back
     */
    private record Unsaved(Optional<Step> step, boolean back, How how) {

        static Unsaved of(Step step, boolean back) {
            return new Unsaved(Optional.of(step), back, back ? TYPED : step.how());
        }

        static Unsaved text() {
            return new Unsaved(Optional.empty(), false, TYPED);
        }
    }

    private byte[] disk;
    private byte[] text;
    private final Deque<Step> undo = new ArrayDeque<>();
    private final Deque<Step> redo = new ArrayDeque<>();
    private final List<Unsaved> unsaved = new ArrayList<>();
    private int bytes;

    /** Of a file of which nothing is unsaved. */
    Course(byte[] disk) {
        this.disk = disk;
        this.text = disk;
    }

    byte[] disk() {
        return disk;
    }

    byte[] text() {
        return text;
    }

    /** Whether disk and text are alike. */
    boolean isClean() {
        return unsaved.isEmpty();
    }

    int unsaved() {
        return unsaved.size();
    }

    Optional<Step> lastDone() {
        return Optional.ofNullable(undo.peek());
    }

    Optional<Step> lastTakenBack() {
        return Optional.ofNullable(redo.peek());
    }

    /** The changes that lead from the disk to the text; empty when there is more than changes. */
    Optional<List<List<Change>>> replay() {
        var batches = new ArrayList<List<Change>>();
        int count = 0;
        for (var each : unsaved) {
            if (!(each.how() instanceof How.Made(var changes))) {
                return Optional.empty();
            }
            batches.add(changes);
            count += changes.size();
        }
        return count > MOST_REPLAYED ? Optional.empty() : Optional.of(batches);
    }

    /** All of it in one entry; of the steps as many as are not too long. */
    Entry.Start summary() {
        var done = newest(undo);
        var taken = newest(redo);
        var marks = new ArrayList<Entry.Mark>();
        for (var each : unsaved) {
            int place = each.step().map(step -> place(step, done, taken)).orElse(0);
            marks.add(new Entry.Mark(place, each.back(), each.how()));
        }
        return new Entry.Start(disk, Patch.between(disk, text), done, taken, marks);
    }

    private static int place(Step step, List<Step> done, List<Step> taken) {
        int undone = taken.indexOf(step);
        return undone >= 0 ? -(undone + 1) : done.indexOf(step) + 1;
    }

    private static List<Step> newest(Deque<Step> steps) {
        var newest = new ArrayList<Step>();
        int size = 0;
        for (Step step : steps) {
            size += step.patch().size();
            if (size > MOST_KEPT_BYTES) {
                break;
            }
            newest.add(step);
        }
        return newest;
    }

    private void begin(Entry.Start start) {
        disk = start.disk();
        text = start.toText().on(disk);
        undo.clear();
        redo.clear();
        unsaved.clear();
        undo.addAll(start.undo());
        redo.addAll(start.redo());
        bytes = undo.stream().mapToInt(step -> step.patch().size()).sum();
        for (var mark : start.unsaved()) {
            int place = mark.place();
            List<Step> steps = place < 0 ? start.redo() : start.undo();
            int index = Math.abs(place) - 1;
            if (index >= steps.size()) {
                throw new IllegalArgumentException("no such step");
            }
            Optional<Step> step = index < 0 ? Optional.empty() : Optional.of(steps.get(index));
            unsaved.add(new Unsaved(step, mark.back(), mark.how()));
        }
    }

    /** The text is on the disk now. */
    void saved() {
        disk = text;
        unsaved.clear();
    }

    /**
     * @throws IllegalArgumentException if the entry belongs to another course
     */
    void apply(Entry entry) {
        switch (entry) {
            case Entry.Start start -> begin(start);
            case Entry.Edit(var label, var how, var patch) -> {
                text = patch.on(text);
                var step = new Step(label, how, patch);
                redo.clear();
                push(step);
                unsaved.add(Unsaved.of(step, false));
            }
            case Entry.Undo(var label, var patch) -> takeBack(label, patch);
            case Entry.Redo(var label, var patch) -> doAgain(label, patch);
            case Entry.Taken(var label, var diskPatch, var textPatch) -> {
                byte[] seen = diskPatch.on(disk);
                text = textPatch.on(text);
                disk = seen;
                redo.clear();
                push(new Step(label, TYPED, textPatch));
            }
            case Entry.Seen(var patch) -> {
                disk = patch.on(disk);
                unsaved.clear();
                // What lies between is no longer what was edited since.
                unsaved.add(Unsaved.text());
            }
        }
        if (Arrays.equals(disk, text)) {
            unsaved.clear();
        } else if (unsaved.isEmpty() || unsaved.size() > MOST_REPLAYED) {
            unsaved.clear();
            unsaved.add(Unsaved.text());
        }
    }

    private void takeBack(String label, Patch patch) {
        text = patch.on(text);
        Step step = undo.poll();
        if (step == null || !step.patch().isLike(patch.back())) {
            step = new Step(label, TYPED, patch.back()); // taken back further than is remembered
            undo.clear();
            bytes = 0;
        } else {
            bytes -= step.patch().size();
        }
        redo.push(step);
        go(Unsaved.of(step, false), Unsaved.of(step, true));
    }

    private void doAgain(String label, Patch patch) {
        text = patch.on(text);
        Step step = redo.poll();
        if (step == null || !step.patch().isLike(patch)) {
            step = new Step(label, TYPED, patch);
            redo.clear();
        }
        push(step);
        go(Unsaved.of(step, true), Unsaved.of(step, false));
    }

    /** What undoes the last of what is unsaved leaves that saved; else it is unsaved itself. */
    private void go(Unsaved opposite, Unsaved otherwise) {
        if (!unsaved.isEmpty() && unsaved.getLast().equals(opposite)) {
            unsaved.removeLast();
        } else {
            unsaved.add(otherwise);
        }
    }

    private void push(Step step) {
        undo.push(step);
        bytes += step.patch().size();
        while (undo.size() > MOST_STEPS || bytes > MOST_BYTES) {
            bytes -= undo.removeLast().patch().size();
        }
    }
}
