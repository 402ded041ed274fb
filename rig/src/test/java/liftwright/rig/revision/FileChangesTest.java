package liftwright.rig.revision;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import liftwright.rig.Change;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.RigPath;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import liftwright.rig.text.Edited;
import liftwright.rig.text.Edits;
import liftwright.testkit.Seeded;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Edits at random on the examples; what is found must be the edits and nothing else. */
class FileChangesTest {

    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final List<Declaration> RIGS =
            List.of(read("mudlark"), read("curlew"), read("sandpiper"));

    private static Declaration read(String name) {
        Path folder = EXAMPLES.resolve(name);
        try {
            return RigReading.read(
                            "rig.yaml",
                            Files.readAllBytes(folder.resolve("rig.yaml")),
                            new Folder(folder))
                    .rig()
                    .orElseThrow()
                    .declaration();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Declaration any(RandomGenerator random) {
        return RIGS.get(random.nextInt(RIGS.size()));
    }

    @Test
    void aRigAndItselfSayTheSame() {
        for (Declaration rig : RIGS) {
            assertThat(FileChanges.between(rig, rig)).isEmpty();
        }
    }

    @Test
    void valuesThatWereSetAreFoundWhereTheyStandFromAndTo() {
        Seeded.check(
                200,
                random -> {
                    Declaration before = any(random);
                    List<RigPath> leaves = leaves(before);
                    Map<String, String> set = new LinkedHashMap<>();
                    Declaration after = before;
                    for (int k = 0; k < 1 + random.nextInt(4); k++) {
                        RigPath at = leaves.get(random.nextInt(leaves.size()));
                        String value = "changed " + k;
                        after = edited(after, new Change.Set(at, value));
                        set.put(at.toString(), value);
                    }
                    Map<String, String> found = new LinkedHashMap<>();
                    for (FileChange change : FileChanges.between(before, after)) {
                        assertThat(change.kind()).isEqualTo(FileChange.Kind.CHANGED);
                        assertThat(before.at(change.at())).contains(new Tree.Text(change.from()));
                        found.put(change.at().toString(), change.to());
                    }
                    assertThat(found).containsExactlyInAnyOrderEntriesOf(set);
                });
    }

    /**
     * Whatever was done to the file: the places found, taken over, make the second of the first.
     */
    @Test
    void whatChangedMakesTheSecondOfTheFirst() {
        int[] kinds = new int[FileChange.Kind.values().length];
        Seeded.check(
                300,
                random -> {
                    Declaration before = any(random);
                    Declaration after = before;
                    for (int k = 0; k < 1 + random.nextInt(5); k++) {
                        after = somehow(after, random);
                    }
                    List<FileChange> found = FileChanges.between(before, after);
                    Tree made = before.root();
                    Set<String> places = new TreeSet<>();
                    for (FileChange change : found) {
                        kinds[List.of(FileChange.Kind.values()).indexOf(change.kind())]++;
                        assertThat(places.add(change.kind() + " " + change.at())).isTrue();
                        made = taken(made, change, after);
                    }
                    assertThat(unordered(made)).isEqualTo(unordered(after.root()));
                    assertThat(found.isEmpty()).isEqualTo(before.equals(after));
                });
        assertThat(kinds[0]).as("changed").isPositive();
        assertThat(kinds[1]).as("added").isPositive();
        assertThat(kinds[2]).as("removed").isPositive();
        assertThat(kinds[4]).as("in another order").isPositive();
    }

    @Test
    void theSameAmountWrittenOtherwiseIsNoOtherAmount() {
        assertThat(kind("300 mm ± 30 mm", "0.3 m ± 10 %")).isEqualTo(FileChange.Kind.REWORDED);
        assertThat(kind("300 mm ± 30 mm", "0.3 m ± 20 %")).isEqualTo(FileChange.Kind.CHANGED);
        assertThat(kind("300 mm", "0.3 kg")).isEqualTo(FileChange.Kind.CHANGED);
        assertThat(kind("2 each", "2")).isEqualTo(FileChange.Kind.CHANGED);
    }

    private static FileChange.Kind kind(String from, String to) {
        return FileChanges.between(one(from), one(to)).getFirst().kind();
    }

    private static Declaration one(String value) {
        return new Declaration(new Tree.Entries(Map.of("key", new Tree.Text(value))));
    }

    private static Declaration somehow(Declaration of, RandomGenerator random) {
        List<RigPath> leaves = leaves(of);
        RigPath leaf = leaves.get(random.nextInt(leaves.size()));
        RigPath above = new RigPath(leaf.segments().subList(0, leaf.segments().size() - 1));
        Change change =
                switch (random.nextInt(5)) {
                    case 0 -> new Change.Set(leaf, "set to " + random.nextInt(1000));
                    case 1 -> new Change.Remove(leaf);
                    case 2 -> new Change.Add(above, "new " + random.nextInt(1000), "{a: 1, b: 2}");
                    case 3 -> new Change.Remove(above);
                    default ->
                            new Change.Move(
                                    RigPath.of(
                                            "other parts", Integer.toString(1 + random.nextInt(2))),
                                    random.nextInt(3));
                };
        return switch (Edits.apply(of, change)) {
            case Edited.Done(var after) -> after;
            case Edited.Refused _ -> of;
        };
    }

    private static Declaration edited(Declaration of, Change change) {
        return switch (Edits.apply(of, change)) {
            case Edited.Done(var after) -> after;
            case Edited.Refused(var reason) -> throw new AssertionError(reason);
        };
    }

    private static Tree taken(Tree tree, FileChange change, Declaration after) {
        return switch (change.kind()) {
            case REORDERED -> tree; // lists are held against each other without their order
            case REMOVED -> put(tree, change.at().segments(), 0, null);
            case CHANGED, ADDED, REWORDED ->
                    put(tree, change.at().segments(), 0, after.at(change.at()).orElseThrow());
        };
    }

    private static Tree put(Tree tree, List<String> path, int depth, @Nullable Tree value) {
        if (depth == path.size()) {
            return value == null ? tree : value;
        }
        boolean last = depth + 1 == path.size();
        String segment = path.get(depth);
        return switch (tree) {
            case Tree.Entries(var byKey) -> {
                var copy = new LinkedHashMap<>(byKey);
                Tree child = byKey.get(segment);
                if (last && value == null) {
                    copy.remove(segment);
                } else if (last && value != null) {
                    copy.put(segment, value);
                } else if (child != null) {
                    copy.put(segment, put(child, path, depth + 1, value));
                }
                yield new Tree.Entries(copy);
            }
            case Tree.Items(var items) -> {
                var copy = new ArrayList<>(items);
                int at = -1;
                for (int k = 0; k < items.size(); k++) {
                    if (segment.equals(id(items.get(k)))) {
                        at = k;
                    }
                }
                if (at < 0
                        && segment.matches("[0-9]+")
                        && Integer.parseInt(segment) <= items.size()) {
                    at = Integer.parseInt(segment) - 1;
                }
                if (at < 0 && value != null) {
                    copy.add(value);
                } else if (last && value == null) {
                    copy.remove(at);
                } else if (last && value != null) {
                    copy.set(at, value);
                } else {
                    copy.set(at, put(items.get(at), path, depth + 1, value));
                }
                yield new Tree.Items(copy);
            }
            case Tree.Text _ -> throw new AssertionError("nothing below " + path);
        };
    }

    private static String id(Tree item) {
        return item instanceof Tree.Entries(var byKey)
                        && byKey.get("id") instanceof Tree.Text(var id)
                ? id
                : "";
    }

    /** Lists of things with ids by their ids. */
    private static Object unordered(Tree tree) {
        return switch (tree) {
            case Tree.Text(var text) -> text;
            case Tree.Entries(var byKey) -> {
                Map<String, Object> all = new LinkedHashMap<>();
                byKey.forEach((key, value) -> all.put(key, unordered(value)));
                yield all;
            }
            case Tree.Items(var items) -> {
                Map<String, Object> named = new LinkedHashMap<>();
                items.forEach(item -> named.put(id(item), unordered(item)));
                yield !items.isEmpty() && named.size() == items.size() && !named.containsKey("")
                        ? named
                        : items.stream().map(FileChangesTest::unordered).toList();
            }
        };
    }

    private static List<RigPath> leaves(Declaration of) {
        List<RigPath> leaves = new ArrayList<>();
        collect(of.root(), new RigPath(List.of()), leaves);
        return leaves;
    }

    /** Without ids, which are names and no values. */
    private static void collect(Tree tree, RigPath at, List<RigPath> leaves) {
        switch (tree) {
            case Tree.Text _ -> {
                if (!at.segments().getLast().equals("id")) {
                    leaves.add(at);
                }
            }
            case Tree.Entries(var byKey) ->
                    byKey.forEach((key, value) -> collect(value, at.child(key), leaves));
            case Tree.Items(var items) -> {
                if (items.stream().anyMatch(Tree.Text.class::isInstance)) {
                    return; // a list of values is one value
                }
                for (int k = 0; k < items.size(); k++) {
                    String id = id(items.get(k));
                    collect(
                            items.get(k),
                            at.child(id.isEmpty() ? Integer.toString(k + 1) : id),
                            leaves);
                }
            }
        }
    }
}
