package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.balance.MomentLedger;
import liftwright.plant.balance.TurningCause;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Beam;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Mounts that give under thrust, against a beam that a referee walks along in slices. */
class BeamsTest {

    private static Quantity si(double value) {
        return Quantity.exact(value, Dimension.NONE);
    }

    private static Mount onBeam(
            String name, Vec3 at, Vec3 runs, double lengthM, double ei, double gj) {
        return new Mount(
                name,
                Mount.Carrier.FRAME,
                at,
                si(0),
                si(0),
                si(0),
                Optional.of(new Beam(runs, si(lengthM), new Beam.Rigidities(si(ei), si(gj)))));
    }

    private static Fan on(Mount mount, Fan fan, Vec3 at, Vec3 blows, Fan.Spin spin) {
        return Copies.of(fan).mount(mount).at(at).blows(blows).leans(List.of()).spin(spin).made();
    }

    private static Vec3 around(RandomGenerator random, double reach) {
        return new Vec3(
                random.nextDouble(-reach, reach),
                random.nextDouble(-reach, reach),
                random.nextDouble(-reach, reach));
    }

    private static Vec3 unit(Vec3 v) {
        return v.times(1 / v.length());
    }

    /** Two beams, left and right, two fans on each, that blow down more or less. */
    private static Rig drawn(RandomGenerator random, double stiff) {
        RigSketch sketch = new RigSketch();
        FanType type = RigSketch.fanType("F");
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C"), 14, 1));
        for (String side : List.of("left", "right")) {
            Vec3 runs = unit(around(random, 1));
            Mount mount =
                    onBeam(
                            side,
                            around(random, 0.5),
                            runs,
                            random.nextDouble(0.1, 0.6),
                            stiff * random.nextDouble(0.5, 2),
                            stiff * random.nextDouble(0.5, 2));
            for (int k = 1; k <= 2; k++) {
                Vec3 blows = unit(around(random, 0.3).plus(new Vec3(0, 0, 1)));
                Fan.Spin spin = random.nextBoolean() ? Fan.Spin.LEFT_HAND : Fan.Spin.RIGHT_HAND;
                sketch.fans.add(
                        on(mount, RigSketch.fan(side, k, type), around(random, 0.2), blows, spin));
                sketch.wire("p.1", side + "." + k, RigSketch.run(side + k, 8, 0.5));
            }
        }
        return sketch.rig();
    }

    private static HoverPoint liftOff(Rig rig) {
        Balancing balancing = Balancing.of(rig);
        return balancing.worker().liftOff(balancing.parameters().nominal());
    }

    /** Turn of a vector by a small rotation vector, by the series to the second order. */
    private static Vec3 turned(Vec3 v, Vec3 by) {
        Vec3 once = by.cross(v);
        return v.plus(once).plus(by.cross(once).times(0.5));
    }

    /** Walks along the beam: each slice bends by M(x)/(E I) and twists by T/(G J). */
    private static Vec3[] walked(
            Beam beam, Vec3 tip, Vec3 fan, Vec3 push, Vec3 force, Vec3 moment) {
        Beam.Rigidities stiff = (Beam.Rigidities) beam.section();
        int slices = 400;
        double h = beam.length().si() / slices;
        Vec3 at = fan;
        Vec3 way = push;
        for (int k = slices - 1; k >= 0; k--) {
            double fromTip = beam.length().si() - (k + 0.5) * h;
            Vec3 joint = tip.minus(beam.runs().times(fromTip));
            Vec3 there = moment.plus(beam.runs().times(fromTip).cross(force));
            Vec3 run = beam.runs();
            double torque = there.x() * run.x() + there.y() * run.y() + there.z() * run.z();
            Vec3 turn =
                    run.times(torque * h / stiff.torsion().si())
                            .plus(there.minus(run.times(torque)).times(h / stiff.bending().si()));
            at = joint.plus(turned(at.minus(joint), turn));
            way = turned(way, turn);
        }
        return new Vec3[] {at, way};
    }

    @Test
    void theGiveIsThatOfTheReferee() {
        Seeded.check(
                200,
                random -> {
                    Rig rig = drawn(random, random.nextDouble(3000, 30_000));
                    HoverPoint point = liftOff(rig);
                    Vec3 centre = point.mass().centre();
                    assertThat(point.gives()).hasSize(2);
                    for (int k = 0; k < rig.fans().size(); k++) {
                        Mount mount = rig.fans().get(k).mount();
                        Vec3 force = Vec3.ZERO;
                        Vec3 moment = Vec3.ZERO;
                        for (int j = 0; j < rig.fans().size(); j++) {
                            Fan fan = rig.fans().get(j);
                            if (fan.mount().name().equals(mount.name())) {
                                FanAtWork work = point.ledger().fans().get(j);
                                Vec3 push = fan.blows().times(-work.thrustN());
                                force = force.plus(push);
                                moment =
                                        moment.plus(fan.at().cross(push))
                                                .plus(fan.blows().times(-work.swirlNm()));
                            }
                        }
                        Fan fan = rig.fans().get(k);
                        Vec3[] given =
                                walked(
                                        mount.beam().orElseThrow(),
                                        mount.at(),
                                        mount.at().plus(fan.at()),
                                        fan.blows().times(-1),
                                        force,
                                        moment);
                        double angle =
                                point.gives().stream()
                                        .filter(give -> give.mount().equals(mount.name()))
                                        .mapToDouble(
                                                give -> Math.abs(give.twistRad()) + give.slopeRad())
                                        .sum();
                        FanAtWork work = point.ledger().fans().get(k);
                        assertThat(angle).isGreaterThan(1e-9);
                        double second = 2 * angle * angle + 1e-9;
                        assertThat(work.actual().minus(given[1]).length()).isLessThan(second);
                        assertThat(work.arm().plus(centre).minus(given[0]).length())
                                .isLessThan(second);
                    }
                });
    }

