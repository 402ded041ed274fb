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
import org.junit.jupiter.params.provider.CsvSource;
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
                    "those of a slow fuse",
                    "all fans",
                    "at the shoulders",
                    "at the top of the rig",
                    "that of the parts book");

    static Stream<String> rigs() throws IOException {
        return Stream.of(
                Files.readString(Path.of("..", "examples", "sandpiper", "rig.yaml")),
                Files.readString(Path.of("..", "examples", "mudlark", "rig.yaml")),
                Starter.text(),
                Good.resource("/format/v1-heat.yaml"),
                Good.resource("/format/v1-failures.yaml"),
                Good.resource("/format/v1-flight.yaml"),
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
                rig.crew(),
                rig.restraint(),
                rig.rates(),
                rig.riskMatrix(),
                asIn.declaration(),
                rig.tables(),
                asIn.defaults(),
                rig.corrections());
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

    /**
     * Worked out by hand: a controller of 0.12 kg, a fan of 0.74 kg, a cell of 165 g, 12 AWG (3.31
     * mm²), fuses of 250 A, a joint of 18 g.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fan types/F140/controller/heat capacity | 60 J/K ± 24 J/K bound",
                "fan types/F140/controller/junction to sink | 15 W/K ± 7.5 W/K bound",
                "fan types/F140/controller/junction heat capacity | 1.2 J/K ± 0.6 J/K bound",
                "fan types/F140/controller/to air | 1.8 W/K ± 0.9 W/K bound",
                "fan types/F140/motor/winding heat capacity | 44.4 J/K ± 17.76 J/K bound",
                "fan types/F140/motor/case heat capacity | 159.1 J/K ± 63.64 J/K bound",
                "fan types/F140/motor/winding to case | 1.48 W/K ± 0.74 W/K bound",
                "fan types/F140/motor/case to air | 3.996 W/K ± 1.998 W/K bound",
                "fan types/F140/motor/magnets | unknown",
                "fan types/F140/motor/magnet fade | 0.11 %/K",
                "cells/C80/thermal/heat capacity | 165 J/K ± 24.75 J/K bound",
                "cells/C80/thermal/core to surface | 1.98 W/K ± 0.99 W/K bound",
                "cells/C80/thermal/surface to air | 0.099 W/K ± 0.0495 W/K bound",
                "wiring/feeds/feed/branch/1/insulation | that of PVC, the least heat-proof",
                "wiring/feeds/feed/branch/1/class | 70 °C",
                "wiring/feeds/feed/branch/1/wall | 0.8 mm ± 0.24 mm bound",
                "wiring/feeds/feed/branch/1/bundle | 2",
                "wiring/feeds/feed/branch/1/air | 0 m/s",
                "wiring/feeds/feed/branch/2/heat capacity | 3.465 J/K ± 1.732 J/K bound",
                "wiring/feeds/feed/trunk/2/speed | slow",
                "wiring/feeds/feed/trunk/2/points | those of a slow fuse",
                "wiring/feeds/feed/trunk/2/time doubt | +1.5/−0.6 bound",
                "wiring/feeds/feed/trunk/2/time constant | 60 s ± 30 s bound",
                "wiring/feeds/feed/trunk/2/heat capacity | 25 J/K ± 12.5 J/K bound",
                "wiring/contactors/main/heat capacity | 20 J/K ± 10 J/K bound",
                "demands/runs | 1",
                "demands/pause | 5 min"
            })
    void whatWarmsStandsInByMassAndTheBook(String at, String value) {
        assertThat(Texts.rig(bare()).defaults())
                .filteredOn(used -> used.at().toString().equals(at))
                .as(at)
                .singleElement()
                .satisfies(
                        used -> {
                            assertThat(used.value()).isEqualTo(value);
                            assertThat(used.origin()).isNotBlank();
                            assertThat(used.ofHeat()).isTrue();
                        });
    }

    /** A controller that is weighed with its fan: 15 % of 0.74 kg. */
    @Test
    void aControllerWithoutMassWarmsByTheMassOfItsFan() {
        Rig rig = Texts.rig(bare().replace("mass: 0.12 kg}", "mass: 0 g}"));
        assertThat(rig.fanTypes().getFirst().controller().cooling().heatCapacity().si())
                .isCloseTo(55.5, org.assertj.core.api.Assertions.within(1e-9));
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
