package liftwright.plant.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Jets that strike limbs and boxes, against rays drawn at random and marched in small steps. */
class JetStrikeTest {

    private static final double AREA = 0.0128;
    private static final double DIAMETER = Math.sqrt(4 * AREA / Math.PI);
    private static final Vec3 DOWN = new Vec3(0, 0, 1);

    private static Vec3 anywhere(RandomGenerator random, double x) {
        return new Vec3(random.nextDouble(-0.25, 0.25), random.nextDouble(-0.25, 0.25), x);
    }

    private static List<Obstacle> scene(RandomGenerator random) {
        List<Obstacle> scene = new ArrayList<>();
        for (int k = random.nextInt(1, 4); k > 0; k--) {
            double x = random.nextDouble(0.2, 1.8);
            if (random.nextBoolean()) {
                scene.add(
                        new Obstacle.Limb(
                                "limb " + k,
                                anywhere(random, x),
                                anywhere(random, x + random.nextDouble(-0.1, 0.3)),
                                random.nextDouble(0.04, 0.12)));
            } else {
                double turn = random.nextDouble(3);
                scene.add(
                        new Obstacle.Box(
                                "box " + k,
                                anywhere(random, x),
                                List.of(
                                        new Vec3(Math.cos(turn), Math.sin(turn), 0),
                                        new Vec3(-Math.sin(turn), Math.cos(turn), 0),
                                        DOWN),
                                new Vec3(
                                        random.nextDouble(0.05, 0.3),
                                        random.nextDouble(0.05, 0.3),
                                        random.nextDouble(0.02, 0.1))));
            }
        }
        return scene;
    }

    private static boolean inside(Obstacle obstacle, double x, double y, double z) {
        return switch (obstacle) {
            case Obstacle.Limb limb -> {
                double dx = limb.to().x() - limb.from().x();
                double dy = limb.to().y() - limb.from().y();
                double dz = limb.to().z() - limb.from().z();
                double px = x - limb.from().x();
                double py = y - limb.from().y();
                double pz = z - limb.from().z();
                double t = (px * dx + py * dy + pz * dz) / (dx * dx + dy * dy + dz * dz);
                t = Math.max(0, Math.min(1, t));
                double ax = px - t * dx;
                double ay = py - t * dy;
                double az = pz - t * dz;
                yield ax * ax + ay * ay + az * az <= limb.radiusM() * limb.radiusM();
            }
            case Obstacle.Box box -> {
                double px = x - box.middle().x();
                double py = y - box.middle().y();
                double pz = z - box.middle().z();
                Vec3 a = box.axes().get(0);
                Vec3 b = box.axes().get(1);
                Vec3 c = box.axes().get(2);
                yield Math.abs(px * a.x() + py * a.y() + pz * a.z()) <= box.halfM().x()
                        && Math.abs(px * b.x() + py * b.y() + pz * b.z()) <= box.halfM().y()
                        && Math.abs(px * c.x() + py * c.y() + pz * c.z()) <= box.halfM().z();
            }
        };
    }

    /**
     * Share of the momentum, and its lever about the origin, by rays drawn from the momentum's
     * distribution: even over the exit, 6.1 diameters out and beyond a Gaussian with half the speed
     * at 0.096 x, so half squared of speed holds 1 − 2^(−2 η²) within η half-radii; straight
     * between.
     */
    private static double[] byChance(List<Obstacle> scene, RandomGenerator random, int rays) {
        double core = 6.1 * DIAMETER;
        double[] sum = new double[3];
        for (int ray = 0; ray < rays; ray++) {
            double share = random.nextDouble();
            double angle = random.nextDouble(2 * Math.PI);
            double eta = Math.sqrt(-Math.log(1 - share) / (2 * Math.log(2)));
            for (double x = 0; x < 2.5; x += 0.004) {
                double far = 0.096 * eta * Math.max(x, core);
                double exit = DIAMETER / 2 * Math.sqrt(share);
                double r = x >= core ? far : exit + (far - exit) * x / core;
                double px = r * Math.cos(angle);
                double py = r * Math.sin(angle);
                @org.jspecify.annotations.Nullable Obstacle met = null;
                for (Obstacle obstacle : scene) {
                    if (met == null && inside(obstacle, px, py, x)) {
                        met = obstacle;
                    }
                }
                if (met != null) {
                    double push = met instanceof Obstacle.Box ? 1 : 0.6;
                    sum[0] += push / rays;
                    sum[1] += push * py / rays; // (r × z): y, −x
                    sum[2] -= push * px / rays;
                    break;
                }
            }
        }
        return sum;
    }

