package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Stream;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.DefaultUsed;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No default without being said: what stands in is what the list of defaults says, where it says.
 */
class DefaultsTest {

    /** Rules in words; they stand for no value that could be written. */
    private static final List<String> RULES =
            List.of(
                    "that of the air by the standard",
                    "that of the air",
                    "one group of all fans, share 100 %",
                    "that of PVC, the least heat-proof",
                    "those of a very fast fuse",
                    "those of a fast fuse",
                    "those of a slow fuse");

    static Stream<String> rigs() throws IOException {
        return Stream.of(
                Files.readString(Path.of("..", "examples", "sandpiper", "rig.yaml")),
                Files.readString(Path.of("..", "examples", "mudlark", "rig.yaml")),
                Starter.text(),
                Good.resource("/format/v1-heat.yaml"),
                bare());
    }

    /** The good file with everything out that has a default. */
    private static String bare() {
        return Good.text()
                .replaceAll("(?m)^(site|demands|limits|revision):.*\\n(  .*\\n)*", "")
                .replaceAll("(?m)^ +(exit area|data|swirl|scatter|intake):.*\\n", "")
                .replaceAll("(?s)  groups:.*", "");
    }

    /**
     * A metamorphic test: each default is written into the file, and nothing changes but the list.
     */
    @ParameterizedTest
    @MethodSource("rigs")
    void writingADefaultOutChangesNothing(String text) {
        Rig rig = Texts.rig(text);
        int written = 0;
        for (DefaultUsed used : rig.defaults()) {
            if (RULES.contains(used.value())) {
                continue;
            }
            Declaration with =
                    new Declaration(
                            put(
                                    rig.declaration().root(),
                                    used.at().segments(),
                                    new Tree.Text(used.value())));
            Read again = Binder.bind(with);
            assertThat(again.problems())
                    .as("%s", used)
                    .filteredOn(p -> p.code().isError())
                    .isEmpty();
            Rig other = again.rig().orElseThrow();
            assertThat(apartFromDefaults(again.rig().orElseThrow(), rig))
                    .as("%s", used)
                    .isEqualTo(rig);
            assertThat(other.defaults()).hasSizeLessThan(rig.defaults().size());
            assertThat(other.defaults()).doesNotContain(used);
            written++;
        }
        assertThat(written).isGreaterThan(5);
    }

    /** The rig with the declaration and the list of defaults of another one. */
    private static Rig apartFromDefaults(Rig rig, Rig asIn) {
        return new Rig(
                rig.name(),
                rig.revision(),
                rig.note(),
                rig.site(),
                rig.demands(),
                rig.limits(),
                rig.wearer(),
                rig.mounts(),
                rig.fanTypes(),
                rig.fans(),
                rig.cellTypes(),
                rig.packs(),
                rig.wiring(),
                rig.otherParts(),
                rig.control(),
                asIn.declaration(),
                rig.tables(),
                asIn.defaults());
    }

    @Test
    void everyDefaultNamesItsOrigin() {
        assertThat(Texts.rig(bare()).defaults()).allMatch(d -> !d.origin().isBlank());
        assertThat(Texts.rig(bare()).defaults())
                .extracting(d -> d.at().toString(), DefaultUsed::value)
                .contains(
                        org.assertj.core.groups.Tuple.tuple("demands/thrust to weight", "1.30"),
                        org.assertj.core.groups.Tuple.tuple("demands/judged at charge", "20 %"),
                        org.assertj.core.groups.Tuple.tuple("fan types/F140/data", "seller"),
                        org.assertj.core.groups.Tuple.tuple(
                                "fan types/F140/installation", "0.90 +0.05/−0.15"),
                        org.assertj.core.groups.Tuple.tuple(
                                "fan types/F140/scatter", "± 5 % each"));
    }

    @Test
    void aModuleThatFliesByItselfIsAskedMore() {
        String alone =
                bare().replaceAll("(?m)^wearer:.*\\n(  .*\\n)*", "")
                        .replace("on: trunk", "on: frame")
                        .replace(
                                "{on: left forearm, at: {along: 60 %, outboard: 40 mm}",
                                "{on: frame, at: {left: 40 mm}");
        assertThat(Texts.rig(alone).demands().thrustToWeight().si()).isEqualTo(1.6);
    }

    @Test
    void aDoubtThatNoQuestionReadsIsSaid() {
        String text = Good.text().replace("forward: -180 mm", "forward: -180 mm ± 5 mm");
        assertThat(Texts.read(text).problems())
                .extracting(Problem::code, p -> p.at().path())
                .contains(
                        org.assertj.core.groups.Tuple.tuple(
                                Problem.Code.USED_BY_NO_QUESTION_YET, "mounts/back/at/forward"));
    }

    /** Written without the code under test; makes the maps on the way that are missing. */
    private static Tree put(Tree tree, List<String> way, Tree value) {
        if (way.isEmpty()) {
            return value;
        }
        String step = way.getFirst();
        List<String> rest = way.subList(1, way.size());
        return switch (tree) {
            case Tree.Entries(var byKey) -> {
                var copy = new LinkedHashMap<>(byKey);
                copy.put(
                        step,
                        put(
                                byKey.getOrDefault(step, new Tree.Entries(Collections.emptyMap())),
                                rest,
                                value));
                yield new Tree.Entries(copy);
            }
            case Tree.Items(var items) -> {
                var copy = new ArrayList<Tree>(items);
                boolean found = false;
                for (int i = 0; i < copy.size(); i++) {
                    boolean named =
                            copy.get(i) instanceof Tree.Entries(var byKey)
                                    && byKey.get("id") instanceof Tree.Text(var id)
                                    && id.equals(step);
                    if (named || step.equals(Integer.toString(i + 1))) {
                        copy.set(i, put(copy.get(i), rest, value));
                        found = true;
                    }
                }
                assertThat(found).as(step).isTrue();
                yield new Tree.Items(copy);
            }
            case Tree.Text text -> throw new AssertionError(text + " at " + way);
        };
    }
}
