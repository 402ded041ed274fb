package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.random.RandomGenerator;
import liftwright.rig.Control;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.Site;
import liftwright.rig.Wiring;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What must not change, or must change one way, when a rig is written or built otherwise. */
class MetamorphicTest {

    private static final double SAME = 1e-9;

    private static double lift(Rig rig) {
        Plant plant = Plant.assemble(rig);
        SteadyState state = plant.state();
        plant.solve(plant.parameters().nominal(), Effects.ALL, plant.workspace(), state);
        assertThat(state.converged()).isTrue();
        return state.liftN();
    }

    private static void same(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(SAME * (1 + Math.abs(expected))));
    }

    @Test
    void orderAndNamesOfPartsDoNotMatter() {
        Seeded.check(
                150,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    RigSketch other = RigSketch.of(rig);
                    Random order = new Random(random.nextLong());
                    Collections.shuffle(other.fans, order);
                    Collections.shuffle(other.packs, order);
                    Collections.shuffle(other.chains, order);
                    same(lift(renamed(other).rig()), lift(rig));
                });
    }

    private static RigSketch renamed(RigSketch sketch) {
        sketch.fans.replaceAll(fan -> fan(fan, name(fan.id()), fan.mount()));
        sketch.packs.replaceAll(pack -> pack(pack, name(pack.id()), pack.mount()));
        sketch.chains.replaceAll(
                chain ->
                        new Wiring.Chain(
                                name(chain.id()),
                                name(chain.from()),
                                name(chain.to()),
                                chain.elements()));
        sketch.groups.replaceAll(
                group ->
                        new Control.Group(
                                group.name(),
                                group.declaredAt(),
                                group.fans().stream().map(MetamorphicTest::name).toList(),
                                group.share()));
        return sketch;
    }

    private static PartId name(PartId id) {
        return new PartId(name(id.text()));
    }

    private static String name(String node) {
        return "z" + new StringBuilder(node).reverse();
    }

    private static Fan fan(Fan fan, PartId id, Mount mount) {
        return Copies.of(fan).id(id).mount(mount).made();
    }

    private static Pack pack(Pack pack, PartId id, Mount mount) {
        return Copies.of(pack).id(id).mount(mount).made();
    }

    @Test
    void aWireOfNoLengthInsertedAnywhereChangesNothing() {
        Seeded.check(
                150,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    RigSketch other = RigSketch.of(rig);
                    if (other.chains.isEmpty()) {
                        return;
                    }
                    int at = random.nextInt(other.chains.size());
                    Wiring.Chain cut = other.chains.get(at);
                    other.chains.set(
                            at, new Wiring.Chain(cut.id(), cut.from(), "new node", cut.elements()));
                    other.wire("new node", cut.to(), RigSketch.run("new wire", 8, 0));
                    same(lift(other.rig()), lift(rig));
                });
    }

    /** Elements of a chain in any order; a chain turned round. */
    @Test
    void aChainMayBeDrawnTheOtherWayRound() {
        Seeded.check(
                100,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    RigSketch other = RigSketch.of(rig);
                    other.chains.replaceAll(
                            chain ->
                                    new Wiring.Chain(
                                            chain.id(),
                                            chain.to(),
                                            chain.from(),
                                            chain.elements().reversed()));
                    same(lift(other.rig()), lift(rig));
                });
    }

    @Test
    void theMirroredRigLiftsTheSame() {
        Seeded.check(
                150,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    same(lift(MirroredRig.of(rig)), lift(rig));
                    Plant one = Plant.assemble(rig);
                    Plant two = Plant.assemble(MirroredRig.of(rig));
                    assertThat(two.mass().centre().y())
                            .isCloseTo(-one.mass().centre().y(), within(1e-12));
                    assertThat(two.mass().centre().x())
                            .isCloseTo(one.mass().centre().x(), within(1e-12));
                    assertThat(two.mass().centre().z())
                            .isCloseTo(one.mass().centre().z(), within(1e-12));
                });
    }

    /** One pack, several fans on it: more voltage or denser air gives more thrust of each. */
    @Test
    void liftRisesWithVoltageAndWithDensity() {
        Seeded.check(
                150,
                random -> {
                    Rig rig = upward(random);
                    double before = lift(rig);
                    RigSketch fuller = RigSketch.of(rig);
                    fuller.packs.replaceAll(MetamorphicTest::oneCellMore);
                    assertThat(lift(fuller.rig())).isGreaterThan(before);
                    RigSketch denser = RigSketch.of(rig);
                    denser.site = air(1.02 * 90_000);
                    assertThat(lift(denser.rig())).isGreaterThan(before);
                });
    }

    private static Site air(double pascal) {
        return new Site(
                RigSketch.si(0),
                Optional.of(RigSketch.si(288)),
                Optional.of(RigSketch.si(pascal)),
                RigSketch.si(0.5));
    }

    /**
     * Fans without current limit: in denser air a limited fan slows down, and gives the same
     * thrust.
     */
    private static Rig upward(RandomGenerator random) {
        RigSketch sketch = new RigSketch();
        sketch.site = air(90_000);
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C"), 12, 1));
        sketch.wire("p.1", "split", RigSketch.joint("trunk", 0.005 * random.nextDouble()));
        for (int k = 1; k <= random.nextInt(1, 5); k++) {
            sketch.fans.add(
                    RigSketch.fan(
                            "f",
                            k,
                            RigSketch.fanType(
                                    "F",
                                    liftwright.rig.FanType.Data.MEASURED,
                                    Optional.empty(),
                                    RigSketch.si(1))));
            sketch.wire("split", "f." + k, RigSketch.joint("j" + k, 0.01 * random.nextDouble()));
        }
        return sketch.rig();
    }

    private static Pack oneCellMore(Pack pack) {
        return RigSketch.pack("p", 1, pack.cell(), pack.series() + 1, 1);
    }

    /**
     * A fan of half the thrust, torque, no-load current and fixed power and twice the resistance
     * takes half the current at equal speed: two of them are the whole.
     */
    @Test
    void aFanSplitIntoTwoHalvesLiftsTheSame() {
        Seeded.check(
                100,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    if (rig.fans().isEmpty()) {
                        return;
                    }
                    RigSketch other = RigSketch.of(rig);
                    Fan whole = other.fans.remove(random.nextInt(other.fans.size()));
                    List<PartId> halves = new ArrayList<>();
                    for (int k = 1; k <= 2; k++) {
                        Fan half = RigSketch.half(whole, new PartId(whole.id() + " half " + k));
                        other.fans.add(half);
                        halves.add(half.id());
                        other.wire(whole.id().text(), half.id().text());
                    }
                    other.groups.replaceAll(
                            group -> {
                                List<PartId> fans = new ArrayList<>(group.fans());
                                if (fans.remove(whole.id())) {
                                    fans.addAll(halves);
                                }
                                return new Control.Group(
                                        group.name(), group.declaredAt(), fans, group.share());
                            });
                    same(lift(other.rig()), lift(rig));
                });
    }
}
