package liftwright.plant;

import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;

/**
 * Hover on a few packs, computed in another way: the equations of the cell as they stand in the
 * books, integrated by an adaptive method of order 8; throttle and voltages by bisection. Knows
 * nothing of networks: each pack feeds equal fans through one resistance.
 *
 * @param packs the packs with their fans
 * @param weightN lift to hold
 * @param reserve share of charge kept
 * @param leastV least cell voltage under load
 */
record DischargeReference(List<PackWithFans> packs, double weightN, double reserve, double leastV) {

    static final double[] CHARGE = {0, 0.05, 0.2, 0.5, 0.8, 1};
    static final double[] VOLT = {3.0, 3.45, 3.65, 3.80, 4.00, 4.20};
    static final double THRUST = 1.24e-5;
    static final double TORQUE = 2.28e-7;
    static final double KV = 54.45;
    static final double OHM = 0.014;
    static final double NO_LOAD = 2.5;
    static final double SWITCHING = 0.08;
    static final double FIXED_W = 5;

    /** Cell values in SI; resistances at the temperature of the run. */
    record PackWithFans(
            int series,
            double capacityAs,
            double charge,
            double cellOhm,
            double slowOhm,
            double slowS,
            double seriesOhm,
            int fans) {}

    /** When what is reached, s; infinite if not. */
    static final class Times {
        final double[] reserve;
        final double[] cellVolt;
        double fullThrottle = Double.POSITIVE_INFINITY;
        double empty = Double.POSITIVE_INFINITY;

        Times(int packs) {
            reserve = new double[packs];
            cellVolt = new double[packs];
            Arrays.fill(reserve, Double.POSITIVE_INFINITY);
            Arrays.fill(cellVolt, Double.POSITIVE_INFINITY);
        }

        double end() {
            return Math.min(fullThrottle, empty);
        }
    }

    static PackWithFans random(RandomGenerator random, int fans) {
        return new PackWithFans(
                14,
                random.nextDouble(10_000, 30_000),
                random.nextDouble(0.7, 1),
                random.nextDouble(0.0008, 0.0025),
                random.nextDouble(0.0003, 0.0012),
                random.nextDouble(3, 40),
                random.nextDouble(0.002, 0.012),
                fans);
    }

    private static double open(double charge) {
        if (charge <= 0) {
            return VOLT[0];
        }
        for (int k = 1; k < CHARGE.length; k++) {
            if (charge <= CHARGE[k]) {
                double share = (charge - CHARGE[k - 1]) / (CHARGE[k] - CHARGE[k - 1]);
                return VOLT[k - 1] + share * (VOLT[k] - VOLT[k - 1]);
            }
        }
        return VOLT[VOLT.length - 1];
    }

    /** Speed at which the motor's torque is the fan's: the positive root, none below nought. */
    private static double speed(double volt, double duty) {
        double a = OHM * KV * TORQUE;
        double b = 1 / KV;
        double c = duty * volt - OHM * NO_LOAD;
        // Written so that nothing is taken from what is nearly as large.
        return c <= 0 ? 0 : 2 * c / (b + Math.sqrt(b * b + 4 * a * c));
    }

    private static double busA(double volt, double duty) {
        double speed = speed(volt, duty);
        double ampere = speed > 0 ? NO_LOAD + KV * TORQUE * speed * speed : duty * volt / OHM;
        return duty * ampere + SWITCHING * ampere * (1 - duty) + FIXED_W / volt;
    }

