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

    /** More unsaved changes than this are not made again on another text. */
    private static final int MOST_REPLAYED = 2000;

    private static final How.Typed TYPED = new How.Typed();

    /** An edit that can be taken back or done again. */
    record Step(String label, How how, Patch patch) {}

    /**
     * An edit that the disk does not have.
     *
     * @param step what was done or taken back
     * @param back whether it was taken back
     */
    private record Unsaved(Step step, boolean back) {
        How how() {
            return back ? TYPED : step.how();
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

    /** All of it in one entry, without the steps that led here. */
    Entry.Start summary() {
        How how =
                replay().<How>map(
                                batches ->
                                        new How.Made(
                                                batches.stream().flatMap(List::stream).toList()))
                        .orElse(TYPED);
        return new Entry.Start(disk, Patch.between(disk, text), how);
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
            case Entry.Start(var start, var toText, var how) -> {
                disk = start;
                text = toText.on(start);
                undo.clear();
                redo.clear();
                bytes = 0;
                unsaved.clear();
                if (toText.size() > 0) {
                    var step = new Step("earlier edits", how, toText);
                    push(step);
                    unsaved.add(new Unsaved(step, false));
                }
            }
            case Entry.Edit(var label, var how, var patch) -> {
                text = patch.on(text);
                var step = new Step(label, how, patch);
                redo.clear();
                push(step);
                unsaved.add(new Unsaved(step, false));
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
                unsaved.add(new Unsaved(new Step("", TYPED, patch), false));
            }
        }
        if (Arrays.equals(disk, text)) {
            unsaved.clear();
        } else if (unsaved.isEmpty() || unsaved.size() > MOST_REPLAYED) {
            unsaved.clear();
            unsaved.add(new Unsaved(new Step("", TYPED, Patch.between(disk, text)), false));
        }
    }

    private void takeBack(String label, Patch patch) {
        text = patch.on(text);
        Step step = undo.poll();
        if (step == null) {
            step = new Step(label, TYPED, patch.back());
        } else {
            bytes -= step.patch().size();
        }
        redo.push(step);
        if (!unsaved.isEmpty() && unsaved.getLast().equals(new Unsaved(step, false))) {
            unsaved.removeLast();
        } else {
            unsaved.add(new Unsaved(step, true));
        }
    }

    private void doAgain(String label, Patch patch) {
        text = patch.on(text);
        Step step = redo.poll();
        if (step == null) {
            step = new Step(label, TYPED, patch);
        }
        push(step);
        if (!unsaved.isEmpty() && unsaved.getLast().equals(new Unsaved(step, true))) {
            unsaved.removeLast();
        } else {
            unsaved.add(new Unsaved(step, false));
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
