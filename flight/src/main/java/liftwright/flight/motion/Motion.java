package liftwright.flight.motion;

import static liftwright.flight.motion.BodyState.OWN;
import static liftwright.flight.motion.BodyState.PX;
import static liftwright.flight.motion.BodyState.QW;
import static liftwright.flight.motion.BodyState.SIZE;
import static liftwright.flight.motion.BodyState.VX;

import java.util.Arrays;
import liftwright.physics.Rotation;
import liftwright.plant.Drive;

/**
 * Moves a rig by steps of one length: a rigid frame with loose masses on springs, pushed by fans,
 * held by the air it takes in, by feet and by lines. Classical Runge–Kutta of fourth order over
 * what the fans do at start, middle and end of a step; wind runs straight from start to end of it.
 * For one flight; allocates nothing after it was made.
 *
 * <p>What moves it stands in {@link BodyRates}.
 */
public final class Motion {

    private final FrameNumbers n;
    private final Air air;
    private final FanSums sums;
    private final Holds holds;
    private final BodyRates rates;
    private final Blown blown;
    private final double[] k1 = new double[SIZE];
    private final double[] k2 = new double[SIZE];
    private final double[] k3 = new double[SIZE];
    private final double[] k4 = new double[SIZE];
    private final double[] trial = new double[SIZE];
    private final int used;
    private final FanLoads own;
    private final double[] alongMps;
    private final double[] acrossMps;

    /** Body into scene, row by row. */
    private final double[] turn = new double[9];

    private final double[] felt = new double[3];
    private final double[] lastRate = new double[SIZE];

    /**
     * @param airframe the numbers of one draw
     * @param air what it flies in
     */
    public Motion(Airframe airframe, Air air) {
        n = new FrameNumbers(airframe);
        this.air = air;
        sums = new FanSums(n);
        holds = new Holds(n);
        blown = new Blown(n);
        rates = new BodyRates(n, sums, holds, blown);
        used = OWN + 6 * n.loose;
        own = new FanLoads(n.fans);
        alongMps = new double[n.fans];
        acrossMps = new double[n.fans];
    }

    /** Takes a state as the start: what feet stand on and what was felt before is forgotten. */
    public void begin(BodyState state) {
        holds.begin(state.y);
        Arrays.fill(lastRate, 0);
        Arrays.fill(felt, 0);
    }

    /**
     * Stands the rig on its feet at a place, its weight on all of them, nothing moving: the state
     * of a start. A wearer then carries the rig, and not the rig the wearer. On a slope a wearer
     * stands upright, and what nobody wears lies as the ground does.
     */
    public void stand(BodyState state, double xM, double yM, double headingRad) {
        double deepest = 0;
        double up = 0;
        for (int foot = 0; foot < n.feet; foot++) {
            deepest = Math.max(deepest, n.footAt[3 * foot + 2]);
            up = n.footOn[foot] == Airframe.FRAME ? 0 : n.weightN / n.looseK[2];
        }
        double pressed = n.feet == 0 ? 0 : n.weightN / (n.feet * n.ground.stiffnessNpm());
        state.rest(xM, yM, deepest - up - pressed, headingRad);
        if (n.sloped && n.feet > 0) {
            onSlope(state, pressed, up);
        }
        for (int k = 0; k < n.loose; k++) {
            state.y[OWN + 6 * k + 2] = -up;
        }
        begin(state);
    }

    private void onSlope(BodyState state, double pressedM, double upM) {
        double[] y = state.y;
        double[] g = n.plane;
        if (n.footOn[0] == Airframe.FRAME) {
            Rotation.lean(y, QW, n.ground.slopeRad(), n.ground.slopeToRad());
        }
        Rotation.matrix(y, QW, turn);
        double[] into = new double[3];
        for (int k = 0; k < 3; k++) {
            into[k] = g[6] * turn[k] + g[7] * turn[3 + k] + g[8] * turn[6 + k];
        }
        double deepest = Double.NEGATIVE_INFINITY;
        for (int foot = 0; foot < n.feet; foot++) {
            int at = 3 * foot;
            deepest =
                    Math.max(
                            deepest,
                            into[0] * n.footAt[at]
                                    + into[1] * n.footAt[at + 1]
                                    + into[2] * n.footAt[at + 2]);
        }
        double across = g[6] * y[PX] + g[7] * y[PX + 1];
        y[PX + 2] = upM - (deepest - pressedM + across) / g[8];
    }

    /**
     * Goes one step with a drive: air, inflow of every fan, the drive itself, the body.
     *
     * @param dtS usually 0.001 s
     * @return whether the drive found an operating point
     */
    public boolean step(double dtS, Drive drive, BodyState state) {
        air(dtS, state);
        inflow(dtS, state, alongMps, acrossMps);
        drive.inflow(alongMps, acrossMps);
        boolean found = drive.step(dtS);
        own.take(drive);
        step(dtS, own, state);
        return found;
    }

    /** Moves the air on by a step: first of the three calls of a step. */
    public void air(double dtS, BodyState state) {
        air.advance(dtS, state, Math.sqrt(sums.forceN() / n.weightN));
    }

