package liftwright.trials.proof;

import static liftwright.plant.RigSketch.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.random.RandomGenerator;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.plant.RigSketch;
import liftwright.plant.motion.RunawayCase;
import liftwright.plant.motion.Stop;
import liftwright.plant.motion.Surroundings;
import liftwright.review.people.People;
import liftwright.review.runaway.AllowedHeight;
import liftwright.review.runaway.KillPath;
import liftwright.review.runaway.RunawayReview;
import liftwright.rig.FanType;
import liftwright.rig.FanType.Braking;
import liftwright.rig.OtherPart;
import liftwright.rig.PartId;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import liftwright.trials.RandomTrialRig;
import org.junit.jupiter.api.Test;

/** Heights that measured kills allow, against a plain integrator of one body under known thrust. */
class HeightsTest {

    private static final double G = 9.80665;
    private static final double LIMIT_MPS = 3.2;

    /** Thrust of the one fan in air of 1.225 kg/m³, N. */
    private static final double THRUST_N = 90;

    /** The body of the referee: half a step of speed, a step of height, half a step of speed. */
    private record Body(double massKg, double fullN, double density) {

        /** Speed at the ground of a runaway from a height; and its apex. */
        double[] runaway(double fromM, double halfS, double tenthS) {
            double h = fromM;
            double v = 0;
            double apex = h;
            double step = 2e-4;
            for (double t = 0; t < 60; t += step) {
                v += step / 2 * acceleration(t, v, halfS, tenthS);
                h += step * v;
                v += step / 2 * acceleration(t + step, v, halfS, tenthS);
                apex = Math.max(apex, h);
                if (h <= 0 && v < 0) {
                    return new double[] {-v, apex};
                }
            }
            throw new AssertionError("never came down");
        }

        private double acceleration(double t, double v, double halfS, double tenthS) {
            double share = t < halfS ? 1 : t < tenthS ? 0.5 : v > 0 ? 0.1 : 0;
            double drag = density * 0.2 / 2 * v * Math.abs(v);
            return (share * fullN - drag) / massKg - G;
        }

        double allowedM(double halfS, double tenthS) {
            if (runaway(0.001, halfS, tenthS)[0] > LIMIT_MPS) {
                return -1;
            }
            double low = 0;
            double high = 30;
            for (int k = 0; k < 40; k++) {
                double middle = (low + high) / 2;
                if (runaway(middle, halfS, tenthS)[0] > LIMIT_MPS) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return low;
        }
    }

