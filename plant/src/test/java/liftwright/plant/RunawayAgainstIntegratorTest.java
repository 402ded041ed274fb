package liftwright.plant;

import static liftwright.plant.RigSketch.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import liftwright.plant.motion.Moment;
import liftwright.plant.motion.RunawayCase;
import liftwright.plant.motion.RunawayCase.Start;
import liftwright.plant.motion.RunawayCase.Trigger;
import liftwright.plant.motion.RunawayPath;
import liftwright.plant.motion.Stop;
import liftwright.plant.motion.Surroundings;
import liftwright.rig.FanType;
import liftwright.rig.FanType.Braking;
import liftwright.rig.OtherPart;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import org.junit.jupiter.api.Test;

/** Runaways of random rigs on one bus, against the laws typed anew and another library. */
class RunawayAgainstIntegratorTest {

    private static final double G = 9.80665;
    private static final double NEVER = Double.POSITIVE_INFINITY;

    /** Numbers of the fans of one rig, all alike. */
    private record Numbers(
            double speed,
            double thrust,
            double power,
            double kv,
            double winding,
            double noLoad,
            double limit,
            double inertia,
            double exit,
            Braking braking) {

        static Numbers draw(RandomGenerator random) {
            return new Numbers(
                    random.nextDouble(2000, 3500),
                    random.nextDouble(60, 120),
                    random.nextDouble(2500, 5000),
                    random.nextDouble(50, 75),
                    random.nextDouble(0.008, 0.03),
                    random.nextDouble(0.5, 4),
                    random.nextDouble(60, 200),
                    random.nextDouble(0.4e-4, 4e-4),
                    random.nextDouble(0.006, 0.03),
                    random.nextBoolean() ? Braking.COAST : Braking.SHORT);
        }

        FanType type() {
            return new FanType(
                    "F",
                    true,
                    si(0.14),
                    si(0.05),
                    si(exit),
                    si(0.7),
                    FanType.Data.MEASURED,
                    new FanType.Performance.AtSpeed(si(speed), si(thrust), si(power)),
                    new FanType.Motor(
                            Optional.of(si(kv)),
                            Optional.of(si(winding)),
                            Optional.of(si(noLoad)),
                            OptionalInt.empty()),
                    new FanType.Rotor(Optional.empty(), Optional.of(si(inertia))),
                    new FanType.Controller(
                            si(0.002),
                            Optional.of(si(limit)),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            si(5),
                            si(0.08),
                            si(0.12),
                            new FanType.Switching(
                                    Optional.of(braking), Optional.empty(), Optional.empty())),
                    Optional.empty(),
                    si(0),
                    si(1),
                    si(0.9),
                    Optional.empty(),
                    FanType.Extremes.USUAL);
        }
    }

    private static Rig rig(RandomGenerator random, FanType type, int fans) {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(
                RigSketch.pack("p", 1, RigSketch.cellType("C"), random.nextInt(10, 15), 1));
        sketch.wire(
                "p.1",
                "bus",
                RigSketch.run("main run", 4, random.nextDouble(0.2, 2)),
                RigSketch.pole("pole", 2e-4));
        for (int k = 1; k <= fans; k++) {
            sketch.fans.add(RigSketch.fan("f", k, type));
            sketch.wire("bus", "f." + k, RigSketch.run("r" + k, 10, random.nextDouble(0.2, 2)));
        }
        sketch.others.add(
                new OtherPart(
                        new PartId("load"),
                        RigPath.of("other parts", "load"),
                        si(fans * random.nextDouble(2, 9)),
                        RigSketch.FRAME,
                        Vec3.ZERO,
                        Optional.empty()));
        return sketch.rig();
    }

    private static RunawayCase ground(Stop stop, double horizonS) {
        return new RunawayCase(
                new Trigger.AllFull(), new Start.Ground(), stop, Surroundings.OPEN, horizonS);
    }

