package liftwright.review.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.plant.Plant;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Packs that no fuse parts from what they feed, against a closure over all pairs of nodes. */
class UnfusedTest {

    private static final String FUSE = "{fuse: 250 A, speed: slow}, ";

    /** Warshall's closure: pairs of nodes that a way without a fuse joins. */
    private static Set<List<String>> closure(List<Wiring.Chain> chains) {
        Set<String> nodes = new TreeSet<>();
        Set<List<String>> reach = new HashSet<>();
        for (Wiring.Chain chain : chains) {
            nodes.add(chain.from());
            nodes.add(chain.to());
            if (chain.elements().stream().noneMatch(Element.Fuse.class::isInstance)) {
                reach.add(List.of(chain.from(), chain.to()));
                reach.add(List.of(chain.to(), chain.from()));
            }
        }
        for (String via : nodes) {
            for (String a : nodes) {
                for (String b : nodes) {
                    if (reach.contains(List.of(a, via)) && reach.contains(List.of(via, b))) {
                        reach.add(List.of(a, b));
                    }
                }
            }
        }
        return reach;
    }

    private static List<String> expected(Sketch sketch, Predicate<String> end) {
        var reach = closure(sketch.chains);
        return sketch.packs.stream()
                .filter(
                        pack ->
                                reach.stream()
                                        .anyMatch(
                                                pair ->
                                                        pair.getFirst().equals(pack)
                                                                && !pair.getLast().equals(pack)
                                                                && end.test(pair.getLast())))
                .toList();
    }

    @Test
    void onRandomWiringsExactlyThePacksOfTheClosureAreFound() {
        int[] found = {0, 0};
        Seeded.check(
                400,
                random -> {
                    Sketch sketch = Sketch.random(random, random.nextDouble());
                    List<String> packs = List.copyOf(sketch.packs);
                    Graph graph = sketch.graph();
                    List<Unfused.Way> toFans = Unfused.toFans(graph, packs);
                    List<Unfused.Way> toPacks = Unfused.toPacks(graph, packs);
                    assertThat(toFans.stream().map(Unfused.Way::pack))
                            .containsExactlyElementsOf(expected(sketch, sketch.fans::contains));
                    assertThat(toPacks.stream().map(Unfused.Way::pack))
                            .containsExactlyElementsOf(expected(sketch, sketch.packs::contains));
                    for (Unfused.Way way : toFans) {
                        String at = way.pack();
                        for (Graph.Arc arc : way.arcs()) {
                            assertThat(arc.near()).isEqualTo(at);
                            assertThat(graph.isFused(arc.chain())).isFalse();
                            at = arc.far();
                        }
                        assertThat(sketch.fans).contains(at);
                    }
                    found[0] += toFans.size();
                    found[1] += toPacks.size();
                });
        assertThat(found[0]).isGreaterThan(50);
        assertThat(found[1]).isGreaterThan(50);
    }

    /** A tree in which every pack is fused; then one fuse is taken out. */
    @Test
    void aMissingFuseIsFoundAndNothingElse() {
        Seeded.check(
                100,
                random -> {
                    int packs = random.nextInt(1, 6);
                    int without = random.nextInt(packs);
                    Sketch whole = tree(random, packs, -1);
                    Sketch faulty = tree(random, packs, without);
                    assertThat(Unfused.toFans(whole.graph(), List.copyOf(whole.packs))).isEmpty();
                    assertThat(Unfused.toFans(faulty.graph(), List.copyOf(faulty.packs)))
                            .singleElement()
                            .satisfies(way -> assertThat(way.pack()).isEqualTo("p." + without));
                });
    }

    private static Sketch tree(RandomGenerator random, int packs, int without) {
        Sketch sketch = new Sketch();
        for (int pack = 0; pack < packs; pack++) {
            sketch.packs.add("p." + pack);
            List<Element> trunk = new ArrayList<>(List.of(sketch.run(8, 0.1)));
            if (pack != without) {
                trunk.add(sketch.fuse(100));
            }
            String split = "split." + pack;
            sketch.chain("p." + pack, split, trunk.toArray(Element[]::new));
            for (int fan = random.nextInt(1, 4); fan > 0; fan--) {
                sketch.fans.add("f." + pack + "." + fan);
                sketch.chain(split, "f." + pack + "." + fan, sketch.run(12, 0.5));
            }
        }
        return sketch;
    }

    private static List<Finding> findings(Rig rig) {
        Plant plant = Plant.assemble(rig);
        return Unfused.findings(rig, plant.faultSupply(plant.parameters().nominal()));
    }

    /** Full pack over its resistance and that of the way, in figures taken from the plant alone. */
    @Test
    void anUnfusedPackStopsARigThatIsWornAndTellsItsShort() {
        Rig rig = Sketch.example("mudlark", FUSE, "");
        Finding finding = findings(rig).getFirst();
        assertThat(finding.code()).isEqualTo("unfused-pack");
        assertThat(finding.severity()).isEqualTo(Severity.STOPS);
        Plant plant = Plant.assemble(rig);
        var strong = plant.faultSupply(plant.parameters().nominal());
        double most = 0;
        for (Wiring.Chain trunk : rig.wiring().chains()) {
            for (Wiring.Chain branch : rig.wiring().chains()) {
                if (trunk.from().startsWith("p.") && branch.from().equals(trunk.to())) {
                    int pack = Integer.parseInt(trunk.from().substring(2)) - 1;
                    double ohm =
                            strong.packOhm()[pack]
                                    + strong.chainOhm()[rig.wiring().chains().indexOf(trunk)]
                                    + strong.chainOhm()[rig.wiring().chains().indexOf(branch)];
                    most = Math.max(most, strong.fullV()[pack] / ohm);
                }
            }
        }
        assertThat(Sketch.si(finding)).isCloseTo(most, within(1e-9 * most));
        assertThat(findings(Sketch.example("sandpiper", FUSE, "")))
                .as("nobody wears it")
                .singleElement()
                .satisfies(one -> assertThat(one.severity()).isEqualTo(Severity.WARNS));
    }

    @Test
    void theExamplesAreFused() {
        for (String name : List.of("mudlark", "curlew", "sandpiper")) {
            assertThat(findings(Sketch.example(name))).as(name).isEmpty();
        }
    }

    @Test
    void aFuseFarFromItsPackIsNoted() {
        Finding finding =
                findings(
                                Sketch.example(
                                        "sandpiper",
                                        FUSE,
                                        "",
                                        "wall: 1.1 mm ± 0.2 mm}",
                                        "wall: 1.1 mm ± 0.2 mm}, {fuse: 250 A}"))
                        .getFirst();
        assertThat(finding.code()).isEqualTo("fuse-far-from-pack");
        assertThat(finding.severity()).isEqualTo(Severity.NOTES);
        assertThat(Sketch.si(finding)).isCloseTo(0.7, within(1e-12));
    }
}
