package liftwright.plant.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.numerics.BoundedProgram;
import liftwright.numerics.LeastPower;
import liftwright.numerics.Zonotope;

/**
 * What a flight computer that commands every fan by itself can do at one state of the supply: trims
 * and reserves as linear programmes over the shares of full throttle. Each fan's thrust lies
 * between none and what it gives with all fans at full throttle, which is the least that a common
 * supply leaves it.
 */
public final class Allocation {

    /** Axes of moments, as they follow lift in the rows. */
    public enum Axis {
        ROLL(1),
        PITCH(2),
        YAW(3);

        private final int row;

        Axis(int row) {
            this.row = row;
        }

        /** Its place among lift, roll, pitch, yaw. */
        public int row() {
            return row;
        }
    }

    private static final int LIFT = 0;

    private final double weightN;
    private final double armM;

    /** Lift and moments of every fan at full throttle, over weight and weight times arm. */
    private final double[][] rows = new double[4][];

    /**
     * @param full every fan at full throttle
     * @param weightN to be held
     */
    public Allocation(List<FanAtWork> full, double weightN) {
        this.weightN = weightN;
        double squares = 0;
        for (FanAtWork fan : full) {
            squares += fan.arm().x() * fan.arm().x() + fan.arm().y() * fan.arm().y();
        }
        armM = squares > 0 ? Math.sqrt(squares / full.size()) : 1;
        for (int row = 0; row < rows.length; row++) {
            rows[row] = new double[full.size()];
        }
        for (int k = 0; k < full.size(); k++) {
            FanAtWork fan = full.get(k);
            rows[LIFT][k] = -fan.force().z() / weightN;
            rows[1][k] = fan.moment().x() / (weightN * armM);
            rows[2][k] = fan.moment().y() / (weightN * armM);
            rows[3][k] = fan.moment().z() / (weightN * armM);
        }
    }

    /**
     * A trim.
     *
     * @param share of full throttle's thrust, fan by fan
     * @param liftN N
     * @param yawNm moment left about the upright axis, N·m; rounding where yaw is held
     * @param gap proof of the optimum, {@link BoundedProgram.Found#gap}
     */
    public record Trim(List<Double> share, double liftN, double yawNm, double gap) {
        public Trim {
            share = List.copyOf(share);
        }
    }

    /**
     * The most lift without roll and pitch.
     *
     * @param yawHeld whether the moment about the upright axis is zero too
     * @return empty where no fan lifts and none balances another
     */
    public Optional<Trim> greatestLift(boolean yawHeld) {
        double[][] zero =
                yawHeld
                        ? new double[][] {rows[1], rows[2], rows[3]}
                        : new double[][] {rows[1], rows[2]};
        return found(rows[LIFT], zero, new double[zero.length])
                .map(
                        best ->
                                new Trim(
                                        Arrays.stream(best.x()).boxed().toList(),
                                        best.value() * weightN,
                                        sum(rows[3], best.x()) * weightN * armM,
                                        best.gap()));
    }

    /**
     * A trim that holds the weight with the least power.
     *
     * @param share of full throttle's thrust, fan by fan
     * @param powerW at shafts and in windings, by the laws of {@link #leastPower}
     * @param yawNm moment left about the upright axis, N·m
     * @param gap proof of the optimum, {@link LeastPower.Found#gap}
     */
    public record PowerTrim(List<Double> share, double powerW, double yawNm, double gap) {
        public PowerTrim {
            share = List.copyOf(share);
        }
    }

    /**
     * Weight held without roll and pitch with the least power. From full throttle down, power at a
     * shaft goes with thrust to the power 1.5 (thrust and torque with the square of the speed) and
     * heat in a winding with its square (current with torque).
     *
     * @param yawHeld whether the moment about the upright axis is zero too
     * @param shaftW power at each shaft at full throttle, W; above 0 where the fan pushes
     * @param copperW heat of the current in each winding at full throttle, W
     * @return empty where nothing holds the weight so
     */
    public Optional<PowerTrim> leastPower(boolean yawHeld, double[] shaftW, double[] copperW) {
        double[][] held = yawHeld ? rows : new double[][] {rows[LIFT], rows[1], rows[2]};
        double[] right = new double[held.length];
        right[0] = 1;
        var programme = new LeastPower(held.length, shaftW.length);
        return switch (programme.solve(shaftW, copperW, held, right)) {
            case LeastPower.Found(double powerW, double gap, double _) ->
                    Optional.of(
                            new PowerTrim(
                                    Arrays.stream(programme.x()).boxed().toList(),
                                    powerW,
                                    sum(rows[3], programme.x()) * weightN * armM,
                                    gap));
            case LeastPower.Impossible _ -> Optional.empty();
            case LeastPower.Undecided _ ->
                    throw new IllegalStateException("a trim of least power was not proved");
        };
    }

    /**
     * Greatest moment about one axis with the others zero and lift at weight, N·m. Below zero where
     * even the trim is impossible; empty where nothing holds lift and the other axes.
     *
     * @param sign +1 or −1: which way
     * @param yawHeld whether yaw counts among the others
     */
    public Optional<Double> reserveNm(Axis axis, int sign, boolean yawHeld) {
        List<double[]> held = new ArrayList<>();
        held.add(rows[LIFT]);
        for (Axis other : Axis.values()) {
            if (other != axis && (other != Axis.YAW || yawHeld)) {
                held.add(rows[other.row]);
            }
        }
        double[] right = new double[held.size()];
        right[0] = 1;
        double[] along = rows[axis.row].clone();
        for (int k = 0; k < along.length; k++) {
            along[k] *= sign;
        }
        return found(along, held.toArray(new double[0][]), right)
                .map(best -> best.value() * weightN * armM);
    }

    /**
     * Authority index: distance of hover from the edge of what lift and moments the fans can give,
     * moments divided by {@link #armM}, in N. Outside (below 0) only a bound.
     */
    public double authorityN() {
        int fans = rows[LIFT].length;
        double[][] half = new double[fans][4];
        double[] hover = {1, 0, 0, 0};
        for (int k = 0; k < fans; k++) {
            for (int row = 0; row < 4; row++) {
                half[k][row] = rows[row][k] / 2;
                hover[row] -= half[k][row];
            }
        }
        return Zonotope.depth(half, hover) * weightN;
    }

    /** Root mean square distance of the fans from the upright axis through the centre, m. */
    public double armM() {
        return armM;
    }

    private static double sum(double[] row, double[] x) {
        double sum = 0;
        for (int k = 0; k < row.length; k++) {
            sum += row[k] * x[k];
        }
        return sum;
    }

    private static Optional<BoundedProgram.Found> found(double[] c, double[][] a, double[] b) {
        double[] one = new double[c.length];
        Arrays.fill(one, 1);
        return switch (BoundedProgram.greatest(c, a, b, one)) {
            case BoundedProgram.Found found -> Optional.of(found);
            case BoundedProgram.Impossible _ -> Optional.empty();
            case BoundedProgram.Undecided _ ->
                    throw new IllegalStateException("a programme of few rows ran out of steps");
        };
    }
}
