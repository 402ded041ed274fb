package liftwright.plant.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.plant.hold.Footprint.Edge;
import liftwright.plant.hold.Hold.Way;
import liftwright.plant.hold.StandHold.Bolts;
import liftwright.plant.hold.StandHold.Floor;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

/**
 * Stands under their worst subset of fans, against every subset tried one by one, and against a
 * library's simplex that looks for forces of the feet and bolts which hold the stand at all.
 */
class StandHoldTest {

    private static Hold way(List<Hold> ways, Way way) {
        return ways.stream().filter(hold -> hold.way() == way).findFirst().orElseThrow();
    }

    private static Push weight(double newton) {
        return Push.weight(newton, Vec3.ZERO);
    }

    private static Floor floor(Footprint feet, double weightN, double friction) {
        return new Floor(feet, weight(weightN), friction, Optional.empty());
    }

    /** Moments: 500 N on a base of 0.6 m, pushed at 1.0 m (check value S33). */
    @Test
    void thePrintedStandTipsAtItsPush() {
        Push push = new Push(new Vec3(150, 0, 0), new Vec3(0, 0, -1).cross(new Vec3(150, 0, 0)));
        Footprint feet = new Footprint(0.6, 0.6);
        Hold tips = way(StandHold.of(List.of(push), floor(feet, 500, 1)), Way.TIPS);
        assertThat(tips.times()).isCloseTo(1, within(1e-12));
        assertThat(tips.over()).contains(Edge.FRONT);
        assertThat(StandHold.of(List.of(push), floor(feet, 500, 0.2999)).getFirst().way())
                .isEqualTo(Way.SLIDES);
        assertThat(StandHold.of(List.of(push), floor(feet, 500, 0.3001)).getFirst().way())
                .isEqualTo(Way.TIPS);
    }

    @Test
    void slidingIsThatOfTheWorstOfAllSubsets() {
        Seeded.check(
                150,
                random -> {
                    List<Push> fans = RandomPushes.pushes(random, 12);
                    double friction = random.nextDouble(0.02, 1);
                    Floor floor = floor(RandomPushes.feet(random), 800, friction);
                    Hold slides = way(StandHold.of(fans, floor), Way.SLIDES);
                    double least = Double.POSITIVE_INFINITY;
                    for (int bits = 1; bits < 1 << fans.size(); bits++) {
                        Push sum = RandomPushes.sum(fans, bits);
                        double load =
                                Math.hypot(sum.force().x(), sum.force().y())
                                        - friction * sum.force().z();
                        if (load > 0) {
                            least = Math.min(least, friction * 800 / load);
                        }
                    }
                    assertSame(slides.times(), least);
                    Push named = RandomPushes.sum(fans, bits(slides.worst()));
                    assertThat(
                                    Math.hypot(named.force().x(), named.force().y())
                                            - friction * named.force().z())
                            .isCloseTo(slides.worst().load(), within(1e-9));
                });
    }

    private static int bits(Subset subset) {
        int bits = 0;
        for (int fan : subset.fans()) {
            bits |= 1 << fan;
        }
        return bits;
    }

    private static void assertSame(double times, double least) {
        if (Double.isInfinite(least)) {
            assertThat(times).isInfinite();
        } else {
            assertThat(times).isCloseTo(least, within(1e-9 * least));
        }
    }

    /** Whether four feet that only press can hold it at all, and up to how many times the push. */
    @Test
    void tippingIsWhereNoForcesOfTheFeetHoldAnyMore() {
        Seeded.check(
                40,
                random -> {
                    List<Push> fans = RandomPushes.pushes(random, 6);
                    Footprint feet = RandomPushes.feet(random);
                    Weight weight = Weight.any(random, feet, random.nextDouble(100, 3000));
                    Floor floor = new Floor(feet, weight.push(), 0.5, Optional.empty());
                    double ours = way(StandHold.of(fans, floor), Way.TIPS).times();
                    double least = Double.POSITIVE_INFINITY;
                    for (int bits = 1; bits < 1 << fans.size(); bits++) {
                        least =
                                Math.min(
                                        least,
                                        held(
                                                RandomPushes.sum(fans, bits),
                                                feet,
                                                weight,
                                                List.of(),
                                                0));
                    }
                    if (Double.isInfinite(least) || least > 1e6) {
                        assertThat(ours).isGreaterThan(1e5);
                    } else {
                        assertThat(ours).isCloseTo(least, within(1e-6 * least));
                    }
                });
    }