    /**
     * How air comes to every fan in the middle of the next step, as far as speed and acceleration
     * tell: second call of a step.
     *
     * @param alongMps out: speed through the air along the thrust, above 0 into the intake, m/s
     * @param acrossMps out: the same across it, ≥ 0, m/s
     */
    public void inflow(double dtS, BodyState state, double[] alongMps, double[] acrossMps) {
        for (int k = 0; k < used; k++) {
            trial[k] = state.y[k] + dtS / 2 * lastRate[k];
        }
        Rotation.matrix(trial, QW, turn);
        double x = trial[VX] - (air.start[0] + air.end[0]) / 2;
        double y = trial[VX + 1] - (air.start[1] + air.end[1]) / 2;
        double z = trial[VX + 2] - (air.start[2] + air.end[2]) / 2;
        double u = turn[0] * x + turn[3] * y + turn[6] * z;
        double v = turn[1] * x + turn[4] * y + turn[7] * z;
        double w = turn[2] * x + turn[5] * y + turn[8] * z;
        if (blown.on) {
            sums.inflow(u, v, w, trial, blown.fanMps, alongMps, acrossMps);
        } else {
            sums.inflow(u, v, w, trial, alongMps, acrossMps);
        }
    }

    /**
     * Adds a jet of another to jets where it blows at this rig; scene axes.
     *
     * @param at place of its exit, three numbers, m
     * @param way where it goes, of length 1, three numbers
     * @param exitMps speed at the exit, &gt; 0
     */
    public void meet(
            JetAir jets,
            BodyState state,
            double[] at,
            double[] way,
            double exitM2,
            double exitMps) {
        blown.meet(jets, state, at, way, exitM2, exitMps);
    }

    /** Takes the jets of others that blow at it over the next step. */
    public void blow(JetAir jets, BodyState state) {
        blown.take(jets, state, air.end);
    }

    /**
     * What jets of others push over the last step, without what they take of the fans' thrust, N.
     */
    public double blownN() {
        return blown.forceN();
    }

    /** Goes no step: only the air moves on. */
    public void rest(double dtS, BodyState state) {
        air.advance(dtS, state, 0);
    }

    /**
     * Moves the rig by a step: last call.
     *
     * @param dtS usually 0.001 s
     * @param loads what the fans do over this step
     * @param state in, out
     */
    public void step(double dtS, FanLoads loads, BodyState state) {
        double[] y = state.y;
        sums.take(loads);
        if (blown.on) {
            blown.swallow(loads);
        }
        Arrays.fill(felt, 0);
        stage(y, FanLoads.START, 0, k1, 1);
        ahead(y, k1, dtS / 2);
        stage(trial, FanLoads.MIDDLE, 0.5, k2, 2);
        ahead(y, k2, dtS / 2);
        stage(trial, FanLoads.MIDDLE, 0.5, k3, 2);
        ahead(y, k3, dtS);
        stage(trial, FanLoads.END, 1, k4, 1);
        for (int k = 0; k < used; k++) {
            double rate = (k1[k] + 2 * k2[k] + 2 * k3[k] + k4[k]) / 6;
            y[k] += dtS * rate;
            lastRate[k] = rate;
        }
        Rotation.normalise(y, QW);
        Rotation.matrix(y, QW, turn);
        holds.settle(y, turn);
    }

    /**
     * What an accelerometer at the origin felt over the last step, its mean in body axes: all
     * forces but gravity over mass, m/s². At rest on the ground it is one g upwards.
     */
    public void specificForceMps2(double[] out) {
        System.arraycopy(felt, 0, out, 0, felt.length);
    }

    /** Push of the ground on a foot at the end of the last step, N. */
    public double footN(int foot) {
        return holds.footN[foot];
    }

    /** Push of the ground on all feet, N. */
    public double groundN() {
        double sum = 0;
        for (double each : holds.footN) {
            sum += each;
        }
        return sum;
    }

    /** How many feet stand on the ground. */
    public int feetDown() {
        int down = 0;
        for (double each : holds.footN) {
            down += each > 0 ? 1 : 0;
        }
        return down;
    }

    /** Pull of a line at the end of the last step, N. */
    public double lineN(int line) {
        return holds.lineN[line];
    }

    /** Pull of the line that pulls hardest then, N; 0 in none. */
    public double greatestPullN() {
        double most = 0;
        for (double each : holds.lineN) {
            most = Math.max(most, each);
        }
        return most;
    }

    private void ahead(double[] y, double[] rate, double byS) {
        for (int k = 0; k < used; k++) {
            trial[k] = y[k] + byS * rate[k];
        }
    }

    private void stage(double[] y, int moment, double share, double[] rate, int weight) {
        for (int k = 0; k < 3; k++) {
            rates.wind[k] = (1 - share) * air.start[k] + share * air.end[k];
        }
        rates.rates(y, moment, rate);
        for (int k = 0; k < 3; k++) {
            felt[k] += weight * rates.felt[k] / 6;
        }
    }
}
