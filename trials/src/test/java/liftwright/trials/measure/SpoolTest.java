package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import liftwright.physics.FanUnit;
import liftwright.testkit.Seeded;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** A rotor after a step of the throttle, against an integrator. */
class SpoolTest {

    /** A fan on a pack, all numbers drawn here. */
    private record Drive(
            double kq,
            double kv,
            double ohm,
            double noLoad,
            double loss,
            double fixed,
            double limit,
            double emf,
            double source,
            double inertia) {

        static Drive drawn(RandomGenerator random) {
            double speed = 1500 + 1500 * random.nextDouble();
            double emf = 30 + 30 * random.nextDouble();
            double power = 1500 + 3000 * random.nextDouble();
            return new Drive(
                    power / Math.pow(speed, 3),
                    1.1 * speed / emf,
                    0.005 + 0.03 * random.nextDouble(),
                    1 + 4 * random.nextDouble(),
                    0.15 * random.nextDouble(),
                    8 * random.nextDouble(),
                    random.nextBoolean() ? 1e9 : 1.3 * power / emf,
                    emf,
                    0.03 * random.nextDouble(),
                    1e-4 * (0.5 + random.nextDouble()));
        }

        double[] unit() {
            double[] unit = new double[FanUnit.COEFFICIENTS];
            unit[FanUnit.THRUST] = 1e-5;
            unit[FanUnit.TORQUE] = kq;
            unit[FanUnit.KV] = kv;
            unit[FanUnit.RESISTANCE] = ohm;
            unit[FanUnit.NO_LOAD] = noLoad;
            unit[FanUnit.SWITCHING] = loss;
            unit[FanUnit.FIXED] = fixed;
            unit[FanUnit.CURRENT_LIMIT] = limit;
            return unit;
        }

        /** Torque left over, with the voltage found by going round until it stays. */
        double torque(double duty, double speed) {
            double volt = emf;
            double amp = 0;
            for (int round = 0; round < 3000; round++) {
                amp = (duty * volt - speed / kv) / ohm;
                double drawn = (duty + loss * (1 - duty)) * amp + fixed / volt;
                double next = emf - source * drawn;
                // Half way each time: the plain round swings where the pack is soft.
                volt += 0.1 * (next - volt);
            }
            return (Math.min(amp, limit) - noLoad) / kv - kq * speed * speed;
        }

        double after(double duty, double fromSpeed, double seconds) {
            var equation =
                    new OrdinaryDifferentialEquation() {
                        @Override
                        public int getDimension() {
                            return 1;
                        }

                        @Override
                        public double[] computeDerivatives(double t, double[] y) {
                            return new double[] {torque(duty, y[0]) / inertia};
                        }
                    };
            var integrator = new DormandPrince853Integrator(1e-9, seconds, 1e-9, 1e-9);
            return integrator.integrate(
                            equation, new ODEState(0, new double[] {fromSpeed}), seconds)
                    .getPrimaryState()[0];
        }

        /** Where it settles. */
        double settled(double duty) {
            double low = 0;
            double high = 2 * emf * kv;
            for (int k = 0; k < 80; k++) {
                double middle = (low + high) / 2;
                if (torque(duty, middle) > 0) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return (low + high) / 2;
        }
    }

    @Test
    void agreesWithAnIntegrator() {
        Seeded.check(
                100,
                random -> {
                    Drive drive = Drive.drawn(random);
                    double from = 0.2 + 0.4 * random.nextDouble();
                    double to = from + 0.1 + 0.3 * random.nextDouble();
                    double start = drive.settled(from);
                    double end = drive.settled(to);
                    double share = 1 - Math.exp(-1);
                    double reached = Math.sqrt(start * start + share * (end * end - start * start));
                    var spool = new Spool(drive.unit(), drive.emf, drive.source, drive.inertia, to);
                    double time = spool.timeS(start, reached);
                    assertThat(drive.after(to, start, time))
                            .isCloseTo(reached, within(1e-4 * (end - start)));
                });
    }

    @Test
    void smallChangesDieAsTheConstantSays() {
        Seeded.check(
                100,
                random -> {
                    Drive drive = Drive.drawn(random);
                    double duty = 0.3 + 0.7 * random.nextDouble();
                    double settled = drive.settled(duty);
                    double step = 1e-4 * settled;
                    double constant =
                            new Spool(drive.unit(), drive.emf, drive.source, drive.inertia, duty)
                                    .timeConstantS(settled);
                    double left = drive.after(duty, settled - step, constant) - settled;
                    assertThat(-left / step).isCloseTo(Math.exp(-1), within(2e-4));
                });
    }
}
