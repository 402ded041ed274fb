package liftwright.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import liftwright.numerics.FeedbackGain;
import liftwright.numerics.LeastPower;
import liftwright.numerics.Zonotope;
import liftwright.plant.balance.Allocation;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.body.Inertia;
import liftwright.plant.fault.Effect;
import liftwright.plant.fault.LossTrims;
import liftwright.rig.Vec3;

/**
 * What a flight computer makes of the fans that a loss leaves it: each fan between none and what it
 * gives with all survivors at full throttle, which is the least that the common supply leaves it; a
 * stuck one at what it gives. For one thread.
 */
final class LossSteering {

    private static final int ROWS = 4;

    /** A moment is held that is missed by no more than this, in weights times arm. */
    private static final double HELD = 1e-9;

    private final int count;
    private final LossTrims trims;
    private final LeastPower power;
    private final LeastPower powerFree;

    /** What a weight of each fan's thrust does on the whole rig: lift, roll, pitch, yaw. */
    private final double[][] sound;

    private final double[] sense;
    private final boolean[] stuck;
    private final double[] fullN;
    private final double[] shaftW;
    private final double[] copperW;
    private final double[] orderedN;
    private List<FanAtWork> work = List.of();
    private Inertia inertia = Inertia.ZERO;
    private double weightN;
    private double armM;
    private int[] reaches = {};

    /** Whether stuck fans leave a trim with what they give in it. */
    private boolean settles = true;

    LossSteering(int count) {
        this.count = count;
        trims = new LossTrims(count);
        power = new LeastPower(ROWS, count);
        powerFree = new LeastPower(ROWS - 1, count);
        sound = new double[ROWS][count];
        sense = new double[count];
        stuck = new boolean[count];
        fullN = new double[count];
        shaftW = new double[count];
        copperW = new double[count];
        orderedN = new double[count];
    }

    /** Takes the fans of the whole rig, as they push there. */
    void load(List<FanAtWork> fans, double rigWeightN, Inertia of) {
        work = fans;
        weightN = rigWeightN;
        inertia = of;
        armM = new Allocation(fans, rigWeightN).armM();
        for (int k = 0; k < count; k++) {
            column(k, 1, sound);
            column(k, 1, trims.unit());
        }
    }

    /** Takes what the whole rig gives at full throttle: where every loss starts from. */
    void whole(FansUnderOrder fans, LossFlow flow) {
        take(fans, flow);
        trims.whole(1);
    }

    private void column(int k, double turns, double[][] into) {
        FanAtWork fan = work.get(k);
        Vec3 force = fan.actual().plus(fan.strike().force()).times(turns);
        Vec3 moment = fan.arm().cross(fan.actual()).plus(fan.strike().turn()).times(turns);
        if (fan.thrustN() != 0) {
            double swirlM = Math.signum(turns) * fan.swirlNm() / fan.thrustN();
            moment = moment.plus(fan.actual().times(swirlM));
        }
        into[0][k] = -force.z();
        into[1][k] = moment.x() / armM;
        into[2][k] = moment.y() / armM;
        into[3][k] = moment.z() / armM;
    }

    /**
     * Takes a loss and what it leaves at full throttle.
     *
     * @param whole with everything that is dead
     * @param flow all survivors at full throttle
     */
    void lose(Effect whole, FansUnderOrder fans, LossFlow flow) {
        for (int k = 0; k < count; k++) {
            if (sense[k] != 1 && fans.sense(k) == 1) {
                column(k, 1, trims.unit());
                trims.restored(k);
            }
        }
        take(fans, flow);
        for (int k = 0; k < count; k++) {
            if (sense[k] != 1) {
                column(k, sense[k], trims.unit());
                trims.turned(k);
            }
        }
        reaches = IntStream.range(0, count).toArray();
        for (int[] pair : whole.exchangedChannels()) {
            int one = reaches[pair[0]];
            reaches[pair[0]] = reaches[pair[1]];
            reaches[pair[1]] = one;
        }
    }

    private void take(FansUnderOrder fans, LossFlow flow) {
        flow.full(fullN, shaftW, copperW);
        for (int k = 0; k < count; k++) {
            sense[k] = fans.sense(k);
            stuck[k] = fans.units().isStuck(k);
            trims.most()[k] = fullN[k] / weightN;
            trims.least()[k] = stuck[k] ? trims.most()[k] : 0;
        }
        settles = true;
    }

