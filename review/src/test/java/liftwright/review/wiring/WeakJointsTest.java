package liftwright.review.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.physics.Air;
import liftwright.physics.AircraftWire;
import liftwright.physics.SurfaceExchange;
import liftwright.rig.Element;
import liftwright.rig.Insulation;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;
import liftwright.rig.book.PartsBook;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Joints that are the weakest place of their chain. */
class WeakJointsTest {

    /** Current that warms a wire by 30 K in still air of 25 °C: heat made equals heat given. */
    private static double thirtyKelvinA(Element.Run run) {
        AircraftWire row = AircraftWire.of(run.gauge());
        double inner = Math.sqrt(row.areaM2() / Math.PI / 0.76);
        double outer = inner + run.covering().wall().si();
        double k = PartsBook.insulation(run.covering().material()).conductivityWpmK();
        double wall = 2 * Math.PI * k / Math.log(outer / inner);
        double low = 298.15;
        double high = 328.15;
        double out = 0;
        for (int round = 0; round < 60; round++) {
            double surface = (low + high) / 2;
            out =
                    SurfaceExchange.wireWpmK(2 * outer, surface, 298.15, Air.SEA_LEVEL_PA, 0, 0.9)
                            * (surface - 298.15);
            if (surface + out / wall < 328.15) {
                low = surface;
            } else {
                high = surface;
            }
        }
        double ohm = row.ohmpm() * (1 + 0.00393 * (328.15 - 293.15));
        return run.conductors() * Math.sqrt(out / ohm);
    }

    @Test
    void exactlyTheJointsBelowTheirWireAreFound() {
        int[] found = {0, 0};
        Seeded.check(
                30,
                random -> {
                    Sketch sketch = new Sketch();
                    sketch.packs.add("p.1");
                    Set<String> weak = new TreeSet<>();
                    for (int chain = random.nextInt(1, 4); chain > 0; chain--) {
                        int gauge =
                                List.of(AircraftWire.values()).get(random.nextInt(4, 14)).gauge();
                        Element run = sketch.run(gauge, 0.5);
                        double wire = thirtyKelvinA((Element.Run) run);
                        double rating = wire * random.nextDouble(0.5, 1.5);
                        Element joint = sketch.joint(rating);
                        if (Math.abs(rating - wire) < 0.01 * wire) {
                            continue;
                        }
                        if (rating < wire) {
                            weak.add(joint.id().text());
                        }
                        sketch.fans.add("f." + chain);
                        sketch.chain("p.1", "f." + chain, run, joint);
                        found[rating < wire ? 0 : 1]++;
                    }
                    Rig rig = Sketch.rewired(sketch.chains);
                    assertThat(
                                    WeakJoints.of(rig).stream()
                                            .map(one -> one.joint().id().text())
                                            .toList())
                            .containsExactlyInAnyOrderElementsOf(weak);
                    assertThat(WeakJoints.finding(rig).isPresent()).isEqualTo(!weak.isEmpty());
                });
        assertThat(found[0]).isGreaterThan(10);
        assertThat(found[1]).isGreaterThan(10);
    }

    @Test
    void aFuseBelowTheJointMakesItANote() {
        Sketch sketch = new Sketch();
        Element run = sketch.run(8, 0.5);
        double rating = 0.8 * thirtyKelvinA((Element.Run) run);
        sketch.chain("p.1", "corner.1", sketch.fuse(0.9 * rating), run, sketch.joint(rating));
        Finding noted = WeakJoints.finding(Sketch.rewired(sketch.chains)).orElseThrow();
        assertThat(noted.severity()).isEqualTo(Severity.NOTES);
        Sketch open = new Sketch();
        open.chain(
                "p.1", "corner.1", open.fuse(1.1 * rating), open.run(8, 0.5), open.joint(rating));
        Finding warned = WeakJoints.finding(Sketch.rewired(open.chains)).orElseThrow();
        assertThat(warned.severity()).isEqualTo(Severity.WARNS);
        assertThat(warned.code()).isEqualTo("joint-below-wire");
    }

    /** Wires of which nothing is declared are named; a declared one is not. */
    @Test
    void insulationThatNobodyDeclaredIsMissed() {
        Rig bare = Sketch.rewired(plain());
        Finding finding = Uncovered.finding(bare).orElseThrow();
        assertThat(finding.code()).isEqualTo("insulation-not-declared");
        assertThat(finding.severity()).isEqualTo(Severity.WARNS);
        assertThat(Sketch.si(finding)).isEqualTo(343.15);
        Rig declared =
                Sketch.rewired(
                        List.of(
                                new Wiring.Chain(
                                        new PartId("c"),
                                        "p.1",
                                        "corner.1",
                                        List.of(
                                                WireHarmTest.run(
                                                        10, Insulation.SILICONE, 1e-3, 180)))));
        assertThat(Uncovered.finding(declared)).isEmpty();
    }

    private static List<Wiring.Chain> plain() {
        Sketch sketch = new Sketch();
        sketch.chain("p.1", "corner.1", sketch.run(10, 1), sketch.run(12, 1));
        return sketch.chains;
    }
}
