package liftwright.flight.loops;

import java.util.Arrays;
import liftwright.flight.motion.BodyState;
import liftwright.physics.Gravity;
import liftwright.plant.body.Inertia;

/**
 * The loops at work: position → velocity → attitude → rate → {@link Mixer}. For one run; steps
 * allocate nothing.
 *
 * <p>No integral grows unless the rig is free, nor against a bound: of tilt, of lift, of what the
 * fans give. On the ground lift follows a ramp towards what is wanted, and what it has reached when
 * the rig comes free is where the integral of climb starts.
 */
public final class Controller {

    /** Numbers of a felt state: place, velocity (scene), quaternion, turn rates (body). */
    public static final int FELT = BodyState.OWN;

    /** Ramp of lift on the ground over weight, 1/s: fast below four fifths, then slow. */
    private static final double RAMP_FAST = 0.8;

    private static final double RAMP_SLOW = 0.2;
    private static final double SLOW_ABOVE = 0.8;
    private static final double RAMP_DOWN = 0.7;

    /** Most lift on the ground over weight: what lacks then is no matter of trim. */
    private static final double RAMP_MOST = 1.6;

    /** Least lift in the air over weight: fans that nearly stand give no moments. */
    private static final double LEAST_LIFT = 0.5;

    /** Integral of climb over gravity, at most. */
    private static final double MOST_TRIM = 0.6;

    /** A set point that goes faster than so many times the limit of speed has jumped. */
    private static final double JUMP = 2;

    /** Share of the greatest lift that is kept back for moments. */
    private static final double KEPT = 0.05;

    private final Mixer mixer;
    private final Gains gains;
    private final Inertia inertia;
    private final double massKg;
    private final Craft craft;
    private final Attitude attitude = new Attitude();
    private final double[] wrench = new double[FanMatrix.ROWS];
    private final double[] rateIntegral = new double[3];
    private final double[] acrossIntegral = new double[2];
    private final double[] across = new double[2];
    private final double[] turning = new double[3];
    private final double[] last = new double[3];
    private final double[] moves = new double[3];
    private boolean followed;
    private Limits limits = Limits.USUAL;
    private double climbIntegral;
    private double slowYawNm;
    private double ramp;
    private boolean wasGrounded = true;

    public Controller(LoopDesign.Granted granted) {
        craft = granted.craft();
        mixer = new Mixer(craft);
        gains = new Gains(granted);
        inertia = craft.inertia();
        massKg = craft.massKg();
    }

    public Mixer mixer() {
        return mixer;
    }

    public void limits(Limits to) {
        limits = to;
    }

    /** Forgets what integrals hold: the rig stands with fans at idle. */
    public void begin() {
        Arrays.fill(rateIntegral, 0);
        Arrays.fill(acrossIntegral, 0);
        climbIntegral = 0;
        followed = false;
        slowYawNm = 0;
        ramp = 0;
        wasGrounded = true;
    }

    /** Angular acceleration that integrals hold about an axis, 0 roll, 1 pitch, 2 yaw, rad/s². */
    public double rateIntegralRadps2(int axis) {
        return rateIntegral[axis];
    }

    /** Acceleration upwards that the integral of climb holds, m/s². */
    public double climbIntegralMps2() {
        return climbIntegral;
    }

    /** Acceleration over the ground that integrals hold, 0 scene x, 1 scene y, m/s². */
    public double acrossIntegralMps2(int axis) {
        return acrossIntegral[axis];
    }

    /**
     * One step of the computer.
     *
     * @param dtS since the last
     * @param felt in: {@value #FELT} numbers as estimated, in the order of {@link BodyState}
     * @param standing what else holds the rig
     * @param wanted the set point
     * @param fanV in: voltage measured at each controller, V
     * @param duty out: 0 to 1 for each fan
     */
    public void step(
            double dtS,
            double[] felt,
            Standing standing,
            Wanted wanted,
            double[] fanV,
            double[] duty) {
        if (wanted.kind() == Wanted.Kind.IDLE) {
            begin();
            idle(fanV, duty);
            return;
        }
        attitude.take(felt);
        follow(dtS, wanted);
        boolean free = standing == Standing.FREE;
        double upMps2 = climb(dtS, felt, standing, wanted);
        across(dtS, felt, free, wanted);
        double lift = massKg * (Gravity.STANDARD_MPS2 + upMps2);
        // Thrust wanted: upwards and over the ground; the body's downward axis lies against it.
        attitude.against(
                -across[0],
                -across[1],
                Math.max(Gravity.STANDARD_MPS2 + upMps2, 0.5 * Gravity.STANDARD_MPS2),
                wanted.headingRad());
        turn(dtS, felt, free);
        wrench[0] = lift / Math.max(attitude.upright(), 0.7);
        mixer.share(wrench, fanV, duty);
        unwind(dtS, free);
    }

