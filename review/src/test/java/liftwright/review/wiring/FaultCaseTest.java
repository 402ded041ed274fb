package liftwright.review.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import liftwright.physics.FuseCurve;
import liftwright.plant.FaultSupply;
import liftwright.review.wiring.FaultNet.Place;
import liftwright.rig.Element;
import liftwright.rig.Insulation;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * A fault right behind the fuse of one of several packs on a bus: that fuse carries its own pack's
 * current, the wire behind it what all others send.
 */
class FaultCaseTest {

    private static final double WIRE_K = 323.15;

    /** Packs, each through a fuse and a wire onto one bus. */
    private static Rig rig(int packs) {
        Sketch sketch = new Sketch();
        for (int pack = 1; pack <= packs; pack++) {
            sketch.chain("p." + pack, "bus", sketch.fuse(60), sketch.run(4, 1));
        }
        Rig base = Sketch.example("sandpiper");
        return Sketch.rewired(base, sketch.chains, base.demands(), packs);
    }

    private static FaultNet net(Rig rig, double volt, double ohm) {
        int packs = rig.packs().size();
        double[] volts = new double[packs];
        double[] ohms = new double[packs];
        Arrays.fill(volts, volt);
        Arrays.fill(ohms, ohm);
        return new FaultNet(
                rig,
                rig.wiring().chains(),
                new FaultSupply(volts, ohms, new double[packs], WIRE_K));
    }

    /** Closed form: two branches into the fault, then one; heat carried over in between. */
    @Test
    void fusesOpenOneAfterTheOtherWithTheHeatThatTheyHave() {
        int[] both = {0};
        Seeded.check(
                60,
                random -> {
                    int packs = random.nextInt(2, 5);
                    double volt = random.nextDouble(20, 60);
                    double ohm = random.nextDouble(0.01, 0.1);
                    double faultOhm = random.nextDouble(0, 0.2);
                    Rig rig = rig(packs);
                    FaultNet net = net(rig, volt, ohm);
                    Place<Element.Run> run = net.runs().getFirst();
                    FaultCase far =
                            FaultCase.of(net, run).stream()
                                    .filter(one -> !one.near())
                                    .findFirst()
                                    .orElseThrow();
                    double wire = ElementOhm.of(run.element(), WIRE_K);
                    double others = (ohm + 1e-3 + wire) / (packs - 1) + wire;
                    double near = ohm + 1e-3;
                    assertThat(far.boltedA())
                            .isCloseTo(volt / others, within(1e-6 * volt / others));
                    double together = others * near / (others + near);
                    double at = volt * faultOhm / (together + faultOhm);
                    double first = (volt - at) / others;
                    double own = (volt - at) / near;
                    double later = volt / (others + faultOhm);
                    double tau = 30;
                    var curve =
                            new FuseCurve(
                                    new double[] {60, 120, 600}, new double[] {900, 30, 0.5}, tau);
                    double ownS = curve.timeS(own);
                    double firstS = curve.timeS(first / (packs - 1));
                    double expected;
                    if (firstS <= ownS) {
                        expected = firstS;
                    } else {
                        double theta = curve.gain(first / (packs - 1)) * -Math.expm1(-ownS / tau);
                        double g = curve.gain(later / (packs - 1));
                        expected =
                                g <= 1
                                        ? Double.POSITIVE_INFINITY
                                        : ownS + tau * Math.log((g - theta) / (g - 1));
                        both[0]++;
                    }
                    var thick =
                            new WireHarm(
                                    WireHarmTest.run(-3, Insulation.PTFE, 1e-3, 260),
                                    -3,
                                    293.15,
                                    101_325,
                                    20);
                    FaultCase.End end =
                            far.run(net, faultOhm, net.fuses(), _ -> curve, thick.new Course(0));
                    if (expected < Double.POSITIVE_INFINITY && !end.harmed()) {
                        assertThat(end.endedS())
                                .isCloseTo(expected, within(1e-3 * expected + 1e-6));
                    }
                    assertThat(end.firstA()).isCloseTo(first, within(1e-6 * first));
                });
        assertThat(both[0]).isGreaterThan(10);
    }

    /** Only fuses in the way of a current cut it. */
    @Test
    void whatStandsInTheWayIsKnown() {
        Rig rig = rig(3);
        FaultNet net = net(rig, 50, 0.02);
        List<Place<Element.Fuse>> fuses = net.fuses();
        for (FaultCase one : FaultCase.of(net, net.runs().getFirst())) {
            assertThat(one.isCutBy(net, fuses.getFirst())).isEqualTo(one.near());
            assertThat(one.isCutBy(net, fuses.get(1))).isEqualTo(!one.near());
            assertThat(one.ampere(net.solve(one.fault(), 0, Set.of())))
                    .isCloseTo(one.boltedA(), within(1e-9 * one.boltedA()));
        }
    }
}
