package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.DefaultUsed;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What holds for every rig that can be written. */
class RandomRigsTest {

    @Test
    void everyGoodRigBindsToWhatItMeans() {
        Seeded.check(
                300,
                random -> {
                    var made = RandomRigs.make(random);
                    Rig rig = Texts.rig(made.text());
                    assertThat(rig.fans()).hasSize(made.fanCount());
                    assertThat(rig.packs()).hasSize(made.packCount());
                    assertThat(rig.fans().stream().map(Fan::id)).doesNotHaveDuplicates();
                    var grouped = rig.control().groups().stream().flatMap(g -> g.fans().stream());
                    assertThat(grouped)
                            .containsExactlyInAnyOrderElementsOf(
                                    rig.fans().stream().map(Fan::id).toList());
                });
    }

    @Test
    void everyFanHangsOnOnePackThroughATrunkAndABranch() {
        Seeded.check(
                100,
                random -> {
                    Rig rig = Texts.rig(RandomRigs.make(random).text());
                    Map<String, List<Wiring.Chain>> to =
                            rig.wiring().chains().stream()
                                    .collect(Collectors.groupingBy(Wiring.Chain::to));
                    var packs =
                            rig.packs().stream()
                                    .map(p -> p.id().text())
                                    .collect(Collectors.toSet());
                    for (Fan fan : rig.fans()) {
                        String split = only(to, fan.id().text()).from();
                        assertThat(packs).contains(only(to, split).from());
                    }
                    var elements = new HashSet<String>();
                    rig.wiring()
                            .chains()
                            .forEach(
                                    c ->
                                            c.elements()
                                                    .forEach(
                                                            e ->
                                                                    assertThat(
                                                                                    elements.add(
                                                                                            e.id().text()))
                                                                            .as(e.id().text())
                                                                            .isTrue()));
                });
    }

    @Test
    void aRigIsTheSameFromItsTextAndFromItsDeclaration() {
        Seeded.check(
                100,
                random -> {
                    Rig rig = Texts.rig(RandomRigs.make(random).text());
                    Read again = Binder.bind(rig.declaration());
                    assertThat(again.rig()).contains(rig);
                });
    }

    /** Whatever is left out: what warms has a mass, a class and a curve that falls. */
    @Test
    void whateverIsLeftOutSomethingStandsInForWhatWarms() {
        Seeded.check(
                200,
                random -> {
                    Rig rig = Texts.rig(RandomRigs.make(random).text());
                    for (FanType type : rig.fanTypes()) {
                        assertThat(type.controller().cooling().heatCapacity().si()).isPositive();
                        assertThat(type.controller().cooling().junctionHeatCapacity().si())
                                .isPositive()
                                .isLessThan(type.controller().cooling().heatCapacity().si());
                        assertThat(type.motor().heating().windingToCase().si()).isPositive();
                    }
                    rig.cellTypes().forEach(c -> assertThat(c.thermal().toAir().si()).isPositive());
                    rig.wiring().chains().stream()
                            .flatMap(c -> c.elements().stream())
                            .forEach(RandomRigsTest::warms);
                    for (DefaultUsed used : rig.defaults()) {
                        assertThat(used.origin()).as("%s", used).isNotBlank();
                    }
                });
    }

    private static void warms(Element element) {
        switch (element) {
            case Element.Run run -> {
                assertThat(run.covering().wall().si()).isPositive();
                assertThat(run.covering().classK()).isBetween(313.0, 673.0);
            }
            case Element.Joint joint -> {
                assertThat(joint.heatCapacity().si()).isPositive();
                assertThat(joint.wear().damage().si()).isGreaterThanOrEqualTo(1);
            }
            case Element.Fuse fuse -> {
                var first = fuse.points().getFirst();
                assertThat(first.current().si()).isGreaterThan(fuse.rating().si());
                assertThat(fuse.timeConstant().si()).isPositive();
                assertThat(fuse.timeDoubt().tolerance().minus()).isLessThan(1);
            }
            case Element.Pole pole -> assertThat(pole.contactor().heatCapacity().si()).isPositive();
        }
    }

    @Test
    void placesSaidByRecordsAreInTheFile() {
        Seeded.check(
                100,
                random -> {
                    Rig rig = Texts.rig(RandomRigs.make(random).text());
                    Tree root = rig.declaration().root();
                    for (Fan fan : rig.fans()) {
                        assertThat(at(root, fan.declaredAt())).isPresent();
                        fan.leans().forEach(l -> assertThat(at(root, l.declaredAt())).isPresent());
                    }
                    rig.packs().forEach(p -> assertThat(at(root, p.declaredAt())).isPresent());
                    rig.otherParts().forEach(p -> assertThat(at(root, p.declaredAt())).isPresent());
                    rig.wiring()
                            .chains()
                            .forEach(
                                    c ->
                                            c.elements()
                                                    .forEach(
                                                            e ->
                                                                    assertThat(
                                                                                    at(
                                                                                            root,
                                                                                            e
                                                                                                    .declaredAt()))
                                                                            .isPresent()));
                    rig.defaults().forEach(d -> assertThat(at(root, d.at())).isEmpty());
                });
    }

    private static Wiring.Chain only(Map<String, List<Wiring.Chain>> to, String node) {
        List<Wiring.Chain> chains = to.getOrDefault(node, List.of());
        assertThat(chains).as(node).hasSize(1);
        return chains.getFirst();
    }

    /** Written without the code under test: keys, ids, or numbers from 1. */
    static Optional<Tree> at(Tree tree, RigPath path) {
        Tree here = tree;
        for (String segment : path.segments()) {
            Tree next = null;
            if (here instanceof Tree.Entries(var byKey)) {
                next = byKey.get(segment);
            } else if (here instanceof Tree.Items(var items)) {
                for (int i = 0; i < items.size(); i++) {
                    boolean named =
                            items.get(i) instanceof Tree.Entries(var byKey)
                                    && byKey.get("id") instanceof Tree.Text(var id)
                                    && id.equals(segment);
                    if (named || segment.equals(Integer.toString(i + 1))) {
                        next = items.get(i);
                    }
                }
            }
            if (next == null) {
                return Optional.empty();
            }
            here = next;
        }
        return Optional.of(here);
    }
}
