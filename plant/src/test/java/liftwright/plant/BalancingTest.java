package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.random.RandomGenerator;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.balance.MomentLedger;
import liftwright.plant.balance.TurningCause;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What turns a rig at lift-off, against a referee of points, and in mirrors. */
class BalancingTest {

    private static HoverPoint liftOff(Rig rig) {
        Balancing balancing = Balancing.of(rig);
        return balancing.worker().liftOff(balancing.parameters().nominal());
    }

    /** Random rigs whose fans blow and spin any way. */
    private static Rig drawn(RandomGenerator random) {
        RigSketch sketch = RigSketch.of(RandomRigs.exact(random));
        sketch.fans.replaceAll(
                fan -> {
                    Vec3 blows =
                            new Vec3(random.nextDouble(-0.3, 0.3), random.nextDouble(-0.3, 0.3), 1);
                    return with(
                            fan,
                            blows.times(1 / blows.length()),
                            random.nextBoolean() ? Fan.Spin.LEFT_HAND : Fan.Spin.RIGHT_HAND);
                });
        return sketch.rig();
    }

    private static Fan with(Fan fan, Vec3 blows, Fan.Spin spin) {
        return Copies.of(fan).blows(blows).spin(spin).made();
    }

    private static double[] array(Vec3 v) {
        return new double[] {v.x(), v.y(), v.z()};
    }

    /**
     * Residual = Σ (r − c) × u f − σ s_r Q f, with places, directions and centre of the referee,
     * and Q = u k_Q over the installed k_T.
     */
    @Test
    void theResidualIsThatOfTheReferee() {
        Seeded.check(
                300,
                random -> {
                    Rig rig = drawn(random);
                    Plant plant = Plant.assemble(rig);
                    double[] p = plant.parameters().nominal();
                    HoverPoint point = liftOff(rig);
                    PointBodies points = new PointBodies(rig);
                    double[] centre = points.centre();
                    double[] moment = new double[3];
                    double upN = 0;
                    double whole = 1;
                    for (int k = 0; k < rig.fans().size(); k++) {
                        Fan fan = rig.fans().get(k);
                        FanAtWork work = point.ledger().fans().get(k);
                        double u = work.thrustN();
                        double[] place = points.place(fan.mount(), fan.at());
                        double[] push = points.thrust(fan);
                        double[] arm = {
                            place[0] - centre[0], place[1] - centre[1], place[2] - centre[2]
                        };
                        double torque = u * torquePerThrust(fan) / installed(plant, p, k);
                        double swirl =
                                (fan.spin() == Fan.Spin.RIGHT_HAND ? -1 : 1)
                                        * fan.type().swirl().si()
                                        * torque;
                        double[] turn = PointBodies.cross(arm, push);
                        for (int i = 0; i < 3; i++) {
                            moment[i] += u * turn[i] + swirl * push[i];
                        }
                        upN -= work.force().z();
                        double[] struck = array(work.share(TurningCause.JETS));
                        for (int i = 0; i < 3; i++) {
                            moment[i] += struck[i]; // judged in JetStrikeTest
                        }
                        whole += u;
                    }
                    assertThat(array(point.ledger().moment()))
                            .containsExactly(moment, within(1e-9 * whole));
                    if (point.lifts()) {
                        assertThat(upN)
                                .isCloseTo(
                                        points.massKg() * 9.80665,
                                        within(1e-7 * points.massKg() * 9.80665));
                    }
                });
    }

    private static double torquePerThrust(Fan fan) {
        return switch (fan.type().performance()) {
            case FanType.Performance.AtSpeed at ->
                    at.shaftPower().si() / at.speed().si() / at.thrust().si();
            case FanType.Performance.Coefficients of -> of.torque().si() / of.thrust().si();
            case FanType.Performance.Measured _ -> throw new IllegalStateException("no table here");
        };
    }

    private static double installed(Plant plant, double[] p, int fan) {
        Fan one = plant.rig().fans().get(fan);
        double seller = one.type().data() == FanType.Data.SELLER ? 0.90 : 1;
        return one.type().scatter().si()
                * one.installation().value().si()
                * seller
                * Math.pow(1 + plant.intakeLoss(p, fan), -2.0 / 3);
    }

    @Test
    void theSharesOfFansAndCausesSumToTheResidual() {
        Seeded.check(
                300,
                random -> {
                    MomentLedger ledger = liftOff(drawn(random)).ledger();
                    double[] sum = new double[3];
                    double whole = 0;
                    for (TurningCause cause : TurningCause.values()) {
                        double[] of = array(ledger.of(cause));
                        for (int i = 0; i < 3; i++) {
                            sum[i] += of[i];
                        }
                    }
                    for (FanAtWork fan : ledger.fans()) {
                        for (TurningCause cause : TurningCause.values()) {
                            whole += fan.share(cause).length();
                        }
                    }
                    assertThat(sum)
                            .containsExactly(array(ledger.moment()), within(1e-12 * (1 + whole)));
                    assertThat(ledger.closure()).isLessThan(1e-12);
                });
    }

