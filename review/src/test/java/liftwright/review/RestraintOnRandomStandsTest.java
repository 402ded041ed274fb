package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import liftwright.answer.Outcome;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.plant.body.MassItem;
import liftwright.plant.hold.FanAlone;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.file.RigReading;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Whole verdicts about random stands under the invented rigs that few fans lift, against a referee
 * with a geometry of its own that tries every subset of fans.
 */
class RestraintOnRandomStandsTest {

    private static final double G = 9.80665;
    private static final Settings SETTINGS = new Settings(7, 256, 256, 1, false);

    /** A stand as drawn, in SI; x forward, y right, z up here. */
    private record Stand(
            double heightM,
            double massKg,
            double apartM,
            double deepM,
            double friction,
            String thrust,
            double clampN) {

        static Stand any(RandomGenerator random) {
            String[] ways = {"up", "down", "forward", "back", "left", "right"};
            return new Stand(
                    random.nextInt(3, 18) / 10.0,
                    random.nextInt(20, 400),
                    random.nextInt(5, 25) / 10.0,
                    random.nextInt(5, 25) / 10.0,
                    random.nextInt(2, 9) / 10.0,
                    ways[random.nextInt(ways.length)],
                    random.nextBoolean() ? 0 : random.nextInt(1, 9) * 100);
        }

        String yaml() {
            return String.format(
                    Locale.ROOT,
                    "%nrestraint:%n  stand: {height: %.1f m, mass: %.0f kg, feet apart: %.1f m,"
                            + " feet deep: %.1f m, friction: %.1f, thrust: %s%s}%n",
                    heightM,
                    massKg,
                    apartM,
                    deepM,
                    friction,
                    thrust,
                    clampN > 0
                            ? String.format(Locale.ROOT, ", clamps: 2, clamp force: %.0f N", clampN)
                            : "");
        }

        /** Rig axes (forward, right, down) as they lie on the stand, as forward, right, up. */
        double[] laid(Vec3 v) {
            double up = -v.z();
            return switch (thrust) {
                case "up" -> new double[] {v.x(), v.y(), up};
                case "forward" -> new double[] {up, v.y(), -v.x()};
                case "back" -> new double[] {-up, v.y(), v.x()};
                case "right" -> new double[] {v.x(), up, -v.y()};
                case "left" -> new double[] {v.x(), -up, v.y()};
                default -> new double[] {-v.x(), v.y(), -up};
            };
        }
    }