    /** What is claimed of bolts is never more than some forces in them can hold. */
    @Test
    void boltsAreNeverClaimedToHoldWhatNoForcesInThemCan() {
        Seeded.check(
                40,
                random -> {
                    List<Push> fans = RandomPushes.pushes(random, 6);
                    Footprint feet = RandomPushes.feet(random);
                    Footprint pattern =
                            new Footprint(
                                    feet.apartM() * random.nextDouble(0.4, 1),
                                    feet.deepM() * random.nextDouble(0.4, 1));
                    Bolts bolts =
                            new Bolts(random.nextInt(1, 9), pattern, random.nextDouble(100, 3000));
                    Weight weight = Weight.any(random, feet, random.nextDouble(100, 1000));
                    double ours =
                            way(
                                            StandHold.of(
                                                    fans,
                                                    new Floor(
                                                            feet,
                                                            weight.push(),
                                                            0.4,
                                                            Optional.of(bolts))),
                                            Way.BOLT_PULLED)
                                    .times();
                    for (int bits = 1; bits < 1 << fans.size(); bits++) {
                        double held =
                                held(
                                        RandomPushes.sum(fans, bits),
                                        feet,
                                        weight,
                                        pattern.spots(bolts.count()),
                                        bolts.strengthN());
                        assertThat(ours).isLessThanOrEqualTo(held * (1 + 1e-6));
                    }
                });
    }

    /** A weight off the middle. */
    private record Weight(double newton, double forwardM, double rightM) {

        static Weight any(RandomGenerator random, Footprint feet, double newton) {
            return new Weight(
                    newton,
                    random.nextDouble(-0.4, 0.4) * feet.deepM(),
                    random.nextDouble(-0.4, 0.4) * feet.apartM());
        }

        Push push() {
            return Push.weight(newton, new Vec3(forwardM, rightM, -0.7));
        }
    }

