package liftwright.flight.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** A jet of another that blows at a body, against integrals of the Gaussian jet in closed form. */
class JetPushTest {

    private static final double EXIT_M2 = 0.0128;
    private static final double DENSITY = 1.225;
    private static final double HEIGHT_M = 2;

    private static double between(RandomGenerator random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static BodyState still() {
        BodyState state = new BodyState();
        state.rest(0, 0, HEIGHT_M, 0);
        return state;
    }

    /** A box without fans: sides as told, C_d of one. */
    private static Airframe box(double deep, double wide, double high) {
        Airframe.Drag drag =
                new Airframe.Drag(new Vec3(wide * high, deep * high, deep * wide), Vec3.ZERO);
        return Bodies.with(Bodies.rigid(10, 1, 1, 1), List.of(), List.of(), List.of(), drag);
    }

    /** Straight down from a height above the origin of the body. */
    private static JetAir down(Blown blown, double upM, double x, double y, double mps) {
        JetAir jets = new JetAir();
        double[] at = {x, y, -HEIGHT_M - upM};
        blown.meet(jets, still(), at, new double[] {0, 0, 1}, EXIT_M2, mps);
        return jets;
    }

    private static double simpson(DoubleUnaryOperator f, double from, double to) {
        int n = 400;
        double sum = 0;
        for (int k = 0; k <= n; k++) {
            double weight = k == 0 || k == n ? 1 : k % 2 == 1 ? 4 : 2;
            sum += weight * f.applyAsDouble(from + (to - from) * k / n);
        }
        return sum * (to - from) / n / 3;
    }

    /**
     * ½ ρ ∫ u² dA over the plan, u² = V² (6.1 D/x)² 2^(−2 r²/b²): a product of two integrals. Half
     * of the jet's momentum where all of it meets the body, with a C_d of one.
     */
    @Test
    void aStillBoxIsPushedByHalfTheMomentumThatMeetsIt() {
        Seeded.check(
                60,
                random -> {
                    double deep = between(random, 0.6, 1.2);
                    double wide = between(random, 0.6, 1.2);
                    double high = between(random, 0.01, 0.05);
                    double up = between(random, 1.4, 6);
                    double x = between(random, -0.5, 0.5);
                    double y = between(random, -0.5, 0.5);
                    double mps = between(random, 20, 80);
                    Blown blown = new Blown(new FrameNumbers(box(deep, wide, high)));
                    blown.take(down(blown, up, x, y, mps), still(), new double[3]);
                    assertThat(blown.on).isTrue();
                    double b = 0.096 * up;
                    double axis = 6.1 * Math.sqrt(4 * EXIT_M2 / Math.PI) / up;
                    DoubleUnaryOperator bell = r -> Math.pow(2, -2 * r * r / b / b);
                    double one = simpson(bell, -deep / 2 - x, deep / 2 - x);
                    double two = simpson(bell, -wide / 2 - y, wide / 2 - y);
                    double press = DENSITY / 2 * mps * mps * axis * axis;
                    double push = press * one * two;
                    double whole = DENSITY * mps * mps * EXIT_M2;
                    double off = 0.01 * whole;
                    assertThat(blown.wrench[2]).isCloseTo(push, within(off));
                    assertThat(push).isLessThan(0.5 * whole);
                    assertThat(blown.wrench[0]).isCloseTo(0, within(1e-9));
                    assertThat(blown.wrench[1]).isCloseTo(0, within(1e-9));
                    // Moments about the centre: ∫ (x + s) … ds.
                    double first =
                            simpson(
                                    s -> (x + s) * bell.applyAsDouble(s),
                                    -deep / 2 - x,
                                    deep / 2 - x);
                    double second =
                            simpson(
                                    s -> (y + s) * bell.applyAsDouble(s),
                                    -wide / 2 - y,
                                    wide / 2 - y);
                    assertThat(blown.wrench[4]).isCloseTo(-press * first * two, within(off));
                    assertThat(blown.wrench[3]).isCloseTo(press * one * second, within(off));
                });
    }

    private static Airframe oneFan(RandomGenerator random) {
        Vec3 axis = Bodies.vector(random, 0.4).plus(new Vec3(0, 0, -1));
        Vec3 unit = axis.times(1 / axis.length());
        Vec3 at = Bodies.vector(random, 0.2);
        Airframe.FanLine fan = new Airframe.FanLine(at, at.plus(unit.times(0.04)), unit);
        return Bodies.with(
                Bodies.rigid(10, 1, 1, 1), List.of(fan), List.of(), List.of(), Airframe.Drag.NONE);
    }

    /** A fan turns what comes across it into its own jet: ṁ times that speed, at its intake. */
    @Test
    void aFanMeetsTheAirOfTheJetAndTakesItsMomentumAcross() {
        Seeded.check(
                60,
                random -> {
                    Airframe body = oneFan(random);
                    Airframe.FanLine fan = body.fans().getFirst();
                    FrameNumbers numbers = new FrameNumbers(body);
                    Blown blown = new Blown(numbers);
                    double up = between(random, 1.5, 5);
                    double mps = between(random, 20, 80);
                    double x = between(random, -0.2, 0.2);
                    blown.take(down(blown, up, x, 0, mps), still(), new double[3]);
                    Vec3 intake = fan.intake();
                    double along = up + intake.z();
                    double off = Math.hypot(intake.x() - x, intake.y());
                    double core = 6.1 * Math.sqrt(4 * EXIT_M2 / Math.PI);
                    double speed = mps * core / along * Math.pow(0.5, sq(off / (0.096 * along)));
                    if (speed / mps < 0.02) {
                        return;
                    }
                    Motion motion = new Motion(body, Air.still());
                    BodyState state = still();
                    motion.begin(state);
                    JetAir jets = new JetAir();
                    motion.meet(
                            jets,
                            state,
                            new double[] {x, 0, -HEIGHT_M - up},
                            new double[] {0, 0, 1},
                            EXIT_M2,
                            mps);
                    motion.blow(jets, state);
                    motion.air(0.001, state);
                    double[] alongMps = new double[1];
                    double[] acrossMps = new double[1];
                    motion.inflow(0.001, state, alongMps, acrossMps);
                    double cos = fan.axis().z();
                    assertThat(alongMps[0]).isCloseTo(-speed * cos, within(1e-9 * mps));
                    assertThat(acrossMps[0])
                            .isCloseTo(speed * Math.sqrt(1 - cos * cos), within(1e-6 * mps));
                    FanLoads loads = new FanLoads(1);
                    loads.steady(0, 0, 0, 0, 0.7);
                    blown.swallow(loads);
                    Vec3 wanted = new Vec3(0, 0, 1).minus(fan.axis().times(cos)).times(0.7 * speed);
                    Vec3 turned = intake.cross(wanted);
                    assertThat(blown.wrench)
                            .containsExactly(
                                    new double[] {
                                        wanted.x(),
                                        wanted.y(),
                                        wanted.z(),
                                        turned.x(),
                                        turned.y(),
                                        turned.z()
                                    },
                                    within(1e-8 * mps));
                });
    }

    private static double sq(double x) {
        return x * x;
    }

    /** A jet from the left does what its mirror image from the right does, mirrored. */
    @Test
    void whatIsMirroredIsPushedMirrored() {
        Seeded.check(
                40,
                random -> {
                    Airframe body = box(0.8, 0.7, between(random, 0.1, 0.4));
                    Blown blown = new Blown(new FrameNumbers(body));
                    Vec3 from = new Vec3(between(random, -1, 1), between(random, 0.2, 1), -1.6);
                    Vec3 way = from.plus(Bodies.vector(random, 0.2)).times(-1);
                    Vec3 unit = way.times(1 / way.length());
                    double[] push = pushed(blown, from, unit);
                    double[] mirrored =
                            pushed(
                                    blown,
                                    new Vec3(from.x(), -from.y(), from.z()),
                                    new Vec3(unit.x(), -unit.y(), unit.z()));
                    assertThat(Math.abs(push[2])).isGreaterThan(0.1);
                    double[] signs = {1, -1, 1, -1, 1, -1};
                    for (int k = 0; k < 6; k++) {
                        assertThat(mirrored[k]).isCloseTo(signs[k] * push[k], within(1e-9));
                    }
                });
    }

    private static double[] pushed(Blown blown, Vec3 from, Vec3 way) {
        JetAir jets = new JetAir();
        double[] at = {from.x(), from.y(), from.z() - HEIGHT_M};
        double[] along = {way.x(), way.y(), way.z()};
        blown.meet(jets, still(), at, along, EXIT_M2, 50);
        blown.take(jets, still(), new double[3]);
        return blown.wrench.clone();
    }

    /** Sixteen beside each other are, far off, one of four times the diameter. */
    @Test
    void manyThatMergeAreOneGreatOne() {
        JetAir jets = new JetAir();
        double[] ball = {0, 0, 20};
        for (int k = 0; k < 16; k++) {
            double[] at = {0.15 * (k % 4 - 1.5), 0.15 * (Math.floorDiv(k, 4) - 1.5), 0};
            jets.add(at, new double[] {0, 0, 1}, EXIT_M2, 50, ball, 1);
        }
        double[] out = new double[3];
        jets.at(0, 0, 20, out);
        double core = 6.1 * Math.sqrt(4 * 16 * EXIT_M2 / Math.PI);
        assertThat(out[2]).isCloseTo(50 * core / 20, within(0.3));
        assertThat(out[0]).isCloseTo(0, within(1e-12));
    }

    @Test
    void aJetThatPassesOrPointsAwayIsNoJet() {
        Blown blown = new Blown(new FrameNumbers(box(0.8, 0.7, 0.2)));
        blown.take(down(blown, 2, 3, 0, 60), still(), new double[3]);
        assertThat(blown.on).isFalse();
        assertThat(blown.forceN()).isZero();
        blown.take(down(blown, -2, 0, 0, 60), still(), new double[3]);
        assertThat(blown.on).isFalse();
    }
}
