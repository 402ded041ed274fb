package liftwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import liftwright.flight.motion.Air;
import liftwright.flight.motion.Airframe;
import liftwright.flight.motion.BodyState;
import liftwright.flight.motion.FanLoads;
import liftwright.flight.motion.Motion;
import liftwright.flight.motion.Wind;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * A second of a rigid rig of 24 fans in a wind, nobody at the controls: our steps of 1 ms beside a
 * library's Runge–Kutta steps of the same rule and length, and its adaptive steps of eighth order
 * at an allowed error of a thousand-millionth. The library gets the equations as one would write
 * them, fan by fan. Supply and rotors are not in it.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class FlightSteps {

    private static final double WEIGHT_N = 120 * 9.80665;
    private static final int FANS = 24;
    private static final double FLOW_KGPS = 0.7;
    private static final double[] INERTIA = {12, 10, 9};

    private final double[] axis = new double[3 * FANS];
    private final double[] at = new double[3 * FANS];
    private final FanLoads loads = new FanLoads(FANS);
    private final BodyState state = new BodyState();
    private Motion motion = new Motion(body(List.of()), Air.still());

    private static Airframe body(List<Airframe.FanLine> fans) {
        return new Airframe(
                WEIGHT_N / 9.80665,
                new Inertia(INERTIA[0], INERTIA[1], INERTIA[2], 0, 0, 0),
                fans,
                List.of(),
                List.of(),
                new Airframe.Ground(1e4, 1, 1e4, 100, 0.6),
                Airframe.Drag.NONE,
                List.of(),
                1.225);
    }

    @Setup
    public void build() {
        SplittableRandom random = new SplittableRandom(5);
        List<Airframe.FanLine> fans = new ArrayList<>();
        for (int k = 0; k < FANS; k++) {
            Vec3 place = new Vec3(random.nextDouble() - 0.5, random.nextDouble() - 0.5, -0.1);
            Vec3 lean = new Vec3(0.1 * random.nextDouble(), 0.1 * random.nextDouble(), -1);
            Vec3 way = lean.times(1 / lean.length());
            fans.add(new Airframe.FanLine(place, place, way));
            put(way, axis, k);
            put(place, at, k);
            loads.steady(k, WEIGHT_N / FANS, 0, 0, FLOW_KGPS);
        }
        motion = new Motion(body(fans), new Air(Wind.of(4, 0).smooth(), 1, 1));
        double apart = 0;
        double[] own = ours();
        double[] other = adaptive();
        for (int k = 0; k < BodyState.OWN; k++) {
            apart = Math.max(apart, Math.abs(own[k] - other[k]));
        }
        if (!(apart < 1e-6)) {
            throw new IllegalStateException("not the same flight: " + apart);
        }
    }

    private static void put(Vec3 v, double[] to, int number) {
        to[3 * number] = v.x();
        to[3 * number + 1] = v.y();
        to[3 * number + 2] = v.z();
    }

    @Benchmark
    public double[] ours() {
        return ours(1000);
    }

    /** The second in so many steps. */
    double[] ours(int steps) {
        double stepS = 1.0 / steps;
        state.rest(0, 0, 50, 0);
        motion.begin(state);
        for (int k = 0; k < steps; k++) {
            motion.air(stepS, state);
            motion.step(stepS, loads, state);
        }
        return state.y;
    }

    @Benchmark
    public double[] libraryRungeKutta() {
        return fly(new ClassicalRungeKuttaIntegrator(0.001));
    }

    @Benchmark
    public double[] adaptive() {
        return adaptive(1e-9);
    }

    /** The second at so small an allowed error. */
    double[] adaptive(double allowed) {
        return fly(new DormandPrince853Integrator(1e-6, 0.1, allowed, allowed));
    }

    private double[] fly(ODEIntegrator integrator) {
        double[] y = new double[BodyState.OWN];
        y[BodyState.PZ] = -50;
        y[BodyState.QW] = 1;
        return integrator.integrate(new Slopes(), new ODEState(0, y), 1).getPrimaryState();
    }

    /** The rigid body as one would write it. */
    private final class Slopes implements OrdinaryDifferentialEquation {

        @Override
        public int getDimension() {
            return BodyState.OWN;
        }

        @Override
        public double[] computeDerivatives(double t, double[] y) {
            double w = y[BodyState.QW];
            double i = y[BodyState.QX];
            double j = y[BodyState.QY];
            double k = y[BodyState.QZ];
            double[] r = {
                1 - 2 * (j * j + k * k),
                2 * (i * j - w * k),
                2 * (i * k + w * j),
                2 * (i * j + w * k),
                1 - 2 * (i * i + k * k),
                2 * (j * k - w * i),
                2 * (i * k - w * j),
                2 * (j * k + w * i),
                1 - 2 * (i * i + j * j)
            };
            double p = y[BodyState.WX];
            double q = y[BodyState.WY];
            double s = y[BodyState.WZ];
            // A head wind of 4 m/s.
            double x = y[BodyState.VX] + 4;
            double u = r[0] * x + r[3] * y[BodyState.VY] + r[6] * y[BodyState.VZ];
            double v = r[1] * x + r[4] * y[BodyState.VY] + r[7] * y[BodyState.VZ];
            double z = r[2] * x + r[5] * y[BodyState.VY] + r[8] * y[BodyState.VZ];
            double[] force = new double[3];
            double[] moment = new double[3];
            for (int fan = 0; fan < FANS; fan++) {
                int n = 3 * fan;
                double a = u + q * at[n + 2] - s * at[n + 1];
                double b = v + s * at[n] - p * at[n + 2];
                double c = z + p * at[n + 1] - q * at[n];
                double along = a * axis[n] + b * axis[n + 1] + c * axis[n + 2];
                double push = WEIGHT_N / FANS + FLOW_KGPS * along;
                double fx = push * axis[n] - FLOW_KGPS * a;
                double fy = push * axis[n + 1] - FLOW_KGPS * b;
                double fz = push * axis[n + 2] - FLOW_KGPS * c;
                force[0] += fx;
                force[1] += fy;
                force[2] += fz;
                moment[0] += at[n + 1] * fz - at[n + 2] * fy;
                moment[1] += at[n + 2] * fx - at[n] * fz;
                moment[2] += at[n] * fy - at[n + 1] * fx;
            }
            double kg = WEIGHT_N / 9.80665;
            return new double[] {
                y[BodyState.VX],
                y[BodyState.VY],
                y[BodyState.VZ],
                (r[0] * force[0] + r[1] * force[1] + r[2] * force[2]) / kg,
                (r[3] * force[0] + r[4] * force[1] + r[5] * force[2]) / kg,
                (r[6] * force[0] + r[7] * force[1] + r[8] * force[2]) / kg + 9.80665,
                -(i * p + j * q + k * s) / 2,
                (w * p + j * s - k * q) / 2,
                (w * q + k * p - i * s) / 2,
                (w * s + i * q - j * p) / 2,
                (moment[0] - (INERTIA[2] - INERTIA[1]) * q * s) / INERTIA[0],
                (moment[1] - (INERTIA[0] - INERTIA[2]) * s * p) / INERTIA[1],
                (moment[2] - (INERTIA[1] - INERTIA[0]) * p * q) / INERTIA[2]
            };
        }
    }
}
