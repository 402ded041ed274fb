package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.plant.fault.CutClass;
import liftwright.plant.fault.Effect;
import liftwright.plant.fault.Fault;
import liftwright.plant.fault.Fault.Kind;
import liftwright.plant.fault.Faults;
import liftwright.rig.Control;
import liftwright.rig.Element;
import liftwright.rig.FanType;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** The list of all single faults, and which of them come to the same. */
class FaultsTest {

    private static final FanType TYPE =
            RigSketch.fanType("F", FanType.Data.MEASURED, Optional.empty(), RigSketch.si(1));

    private static List<Fault> of(List<Fault> faults, Kind kind) {
        return faults.stream().filter(fault -> fault.kind() == kind).toList();
    }

    @Test
    void everyPartIsThereOnce() {
        Seeded.check(
                100,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    List<Fault> faults = Faults.of(rig);
                    for (Kind kind :
                            List.of(
                                    Kind.FAN,
                                    Kind.CONTROLLER,
                                    Kind.LOST_SYNC,
                                    Kind.STUCK_FULL,
                                    Kind.STUCK_IDLE,
                                    Kind.START_UP_SURGE,
                                    Kind.SWAPPED_LEADS)) {
                        assertThat(of(faults, kind)).hasSize(rig.fans().size());
                    }
                    assertThat(of(faults, Kind.PACK)).hasSize(rig.packs().size());
                    long elements =
                            rig.wiring().chains().stream()
                                    .mapToLong(chain -> chain.elements().size())
                                    .sum();
                    assertThat(
                                    of(faults, Kind.RUN).size()
                                            + of(faults, Kind.JOINT).size()
                                            + of(faults, Kind.FUSE).size()
                                            + of(faults, Kind.POLE).size())
                            .isEqualTo((int) elements);
                    Set<String> names = new HashSet<>();
                    for (Fault fault : faults) {
                        assertThat(names.add(fault.kind() + " " + fault.part())).isTrue();
                        assertThat(fault.words()).isNotBlank();
                    }
                });
    }

    /** What a fault names as dead with it changes nothing beside what it takes itself. */
    @Test
    void whatIsNamedAsDeadIsDead() {
        int[] seen = new int[1];
        Seeded.check(
                60,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    Plant plant = Plant.assemble(rig);
                    double[] p = plant.parameters().nominal();
                    Losses.Worker worker = plant.losses(Losses.Charge.FULL).worker();
                    List<Wiring.Chain> chains = rig.wiring().chains();
                    int chain = random.nextInt(chains.size());
                    Effect alone = Effect.open(chain);
                    Effect whole = plant.losses(Losses.Charge.FULL).wiring().whole(alone);
                    LossPoint one = worker.at(p, alone, 1e9);
                    LossPoint other = worker.at(p, whole, 1e9);
                    assertThat(other.liftN())
                            .isCloseTo(one.liftN(), within(1e-9 * (1 + Math.abs(one.liftN()))));
                    for (int k = 0; k < chains.size(); k++) {
                        assertThat(other.flow().chainA().get(k))
                                .isCloseTo(one.flow().chainA().get(k), within(1e-6));
                    }
                    for (int dead : whole.openChains()) {
                        assertThat(one.flow().chainA().get(dead)).isCloseTo(0, within(1e-6));
                    }
                    for (int dead : whole.lostPacks()) {
                        assertThat(one.flow().packA().get(dead)).isCloseTo(0, within(1e-6));
                    }
                    seen[0] += whole.equals(alone) ? 0 : 1;
                });
        assertThat(seen[0]).isGreaterThan(10);
    }

    private static Wiring.Chain chain(String id, String from, String to, int joints) {
        List<Element> elements = new ArrayList<>();
        for (int k = 1; k <= joints; k++) {
            elements.add(
                    new Element.Joint(
                            PartId.of(id + ".joint", k),
                            RigPath.of("wiring", id, Integer.toString(k)),
                            "lug",
                            RigSketch.si(0.0005),
                            Optional.empty()));
        }
        return new Wiring.Chain(new PartId(id), from, to, elements);
    }

    /**
     * One pack, a bus, two fans: pack and all before the bus are one class, each fan's branch one.
     */
    @Test
    void partsInSeriesAreOneClass() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("cell"), 14, 1));
        sketch.fans.add(RigSketch.fan("f", 1, TYPE));
        sketch.fans.add(RigSketch.fan("f", 2, TYPE));
        sketch.chains.add(chain("feed", "p.1", "split", 2));
        sketch.chains.add(chain("on", "split", "bus", 1));
        sketch.chains.add(chain("a", "bus", "f.1", 2));
        sketch.chains.add(chain("b", "bus", "f.2", 1));
        List<Fault> wiring =
                Faults.of(sketch.rig()).stream()
                        .filter(
                                fault ->
                                        fault.kind() == Kind.PACK
                                                || fault.kind() == Kind.JOINT
                                                || fault.kind() == Kind.FAN)
                        .toList();
        List<CutClass> classes = CutClass.of(wiring);
        assertThat(classes).hasSize(3);
        assertThat(classes.stream().map(one -> one.members().size()).toList())
                .containsExactlyInAnyOrder(4, 3, 2);
        for (CutClass one : classes) {
            for (Fault member : one.members()) {
                assertThat(member.effect()).isEqualTo(one.effect());
            }
        }
    }

    /** Faults without an effect harm in ways of their own. */
    @Test
    void whatTakesNothingIsAClassOfItsOwn() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("cell"), 14, 1));
        sketch.fans.add(RigSketch.fan("f", 1, TYPE));
        sketch.steering = Control.Kind.SHARED_THROTTLE;
        List<Fault> none =
                Faults.of(sketch.rig()).stream().filter(fault -> fault.effect().isNone()).toList();
        assertThat(none).hasSizeGreaterThan(1);
        assertThat(CutClass.of(none)).hasSameSizeAs(none);
    }
}