    /** How fast a set point of place moves: it is not chased but gone with. A jump is no speed. */
    private void follow(double dtS, Wanted wanted) {
        boolean went = wanted.kind() == Wanted.Kind.POSITION && followed;
        followed = wanted.kind() == Wanted.Kind.POSITION;
        move(0, dtS, wanted.x(), went, limits.speedMps());
        move(1, dtS, wanted.y(), went, limits.speedMps());
        move(2, dtS, wanted.up(), went, limits.climbMps());
    }

    private void move(int axis, double dtS, double to, boolean went, double mostMps) {
        double mps = went ? (to - last[axis]) / dtS : 0;
        moves[axis] = Math.abs(mps) <= JUMP * mostMps ? mps : 0;
        last[axis] = to;
    }

    private void idle(double[] fanV, double[] duty) {
        for (int f = 0; f < duty.length; f++) {
            Lifter fan = craft.fans().get(f);
            duty[f] = fanV[f] > 0 ? Math.clamp(fan.volts().at(fan.idleN()) / fanV[f], 0, 1) : 0;
        }
    }

    /** Acceleration upwards, m/s²; on the ground by the ramp. */
    private double climb(double dtS, double[] felt, Standing standing, Wanted wanted) {
        double up = wanted.up();
        if (wanted.kind() == Wanted.Kind.POSITION) {
            double far = wanted.up() + felt[BodyState.PZ];
            up = approach(far, gains.heightPerS, 0.5 * Math.min(gains.liftMps2, 2)) + moves[2];
        }
        up = Math.clamp(up, -limits.climbMps(), limits.climbMps());
        boolean grounded = standing == Standing.STANDS || standing == Standing.ONE_FOOT;
        if (grounded) {
            double rise = ramp < SLOW_ABOVE ? RAMP_FAST : RAMP_SLOW;
            ramp = Math.clamp(ramp + dtS * (up > 0 ? rise : -RAMP_DOWN), 0, RAMP_MOST);
            wasGrounded = true;
            return (ramp - 1) * Gravity.STANDARD_MPS2;
        }
        if (wasGrounded) {
            climbIntegral = Math.clamp(ramp - 1, -MOST_TRIM, MOST_TRIM) * Gravity.STANDARD_MPS2;
            wasGrounded = false;
        }
        double miss = up + felt[BodyState.VZ];
        double asked = gains.climbPerS * miss + climbIntegral;
        double least = (LEAST_LIFT - 1) * Gravity.STANDARD_MPS2;
        double most = (1 - KEPT) * (gains.liftMps2 + Gravity.STANDARD_MPS2) - Gravity.STANDARD_MPS2;
        double given = Math.clamp(asked, least, Math.max(most, climbIntegral));
        boolean held = given != asked && (asked > given) == (miss > 0);
        if (standing == Standing.FREE
                && !held
                && !(mixer.saturated() && shortOfLift() && miss > 0)) {
            double bound = MOST_TRIM * Gravity.STANDARD_MPS2;
            climbIntegral =
                    Math.clamp(climbIntegral + dtS * gains.climbPerS2 * miss, -bound, bound);
        }
        ramp = Math.min(RAMP_MOST, 1 + given / Gravity.STANDARD_MPS2);
        return given;
    }

    private boolean shortOfLift() {
        return mixer.got(0) < 0.99 * wrench[0];
    }