    @Test
    void agreesWithTheLawsTypedAnew() {
        Seeded.check(12, RunawayAgainstIntegratorTest::oneRunaway);
    }

    private static void oneRunaway(RandomGenerator random) {
        Numbers numbers = Numbers.draw(random);
        int fans = random.nextInt(1, 4);
        Plant plant = Plant.assemble(rig(random, numbers.type(), fans));
        boolean opens = random.nextBoolean();
        double killS = random.nextDouble(0.3, 0.9);
        Stop stop =
                opens ? new Stop(NEVER, killS, Set.of("main")) : new Stop(killS, NEVER, Set.of());
        double endS = killS + random.nextDouble(0.05, 0.25);
        Runaway runaway = plant.runaway();
        double[] p = plant.parameters().nominal();
        runaway.load(p);
        RunawayPath path = runaway.run(ground(stop, endS));
        Referee referee = new Referee(plant, numbers, fans, runaway.massKg());
        Moment last = path.last();
        // What falls back is followed to the ground only.
        double untilS = path.impact().isEmpty() ? endS : last.timeS();
        assertThat(untilS).isBetween(killS, endS);
        double[] y = new double[2 + fans];
        y = referee.run(y, 0, killS, Referee.State.POWERED);
        y =
                referee.run(
                        y,
                        killS,
                        untilS,
                        !opens && numbers.braking == Braking.SHORT
                                ? Referee.State.BRAKED
                                : Referee.State.COASTS);
        assertThat(last.timeS()).isEqualTo(untilS);
        assertThat(last.heightM()).isCloseTo(y[0], within(2e-5 + 2e-4 * Math.abs(y[0])));
        assertThat(last.upMps()).isCloseTo(y[1], within(2e-4 + 2e-4 * Math.abs(y[1])));
        assertThat(path.closure()).isLessThan(1e-5);
    }

    /**
     * All of the thrust until half was seen, half until a tenth was, a tenth of it in the climb.
     */
    @Test
    void measuredThrustGoesInSteps() {
        Seeded.check(
                8,
                random -> {
                    Numbers numbers = Numbers.draw(random);
                    int fans = random.nextInt(1, 4);
                    Plant plant = Plant.assemble(rig(random, numbers.type(), fans));
                    double halfS = random.nextDouble(0.3, 0.9);
                    double tenthS = halfS + random.nextDouble(0.05, 0.3);
                    double endS = tenthS + random.nextDouble(0.02, 0.3);
                    Runaway runaway = plant.runaway();
                    runaway.load(plant.parameters().nominal());
                    RunawayPath path =
                            runaway.run(ground(Stop.asMeasured(halfS, tenthS), endS), false);
                    Referee referee = new Referee(plant, numbers, fans, runaway.massKg());
                    double[] y = new double[2 + fans];
                    y = referee.run(y, 0, halfS, Referee.State.POWERED);
                    double atHalf = y[0];
                    y = referee.faded(y, halfS, tenthS, 0.5);
                    y = referee.faded(y, tenthS, endS, 0.1);
                    assertThat(path.atStop().orElseThrow().heightM())
                            .isCloseTo(atHalf, within(2e-5 + 2e-4 * atHalf));
                    if (path.impact().isEmpty()) {
                        assertThat(path.last().heightM())
                                .isCloseTo(y[0], within(2e-5 + 3e-4 * Math.abs(y[0])));
                        assertThat(path.last().upMps())
                                .isCloseTo(y[1], within(5e-4 + 3e-4 * Math.abs(y[1])));
                    }
                });
    }

    /** The laws again, slow and plain: every voltage by halving. */
    private static final class Referee {

        enum State {
            POWERED,
            COASTS,
            BRAKED
        }

        private final Numbers n;
        private final int fans;
        private final double massKg;
        private final double density;
        private final double emf;
        private final double sourceOhm;
        private final double[] chainOhm;

