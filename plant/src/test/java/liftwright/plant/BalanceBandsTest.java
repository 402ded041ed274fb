package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.OtherPart;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Bands of the moments against a sampler of the test's own: other generator, no network. On equal
 * feeds of one pack all rotors turn alike, and unit scatter acts on thrust alone, so that thrusts
 * are to each other as scatters and sum to the weight.
 */
class BalanceBandsTest {

    private static final int FANS = 5;
    private static final int DRAWS = 4096;
    private static final int REFEREE_DRAWS = 1_000_000;

    private static Quantity each(double value, double half) {
        return new Quantity(
                value,
                Dimension.NONE,
                new Tolerance(half, half, Tolerance.Form.NORMAL, Tolerance.Scope.EACH));
    }

    private static FanType type(double swirl, double swirlHalf, double scatterHalf) {
        FanType plain =
                RigSketch.fanType(
                        "F", FanType.Data.MEASURED, Optional.empty(), each(1, scatterHalf));
        return new FanType(
                plain.name(),
                plain.ducted(),
                plain.tip(),
                plain.hub(),
                RigSketch.si(0.0128),
                RigSketch.si(0.74),
                plain.data(),
                new FanType.Performance.AtSpeed(
                        RigSketch.si(2722.7), RigSketch.si(92), RigSketch.si(4600)),
                plain.motor(),
                plain.rotor(),
                plain.controller(),
                plain.intake(),
                each(swirl, swirlHalf),
                plain.scatter(),
                plain.installation(),
                plain.lot(),
                plain.extremes());
    }

    @Test
    void theBandsOfTheMomentsAreThoseOfAnotherSampler() {
        Seeded.check(3, BalanceBandsTest::judge);
    }

    private static void judge(RandomGenerator random) {
        double swirl = random.nextDouble(-0.1, 0.3);
        double swirlHalf = random.nextDouble(0.02, 0.2);
        double scatterHalf = random.nextDouble(0.01, 0.06);
        double cantHalf = random.nextDouble(0.002, 0.03);
        double ballast = random.nextDouble(1, 3);
        double ballastHalf = 0.2 * ballast;
        FanType type = type(swirl, swirlHalf, scatterHalf);
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C"), 14, 1));
        double[] cant = new double[FANS];
        Vec3[] place = new Vec3[FANS];
        int[] spin = new int[FANS];
        for (int k = 0; k < FANS; k++) {
            place[k] =
                    new Vec3(
                            random.nextDouble(-0.6, 0.6),
                            random.nextDouble(-0.6, 0.6),
                            random.nextDouble(-0.2, 0.2));
            cant[k] = random.nextDouble(-0.1, 0.1);
            spin[k] = random.nextBoolean() ? 1 : -1;
            sketch.fans.add(fan(k, type, place[k], each(cant[k], cantHalf), spin[k]));
            sketch.wire("p.1", "f." + k, RigSketch.run("run " + k, 8, 0.5));
        }
        Vec3 ballastAt = new Vec3(0.3, -0.4, 0.1);
        sketch.others.add(
                new OtherPart(
                        new PartId("ballast"),
                        RigPath.of("other parts", "0"),
                        new Quantity(
                                ballast,
                                Dimension.NONE,
                                new Tolerance(
                                        ballastHalf,
                                        ballastHalf,
                                        Tolerance.Form.NORMAL,
                                        Tolerance.Scope.SHARED)),
                        RigSketch.FRAME,
                        ballastAt,
                        Optional.empty()));
        double[][] ours = ours(sketch.rig());

        // The rest of the rig is exact: its mass and first moment from the points of the referee.
        PointBodies bodies = new PointBodies(sketch.rig());
        double[] whole = bodies.centre();
        double wholeKg = bodies.massKg();
        double[] at = {ballastAt.x(), ballastAt.y(), ballastAt.z()};
        RandomGenerator own =
                RandomGeneratorFactory.of("Xoshiro256PlusPlus").create(random.nextLong());
        double torquePerThrust = 4600.0 / 2722.7 / 92 / 0.9; // over the installed thrust
        double[][] theirs = new double[3][REFEREE_DRAWS];
        for (int draw = 0; draw < REFEREE_DRAWS; draw++) {
            double more = ballastHalf / 2 * own.nextGaussian();
            double kg = wholeKg + more;
            double[] centre = new double[3];
            for (int i = 0; i < 3; i++) {
                centre[i] = (wholeKg * whole[i] + more * at[i]) / kg;
            }
            double[] scatter = new double[FANS];
            double[][] push = new double[FANS][];
            double up = 0;
            for (int k = 0; k < FANS; k++) {
                scatter[k] = 1 + scatterHalf / 2 * own.nextGaussian();
                double tangent = Math.tan(cant[k] + cantHalf / 2 * own.nextGaussian());
                double length = Math.hypot(1, tangent);
                push[k] = new double[] {0, -tangent / length, -1 / length};
                up += scatter[k] / length;
            }
            for (int k = 0; k < FANS; k++) {
                double perScatter = kg * 9.80665 / up;
                double[] arm = {
                    place[k].x() - centre[0], place[k].y() - centre[1], place[k].z() - centre[2]
                };
                double[] turn = PointBodies.cross(arm, push[k]);
                double share = swirl + swirlHalf / 2 * own.nextGaussian();
                double swirlNm = -spin[k] * share * torquePerThrust * perScatter;
                for (int i = 0; i < 3; i++) {
                    theirs[i][draw] += perScatter * scatter[k] * turn[i] + swirlNm * push[k][i];
                }
            }
        }
        for (int i = 0; i < 3; i++) {
            Arrays.sort(ours[i]);
            Arrays.sort(theirs[i]);
            double width = end(theirs[i], 0.975) - end(theirs[i], 0.025);
            // Standard error of such an end of 4,096 normal draws is 0.01 of the band's width.
            assertThat(width).isGreaterThan(0);
            for (double share : new double[] {0.025, 0.5, 0.975}) {
                assertThat(end(ours[i], share))
                        .as("axis %d at %s", i, share)
                        .isCloseTo(end(theirs[i], share), within(0.05 * width));
            }
        }
    }

    private static double[][] ours(Rig rig) {
        Balancing balancing = Balancing.of(rig);
        Balancing.Worker worker = balancing.worker();
        double[] p = new double[balancing.parameters().size()];
        double[][] moments = new double[3][DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            balancing.parameters().draw(3, draw, p);
            HoverPoint point = worker.liftOff(p);
            assertThat(point.lifts()).isTrue();
            Vec3 moment = point.ledger().moment();
            moments[0][draw] = moment.x();
            moments[1][draw] = moment.y();
            moments[2][draw] = moment.z();
        }
        return moments;
    }

    private static double end(double[] sorted, double share) {
        return sorted[(int) (share * (sorted.length - 1))];
    }

    private static Fan fan(int number, FanType type, Vec3 at, Quantity cant, int spin) {
        Fan plain = RigSketch.fan("f", number, type);
        RigPath lean = RigPath.of("fans", "f", Integer.toString(number), "cant");
        return Copies.of(plain)
                .type(type)
                .at(at)
                .leans(List.of(new Fan.Lean(lean, cant, new Vec3(0, 1, 0))))
                .spin(spin > 0 ? Fan.Spin.RIGHT_HAND : Fan.Spin.LEFT_HAND)
                .made();
    }
}