    /** A fan whose thrust is there at once and does not care for inflow; stiff supply. */
    private static FanType type() {
        double kv = 60;
        double fast = kv * 12 * 4.2;
        return new FanType(
                "F",
                true,
                si(0.14),
                si(0.05),
                si(1e-7),
                si(0.7),
                FanType.Data.MEASURED,
                new FanType.Performance.AtSpeed(si(fast), si(THRUST_N), si(4000)),
                new FanType.Motor(
                        Optional.of(si(kv)),
                        Optional.of(si(1e-5)),
                        Optional.of(si(0)),
                        OptionalInt.empty()),
                new FanType.Rotor(Optional.empty(), Optional.of(si(2e-5))),
                new FanType.Controller(
                        si(0.002),
                        Optional.of(si(1e5)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        si(5),
                        si(0.08),
                        si(0.12),
                        new FanType.Switching(
                                Optional.of(Braking.COAST), Optional.empty(), Optional.empty())),
                Optional.empty(),
                si(0),
                si(1),
                si(1),
                Optional.empty(),
                FanType.Extremes.USUAL);
    }

    private static Plant plant(double loadKg) {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C"), 12, 1));
        sketch.fans.add(RigSketch.fan("f", 1, type()));
        sketch.wire("p.1", "f.1", RigSketch.joint("j", 1e-6));
        sketch.others.add(
                new OtherPart(
                        new PartId("load"),
                        RigPath.of("other parts", "load"),
                        si(loadKg),
                        RigSketch.FRAME,
                        Vec3.ZERO,
                        Optional.empty()));
        return Plant.assemble(sketch.rig());
    }

    private static KillPath kill(double reactionS, double halfS, double tenthS) {
        return new KillPath(
                        new KillPath.Source.Declared("k"),
                        "kill k",
                        0,
                        reactionS,
                        "somebody",
                        true,
                        0.1,
                        KillPath.Acts.OPENS,
                        0,
                        Set.of(),
                        Optional.empty())
                .measured(halfS, tenthS);
    }

    @Test
    void allowedHeightIsThatOfAPlainIntegrator() {
        int[] some = new int[2];
        Seeded.check(
                60,
                random -> {
                    Plant plant = plant(random.nextDouble(2.5, 4.2));
                    double[] p = plant.parameters().nominal();
                    double density = plant.siteDensityKgpm3(p);
                    double reaction = random.nextDouble(0, 0.7);
                    double half = random.nextDouble(0.02, 0.4);
                    double tenth = half + random.nextDouble(0.01, 0.4);
                    double fullN = fullN(plant);
                    assertThat(fullN).isCloseTo(THRUST_N * density / 1.225, within(0.15 * fullN));
                    Body body = new Body(plant.massKg(p), fullN, density);
                    double expected = body.allowedM(reaction + half, reaction + tenth);
                    AllowedHeight found =
                            AllowedHeight.of(plant, kill(reaction, half, tenth), LIMIT_MPS);
                    switch (found) {
                        case AllowedHeight.UpTo(double heightM, double apexM) -> {
                            some[0]++;
                            assertThat(heightM)
                                    .isCloseTo(
                                            Math.max(0, expected), within(0.02 + 0.03 * heightM));
                            assertThat(apexM)
                                    .isCloseTo(
                                            body.runaway(
                                                            heightM,
                                                            reaction + half,
                                                            reaction + tenth)[1],
                                            within(0.02 + 0.02 * apexM));
                        }
                        case AllowedHeight.None(double apexM, double impactMps) -> {
                            some[1]++;
                            assertThat(expected).isLessThan(0.03);
                            double[] own = body.runaway(0.001, reaction + half, reaction + tenth);
                            assertThat(impactMps).isCloseTo(own[0], within(0.03 * own[0]));
                            assertThat(apexM).isCloseTo(own[1], within(0.02 + 0.03 * own[1]));
                        }
                        case AllowedHeight.Endless _ -> throw new AssertionError("it comes down");
                    }
                });
        assertThat(some[0]).as("heights").isGreaterThan(10);
        assertThat(some[1]).as("none").isGreaterThan(10);
    }

    /** What the fan gives at full throttle on a full pack; other tests hold it to its laws. */
    private static double fullN(Plant plant) {
        var runaway = plant.runaway();
        runaway.load(plant.parameters().nominal());
        return runaway.run(
                        new RunawayCase(
                                new RunawayCase.Trigger.AllFull(),
                                new RunawayCase.Start.Ground(),
                                Stop.NEVER,
                                Surroundings.OPEN,
                                0.5))
                .liftsN()
                .getLast();
    }

    /** What was measured takes the place of what was computed, and only there. */
    @Test
    void slowerKillsRaiseApexAndKeepOut() {
        int[] looked = new int[1];
        Seeded.check(
                25,
                random -> {
                    Plant plant = Plant.assemble(RandomTrialRig.rig(random));
                    List<KillPath> kills = KillPath.of(plant.rig());
                    double fast = random.nextDouble(0.05, 0.3);
                    RunawayReview soon = review(plant, kills, fast, random);
                    RunawayReview late = review(plant, kills, fast + 0.5, random);
                    for (int k = 0; k < kills.size(); k++) {
                        boolean goes =
                                kills.get(k).acts() != KillPath.Acts.NOTHING
                                        && kills.get(k).share() == 0;
                        double before = soon.runs().get(k).path().apex().heightM();
                        double after = late.runs().get(k).path().apex().heightM();
                        assertThat(soon.runs().get(k).kill().tailS().isPresent()).isEqualTo(goes);
                        if (goes && soon.runs().get(k).path().greatestUpMps() > 0.5) {
                            looked[0]++;
                            assertThat(after).isGreaterThan(before);
                        } else if (!goes) {
                            assertThat(after).isEqualTo(before);
                        }
                    }
                    double near = People.keepOutM(plant, 0).orElseThrow();
                    assertThat(People.keepOutM(plant, 8).orElseThrow())
                            .isGreaterThanOrEqualTo(near);
                });
        assertThat(looked[0]).isGreaterThan(20);
    }

    private static RunawayReview review(
            Plant plant, List<KillPath> kills, double halfS, RandomGenerator random) {
        return RunawayReview.of(
                plant,
                kills.stream().map(kill -> kill.measured(halfS, halfS + 0.2)).toList(),
                random.nextLong(),
                0,
                1,
                Work.quiet());
    }
}
