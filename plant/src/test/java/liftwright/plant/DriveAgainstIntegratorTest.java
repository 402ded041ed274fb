package liftwright.plant;

import static liftwright.plant.RigSketch.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.random.RandomGenerator;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.FanType;
import liftwright.rig.FanType.Braking;
import liftwright.testkit.Seeded;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/**
 * Rotors that spin up and down on one bus, against the law written anew and integrated by another
 * library with steps of its own choice (Dormand and Prince 8(5,3), Hairer, Nørsett and Wanner,
 * Solving Ordinary Differential Equations I, 1993).
 *
 * <p>The cells are so large that their charge stays: what is held here is Ω, network and sag.
 */
class DriveAgainstIntegratorTest {

    private static final double PRODUCTION_S = 0.001;

    /** Of the speed, at steps of 1 ms and a network in full each 5 ms, after a change of duty. */
    private static final double PRODUCTION_MISS = 1e-3;

    /** Numbers of unlike fans on one bus. */
    @SuppressWarnings("ArrayRecordComponent") // read by this test alone
    private record Numbers(
            double[] thrust,
            double[] torque,
            double[] kv,
            double[] ohm,
            double[] noLoad,
            double[] limit,
            double[] inertia,
            double[] metre,
            double metreOfMain,
            int series,
            Braking braking) {

        static Numbers draw(RandomGenerator random) {
            int fans = random.nextInt(1, 5);
            double[] thrust = new double[fans];
            double[] torque = new double[fans];
            double[] kv = new double[fans];
            double[] ohm = new double[fans];
            double[] noLoad = new double[fans];
            double[] limit = new double[fans];
            double[] inertia = new double[fans];
            double[] metre = new double[fans];
            for (int k = 0; k < fans; k++) {
                double speed = random.nextDouble(2000, 3500);
                thrust[k] = random.nextDouble(60, 120) / (speed * speed);
                torque[k] = random.nextDouble(2500, 5000) / (speed * speed * speed);
                kv[k] = random.nextDouble(50, 75);
                ohm[k] = random.nextDouble(0.008, 0.03);
                noLoad[k] = random.nextDouble(0.5, 4);
                // High: a course that never meets a limit shows the order of the method.
                limit[k] = 1e4;
                inertia[k] = random.nextDouble(0.6e-4, 4e-4);
                metre[k] = random.nextDouble(0.2, 2);
            }
            Braking[] kinds = Braking.values();
            return new Numbers(
                    thrust,
                    torque,
                    kv,
                    ohm,
                    noLoad,
                    limit,
                    inertia,
                    metre,
                    random.nextDouble(0.2, 2),
                    random.nextInt(10, 15),
                    kinds[random.nextInt(kinds.length)]);
        }

        int fans() {
            return kv.length;
        }

        FanType type(int k) {
            return new FanType(
                    "F" + k,
                    true,
                    si(0.14),
                    si(0.05),
                    si(0.0128),
                    si(0.7),
                    FanType.Data.MEASURED,
                    new FanType.Performance.Coefficients(si(thrust[k]), si(torque[k])),
                    new FanType.Motor(
                            Optional.of(si(kv[k])),
                            Optional.of(si(ohm[k] - 0.002)),
                            Optional.of(si(noLoad[k])),
                            OptionalInt.empty()),
                    new FanType.Rotor(Optional.empty(), Optional.of(si(inertia[k]))),
                    new FanType.Controller(
                            si(0.002),
                            Optional.of(si(limit[k])),
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
                    si(1),
                    Optional.empty(),
                    FanType.Extremes.USUAL);
        }

        Plant plant() {
            RigSketch sketch = new RigSketch();
            sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C"), series, 1));
            sketch.wire(
                    "p.1",
                    "bus",
                    RigSketch.run("main run", 4, metreOfMain),
                    RigSketch.pole("pole", 2e-4));
            for (int k = 0; k < fans(); k++) {
                sketch.fans.add(RigSketch.fan("f", k + 1, type(k)));
                sketch.wire("bus", "f." + (k + 1), RigSketch.run("r" + (k + 1), 10, metre[k]));
            }
            return Plant.assemble(sketch.rig());
        }
    }

    private static double[] endless(Plant plant) {
        double[] p = plant.parameters().nominal();
        for (int k = 0; k < p.length; k++) {
            String name = plant.parameters().rows().get(k).name();
            if (name.endsWith("/capacity")) {
                p[k] *= 1e9;
            } else if (name.contains("/settling/") && name.endsWith("/resistance")) {
                // Cells that settle at once: the referee knows none.
                p[k] = 0;
            }
        }
        return p;
    }

    /** A course: duties rise, jump up, and jump down. */
    @SuppressWarnings("ArrayRecordComponent") // read by this test alone
    private record Course(double[] first, double[] second, double[] third) {
        static final double AT_S = 0.1;

        static Course draw(RandomGenerator random, int fans) {
            return new Course(
                    duties(random, fans, 0.3, 0.6),
                    duties(random, fans, 0.6, 1),
                    duties(random, fans, 0.3, 0.6));
        }

        private static double[] duties(RandomGenerator random, int fans, double low, double high) {
            double[] duty = new double[fans];
            for (int k = 0; k < fans; k++) {
                duty[k] = random.nextDouble(low, high);
            }
            return duty;
        }

        double[] of(int stretch) {
            return stretch == 0 ? first : stretch == 1 ? second : third;
        }
    }

    private static double[] flown(Plant plant, double[] p, Course course, double dtS, double netS) {
        Drive drive = plant.drive();
        drive.load(p, new CellDraw.Expected());
        drive.start();
        drive.networkEvery(netS);
        int fans = drive.fans();
        double[] end = new double[3 * fans];
        for (int stretch = 0; stretch < 3; stretch++) {
            for (int fan = 0; fan < fans; fan++) {
                drive.duty(fan, course.of(stretch)[fan]);
            }
            for (long k = Math.round(Course.AT_S / 2 / dtS); k > 0; k--) {
                assertThat(drive.step(dtS)).isTrue();
            }
            for (int fan = 0; fan < fans; fan++) {
                end[stretch * fans + fan] = drive.speedRadps(fan);
            }
        }
        return end;
    }

    private static double miss(double[] found, double[] reference) {
        double worst = 0;
        for (int k = 0; k < found.length; k++) {
            worst = Math.max(worst, Math.abs(found[k] / reference[k] - 1));
        }
        return worst;
    }

    /** In the midst of spinning up, of going faster and of going slower. */
    @Test
    void convergesToAnotherIntegrator() {
        double[] worst = new double[2];
        double[] order = {Double.POSITIVE_INFINITY};
        Seeded.check(
                Seeded.deep() ? 40 : 10,
                random -> {
                    Numbers numbers = Numbers.draw(random);
                    Plant plant = numbers.plant();
                    double[] p = endless(plant);
                    Course course = Course.draw(random, numbers.fans());
                    double[] reference = new Referee(plant, p, numbers).run(course);
                    double production =
                            miss(flown(plant, p, course, PRODUCTION_S, 0.005), reference);
                    double coarse = miss(flown(plant, p, course, 1e-4, 1e-4), reference);
                    double fine = miss(flown(plant, p, course, 2.5e-5, 2.5e-5), reference);
                    double finest = miss(flown(plant, p, course, 1e-5, 1e-5), reference);
                    worst[0] = Math.max(worst[0], production);
                    worst[1] = Math.max(worst[1], finest);
                    order[0] = Math.min(order[0], Math.log(coarse / fine) / Math.log(4));
                    assertThat(production).isLessThan(PRODUCTION_MISS);
                    assertThat(finest).isLessThan(1e-6);
                    // A rotor that stops being driven does so within a step: there order is lost.
                    assertThat(fine).isLessThan(coarse / 3 + 2e-7);
                });
        if (System.getProperty("tell") != null) {
            System.out.printf("miss %.2e %.2e order %.2f%n", worst[0], worst[1], order[0]);
        }
    }

    /** Duties that never let the bridge open: nothing bends, and the order is that of the rule. */
    @Test
    void theOrderIsTwo() {
        Seeded.check(
                6,
                random -> {
                    Numbers numbers = Numbers.draw(random);
                    Plant plant = numbers.plant();
                    double[] p = endless(plant);
                    double[] up = new double[numbers.fans()];
                    for (int fan = 0; fan < up.length; fan++) {
                        up[fan] = random.nextDouble(0.4, 0.9);
                    }
                    Course course = new Course(up, up, up);
                    double[] reference = new Referee(plant, p, numbers).run(course);
                    double coarse = miss(flown(plant, p, course, 2e-4, 2e-4), reference);
                    double fine = miss(flown(plant, p, course, 1e-4, 1e-4), reference);
                    assertThat(Math.log(coarse / fine) / Math.log(2)).isBetween(1.7, 2.5);
                });
    }

    /** The laws again, slow and plain: every voltage by halving. */
    private static final class Referee {

        private final Numbers n;
        private final double density;
        private final double emf;
        private final double sourceOhm;
        private final double[] chainOhm;
        private double[] duty = {};

        Referee(Plant plant, double[] p, Numbers numbers) {
            n = numbers;
            density = plant.siteDensityKgpm3(p);
            FaultSupply supply = plant.faultSupply(p);
            emf = supply.fullV()[0];
            sourceOhm = supply.packOhm()[0] + supply.chainOhm()[0];
            chainOhm = supply.chainOhm();
        }

        double[] run(Course course) {
            int fans = n.fans();
            double[] y = new double[fans];
            double[] end = new double[3 * fans];
            for (int stretch = 0; stretch < 3; stretch++) {
                duty = course.of(stretch);
                y =
                        new DormandPrince853Integrator(1e-9, 1e-3, 1e-6, 1e-10)
                                .integrate(
                                        new OrdinaryDifferentialEquation() {
                                            @Override
                                            public int getDimension() {
                                                return fans;
                                            }

                                            @Override
                                            public double[] computeDerivatives(
                                                    double t, double[] at) {
                                                return slopes(at);
                                            }
                                        },
                                        new ODEState(0, y),
                                        Course.AT_S / 2)
                                .getPrimaryState();
                System.arraycopy(y, 0, end, stretch * fans, fans);
            }
            return end;
        }

        private double[] slopes(double[] y) {
            double bus = busV(y);
            double[] d = new double[y.length];
            for (int k = 0; k < y.length; k++) {
                double w = y[k];
                double air = n.torque[k] * density / 1.225 * w * w;
                double friction = n.noLoad[k] / n.kv[k] * Math.min(1, w / 10);
                double winding = winding(k, terminal(bus, k, w), w);
                d[k] = (winding / n.kv[k] - air - friction) / n.inertia[k];
            }
            return d;
        }

        private double winding(int k, double volt, double w) {
            double free = (duty[k] * volt - w / n.kv[k]) / n.ohm[k];
            boolean back = n.braking == Braking.FREEWHEEL;
            return back ? free : Math.max(0, free);
        }

        private double drawn(int k, double volt, double w) {
            double winding = winding(k, volt, w);
            return duty[k] * winding + 0.08 * (1 - duty[k]) * Math.abs(winding) + 5 / volt;
        }

        private double terminal(double bus, int k, double w) {
            double low = 1;
            double high = bus + 20;
            for (int halving = 0; halving < 55; halving++) {
                double middle = (low + high) / 2;
                if (middle + chainOhm[1 + k] * drawn(k, middle, w) < bus) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return (low + high) / 2;
        }

        private double busV(double[] y) {
            double low = 1;
            double high = emf + 20;
            for (int halving = 0; halving < 55; halving++) {
                double middle = (low + high) / 2;
                double sum = 0;
                for (int k = 0; k < y.length; k++) {
                    sum += drawn(k, terminal(middle, k, y[k]), y[k]);
                }
                if (middle + sourceOhm * sum < emf) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return (low + high) / 2;
        }
    }

    /** With drag alone a rotor coasts as Ω₀/(1 + t/τ), τ = J/(κ Ω₀). */
    @Test
    void aKilledChainCoasts() {
        Numbers drawn = Numbers.draw(new java.util.SplittableRandom(7));
        Plant plant = drawn.plant();
        double[] p = endless(plant);
        Drive drive = plant.drive();
        drive.load(p, new CellDraw.Expected());
        drive.start();
        for (int fan = 0; fan < drive.fans(); fan++) {
            drive.duty(fan, 0.8);
        }
        for (int k = 0; k < 1500; k++) {
            drive.step(PRODUCTION_S);
        }
        double before = drive.speedRadps(0);
        drive.kill(drive.chainsOf("main"));
        double t = 0.2;
        for (int k = 0; k < 200; k++) {
            drive.step(PRODUCTION_S);
        }
        double kappa = drawn.torque[0] * plant.siteDensityKgpm3(p) / 1.225;
        double friction = drawn.noLoad[0] / drawn.kv[0];
        // J dΩ/dt = −κ Ω² − f: Ω = √(f/κ) tan(atan(Ω₀ √(κ/f)) − t √(κ f)/J).
        double root = Math.sqrt(kappa / friction);
        double expected =
                Math.tan(
                                Math.atan(before * root)
                                        - t * Math.sqrt(kappa * friction) / drawn.inertia[0])
                        / root;
        assertThat(drive.speedRadps(0)).isCloseTo(expected, within(1e-5 * before));
        for (int fan = 0; fan < drive.fans(); fan++) {
            assertThat(drive.isLive(fan)).isFalse();
            assertThat(drive.busA(fan)).isZero();
            assertThat(drive.busV(fan)).isZero();
        }
        assertThat(drive.packA(0)).isZero();
    }
}
