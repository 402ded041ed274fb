package liftwright.review.referee;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * A module that flies by itself, from its own small solver: fans that push straight up, each on one
 * pack by a branch of its own, found by bisection of speed and voltage; points, disks and one box
 * for its inertia; linear programmes by another library.
 *
 * @param density of the air, kg/m³
 * @param unit of every fan
 * @param x forward of each fan, m
 * @param y right of each fan, m
 * @param rightHand which way each turns
 * @param packOf number of the pack of each fan
 * @param packX forward of each pack, m
 * @param packUpM how high the packs lie, m
 * @param emfV of each pack
 * @param sourceOhm of pack and trunk
 * @param branchOhm of each branch
 * @param fanKg with its controller
 * @param packKg of each pack
 * @param frameKg of the box about the middle
 * @param frameM its edges: forward, right, up
 * @param middleKg further mass in the middle
 * @param highKg further mass above the middle
 * @param highM how high
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record RefereeModule(
        double density,
        Unit unit,
        double[] x,
        double[] y,
        boolean[] rightHand,
        int[] packOf,
        double[] packX,
        double packUpM,
        double emfV,
        double sourceOhm,
        double branchOhm,
        double fanKg,
        double packKg,
        double frameKg,
        double[] frameM,
        double middleKg,
        double highKg,
        double highM) {

    private static final int STEPS = 60;
    private static final double G = 9.80665;

    /**
     * A fan with motor and controller, at full duty.
     *
     * @param thrustPerSpeed2 at 1.225 kg/m³, N s²
     * @param torquePerSpeed2 at 1.225 kg/m³, N m s²
     * @param kv rad/s for each volt
     * @param swirl share of the torque
     * @param factor of thrust by intake and installation
     * @param tipM radius
     */
    record Unit(
            double thrustPerSpeed2,
            double torquePerSpeed2,
            double kv,
            double ohm,
            double noLoadA,
            double fixedW,
            double swirl,
            double factor,
            double tipM) {}

    /** What is left: lift over weight, trimmed lift over weight, least reserves in rad/s². */
    record Left(double lift, double trimmed, double roll, double pitch, double yaw) {}

    int fans() {
        return x.length;
    }

    double massKg() {
        return fans() * fanKg + packX.length * packKg + frameKg + middleKg + highKg;
    }

    private double current(double omega) {
        return unit.noLoadA + unit.kv * unit.torquePerSpeed2 * density / 1.225 * omega * omega;
    }

    private double terminal(double omega) {
        return unit.ohm * current(omega) + omega / unit.kv;
    }

    private double bus(double omega) {
        return current(omega) + unit.fixedW / terminal(omega);
    }

    /** Speed of a fan whose branch hangs on a voltage. */
    private double speed(double splitV) {
        double low = 1;
        double high = splitV * unit.kv;
        for (int k = 0; k < STEPS; k++) {
            double omega = (low + high) / 2;
            if (terminal(omega) + branchOhm * bus(omega) < splitV) {
                low = omega;
            } else {
                high = omega;
            }
        }
        return low;
    }

    /** Speed of so many fans on one pack. */
    private double speed(int sharing) {
        double low = 0.3 * emfV;
        double high = emfV;
        for (int k = 0; k < STEPS; k++) {
            double split = (low + high) / 2;
            if (split + sourceOhm * sharing * bus(speed(split)) < emfV) {
                low = split;
            } else {
                high = split;
            }
        }
        return speed(low);
    }

    /** What is left with some fans dead. */
    Left without(boolean[] dead) {
        int[] sharing = new int[packX.length];
        for (int k = 0; k < fans(); k++) {
            sharing[packOf[k]] += dead[k] ? 0 : 1;
        }
        double weight = massKg() * G;
        double[][] rows = new double[4][fans()];
        double lift = 0;
        double middle = centreX();
        for (int k = 0; k < fans(); k++) {
            if (!dead[k]) {
                double omega = speed(sharing[packOf[k]]);
                double thin = density / 1.225 * omega * omega;
                double thrust = unit.thrustPerSpeed2 * thin * unit.factor;
                rows[0][k] = thrust;
                rows[1][k] = -y[k] * thrust;
                rows[2][k] = (x[k] - middle) * thrust;
                rows[3][k] = (rightHand[k] ? 1 : -1) * unit.swirl * unit.torquePerSpeed2 * thin;
                lift += thrust;
            }
        }
        double[] inertia = inertia();
        return new Left(
                lift / weight,
                best(rows, 0, 1, weight) / weight,
                least(rows, 1, weight) / inertia[0],
                least(rows, 2, weight) / inertia[1],
                least(rows, 3, weight) / inertia[2]);
    }

    private static double least(double[][] rows, int axis, double weight) {
        return Math.min(best(rows, axis, 1, weight), best(rows, axis, -1, weight));
    }

    /** Most of a row, the other moments zero and (of a moment) lift at weight; −∞ where none. */
    private static double best(double[][] rows, int along, int sign, double weight) {
        List<LinearConstraint> held = new ArrayList<>();
        for (int row = 0; row < rows.length; row++) {
            if (row != along) {
                held.add(
                        new LinearConstraint(
                                over(rows[row], weight), Relationship.EQ, row == 0 ? 1 : 0));
            }
        }
        double[] aim = over(rows[along], sign * weight);
        for (int k = 0; k < aim.length; k++) {
            double[] one = new double[aim.length];
            one[k] = 1;
            held.add(new LinearConstraint(one, Relationship.LEQ, 1));
        }
        try {
            return weight
                    * new SimplexSolver(1e-10, 10, 1e-12)
                            .optimize(
                                    new MaxIter(100_000),
                                    new LinearObjectiveFunction(aim, 0),
                                    new LinearConstraintSet(held),
                                    new NonNegativeConstraint(true),
                                    GoalType.MAXIMIZE)
                            .getValue();
        } catch (MathIllegalStateException none) {
            return Double.NEGATIVE_INFINITY;
        }
    }

    private static double[] over(double[] row, double by) {
        double[] shares = new double[row.length];
        for (int k = 0; k < shares.length; k++) {
            shares[k] = row[k] / by;
        }
        return shares;
    }

    private double centreX() {
        double sum = 0;
        for (double one : x) {
            sum += fanKg * one;
        }
        for (double one : packX) {
            sum += packKg * one;
        }
        return sum / massKg();
    }

    /** About the centre of mass; the middle lies between right and left. */
    private double[] inertia() {
        double middle = centreX();
        double up = (packX.length * packKg * packUpM + highKg * highM) / massKg();
        double[] sum = new double[3];
        double disk = fanKg * unit.tipM * unit.tipM;
        for (int k = 0; k < fans(); k++) {
            point(sum, fanKg, x[k] - middle, y[k], -up);
            sum[0] += disk / 4;
            sum[1] += disk / 4;
            sum[2] += disk / 2;
        }
        for (double one : packX) {
            point(sum, packKg, one - middle, 0, packUpM - up);
        }
        point(sum, frameKg + middleKg, -middle, 0, -up);
        point(sum, highKg, -middle, 0, highM - up);
        List<int[]> across = List.of(new int[] {1, 2}, new int[] {0, 2}, new int[] {0, 1});
        for (int axis = 0; axis < 3; axis++) {
            double a = frameM[across.get(axis)[0]];
            double b = frameM[across.get(axis)[1]];
            sum[axis] += frameKg * (a * a + b * b) / 12;
        }
        return sum;
    }

    private static void point(double[] sum, double kg, double x, double y, double up) {
        sum[0] += kg * (y * y + up * up);
        sum[1] += kg * (x * x + up * up);
        sum[2] += kg * (x * x + y * y);
    }
}
