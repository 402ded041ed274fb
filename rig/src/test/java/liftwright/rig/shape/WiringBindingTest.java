package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.rig.Element;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;
import org.junit.jupiter.api.Test;

class WiringBindingTest {

    private static Wiring.Chain chain(Rig rig, String id) {
        return rig.wiring().chains().stream()
                .filter(c -> c.id().text().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id));
    }

    @Test
    void aFeedIsATrunkToASplitAndABranchToEachFan() {
        Rig rig = Texts.rig(Good.text());
        Wiring.Chain trunk = chain(rig, "feed.p.3.trunk");
        assertThat(trunk.from()).isEqualTo("p.3");
        assertThat(trunk.elements())
                .extracting(e -> e.id().text())
                .containsExactly(
                        "feed.p.3.trunk.joint", "feed.p.3.trunk.fuse", "feed.p.3.trunk.contactor");
        Wiring.Chain branch = chain(rig, "feed.p.3.to.left.3");
        assertThat(branch.from()).isEqualTo(trunk.to());
        assertThat(branch.to()).isEqualTo("left.3");
        Element.Run run = (Element.Run) branch.elements().getFirst();
        assertThat(run.gauge()).isEqualTo(12);
        assertThat(run.conductors()).isEqualTo(1);
        assertThat(run.length().si()).isCloseTo(0.55, within(1e-12));
        assertThat(run.declaredAt())
                .isEqualTo(RigPath.of("wiring", "feeds", "feed", "branch", "1"));
        assertThat(rig.wiring().chains()).hasSize(4 + 12);
    }

    @Test
    void elementsOfOneKindAreCountedUnlessNamed() {
        Rig rig =
                Texts.rig(
                        Good.text()
                                .replace(
                                        "[{joint: bullet 8 mm}, {fuse: 250 A}",
                                        "[{joint: bullet 8 mm}, {joint: own, resistance: 1 mΩ, rating: 9 A}, {id: main"
                                                + " fuse, fuse: 250 A, resistance: 0.3 mΩ, breaks: 2 kA, voltage: 80 V}"));
        List<Element> elements = chain(rig, "feed.p.1.trunk").elements();
        assertThat(elements)
                .extracting(e -> e.id().text())
                .containsExactly(
                        "feed.p.1.trunk.joint",
                        "feed.p.1.trunk.joint.2",
                        "feed.p.1.trunk.main fuse",
                        "feed.p.1.trunk.contactor");
        assertThat(((Element.Joint) elements.get(1)).resistance().si()).isEqualTo(1e-3);
        assertThat(((Element.Fuse) elements.get(2)).breaks().orElseThrow().si()).isEqualTo(2000);
    }

    @Test
    void linksSayAnyTopology() {
        Rig rig =
                Texts.rig(
                        Good.text()
                                .replace(
                                        "other parts:",
                                        """
                                          links:
                                            - {id: tie, from: p.1, to: bus, through: [{run: 2/0 AWG, length: 1 m, conductors: 2}]}
                                            - {id: tie two, from: bus, to: p.2}
                                            - {id: cross, from: feed.p.1.split, to: feed.p.2.split, through: [{fuse: 100 A}]}
                                        other parts:"""));
        assertThat(chain(rig, "tie").to()).isEqualTo("bus");
        Element.Run run = (Element.Run) chain(rig, "tie").elements().getFirst();
        assertThat(run.id().text()).isEqualTo("tie.run");
        assertThat(run.gauge()).isEqualTo(-1);
        assertThat(run.conductors()).isEqualTo(2);
        assertThat(chain(rig, "tie two").elements()).isEmpty();
        assertThat(chain(rig, "cross").from()).isEqualTo("feed.p.1.split");
    }

    @Test
    void aLinkToAWholeGroupOrToNothingIsRefused() {
        String links =
                """
                  links:
                    - {id: one, from: p, to: bus}
                    - {id: two, from: p.9, to: bus}
                    - {id: three, from: bus, to: bus}
                    - {id: four, from: feed.p.5.split, to: bus}
                other parts:""";
        assertThat(Texts.errors(Texts.read(Good.text().replace("other parts:", links))))
                .extracting(Problem::code, p -> p.at().path())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(
                                Problem.Code.CONTRADICTION, "wiring/links/one/from"),
                        org.assertj.core.groups.Tuple.tuple(
                                Problem.Code.NO_SUCH_PART, "wiring/links/two/from"),
                        org.assertj.core.groups.Tuple.tuple(
                                Problem.Code.CONTRADICTION, "wiring/links/three/to"),
                        org.assertj.core.groups.Tuple.tuple(
                                Problem.Code.NO_SUCH_PART, "wiring/links/four/from"));
    }

    @Test
    void aFanThatNothingFeedsIsAllowed() {
        Rig rig = Texts.rig(Good.text().replace("p.4: [top.4, left.4, right.4]", "p.4: [top.4]"));
        assertThat(rig.fans()).hasSize(12);
        assertThat(rig.wiring().chains()).noneMatch(c -> c.to().equals("left.4"));
    }

    @Test
    void groupsOfOnePackMayBeCalledByTheGroupsName() {
        String text =
                Good.text()
                        .replace("count: 4, ", "")
                        .replaceAll(
                                "(?s)        p\\.1:.*?other parts:",
                                "        p: [top, left, right]\nother parts:");
        Rig rig = Texts.rig(text);
        assertThat(chain(rig, "feed.p.1.trunk").from()).isEqualTo("p.1");
        assertThat(rig.wiring().chains()).hasSize(1 + 12);
    }
}