        Referee(Plant plant, Numbers numbers, int fans, double massKg) {
            n = numbers;
            this.fans = fans;
            this.massKg = massKg;
            double[] p = plant.parameters().nominal();
            density = plant.siteDensityKgpm3(p);
            FaultSupply supply = plant.faultSupply(p);
            emf = supply.fullV()[0];
            sourceOhm = supply.packOhm()[0] + supply.chainOhm()[0];
            chainOhm = supply.chainOhm();
        }

        double[] run(double[] from, double fromS, double toS, State state) {
            return new ClassicalRungeKuttaIntegrator(4e-4)
                    .integrate(
                            new OrdinaryDifferentialEquation() {
                                @Override
                                public int getDimension() {
                                    return 2 + fans;
                                }

                                @Override
                                public double[] computeDerivatives(double t, double[] y) {
                                    return slopes(y, state);
                                }
                            },
                            new ODEState(fromS, from),
                            toS)
                    .getPrimaryState();
        }

        /** As measured: a share of what the powered rotors give, a tenth only while it rises. */
        double[] faded(double[] from, double fromS, double toS, double share) {
            left = share;
            double[] y = run(from, fromS, toS, State.POWERED);
            left = 1;
            return y;
        }

        private double left = 1;

        private double[] slopes(double[] y, State state) {
            double bus = state == State.POWERED ? busV(y) : 0;
            double[] d = new double[2 + fans];
            double lift = 0;
            for (int k = 0; k < fans; k++) {
                double w = y[2 + k];
                double winding =
                        switch (state) {
                            case POWERED -> winding(terminal(bus, k, w), w);
                            case COASTS -> 0;
                            case BRAKED -> -Math.min(w / n.kv / (n.winding + 0.002), n.limit);
                        };
                double air = n.power / (n.speed * n.speed * n.speed) * density / 1.225 * w * w;
                double friction = n.noLoad / n.kv * Math.min(1, w / 10);
                d[2 + k] = (winding / n.kv - air - friction) / n.inertia;
                lift += thrust(w, y[1]);
            }
            lift *= left <= 0.1 && y[1] <= 0 ? 0 : left;
            double net = lift / massKg - G - density * 0.2 / 2 * y[1] * Math.abs(y[1]) / massKg;
            boolean stands = y[0] <= 0 && net < 0 && y[1] <= 0;
            d[0] = y[1];
            d[1] = stands ? 0 : net;
            return d;
        }