    /**
     * Greatest factor on a push that feet which press and bolts which pull can balance: a linear
     * programme in their forces.
     */
    private static double held(
            Push push,
            Footprint feet,
            Weight weight,
            List<Footprint.Spot> bolts,
            double strengthN) {
        double[][] at = new double[4 + bolts.size()][];
        int next = 0;
        for (int front : new int[] {-1, 1}) {
            for (int right : new int[] {-1, 1}) {
                at[next++] = new double[] {front * feet.deepM() / 2, right * feet.apartM() / 2};
            }
        }
        for (Footprint.Spot bolt : bolts) {
            at[next++] = new double[] {bolt.forwardM(), bolt.rightM()};
        }
        int size = at.length + 1;
        double[] up = new double[size];
        double[] roll = new double[size];
        double[] pitch = new double[size];
        List<LinearConstraint> rows = new ArrayList<>();
        for (int k = 0; k < at.length; k++) {
            int sign = k < 4 ? 1 : -1;
            up[k] = sign;
            roll[k] = -sign * at[k][1];
            pitch[k] = sign * at[k][0];
            if (k >= 4) {
                double[] one = new double[size];
                one[k] = 1;
                rows.add(new LinearConstraint(one, Relationship.LEQ, strengthN));
            }
        }
        up[at.length] = -push.force().z();
        roll[at.length] = push.moment().x();
        pitch[at.length] = push.moment().y();
        // A weight at (x, y) turns by (y W, −x W): the others balance it.
        rows.add(new LinearConstraint(up, Relationship.EQ, weight.newton()));
        rows.add(new LinearConstraint(roll, Relationship.EQ, -weight.rightM() * weight.newton()));
        rows.add(new LinearConstraint(pitch, Relationship.EQ, weight.forwardM() * weight.newton()));
        double[] most = new double[size];
        most[at.length] = 1;
        try {
            return new SimplexSolver(1e-9, 10, 1e-12)
                    .optimize(
                            new MaxIter(10_000),
                            new LinearObjectiveFunction(most, 0),
                            new LinearConstraintSet(rows),
                            GoalType.MAXIMIZE,
                            new NonNegativeConstraint(true))
                    .getValue();
        } catch (MathIllegalStateException unbounded) {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** The state with the plate off the floor: springs of one stiffness, solved bolt by bolt. */
    @Test
    void fourBoltsShareAStraightPullAndTheFarOnesATippingOne() {
        Footprint feet = new Footprint(0.8, 1.0);
        Bolts bolts = new Bolts(4, feet, 8000);
        Push lift = push(new Vec3(0, 0, -2000), new Vec3(0, 0, -1));
        Hold pulled = bolted(lift, feet, 400, bolts, Way.BOLT_PULLED);
        // (2000 k − 400)/4 = 8000
        assertThat(pulled.times()).isCloseTo(32400.0 / 2000, within(1e-9));
        Push tip = push(new Vec3(1000, 0, 0), new Vec3(0, 0, -1.5));
        // About the front edge the two at the back pull with 1.0 m: (1500 k − 400 · 0.5)/(2 · 1.0)
        Hold far = bolted(tip, feet, 400, bolts, Way.BOLT_PULLED);
        assertThat(far.times()).isCloseTo((8000 * 2 + 200) / 1500.0, within(1e-9));
        assertThat(far.over()).contains(Edge.FRONT);
        // Half as far apart: 0.75 m and 0.25 m from the edge, 1500 k · 0.75/(2 · 0.625)
        Bolts inside = new Bolts(4, new Footprint(0.4, 0.5), 8000);
        assertThat(bolted(tip, feet, 0, inside, Way.BOLT_PULLED).times())
                .isCloseTo(8000 * 2 * 0.625 / 0.75 / 1500, within(1e-9));
        // A quarter of the push each, at 0.6 of the strength.
        assertThat(bolted(tip, feet, 400, bolts, Way.BOLT_SHEARED).times())
                .isCloseTo(0.6 * 8000 / 250, within(1e-9));
    }

    private static Push push(Vec3 force, Vec3 at) {
        return new Push(force, at.cross(force));
    }

    private static Hold bolted(Push push, Footprint feet, double weightN, Bolts bolts, Way way) {
        return way(
                StandHold.of(
                        List.of(push), new Floor(feet, weight(weightN), 0.4, Optional.of(bolts))),
                way);
    }

    @Test
    void theWorstOfABoltIsThatOfAllSubsets() {
        Seeded.check(
                60,
                random -> {
                    boolean lifting = random.nextBoolean();
                    List<Push> fans =
                            RandomPushes.pushes(random, 10).stream()
                                    .filter(fan -> lifting || fan.upN() <= 0)
                                    .toList();
                    Footprint feet = RandomPushes.feet(random);
                    Floor floor =
                            new Floor(
                                    feet, weight(350), 0.4, Optional.of(new Bolts(4, feet, 2000)));
                    List<Hold> ways = StandHold.of(fans, floor);
                    for (Hold hold : ways) {
                        double least = Double.POSITIVE_INFINITY;
                        for (int bits = 1; bits < 1 << fans.size(); bits++) {
                            List<Push> together = List.of(RandomPushes.sum(fans, bits));
                            least =
                                    Math.min(
                                            least,
                                            way(StandHold.of(together, floor), hold.way()).times());
                        }
                        if (lifting && hold.way() != Way.BOLT_SHEARED) {
                            // When the plate can be off the floor is asked of all fans at once.
                            assertThat(hold.times()).isLessThanOrEqualTo(least * (1 + 1e-9));
                        } else {
                            assertSame(hold.times(), least);
                        }
                    }
                });
    }

    @Test
    void moreBallastNeverGivesSoonerAndMoreFansNeverLater() {
        Seeded.check(
                200,
                random -> {
                    List<Push> fans = RandomPushes.pushes(random, 24);
                    Floor floor = anyFloor(random);
                    double now = StandHold.of(fans, floor).getFirst().times();
                    Floor heavier =
                            new Floor(
                                    floor.feet(),
                                    floor.steady().plus(weight(random.nextDouble(1000))),
                                    floor.friction(),
                                    floor.bolts());
                    assertThat(StandHold.of(fans, heavier).getFirst().times())
                            .isGreaterThanOrEqualTo(now * (1 - 1e-12));
                    List<Push> more = new ArrayList<>(fans);
                    more.addAll(RandomPushes.pushes(random, 4));
                    assertThat(StandHold.of(more, floor).getFirst().times())
                            .isLessThanOrEqualTo(now * (1 + 1e-12));
                });
    }

    private static Floor anyFloor(RandomGenerator random) {
        Footprint feet = RandomPushes.feet(random);
        return new Floor(
                feet,
                Push.weight(
                        random.nextDouble(50, 3000),
                        new Vec3(
                                0.3 * feet.deepM() * random.nextDouble(-1, 1),
                                0.3 * feet.apartM() * random.nextDouble(-1, 1),
                                -1)),
                random.nextDouble(0.02, 1),
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(
                                new Bolts(
                                        random.nextInt(1, 9), feet, random.nextDouble(500, 9000))));
    }

    /** A quarter turn of everything: the feet change places, nothing else does. */
    @Test
    void turningTheWholeStandChangesNothing() {
        Seeded.check(
                100,
                random -> {
                    List<Push> fans = RandomPushes.pushes(random, 24);
                    // Bolts stand along the sides, so a turn keeps their places only where they
                    // are at the corners.
                    Footprint feet = RandomPushes.feet(random);
                    Optional<Bolts> bolts =
                            random.nextBoolean()
                                    ? Optional.empty()
                                    : Optional.of(new Bolts(4, feet, 3000));
                    Floor floor = new Floor(feet, weight(700), 0.4, bolts);
                    Footprint turned = new Footprint(feet.deepM(), feet.apartM());
                    Floor turnedFloor =
                            new Floor(
                                    turned,
                                    weight(700),
                                    0.4,
                                    bolts.map(b -> new Bolts(4, turned, 3000)));
                    List<Push> turnedFans =
                            fans.stream()
                                    .map(
                                            fan ->
                                                    new Push(
                                                            quarter(fan.force()),
                                                            quarter(fan.moment())))
                                    .toList();
                    List<Hold> one = StandHold.of(fans, floor);
                    List<Hold> other = StandHold.of(turnedFans, turnedFloor);
                    assertThat(one).isNotEmpty();
                    for (Way way : Way.values()) {
                        assertThat(times(other, way))
                                .usingElementComparator(
                                        (a, b) ->
                                                a.equals(b) || Math.abs(a - b) <= 1e-9 * a ? 0 : 1)
                                .isEqualTo(times(one, way));
                    }
                });
    }

    private static List<Double> times(List<Hold> ways, Way way) {
        return ways.stream().filter(hold -> hold.way() == way).map(Hold::times).toList();
    }

    private static Vec3 quarter(Vec3 v) {
        return new Vec3(-v.y(), v.x(), v.z());
    }

    @Test
    void aRigIsTurnedAsAWhole() {
        Seeded.check(
                100,
                random -> {
                    Vec3 up = RandomPushes.direction(random);
                    assertThat(Push.turned(new Vec3(0, 0, -1), up).minus(up).length())
                            .isLessThan(1e-9);
                    Vec3 a = RandomPushes.direction(random);
                    Vec3 b = RandomPushes.direction(random);
                    Vec3 turned =
                            Push.turned(a, up)
                                    .cross(Push.turned(b, up))
                                    .minus(Push.turned(a.cross(b), up));
                    assertThat(turned.length()).isLessThan(1e-9);
                });
        Vec3 down = new Vec3(0, 0, 1);
        assertThat(Push.turned(new Vec3(0, 0, -1), down).minus(down).length()).isZero();
    }
}
