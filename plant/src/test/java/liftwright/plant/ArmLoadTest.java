package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import liftwright.plant.balance.ArmJoint;
import liftwright.plant.balance.ArmLoad;
import liftwright.plant.balance.FanAtWork;
import liftwright.rig.Exertion;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What arms hold, against a free body of points, against virtual work, and by hand. */
class ArmLoadTest {

    private static final double G = 9.80665;

    private static List<ArmLoad> loads(Rig rig, boolean full) {
        Balancing balancing = Balancing.of(rig);
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        HoverPoint point = worker.liftOff(p);
        List<FanAtWork> work = point.ledger().fans();
        if (full) {
            work = worker.fullThrottle(p, point.mass().centre()).orElseThrow();
        }
        return worker.armLoads(p, point.mass(), work);
    }

    /**
     * Cut free at a joint, an arm is the points of the referee and the thrusts of its fans: their
     * moments about the joint, turned by matrices of the referee's own, to 1e-9.
     */
    @Test
    void armsCutFreeHoldWhatTheRefereeFinds() {
        Seeded.check(
                300,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    if (rig.wearer().isEmpty()) {
                        return;
                    }
                    Balancing balancing = Balancing.of(rig);
                    Balancing.Worker worker = balancing.worker();
                    double[] p = balancing.parameters().nominal();
                    HoverPoint point = worker.liftOff(p);
                    List<FanAtWork> work = point.ledger().fans();
                    if (random.nextBoolean()) {
                        work = worker.fullThrottle(p, point.mass().centre()).orElse(work);
                    }
                    PointBodies points = new PointBodies(rig);
                    double whole = 1 + point.mass().weightN();
                    for (int side = -1; side <= 1; side += 2) {
                        ArmLoad load = worker.armLoads(p, point.mass(), work).get(side < 0 ? 0 : 1);
                        double[] thrustN = work.stream().mapToDouble(FanAtWork::thrustN).toArray();
                        double[] swirlNm = work.stream().mapToDouble(FanAtWork::swirlNm).toArray();
                        double[] held = points.armHeld(rig, side, thrustN, swirlNm);
                        int at = 0;
                        for (ArmJoint joint : ArmJoint.values()) {
                            assertThat(load.heldNm(joint))
                                    .as("%s %d", joint, side)
                                    .isCloseTo(held[at++], within(1e-9 * whole));
                        }
                    }
                });
    }

    /** Seen in a mirror the other arm holds the same. */
    @Test
    void theMirrorImageHoldsTheSameWithTheOtherArm() {
        Seeded.check(
                100,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    if (rig.wearer().isEmpty()) {
                        return;
                    }
                    List<ArmLoad> one = loads(rig, false);
                    List<ArmLoad> other = loads(MirroredRig.of(rig), false);
                    double whole = 1 + Plant.assemble(rig).mass().weightN();
                    for (ArmJoint joint : ArmJoint.values()) {
                        assertThat(other.get(1).heldNm(joint))
                                .isCloseTo(one.get(0).heldNm(joint), within(1e-7 * whole));
                        assertThat(other.get(0).heldNm(joint))
                                .isCloseTo(one.get(1).heldNm(joint), within(1e-7 * whole));
                    }
                });
    }

    private static RigSketch stretched(double flexion) {
        Wearer.Arm arm =
                new Wearer.Arm(
                        RigSketch.si(flexion), RigSketch.si(0), RigSketch.si(0), RigSketch.si(0));
        RigSketch sketch = new RigSketch();
        sketch.wearer =
                Optional.of(
                        new Wearer(
                                RigSketch.si(75), RigSketch.si(1.75), Wearer.Body.MALE, arm, arm));
        return sketch;
    }

    /**
     * An arm held out level weighs 15.01 N·m at the shoulder for a person of 75 kg and 1.75 m after
     * Winter, Biomechanics and Motor Control of Human Movement, Table 4.1 (arm 0.050 of the mass at
     * 0.530 of 0.44 of stature, fingers stretched). De Leva's table of younger people has the
     * centre of the arm nearer to the shoulder: 27 % less, told in docs/validation.md.
     */
    @Test
    void aLevelArmWeighsAQuarterLessThanWintersTableSays() {
        ArmLoad load = loads(stretched(Math.PI / 2).rig(), false).getFirst();
        assertThat(load.heldNm(ArmJoint.SHOULDER_FLEXION) / 15.01).isBetween(0.71, 0.74);
        assertThat(load.heldNm(ArmJoint.SHOULDER_ABDUCTION)).isCloseTo(0, within(1e-9));
        assertThat(load.heldNm(ArmJoint.SHOULDER_ROTATION)).isCloseTo(0, within(1e-9));
    }

    /**
     * 100 N at the centre of the forearm of a straight level arm of Winter's lengths (0.186 and
     * 0.146 of 1.75 m, centre at 0.430): 43.54 N·m at the shoulder, recomputed.
     */
    @Test
    void aHundredNewtonsAtTheForearmLoadTheShoulder() {
        RigSketch sketch = stretched(Math.PI / 2);
        double bare = loads(sketch.rig(), false).get(1).heldNm(ArmJoint.SHOULDER_FLEXION);
        Wearer w = sketch.wearer.orElseThrow();
        Wearer.Measured none = Wearer.Measured.NOTHING;
        var measured =
                new Wearer.Measured(
                        none.rollInertia(),
                        none.pitchInertia(),
                        none.yawInertia(),
                        none.scales(),
                        none.rollSwing(),
                        none.pitchSwing(),
                        none.yawSwing(),
                        none.centre(),
                        new Wearer.Sizes(
                                Optional.empty(),
                                Optional.empty(),
                                java.util.Map.of(
                                        Wearer.Segment.UPPER_ARM,
                                        RigSketch.si(0.186 * 1.75),
                                        Wearer.Segment.FOREARM,
                                        RigSketch.si(0.146 * 1.75)),
                                java.util.Map.of()));
        sketch.wearer =
                Optional.of(
                        new Wearer(
                                w.mass(),
                                w.stature(),
                                w.body(),
                                w.left(),
                                w.right(),
                                RigSketch.si(0),
                                measured));
        double alone = loads(sketch.rig(), false).get(1).heldNm(ArmJoint.SHOULDER_FLEXION);
        assertThat(alone).isGreaterThan(bare);
        Mount mount =
                new Mount(
                        "pod",
                        Mount.Carrier.RIGHT_FOREARM,
                        Vec3.ZERO,
                        RigSketch.si(0.430),
                        RigSketch.si(0),
                        RigSketch.si(0));
        sketch.others.add(
                new OtherPart(
                        new PartId("weight"),
                        RigPath.of("other parts", "0"),
                        RigSketch.si(100 / G),
                        mount,
                        Vec3.ZERO,
                        Optional.empty()));
        double with = loads(sketch.rig(), false).get(1).heldNm(ArmJoint.SHOULDER_FLEXION);
        assertThat(with - alone).isCloseTo(43.54, within(0.005));
    }

    /**
     * By de Leva's numbers: forearm and hand 1.62 % and 0.61 % of the mass, a weight of 2 kg at
     * half the forearm; the elbow holds them, flexing.
     */
    @Test
    void aWeightOnALevelForearmIsHeldByFlexion() {
        RigSketch sketch = stretched(Math.PI / 2);
        Mount mount =
                new Mount(
                        "pod",
                        Mount.Carrier.RIGHT_FOREARM,
                        Vec3.ZERO,
                        RigSketch.si(0.5),
                        RigSketch.si(0),
                        RigSketch.si(0));
        sketch.others.add(
                new OtherPart(
                        new PartId("weight"),
                        RigPath.of("other parts", "0"),
                        RigSketch.si(2),
                        mount,
                        Vec3.ZERO,
                        Optional.empty()));
        List<ArmLoad> loads = loads(sketch.rig(), false);
        double scale = 1.75 / 1.741;
        double fore = 0.2689 * scale;
        double hand = 0.0862 * scale;
        double own = 75 * G * (0.0162 * 0.4574 * fore + 0.0061 * (fore + 0.79 * hand));
        assertThat(loads.get(1).heldNm(ArmJoint.ELBOW_FLEXION))
                .isCloseTo(own + 2 * G * fore / 2, within(1e-9));
        assertThat(loads.get(0).heldNm(ArmJoint.ELBOW_FLEXION)).isCloseTo(own, within(1e-9));
        assertThat(loads.get(1).shoulderN().z() - loads.get(0).shoulderN().z())
                .isCloseTo(2 * G, within(1e-9));
        assertThat(ArmJoint.ELBOW_FLEXION.exertion(1)).contains(Exertion.ELBOW_FLEXION);
        assertThat(ArmJoint.ELBOW_FLEXION.exertion(-1)).contains(Exertion.ELBOW_EXTENSION);
        assertThat(ArmJoint.ELBOW_ACROSS.exertion(1)).isEmpty();
    }

    /** An arm out to the side is held by abduction, and on both sides alike. */
    @Test
    void anArmToTheSideIsHeldByAbduction() {
        Wearer.Arm arm =
                new Wearer.Arm(
                        RigSketch.si(0),
                        RigSketch.si(Math.PI / 2),
                        RigSketch.si(0),
                        RigSketch.si(0));
        RigSketch sketch = stretched(0);
        sketch.wearer =
                Optional.of(
                        new Wearer(
                                RigSketch.si(75), RigSketch.si(1.75), Wearer.Body.MALE, arm, arm));
        for (ArmLoad load : loads(sketch.rig(), false)) {
            assertThat(load.heldNm(ArmJoint.SHOULDER_ABDUCTION))
                    .isBetween(0.71 * 15.01, 0.74 * 15.01);
            assertThat(load.heldNm(ArmJoint.SHOULDER_FLEXION)).isCloseTo(0, within(1e-9));
        }
    }
}