    /** Voltage at the fans of one pack. */
    private static double terminal(PackWithFans pack, double emfV, double duty) {
        double ohm = pack.series * pack.cellOhm + pack.seriesOhm;
        double low = 0.3 * emfV;
        double high = emfV;
        for (int k = 0; k < 46; k++) {
            double middle = (low + high) / 2;
            if ((emfV - middle) / ohm > pack.fans * busA(middle, duty)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private double emf(int k, double[] y) {
        PackWithFans pack = packs.get(k);
        return pack.series * (open(pack.charge - y[2 * k] / pack.capacityAs) - y[2 * k + 1]);
    }

    private double lift(double[] y, double duty) {
        double sum = 0;
        for (int k = 0; k < packs.size(); k++) {
            double speed = speed(terminal(packs.get(k), emf(k, y), duty), duty);
            sum += packs.get(k).fans * THRUST * speed * speed;
        }
        return sum;
    }

    private double throttle(double[] y) {
        double low = 0.05;
        double high = 1;
        for (int k = 0; k < 44; k++) {
            double middle = (low + high) / 2;
            if (lift(y, middle) < weightN) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private double ampere(int k, double[] y, double duty) {
        PackWithFans pack = packs.get(k);
        double emfV = emf(k, y);
        double volt = terminal(pack, emfV, duty);
        return (emfV - volt) / (pack.series * pack.cellOhm + pack.seriesOhm);
    }

    private double cellV(int k, double[] y) {
        PackWithFans pack = packs.get(k);
        return emf(k, y) / pack.series - ampere(k, y, throttle(y)) * pack.cellOhm;
    }

    /** Upward thrust at full throttle on rested packs as charged, N. */
    double fullLiftAtStart() {
        return lift(new double[2 * packs.size()], 1);
    }

    Times run() {
        Times times = new Times(packs.size());
        int size = 2 * packs.size();
        OrdinaryDifferentialEquation equation =
                new OrdinaryDifferentialEquation() {
                    @Override
                    public int getDimension() {
                        return size;
                    }

                    @Override
                    public double[] computeDerivatives(double t, double[] y) {
                        double duty = throttle(y);
                        double[] slope = new double[size];
                        for (int k = 0; k < packs.size(); k++) {
                            PackWithFans pack = packs.get(k);
                            double ampere = ampere(k, y, duty);
                            slope[2 * k] = ampere;
                            slope[2 * k + 1] = (pack.slowOhm * ampere - y[2 * k + 1]) / pack.slowS;
                        }
                        return slope;
                    }
                };
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(1e-6, 20, 1e-7, 1e-7);
        integrator.addStepHandler(watch(times));
        try {
            integrator.integrate(equation, new ODEState(0, new double[size]), 20_000);
        } catch (Ended end) {
            return times;
        }
        throw new AssertionError("nothing ended the reference");
    }

    /** Stops the integration. */
    private static final class Ended extends RuntimeException {
        private static final long serialVersionUID = 1;

        Ended() {
            super("", null, false, false);
        }
    }

    private interface Distance {
        double of(double[] y);
    }

    private ODEStepHandler watch(Times times) {
        return new ODEStepHandler() {
            @Override
            public void handleStep(ODEStateInterpolator step) {
                for (int k = 0; k < packs.size(); k++) {
                    int pack = k;
                    PackWithFans of = packs.get(k);
                    times.reserve[k] =
                            first(
                                    times.reserve[k],
                                    step,
                                    y -> of.charge - y[2 * pack] / of.capacityAs - reserve);
                    times.cellVolt[k] =
                            first(times.cellVolt[k], step, y -> cellV(pack, y) - leastV);
                    times.empty =
                            first(times.empty, step, y -> of.charge - y[2 * pack] / of.capacityAs);
                }
                times.fullThrottle = first(times.fullThrottle, step, y -> lift(y, 1) - weightN);
                if (times.end() < Double.POSITIVE_INFINITY) {
                    throw new Ended();
                }
            }
        };
    }

    private static double first(double known, ODEStateInterpolator step, Distance distance) {
        ODEStateAndDerivative before = step.getPreviousState();
        ODEStateAndDerivative after = step.getCurrentState();
        if (distance.of(before.getPrimaryState()) <= 0) {
            return Math.min(known, before.getTime());
        }
        if (known < Double.POSITIVE_INFINITY || distance.of(after.getPrimaryState()) > 0) {
            return known;
        }
        double low = before.getTime();
        double high = after.getTime();
        for (int k = 0; k < 30; k++) {
            double middle = (low + high) / 2;
            if (distance.of(step.getInterpolatedState(middle).getPrimaryState()) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.min(known, high);
    }
}