    /** Seen in a mirror the rig rolls and turns the other way, and pitches alike. */
    @Test
    void theMirrorImageTurnsTheOtherWay() {
        Seeded.check(
                200,
                random -> {
                    Rig rig = drawn(random);
                    Rig mirror = MirroredRig.of(rig);
                    MomentLedger one = liftOff(rig).ledger();
                    MomentLedger other = liftOff(mirror).ledger();
                    double whole = 1e-7;
                    for (FanAtWork fan : one.fans()) {
                        whole += 1e-7 * Math.abs(fan.thrustN());
                    }
                    assertThat(other.moment().x()).isCloseTo(-one.moment().x(), within(whole));
                    assertThat(other.moment().y()).isCloseTo(one.moment().y(), within(whole));
                    assertThat(other.moment().z()).isCloseTo(-one.moment().z(), within(whole));
                    assertThat(other.force().y()).isCloseTo(-one.force().y(), within(whole));
                });
    }

    /** The order in which fans are listed is no cause. */
    @Test
    void theOrderOfFansDoesNotMatter() {
        Seeded.check(
                100,
                random -> {
                    Rig rig = drawn(random);
                    RigSketch sketch = RigSketch.of(rig);
                    List<Fan> shuffled = new ArrayList<>(sketch.fans);
                    Collections.shuffle(shuffled, new Random(random.nextLong()));
                    sketch.fans.clear();
                    sketch.fans.addAll(shuffled);
                    MomentLedger one = liftOff(rig).ledger();
                    MomentLedger other = liftOff(sketch.rig()).ledger();
                    for (TurningCause cause : TurningCause.values()) {
                        assertThat(array(other.of(cause)))
                                .containsExactly(array(one.of(cause)), within(1e-5));
                    }
                });
    }

    private static RigSketch pair(Fan.Spin left, Fan.Spin right) {
        RigSketch sketch = new RigSketch();
        FanType type = RigSketch.fanType("F");
        sketch.fans.add(at(RigSketch.fan("left", 1, type), new Vec3(0, -0.5, 0), left));
        sketch.fans.add(at(RigSketch.fan("right", 1, type), new Vec3(0, 0.5, 0), right));
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C"), 14, 1));
        sketch.wire("p.1", "left.1", RigSketch.run("a", 8, 0.5));
        sketch.wire("p.1", "right.1", RigSketch.run("b", 8, 0.5));
        return sketch;
    }

    private static Fan at(Fan fan, Vec3 place, Fan.Spin spin) {
        return Copies.of(fan).at(place).spin(spin).made();
    }

    @Test
    void twoFansThatTurnAlikeTurnTheRigAgainstTheirSpin() {
        // Right-hand about an upward thrust is to the left seen from above: the rig turns right.
        HoverPoint right = liftOff(pair(Fan.Spin.RIGHT_HAND, Fan.Spin.RIGHT_HAND).rig());
        assertThat(right.lifts()).isTrue();
        assertThat(right.ledger().of(TurningCause.SWIRL).z()).isGreaterThan(0.05);
        assertThat(right.ledger().acceleration().z()).isGreaterThan(0);
        HoverPoint apart = liftOff(pair(Fan.Spin.LEFT_HAND, Fan.Spin.RIGHT_HAND).rig());
        assertThat(apart.ledger().moment().z()).isCloseTo(0, within(1e-9));
    }

    @Test
    void aWeightOnTheRightRollsTheRightSideDown() {
        RigSketch sketch = pair(Fan.Spin.LEFT_HAND, Fan.Spin.RIGHT_HAND);
        sketch.others.add(
                new OtherPart(
                        new PartId("ballast"),
                        RigPath.of("other parts", "0"),
                        Quantity.exact(1, Dimension.NONE),
                        RigSketch.FRAME,
                        new Vec3(0.2, 0.4, 0),
                        Optional.empty()));
        HoverPoint point = liftOff(sketch.rig());
        double weightN = point.mass().massKg() * 9.80665;
        // Equal thrusts through the middle: the weight's lever about the middle is all.
        assertThat(point.ledger().of(TurningCause.PLACE).x())
                .isCloseTo(9.80665 * 0.4, within(1e-6 * weightN));
        assertThat(point.ledger().of(TurningCause.PLACE).y())
                .isCloseTo(-9.80665 * 0.2, within(0.2 * 0.1 * weightN));
        assertThat(point.ledger().acceleration().x()).isGreaterThan(0);
    }

    /** Whether a fan that works is on an arm. */
    private static boolean armsPush(Rig rig, MomentLedger ledger) {
        for (int k = 0; k < rig.fans().size(); k++) {
            Mount.Carrier on = rig.fans().get(k).mount().on();
            if (on != Mount.Carrier.FRAME
                    && on != Mount.Carrier.TRUNK
                    && ledger.fans().get(k).thrustN() > 1) {
                return true;
            }
        }
        return false;
    }

    /** Held arms wander in balance, and nowhere in lift. */
    @Test
    void armsWanderOnlyInBalance() {
        int wandered = 0;
        for (int seed = 0; seed < 40; seed++) {
            Rig rig = drawn(new Random(seed));
            Plant plant = Plant.assemble(rig);
            double[] p = plant.parameters().nominal();
            double[] turn = {0.1, 0.05, 0, 0.1, -0.1, 0, 0, 0};
            Balancing balancing = Balancing.of(rig);
            MomentLedger ledger = balancing.worker().liftOff(p).ledger();
            Vec3 still = ledger.moment();
            Vec3 turned = balancing.worker().liftOff(p, turn).ledger().moment();
            assertThat(p).isEqualTo(plant.parameters().nominal());
            if (armsPush(rig, ledger)) {
                wandered++;
                assertThat(turned.minus(still).length()).isGreaterThan(1e-6);
            }
        }
        assertThat(wandered).isGreaterThan(5);
    }
}