    /** Tells whether a trim was found with stuck fans at what they give in it. */
    void settles(boolean found) {
        settles = found;
    }

    /**
     * Takes over what a stuck fan gives now.
     *
     * @return change over the weight
     */
    double stuckAt(int fan, double nowN) {
        double now = nowN / weightN;
        double change = Math.abs(now - trims.most()[fan]);
        trims.least()[fan] = now;
        trims.most()[fan] = now;
        return change;
    }

    /** Finds the thrusts of least power that hold a lift, yaw held if it can be. */
    boolean trim(double wantedN) {
        return trim(wantedN, power, ROWS) || trim(wantedN, powerFree, ROWS - 1);
    }

    /** Thrusts to order, as {@link #trim} found them, N. */
    double[] orderedN() {
        return orderedN.clone();
    }

    private boolean trim(double wantedN, LeastPower programme, int rows) {
        double[][] a = new double[rows][count];
        double[] b = new double[rows];
        double[] shaft = new double[count];
        double[] copper = new double[count];
        b[0] = wantedN / weightN;
        for (int k = 0; k < count; k++) {
            double range = stuck[k] ? 0 : trims.most()[k];
            for (int i = 0; i < rows; i++) {
                a[i][k] = trims.unit()[i][k] * range;
                b[i] -= trims.unit()[i][k] * trims.least()[k];
            }
            shaft[k] = range > 0 ? shaftW[k] : 0;
            copper[k] = range > 0 ? copperW[k] : 0;
        }
        if (!(programme.solve(shaft, copper, a, b) instanceof LeastPower.Found)) {
            return false;
        }
        for (int k = 0; k < count; k++) {
            orderedN[k] = programme.x()[k] * trims.most()[k] * weightN;
        }
        return true;
    }

    /** All of it, for a lift to be held. */
    LossPoint.Computer told(double wantedN) {
        return new LossPoint.Computer(
                trims(true, wantedN), trims(false, wantedN), authorityN(wantedN / weightN), loop());
    }

    /** Trims and reserves, for a lift to be held. */
    LossPoint.Trims trims(boolean yawHeld, double wantedN) {
        trims.takeGap();
        double lift = wantedN / weightN;
        double most = trims.greatestLift(yawHeld);
        List<LossPoint.Reserve> reserves = new ArrayList<>();
        boolean holds = settles;
        for (Allocation.Axis axis : Allocation.Axis.values()) {
            for (int sign = 1; sign >= -1; sign -= 2) {
                double reserve = trims.reserve(axis.row(), sign, yawHeld, lift);
                holds &= (axis == Allocation.Axis.YAW && !yawHeld) || reserve >= -HELD;
                reserves.add(
                        new LossPoint.Reserve(
                                axis, sign, told(reserve, weightN * armM), inertiaKgm2(axis)));
            }
        }
        return new LossPoint.Trims(told(most, weightN), holds, reserves, trims.takeGap());
    }

    private static OptionalDouble told(double value, double unit) {
        return value == LossTrims.NONE ? OptionalDouble.empty() : OptionalDouble.of(value * unit);
    }

    private double inertiaKgm2(Allocation.Axis axis) {
        return switch (axis) {
            case ROLL -> inertia.xx();
            case PITCH -> inertia.yy();
            case YAW -> inertia.zz();
        };
    }

    /** Distance of a lift from the edge of what can be given. */
    private double authorityN(double lift) {
        double[][] half = new double[count][ROWS];
        double[] to = {lift, 0, 0, 0};
        for (int k = 0; k < count; k++) {
            for (int row = 0; row < ROWS; row++) {
                double unit = trims.unit()[row][k];
                half[k][row] = unit * (trims.most()[k] - trims.least()[k]) / 2;
                to[row] -= unit * (trims.most()[k] + trims.least()[k]) / 2;
            }
        }
        return Zonotope.depth(half, to) * weightN;
    }

    /** Whether what the computer believes of its channels still steers. */
    double loop() {
        boolean right = true;
        double[][] real = new double[ROWS][count];
        for (int k = 0; k < count; k++) {
            int fan = reaches[k];
            right &= fan == k && sense[k] > 0;
            for (int row = 0; row < ROWS && !stuck[fan] && fullN[fan] > 0; row++) {
                real[row][k] = trims.unit()[row][fan];
            }
        }
        return right ? 1 : FeedbackGain.least(sound, real);
    }
}