    /** Twist T e l/(G J) and slope F l²/(2 E I), of one fan ahead of a beam to the right. */
    @Test
    void oneFanTwistsByItsLeverAndBendsByItsThrust() {
        RigSketch sketch = new RigSketch();
        FanType type = RigSketch.fanType("F");
        Mount boom = onBeam("boom", new Vec3(0, 0.4, 0), new Vec3(0, 1, 0), 0.4, 800, 600);
        Vec3 ahead = new Vec3(0.1, 0, 0);
        Vec3 down = new Vec3(0, 0, 1);
        sketch.fans.add(on(boom, RigSketch.fan("f", 1, type), ahead, down, Fan.Spin.LEFT_HAND));
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C"), 14, 1));
        sketch.wire("p.1", "f.1", RigSketch.run("a", 8, 0.5));
        HoverPoint point = liftOff(sketch.rig());
        FanAtWork fan = point.ledger().fans().getFirst();
        double thrustN = fan.thrustN();
        // Upward thrust ahead of the beam lifts the front: right-hand about the beam to the right.
        assertThat(point.gives().getFirst().twistRad())
                .isCloseTo(thrustN * 0.1 * 0.4 / 600, within(1e-12 * thrustN));
        // Its tip slopes up and out; swirl bends it forward or back besides, at right angles.
        double swirl = fan.swirlNm() * 0.4 / 800;
        assertThat(point.gives().getFirst().slopeRad())
                .isCloseTo(
                        Math.hypot(thrustN * 0.4 * 0.4 / (2 * 800), swirl), within(1e-9 * thrustN));
        // Thrust that leans inboard (left) and back is what twist and slope leave.
        assertThat(fan.actual().y()).isLessThan(-0.5 * thrustN * 0.4 * 0.4 / (2 * 800));
        assertThat(fan.actual().x()).isLessThan(-0.5 * thrustN * 0.1 * 0.4 / 600);
    }

    @Test
    void theSharesSumToTheResidualWhereMountsGive() {
        Seeded.check(
                200,
                random -> {
                    HoverPoint point = liftOff(drawn(random, random.nextDouble(500, 5000)));
                    MomentLedger ledger = point.ledger();
                    Vec3 sum = Vec3.ZERO;
                    double whole = 0;
                    for (FanAtWork fan : ledger.fans()) {
                        for (TurningCause cause : TurningCause.values()) {
                            sum = sum.plus(fan.share(cause));
                            whole += fan.share(cause).length();
                        }
                    }
                    assertThat(sum.minus(ledger.moment()).length()).isLessThan(1e-12 * whole);
                    assertThat(ledger.closure()).isLessThan(1e-12);
                    assertThat(ledger.of(TurningCause.MOUNT_TWIST).length()).isGreaterThan(1e-6);
                    assertThat(ledger.of(TurningCause.FRAME_SLOPE).length()).isGreaterThan(1e-6);
                    if (point.lifts()) {
                        double weightN = point.mass().weightN();
                        assertThat(-ledger.force().z()).isCloseTo(weightN, within(1e-7 * weightN));
                    }
                });
    }

    /** A seat that leans is a cant told elsewhere: the same rig, another cause. */
    @Test
    void aTurnedSeatIsACauseOfItsOwn() {
        Seeded.check(
                50,
                random -> {
                    RigSketch sketch = RigSketch.of(drawn(random, 1e9));
                    Fan fan = sketch.fans.getFirst();
                    Fan.Lean lean =
                            new Fan.Lean(
                                    RigPath.of("fans", "0", "seat"),
                                    si(random.nextDouble(-0.1, 0.1)),
                                    unit(fan.blows().cross(around(random, 1))));
                    sketch.fans.set(0, leaning(fan, List.of(lean), List.of()));
                    MomentLedger canted = liftOff(sketch.rig()).ledger();
                    sketch.fans.set(0, leaning(fan, List.of(), List.of(lean)));
                    MomentLedger seated = liftOff(sketch.rig()).ledger();
                    assertThat(seated.moment().minus(canted.moment()).length()).isLessThan(1e-6);
                    Vec3 moved = canted.of(TurningCause.CANT).minus(seated.of(TurningCause.CANT));
                    assertThat(seated.of(TurningCause.SEAT_ANGLE).minus(moved).length())
                            .isLessThan(1e-6);
                    assertThat(moved.length()).isGreaterThan(1e-9);
                });
    }

    private static Fan leaning(Fan fan, List<Fan.Lean> leans, List<Fan.Lean> seat) {
        return Copies.of(fan).leans(leans).seat(seat).made();
    }
}
