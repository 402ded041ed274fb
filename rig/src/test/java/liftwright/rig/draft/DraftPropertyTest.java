package liftwright.rig.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.rig.Change;
import liftwright.rig.RigPath;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two tabs and another program at work on one file, against a model that knows values only and
 * writes the whole text from a template: nothing acknowledged is lost, comments stay, undo gives
 * back the very bytes.
 */
class DraftPropertyTest {

    private static final List<String> PATHS =
            List.of(
                    "site/elevation",
                    "site/temperature",
                    "wearer/mass",
                    "fans/left/spacing",
                    "packs/p/series");

    private static final String TEMPLATE =
            """
            # kept: of nobody
            liftwright: 1
            rig: Small   # kept too
            site: {elevation: $0, temperature: $1}  # in braces

            wearer:
              # kept: above
              mass: $2 # behind
            fans:
              - {id: right, spacing: 1 m}
              - id: left
                spacing: $3
            packs:
              - {id: p, series: $4, at: {mount: back}}
            """;

    @TempDir Path folder;

    private final Map<String, Integer> met = new HashMap<>();

    /** What the file says: five values and what was typed at its end. */
    private record State(List<String> values, String tail) {
        State {
            values = List.copyOf(values);
        }

        State with(int which, String value) {
            var changed = new ArrayList<>(values);
            changed.set(which, value);
            return new State(changed, tail);
        }

        String text() {
            String text = TEMPLATE + tail;
            for (int i = 0; i < values.size(); i++) {
                text = text.replace("$" + i, values.get(i));
            }
            return text;
        }
    }

    /** One thing done: a value set, or anything else. */
    private record Deed(int number, int which, String value) {
        boolean isSet() {
            return which >= 0;
        }
    }

    private record Done(State before, State after, Deed deed) {}

    /** The model of a draft. */
    private static final class Model {
        State now;
        State disk;
        Optional<State> rival = Optional.empty();
        final Deque<Done> undo = new ArrayDeque<>();
        final Deque<Done> redo = new ArrayDeque<>();

        /** What lies between disk and text; a deed with a negative number was taken back. */
        final List<Deed> unsaved = new ArrayList<>();

        private int deeds;

        Model(State first) {
            now = first;
            disk = first;
        }

        void make(State after, int which, String value) {
            if (after.text().equals(now.text())) {
                return;
            }
            var deed = new Deed(++deeds, which, value);
            undo.push(new Done(now, after, deed));
            redo.clear();
            now = after;
            unsaved.add(deed);
            settle();
        }

        void settle() {
            if (now.text().equals(disk.text())) {
                unsaved.clear();
            }
        }

        boolean takeBack() {
            if (undo.isEmpty()) {
                return false;
            }
            Done done = undo.pop();
            redo.push(done);
            now = done.before();
            go(done.deed().number(), new Deed(-done.deed().number(), -1, ""));
            return true;
        }

        boolean doAgain() {
            if (redo.isEmpty()) {
                return false;
            }
            Done done = redo.pop();
            undo.push(done);
            now = done.after();
            go(-done.deed().number(), done.deed());
            return true;
        }

        private void go(int opposite, Deed otherwise) {
            if (!unsaved.isEmpty() && unsaved.getLast().number() == opposite) {
                unsaved.removeLast();
            } else {
                unsaved.add(otherwise);
            }
            settle();
        }

        /** The disk holds {@code seen}. */
        void look(State seen) {
            if (seen.text().equals(disk.text())) {
                rival = Optional.empty();
            } else if (seen.text().equals(now.text())) {
                rival = Optional.empty();
                disk = seen;
                unsaved.clear();
            } else if (unsaved.isEmpty()) {
                take(seen, seen);
            } else if (unsaved.stream().allMatch(deed -> deed.isSet() && !clashes(deed, seen))) {
                State merged = seen;
                for (Deed deed : unsaved) {
                    merged = merged.with(deed.which(), deed.value());
                }
                take(seen, merged);
            } else {
                rival = Optional.of(seen);
            }
        }

        /** Whether the disk has another value than before where mine is another one too. */
        private boolean clashes(Deed deed, State seen) {
            String theirs = seen.values().get(deed.which());
            return !theirs.equals(disk.values().get(deed.which()))
                    && !theirs.equals(now.values().get(deed.which()));
        }

        void take(State seen, State next) {
            rival = Optional.empty();
            undo.push(new Done(now, next, new Deed(++deeds, -1, "")));
            redo.clear();
            now = next;
            disk = seen;
            settle();
        }

        /** After a stop nothing of what was saved can be taken back, and the file is what it is. */
        void stop(State written) {
            if (unsaved.isEmpty()) {
                undo.clear();
                redo.clear();
                now = written;
                disk = written;
                rival = Optional.empty();
            }
        }
    }

    /** One run: the draft, its model, and what two tabs last saw. */
    private final class Run {
        final RandomGenerator random;
        final Path file = folder.resolve("rig.yaml");
        final Model model;
        Draft draft;
        final String[] seen = new String[2];
        final State[] seenState = new State[2];
        State written;