    /** Whether something reaches into the disk of the exit, where no fan could be. */
    private static boolean blocksTheExit(Obstacle obstacle) {
        for (double r = 0; r <= DIAMETER / 2; r += DIAMETER / 16) {
            for (double angle = 0; angle < 2 * Math.PI; angle += Math.PI / 16) {
                if (inside(obstacle, r * Math.cos(angle), r * Math.sin(angle), 0)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Few rays in a jet miss edges now and then, by chance: all stay near, nearly all are near. */
    @Test
    void whatAJetStrikesIsWhatRaysByChanceStrike() {
        double[] bias = new double[2];
        int[] wide = new int[1];
        int[] cases = new int[1];
        Seeded.check(
                60,
                random -> {
                    List<Obstacle> scene = scene(random);
                    if (scene.stream().anyMatch(JetStrikeTest::blocksTheExit)) {
                        return;
                    }
                    JetStrike strike = JetStrike.of(Vec3.ZERO, DOWN, AREA, scene, Vec3.ZERO);
                    double[] chance = byChance(scene, random, 3000);
                    double miss = strike.share() - chance[0];
                    double turnedX = strike.turn().x() - chance[1];
                    double turnedY = strike.turn().y() - chance[2];
                    assertThat(miss).isCloseTo(0, within(0.12));
                    assertThat(Math.hypot(turnedX, turnedY)).isLessThan(0.025);
                    boolean near = Math.abs(miss) < 0.07 && Math.hypot(turnedX, turnedY) < 0.012;
                    wide[0] += near ? 0 : 1;
                    assertThat(strike.turn().z()).isCloseTo(0, within(1e-12));
                    assertThat(strike.force().z()).isCloseTo(strike.share(), within(1e-12));
                    bias[0] += miss;
                    bias[1] += chance[0];
                    cases[0]++;
                });
        if (cases[0] > 30) {
            assertThat(wide[0]).isLessThanOrEqualTo(cases[0] / 50);
            assertThat(bias[1] / cases[0]).as("scenes are struck").isGreaterThan(0.1);
            assertThat(bias[0] / cases[0]).isCloseTo(0, within(0.01));
        }
    }

    /** A plate over the whole jet stops all of it; one over half of it, half, at a lever. */
    @Test
    void aPlateStopsWhatItCovers() {
        List<Vec3> axes = List.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0), DOWN);
        var whole = new Obstacle.Box("plate", new Vec3(0, 0, 1), axes, new Vec3(2, 2, 0.01));
        JetStrike all = JetStrike.of(Vec3.ZERO, DOWN, AREA, List.of(whole), Vec3.ZERO);
        assertThat(all.share()).isCloseTo(1, within(1e-12));
        assertThat(all.turn().length()).isCloseTo(0, within(1e-12));
        var half = new Obstacle.Box("plate", new Vec3(0, 2, 1), axes, new Vec3(2, 2, 0.01));
        JetStrike one = JetStrike.of(Vec3.ZERO, DOWN, AREA, List.of(half), Vec3.ZERO);
        assertThat(one.share()).isCloseTo(0.5, within(0.05));
        assertThat(one.turn().x()).isPositive();
        assertThat(one.hits().getFirst().distanceM()).isCloseTo(0.99, within(1e-9));
    }

    /** What lies in front is struck first; what lies behind the exit, or holds it, never. */
    @Test
    void theNearerOneIsStruckAndNothingBehindTheExit() {
        List<Vec3> axes = List.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0), DOWN);
        var near = new Obstacle.Box("near", new Vec3(0, 0, 0.5), axes, new Vec3(1, 1, 0.01));
        var far = new Obstacle.Box("far", new Vec3(0, 0, 1), axes, new Vec3(1, 1, 0.01));
        var behind = new Obstacle.Box("behind", new Vec3(0, 0, -0.5), axes, new Vec3(1, 1, 0.1));
        var about = new Obstacle.Box("about", Vec3.ZERO, axes, new Vec3(1, 1, 0.3));
        JetStrike strike =
                JetStrike.of(Vec3.ZERO, DOWN, AREA, List.of(far, about, near, behind), Vec3.ZERO);
        assertThat(strike.hits()).hasSize(1);
        assertThat(strike.hits().getFirst().obstacle().name()).isEqualTo("near");
    }
}