    /** Acceleration over the ground: into {@link #across}. */
    private void across(double dtS, double[] felt, boolean free, Wanted wanted) {
        double most = Gravity.STANDARD_MPS2 * Math.tan(limits.tiltRad());
        double vx = wanted.x();
        double vy = wanted.y();
        if (wanted.kind() == Wanted.Kind.CLIMB) {
            across[0] = acrossIntegral[0];
            across[1] = acrossIntegral[1];
            return;
        }
        if (wanted.kind() == Wanted.Kind.POSITION) {
            double farX = wanted.x() - felt[BodyState.PX];
            double farY = wanted.y() - felt[BodyState.PY];
            double far = Math.hypot(farX, farY);
            double speed = approach(far, gains.positionPerS, 0.3 * most);
            vx = moves[0] + (far > 0 ? speed * farX / far : 0);
            vy = moves[1] + (far > 0 ? speed * farY / far : 0);
        }
        double fast = Math.hypot(vx, vy);
        if (fast > limits.speedMps()) {
            vx *= limits.speedMps() / fast;
            vy *= limits.speedMps() / fast;
        }
        double missX = vx - felt[BodyState.VX];
        double missY = vy - felt[BodyState.VY];
        across[0] = gains.velocityPerS * missX + acrossIntegral[0];
        across[1] = gains.velocityPerS * missY + acrossIntegral[1];
        double asked = Math.hypot(across[0], across[1]);
        boolean held = asked > most;
        if (held) {
            across[0] *= most / asked;
            across[1] *= most / asked;
        }
        // Against the bound of tilt it may only shrink.
        boolean grows = missX * acrossIntegral[0] + missY * acrossIntegral[1] > 0;
        if (free && !(held && grows)) {
            acrossIntegral[0] += dtS * gains.velocityPerS2 * missX;
            acrossIntegral[1] += dtS * gains.velocityPerS2 * missY;
            double size = Math.hypot(acrossIntegral[0], acrossIntegral[1]);
            if (size > most) {
                acrossIntegral[0] *= most / size;
                acrossIntegral[1] *= most / size;
            }
        }
        if (!free) {
            // Feet or a line would answer: no leaning against them.
            across[0] = 0;
            across[1] = 0;
        }
    }

    /** Speed towards something so far away: in proportion near it, slowing evenly farther off. */
    private static double approach(double far, double perS, double mps2) {
        double near = mps2 / (perS * perS);
        double size = Math.abs(far);
        return size <= near
                ? perS * far
                : Math.copySign(Math.sqrt(2 * mps2 * (size - 0.5 * near)), far);
    }

    /** Moments: into {@link #wrench}. */
    private void turn(double dtS, double[] felt, boolean free) {
        double wx = felt[BodyState.WX];
        double wy = felt[BodyState.WY];
        double wz = felt[BodyState.WZ];
        for (int k = 0; k < 3; k++) {
            double rate =
                    gains.anglePerS[k] > 0
                            ? approach(attitude.error[k], gains.anglePerS[k], gains.turnRadps2[k])
                            : 0;
            if (k == 2) {
                rate = Math.clamp(rate, -limits.turnRadps(), limits.turnRadps());
            }
            turning[k] = gains.ratePerS[k] * (rate - felt[BodyState.WX + k]) + rateIntegral[k];
            rateMiss[k] = rate - felt[BodyState.WX + k];
        }
        double hx = inertia.xx() * wx + inertia.xy() * wy + inertia.xz() * wz;
        double hy = inertia.xy() * wx + inertia.yy() * wy + inertia.yz() * wz;
        double hz = inertia.xz() * wx + inertia.yz() * wy + inertia.zz() * wz;
        wrench[1] =
                inertia.xx() * turning[0]
                        + inertia.xy() * turning[1]
                        + inertia.xz() * turning[2]
                        + wy * hz
                        - wz * hy;
        wrench[2] =
                inertia.xy() * turning[0]
                        + inertia.yy() * turning[1]
                        + inertia.yz() * turning[2]
                        + wz * hx
                        - wx * hz;
        double yaw =
                inertia.xz() * turning[0]
                        + inertia.yz() * turning[1]
                        + inertia.zz() * turning[2]
                        + wx * hy
                        - wy * hx;
        if (gains.yawSlowedS > 0) {
            double most = 2 * gains.turnRadps2[2] * inertia.zz();
            yaw = Math.clamp(yaw, -most, most);
            slowYawNm += (1 - Math.exp(-dtS / gains.yawSlowedS)) * (yaw - slowYawNm);
            yaw = slowYawNm;
        }
        wrench[3] = gains.ratePerS[2] > 0 ? yaw : 0;
        if (!free) {
            // Fans that hardly lift steer hardly: feet carry the rest.
            double share = Math.min(1, ramp);
            wrench[1] *= share;
            wrench[2] *= share;
            wrench[3] *= share;
        }
    }

    private final double[] rateMiss = new double[3];

    /** Integrals of turn rate, which stop where the fans give less than was asked. */
    private void unwind(double dtS, boolean free) {
        if (!free) {
            return;
        }
        for (int k = 0; k < 3; k++) {
            double lacks = wrench[k + 1] - mixer.got(k + 1);
            boolean held =
                    mixer.saturated()
                            && Math.abs(lacks) > 0.02 * Math.abs(wrench[k + 1])
                            && lacks * rateMiss[k] > 0;
            double bound = 2 * gains.turnRadps2[k];
            if (!held) {
                rateIntegral[k] =
                        Math.clamp(
                                rateIntegral[k] + dtS * gains.ratePerS2[k] * rateMiss[k],
                                -bound,
                                bound);
            }
        }
    }
}