    private static Rig read(String example, String restraint) {
        try {
            String text =
                    Files.readString(Path.of("..", "examples", example, "rig.yaml"))
                            .replaceAll("(?s)\nrestraint:.*?(?=\n\\S|\\z)", "");
            return RigReading.read("rig.yaml", (text + restraint).getBytes(StandardCharsets.UTF_8))
                    .rig()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void theVerdictIsThatOfEverySubsetTried() {
        List<Outcome> seen = new ArrayList<>();
        Seeded.check(
                24,
                random -> {
                    Stand stand = Stand.any(random);
                    Rig rig = read(random.nextBoolean() ? "curlew" : "sandpiper", stand.yaml());
                    var judge = RestraintJudge.of(rig, SETTINGS);
                    Plant plant = judge.assemble(rig);
                    double referee = margin(plant, stand);
                    double ours = judge.nominal(plant);
                    assertThat(ours).isCloseTo(referee, within(1e-9 * (2 + Math.abs(referee))));
                    if (Math.abs(referee) > 0.3) {
                        Outcome outcome =
                                RestraintQuestion.ask(rig, "d", SETTINGS, Work.quiet())
                                        .orElseThrow()
                                        .verdict()
                                        .outcome();
                        assertThat(outcome)
                                .as(stand.toString() + " " + referee)
                                .isEqualTo(referee > 0 ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD);
                        seen.add(outcome);
                    }
                });
        assertThat(seen).contains(Outcome.HOLDS, Outcome.DOES_NOT_HOLD);
    }

    private static double margin(Plant plant, Stand stand) {
        double[] p = plant.parameters().nominal();
        List<FanAlone> fans = plant.fullThrust().at(p).orElseThrow();
        double[] middle = new double[3];
        double all = 0;
        for (FanAlone fan : fans) {
            add(middle, stand.laid(fan.at()), fan.thrustN());
            all += fan.thrustN();
        }
        for (int axis = 0; axis < 3; axis++) {
            middle[axis] /= all;
        }
        List<double[]> forces = new ArrayList<>();
        List<double[]> places = new ArrayList<>();
        List<Double> twists = new ArrayList<>();
        for (FanAlone fan : fans) {
            double[] way = stand.laid(fan.direction());
            double[] at = minus(stand.laid(fan.at()), middle);
            at[2] += stand.heightM;
            double[] force = new double[3];
            add(force, way, fan.thrustN());
            forces.add(force);
            places.add(at);
            twists.add(fan.swirlNm());
        }
        List<double[]> weights = new ArrayList<>(List.of(new double[] {0, 0, stand.massKg * G}));
        weights.add(new double[] {0, 0, stand.clampN * 2});
        for (MassItem item : plant.mass().items()) {
            if (item.kind() != MassItem.Kind.WEARER) {
                double[] at = minus(stand.laid(item.at()), middle);
                weights.add(new double[] {at[0], at[1], item.massKg() * G});
            }
        }
        double pressN = 0;
        for (double[] weight : weights) {
            pressN += weight[2];
        }
        double least = Double.POSITIVE_INFINITY;
        for (int bits = 1; bits < 1 << fans.size(); bits++) {
            double[] force = new double[3];
            for (int k = 0; k < fans.size(); k++) {
                add(force, forces.get(k), bits >> k & 1);
            }
            least =
                    lesser(
                            least,
                            stand.friction * pressN,
                            Math.hypot(force[0], force[1]) + stand.friction * force[2]);
            double grip = stand.friction * Math.min(stand.apartM, stand.deepM) / 2;
            double spin =
                    about(new double[] {0, 0, 1}, new double[3], forces, places, twists, bits);
            least = lesser(least, grip * pressN, Math.abs(spin) + grip * force[2]);
            for (int edge = 0; edge < 4; edge++) {
                double sign = edge % 2 == 0 ? 1 : -1;
                // On the edge, and along it so that a right-hand turn about it tips the stand.
                double[] on =
                        edge < 2
                                ? new double[] {sign * stand.deepM / 2, 0, 0}
                                : new double[] {0, sign * stand.apartM / 2, 0};
                double[] along = edge < 2 ? new double[] {0, -sign, 0} : new double[] {sign, 0, 0};
                double tips = about(along, on, forces, places, twists, bits);
                double holds = 0;
                for (double[] weight : weights) {
                    holds +=
                            weight[2]
                                    * (edge < 2
                                            ? sign * (on[0] - weight[0])
                                            : sign * (on[1] - weight[1]));
                }
                least = lesser(least, holds, tips);
            }
        }
        return Math.min(1000, least / 2 - 1);
    }

    private static double lesser(double least, double holds, double load) {
        return holds <= 0 ? 0 : load > 0 ? Math.min(least, holds / load) : least;
    }

    /** Right-hand moment of a subset about an axis through a point. */
    private static double about(
            double[] axis,
            double[] through,
            List<double[]> forces,
            List<double[]> places,
            List<Double> twists,
            int bits) {
        double sum = 0;
        for (int k = 0; k < forces.size(); k++) {
            if ((bits >> k & 1) == 0) {
                continue;
            }
            double[] r = minus(places.get(k), through);
            double[] f = forces.get(k);
            double size = Math.sqrt(f[0] * f[0] + f[1] * f[1] + f[2] * f[2]);
            // In (forward, right, up) a right-hand moment is f × r; the twist is right-hand itself
            // about the thrust.
            double[] m = {
                f[1] * r[2] - f[2] * r[1], f[2] * r[0] - f[0] * r[2], f[0] * r[1] - f[1] * r[0]
            };
            for (int i = 0; i < 3; i++) {
                double twist = size > 0 ? twists.get(k) * f[i] / size : 0;
                sum += axis[i] * (m[i] + twist);
            }
        }
        return sum;
    }

    private static void add(double[] to, double[] what, double times) {
        for (int i = 0; i < 3; i++) {
            to[i] += times * what[i];
        }
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }
}
