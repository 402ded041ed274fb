package liftwright.rig.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.rig.Change;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.file.RigReading.Edit;
import liftwright.rig.shape.Binder;
import liftwright.rig.text.Edited;
import liftwright.rig.text.Edits;
import liftwright.rig.text.Splice;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Whole rigs edited at random: the file read again binds to the rig that the change makes in
 * memory, and no byte outside of the splices differs.
 */
class EditedRigPropertyTest {

    private static final List<Path> FILES =
            List.of(
                    Path.of("..", "examples", "mudlark", "rig.yaml"),
                    Path.of("..", "examples", "curlew", "rig.yaml"),
                    Path.of("..", "examples", "sandpiper", "rig.yaml"),
                    Path.of("..", "examples", "measured", "rig.yaml"),
                    Path.of("src", "test", "resources", "format", "v1-failures.yaml"));

    private int bound;
    private int other;

    private record Spot(RigPath path, Tree tree, boolean inList) {}

    @Test
    void theEditedFileBindsToTheRigChangedInMemory() {
        Seeded.check(
                300,
                random -> {
                    byte[] stored = laidOut(pick(random, FILES), random.nextInt(3));
                    var first = RigReading.read("rig.yaml", stored);
                    var now = first;
                    for (int i = random.nextInt(1, 4); i > 0 && now.rig().isPresent(); i--) {
                        now = edited(now, now.rig().get(), random);
                    }
                    assertThat(first.text().bytes()).as("undo").isEqualTo(stored);
                });
        // Edits that only ever spoil the rig, or say nothing, would compare nothing with nothing.
        if (System.getProperty("seed") == null) {
            assertThat(bound).as("bound").isGreaterThan(200);
            assertThat(other).as("other rigs than before").isGreaterThan(100);
        }
    }

    /** The file as it is, with the line ends of another system, and with a mark before it too. */
    private static byte[] laidOut(Path file, int way) {
        try {
            String text = Files.readString(file);
            return switch (way) {
                case 0 -> text.getBytes(UTF_8);
                case 1 -> text.replace("\n", "\r\n").getBytes(UTF_8);
                default -> ("\uFEFF" + text.replace("\n", "\r\n")).getBytes(UTF_8);
            };
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private RigReading edited(RigReading before, Rig rig, RandomGenerator random) {
        var spots = new ArrayList<Spot>();
        collect(new RigPath(List.of()), rig.declaration().root(), false, spots);
        Change change = change(pick(random, spots.subList(1, spots.size())), random);
        if (!(before.with(List.of(change)) instanceof Edit.Changed(var after, var steps))) {
            return before;
        }
        var memory = (Edited.Done) Edits.apply(rig.declaration(), change);
        var expected = Binder.bind(memory.declaration());
        assertThat(after.rig()).as(change.toString()).isEqualTo(expected.rig());
        assertThat(codes(after.problems()))
                .as(change.toString())
                .isEqualTo(codes(expected.problems()));
        assertThat(steps).hasSize(1);
        keepsEveryOtherByte(before, after, steps.getFirst().splices());
        if (after.rig().isPresent()) {
            bound++;
            if (!after.rig().equals(before.rig())) {
                other++;
            }
        }
        return after;
    }

    private static void keepsEveryOtherByte(
            RigReading before, RigReading after, List<Splice> splices) {
        byte[] old = before.text().bytes();
        byte[] now = after.text().bytes();
        String text = before.text().text();
        int oldAt = 0;
        int nowAt = 0;
        int done = 0;
        for (var splice : splices.stream().sorted(Comparator.comparingInt(Splice::from)).toList()) {
            int kept = size(text.substring(done, splice.from()));
            same(old, oldAt, now, nowAt, kept);
            oldAt += kept + size(text.substring(splice.from(), splice.to()));
            nowAt += kept + size(splice.replacement());
            done = splice.to();
        }
        assertThat(now.length - nowAt).isEqualTo(old.length - oldAt);
        same(old, oldAt, now, nowAt, old.length - oldAt);
    }

    private static void same(byte[] old, int oldAt, byte[] now, int nowAt, int length) {
        assertThat(Arrays.mismatch(old, oldAt, oldAt + length, now, nowAt, nowAt + length))
                .as("first byte that differs, from " + oldAt)
                .isEqualTo(-1);
    }

    private static int size(String text) {
        return text.getBytes(UTF_8).length;
    }

    private static List<Problem.Code> codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).sorted().toList();
    }

    private static void collect(RigPath path, Tree tree, boolean inList, List<Spot> spots) {
        spots.add(new Spot(path, tree, inList));
        switch (tree) {
            case Tree.Entries(var byKey) ->
                    byKey.forEach((key, value) -> collect(path.child(key), value, false, spots));
            case Tree.Items(var items) -> {
                for (int i = 0; i < items.size(); i++) {
                    String segment =
                            items.get(i) instanceof Tree.Entries(var byKey)
                                            && byKey.get("id") instanceof Tree.Text(var id)
                                    ? id
                                    : Integer.toString(i + 1);
                    collect(path.child(segment), items.get(i), true, spots);
                }
            }
            case Tree.Text _ -> {}
        }
    }

    /** Mostly such as leave a rig: another digit, another order, something left out. */
    private static Change change(Spot spot, RandomGenerator random) {
        if (spot.inList() && random.nextBoolean()) {
            return new Change.Move(spot.path(), 0);
        }
        if (!(spot.tree() instanceof Tree.Text(var text)) || random.nextInt(8) == 0) {
            return new Change.Remove(spot.path());
        }
        String digit = Integer.toString(random.nextInt(1, 10));
        String value = text.replaceFirst("\\d(?=\\D*$)", digit);
        return random.nextBoolean()
                ? new Change.Set(spot.path(), value)
                : new Change.Replace(spot.path(), value);
    }

    private static <T> T pick(RandomGenerator random, List<T> from) {
        return from.get(random.nextInt(from.size()));
    }
}