        /** T = ρ A V (V − v) with V³ − v² V = V₀³, V₀² = T₀/(ρ A). */
        private double thrust(double w, double up) {
            double still = 0.9 * n.thrust / (n.speed * n.speed) * density / 1.225 * w * w;
            double jet = Math.sqrt(still / (density * n.exit));
            if (jet < 0.5) {
                return still;
            }
            double low = jet;
            double high = jet + Math.abs(up) + 1;
            for (int halving = 0; halving < 60; halving++) {
                double middle = (low + high) / 2;
                if (middle * middle * middle - up * up * middle > jet * jet * jet) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return density * n.exit * low * (low - up);
        }

        private double winding(double volt, double w) {
            return Math.clamp((volt - w / n.kv) / (n.winding + 0.002), 0, n.limit);
        }

        /** At full duty nothing is lost to switching, unless the limit lowers the duty. */
        private double drawn(double volt, double w) {
            double winding = winding(volt, w);
            double duty =
                    winding >= n.limit ? (n.limit * (n.winding + 0.002) + w / n.kv) / volt : 1;
            return winding * (duty + 0.08 * (1 - duty)) + 5 / volt;
        }

        private double terminal(double bus, int fan, double w) {
            double low = 1;
            double high = bus;
            for (int halving = 0; halving < 50; halving++) {
                double middle = (low + high) / 2;
                if (middle + chainOhm[1 + fan] * drawn(middle, w) < bus) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return high;
        }

        private double busV(double[] y) {
            double low = 1;
            double high = emf;
            for (int halving = 0; halving < 50; halving++) {
                double middle = (low + high) / 2;
                double sum = 0;
                for (int k = 0; k < fans; k++) {
                    double w = y[2 + k];
                    sum += drawn(terminal(middle, k, w), w);
                }
                if (middle + sourceOhm * sum < emf) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return high;
        }
    }

    /**
     * Thrust over weight 1.3 and 1.3 s in all: 2.5 m up at 3.8 m/s. With rotors that coast against
     * their drag alone, T₀/(1 + t/τ)², the apex is 4.05 m where τ = J/(κ Ω₀) is 0.293 s; thrust
     * that is gone at once gives 3.2 m. Inflow, sag and drag are kept out by a jet of any speed, by
     * no resistance to speak of and by no area.
     */
    @Test
    void coastingRotorsAddAThirdToTheHeight() {
        double kv = 60;
        double cells = 12 * 4.2;
        double fast = kv * cells;
        double power = 4000;
        double tau = 0.293;
        double inertia = tau * power / (fast * fast);
        Numbers numbers =
                new Numbers(fast, 90, power, kv, 1e-5, 0, 1e5, inertia, 1e-7, Braking.COAST);
        Plant heavy = Plant.assemble(ideal(numbers, 1000).rig());
        Runaway held = heavy.runaway();
        held.load(heavy.parameters().nominal());
        double fullN = held.run(ground(Stop.NEVER, 2)).liftsN().getLast();
        double loadKg = fullN / 1.3 / G - (held.massKg() - 1000);
        Plant loaded = Plant.assemble(ideal(numbers, loadKg).rig());
        Runaway runaway = loaded.runaway();
        runaway.load(loaded.parameters().nominal());
        runaway.dragArea(0);
        // Rotors take 20 ms to come up: the 1.3 s count from when it leaves the ground.
        double offS = runaway.run(ground(Stop.NEVER, 0.5)).liftOff().orElseThrow().timeS();
        assertThat(offS).isLessThan(0.03);
        RunawayPath path = runaway.run(ground(new Stop(offS + 1.3, NEVER, Set.of()), 20));
        Moment stop = path.atStop().orElseThrow();
        assertThat(stop.heightM()).isCloseTo(2.5, within(0.05));
        assertThat(stop.upMps()).isCloseTo(3.8, within(0.05));
        assertThat(path.apex().heightM()).isCloseTo(4.05, within(0.05));
        // From there a body without thrust falls to 8.9 m/s. What the rotors still give on the way
        // down takes 0.26 m/s off: v₀ + 1.3 g τ (1 − 1/(1 + t/τ)) − g t where the height is 0.
        assertThat(Math.sqrt(2 * G * path.apex().heightM())).isCloseTo(8.9, within(0.05));
        assertThat(path.impact().orElseThrow().upMps()).isCloseTo(-8.65, within(0.05));
    }

    private static RigSketch ideal(Numbers numbers, double loadKg) {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C"), 12, 1));
        sketch.fans.add(RigSketch.fan("f", 1, numbers.type()));
        sketch.wire("p.1", "f.1", RigSketch.joint("j", 1e-6));
        sketch.others.add(
                new OtherPart(
                        new PartId("load"),
                        RigPath.of("other parts", "load"),
                        si(loadKg),
                        RigSketch.FRAME,
                        Vec3.ZERO,
                        Optional.empty()));
        return sketch;
    }

    @Test
    void aLongerReactionNeverLowersTheApexAndEnergyCloses() {
        Seeded.check(
                40,
                random -> {
                    Plant plant = Plant.assemble(RandomRigs.exact(random));
                    Runaway runaway = plant.runaway();
                    runaway.load(plant.parameters().nominal());
                    double early = random.nextDouble(0.05, 1.5);
                    double late = early + random.nextDouble(0.01, 1);
                    RunawayPath before =
                            runaway.run(ground(new Stop(early, NEVER, Set.of()), early + 6), false);
                    RunawayPath after =
                            runaway.run(ground(new Stop(late, NEVER, Set.of()), late + 6), false);
                    assertThat(before.failed() || after.failed()).isFalse();
                    assertThat(after.apex().heightM())
                            .isGreaterThanOrEqualTo(before.apex().heightM() * (1 - 1e-5) - 1e-6);
                    assertThat(before.closure()).isLessThan(1e-3);
                    assertThat(after.closure()).isLessThan(1e-3);
                });
    }

    /** Until the kill it is the runaway that nothing stops. */
    @Test
    void aKillChangesNothingBeforeItActs() {
        Seeded.check(
                15,
                random -> {
                    Plant plant = Plant.assemble(RandomRigs.exact(random));
                    Runaway runaway = plant.runaway();
                    runaway.load(plant.parameters().nominal());
                    double killS = random.nextDouble(0.2, 1.5);
                    RunawayPath free = runaway.run(ground(Stop.NEVER, killS), false);
                    RunawayPath killed =
                            runaway.run(ground(new Stop(killS, NEVER, Set.of()), killS + 3), false);
                    killed.atStop()
                            .ifPresent(
                                    at -> {
                                        assertThat(at.heightM()).isEqualTo(free.last().heightM());
                                        assertThat(at.upMps()).isEqualTo(free.last().upMps());
                                    });
                    assertThat(killed.atStop().isPresent() || free.impact().isPresent()).isTrue();
                });
    }

    /** Of commands: zero at once is never later on top than thrust that is only lowered. */
    @Test
    void loweringClimbsHigherThanStopping() {
        Seeded.check(
                15,
                random -> {
                    Numbers numbers = Numbers.draw(random);
                    Plant plant = Plant.assemble(rig(random, numbers.type(), 2));
                    Runaway runaway = plant.runaway();
                    runaway.load(plant.parameters().nominal());
                    double killS = random.nextDouble(0.2, 1);
                    RunawayPath stops =
                            runaway.run(ground(new Stop(killS, NEVER, Set.of()), killS + 4), false);
                    RunawayPath lowers =
                            runaway.run(
                                    ground(new Stop(killS, 0.9, NEVER, Set.of()), killS + 4),
                                    false);
                    assertThat(lowers.apex().heightM())
                            .isGreaterThanOrEqualTo(stops.apex().heightM() * (1 - 1e-5));
                });
    }

    /** A contactor that feeds no fan stops none. */
    @Test
    void aKillThatOpensNothingStopsNothing() {
        Numbers numbers = Numbers.draw(new SplittableRandom(1));
        Plant plant = Plant.assemble(ideal(numbers, 2).rig());
        Runaway runaway = plant.runaway();
        runaway.load(plant.parameters().nominal());
        RunawayPath path = runaway.run(ground(new Stop(NEVER, 0.3, Set.of("other")), 2));
        assertThat(path.comesDown()).isFalse();
        assertThat(path.impact()).isEmpty();
        assertThat(path.apex().heightM()).isEqualTo(path.last().heightM());
        RunawayPath stopped = runaway.run(ground(new Stop(0.3, NEVER, Set.of()), 9));
        assertThat(stopped.comesDown()).isTrue();
    }

    @Test
    void refusesAGroupThatIsNotThere() {
        Numbers numbers = Numbers.draw(new SplittableRandom(1));
        Plant plant = Plant.assemble(ideal(numbers, 5).rig());
        Runaway runaway = plant.runaway();
        runaway.load(plant.parameters().nominal());
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                runaway.run(
                                        new RunawayCase(
                                                new Trigger.GroupFull("none"),
                                                new Start.Ground(),
                                                Stop.NEVER,
                                                Surroundings.OPEN,
                                                1)));
        assertThat(runaway.inertia().estimated()).isEmpty();
    }
}