        Run(RandomGenerator random) throws IOException {
            this.random = random;
            written = new State(List.of("0 m", "12 °C", "60 kg", "150 mm", "14"), "");
            Files.writeString(file, written.text());
            Files.deleteIfExists(JournalPlace.of(folder, "rig.yaml"));
            model = new Model(written);
            draft = Draft.open(folder, "rig.yaml");
            see(0);
            see(1);
        }

        void see(int tab) {
            seen[tab] = draft.revision();
            seenState[tab] = model.now;
        }

        String value() {
            return random.nextInt(1, 99) + List.of(" m", " kg", "", " °C").get(random.nextInt(4));
        }

        void step() throws IOException {
            int tab = random.nextInt(2);
            boolean current = seen[tab].equals(draft.revision());
            switch (random.nextInt(12)) {
                case 0, 1, 2 -> {
                    int which = random.nextInt(PATHS.size());
                    String value = value();
                    var set = new Change.Set(RigPath.parse(PATHS.get(which)), value);
                    count(current ? "change" : "merged change");
                    done(draft.change(seen[tab], List.of(set), "set"));
                    model.make(model.now.with(which, value), which, value);
                    see(tab);
                }
                case 3 -> {
                    String tail = seenState[tab].tail() + "# typed " + random.nextInt(100) + "\n";
                    var typed = new State(seenState[tab].values(), tail);
                    var outcome = draft.text(seen[tab], typed.text());
                    expect(current, outcome, "typed");
                    if (current) {
                        model.make(typed, -1, "");
                    }
                    see(tab);
                }
                case 4, 5 -> {
                    var outcome = draft.undo(seen[tab]);
                    boolean could = current && model.takeBack();
                    expect(could, outcome, "undo");
                    see(tab);
                }
                case 6 -> {
                    var outcome = draft.redo(seen[tab]);
                    boolean could = current && model.doAgain();
                    expect(could, outcome, "redo");
                    see(tab);
                }
                case 7 -> {
                    int which = random.nextInt(PATHS.size());
                    written = written.with(which, value());
                    if (random.nextInt(3) == 0) {
                        written =
                                new State(
                                        written.values(), "# outside " + random.nextInt(9) + "\n");
                    }
                    Files.writeString(file, written.text());
                    count("outside");
                }
                case 8 -> {
                    draft.look();
                    model.look(written);
                    count(model.rival.isPresent() ? "conflict" : "look");
                }
                case 9 -> save(tab, current);
                case 10 -> {
                    boolean mine = random.nextBoolean();
                    var outcome =
                            draft.resolve(seen[tab], mine ? Draft.Side.MINE : Draft.Side.DISK);
                    boolean could = current && model.rival.isPresent();
                    expect(could, outcome, "resolve");
                    if (could) {
                        State theirs = model.rival.orElseThrow();
                        model.rival = Optional.empty();
                        if (mine) {
                            model.disk = theirs;
                            model.unsaved.clear();
                            model.unsaved.add(new Deed(0, -1, ""));
                            model.settle();
                        } else {
                            model.take(theirs, theirs);
                        }
                    }
                    see(tab);
                }
                default -> {
                    draft.close(); // as a crash leaves it: nothing is written here
                    draft = Draft.open(folder, "rig.yaml");
                    model.stop(written);
                    model.look(written);
                    count("crash");
                }
            }
            assertThat(draft.reading().text().text()).isEqualTo(model.now.text());
            assertThat(draft.standing().saved())
                    .isEqualTo(model.now.text().equals(model.disk.text()) && model.rival.isEmpty());
            assertThat(draft.view().conflict().map(DraftView.Conflict::diskText))
                    .isEqualTo(model.rival.map(State::text));
        }

        void save(int tab, boolean current) throws IOException {
            String before = draft.revision();
            var outcome = draft.save(seen[tab]);
            if (!current) {
                expect(false, outcome, "save");
                return;
            }
            model.look(written);
            boolean same = before.equals(draft.revision());
            expect(model.rival.isEmpty() && same, outcome, "save");
            if (model.rival.isEmpty() && same) {
                model.disk = model.now;
                model.unsaved.clear();
                written = model.now;
            }
            assertThat(readFile()).isEqualTo(written.text());
            see(tab);
        }

        String readFile() throws IOException {
            return Files.readString(file);
        }

        void expect(boolean could, Outcome outcome, String what) {
            count((could ? "" : "no ") + what);
            assertThat(outcome instanceof Outcome.Done).as(what).isEqualTo(could);
        }

        void done(Outcome outcome) {
            assertThat(outcome).isInstanceOf(Outcome.Done.class);
        }
    }

    private void count(String what) {
        met.merge(what, 1, Integer::sum);
    }

    @Test
    void nothingAcknowledgedIsLostWhoeverEdits() {
        Seeded.check(
                60,
                random -> {
                    try {
                        var run = new Run(random);
                        for (int i = 0; i < 40; i++) {
                            run.step();
                        }
                        run.draft.close();
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
        if (System.getProperty("seed") == null) {
            assertThat(met)
                    .containsKeys(
                            "change",
                            "merged change",
                            "typed",
                            "no typed",
                            "undo",
                            "redo",
                            "outside",
                            "look",
                            "conflict",
                            "save",
                            "no save",
                            "resolve",
                            "crash");
        }
    }
}
