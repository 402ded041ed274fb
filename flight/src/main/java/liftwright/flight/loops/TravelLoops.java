package liftwright.flight.loops;

import liftwright.flight.motion.BodyState;
import liftwright.physics.Gravity;
import liftwright.rig.Vec3;

/**
 * The outer loops at work: position → velocity → the acceleration that thrust has to give, upwards
 * and over the ground. For one run; steps allocate nothing.
 *
 * <p>No integral grows unless the rig is free, nor against a bound of tilt or of lift. On the
 * ground lift follows a ramp towards what is wanted, and what it has reached when the rig comes
 * free is where the integral of climb starts.
 */
final class TravelLoops {

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

    private final Gains gains;
    private final Vec3 trim;
    private final double[] acrossIntegral = new double[2];
    private final double[] acrossMps2 = new double[2];
    private final double[] last = new double[3];
    private final double[] moves = new double[3];
    private boolean followed;
    private double upMps2;
    private double climbIntegral;
    private double tiltRad;
    private double tiltMps2;
    private double ramp;

    /** Share of the weight that fans carry when it has leant as it is told now, 0 to 1. */
    private double carried;

    private boolean wasGrounded;

    /**
     * @param trim acceleration that fans which do not push straight up give over the ground in a
     *     level hover, x and y as the rig looks at the start, m/s²
     */
    TravelLoops(Gains gains, Vec3 trim) {
        this.gains = gains;
        this.trim = trim;
    }

    /**
     * Forgets what integrals hold but the lean that a still hover takes. A rig that stands begins
     * with fans at idle, one that hangs or is held with its weight on them.
     */
    void begin() {
        acrossIntegral[0] = -trim.x();
        acrossIntegral[1] = -trim.y();
        climbIntegral = 0;
        followed = false;
        ramp = 0;
        wasGrounded = false;
    }

    /**
     * One step; what is wanted stands in {@link #upMps2} and {@link #acrossMps2} after it.
     *
     * @param felt as {@link Controller#step} has it
     * @param lacksLift whether the fans gave less lift at the last step than was asked
     */
    void step(
            double dtS,
            double[] felt,
            Standing standing,
            Wanted wanted,
            Limits limits,
            boolean lacksLift) {
        follow(dtS, wanted, limits);
        upMps2 = climb(dtS, felt, standing, wanted, limits, lacksLift);
        over(dtS, felt, standing, wanted, limits);
    }

    /** Acceleration upwards, beyond gravity, m/s². */
    double upMps2() {
        return upMps2;
    }

    /** Acceleration over the ground, 0 scene x, 1 scene y, m/s². */
    double acrossMps2(int axis) {
        return acrossMps2[axis];
    }

    /** Lift asked over weight, as the ramp on the ground has it, ≥ 0. */
    double ramp() {
        return ramp;
    }

    /** What the integral of climb holds, m/s². */
    double climbIntegralMps2() {
        return climbIntegral;
    }

    /** What integrals over the ground hold, 0 scene x, 1 scene y, m/s². */
    double acrossIntegralMps2(int axis) {
        return acrossIntegral[axis];
    }

    /** How fast a set point of place moves: it is not chased but gone with. A jump is no speed. */
    private void follow(double dtS, Wanted wanted, Limits limits) {
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

    /** Acceleration upwards, m/s²; on the ground by the ramp. */
    private double climb(
            double dtS,
            double[] felt,
            Standing standing,
            Wanted wanted,
            Limits limits,
            boolean lacksLift) {
        double up = wanted.up();
        if (wanted.kind() == Wanted.Kind.POSITION) {
            double far = wanted.up() + felt[BodyState.PZ];
            up =
                    Approach.speed(far, gains.heightPerS, 0.5 * Math.min(gains.liftMps2, 2))
                            + moves[2];
        }
        up = Math.clamp(up, -limits.climbMps(), limits.climbMps());
        boolean grounded = standing == Standing.STANDS || standing == Standing.ONE_FOOT;
        if (grounded) {
            double rise = up <= 0 ? -RAMP_DOWN : ramp < SLOW_ABOVE ? RAMP_FAST : RAMP_SLOW;
            ramp = Math.clamp(ramp + dtS * rise, 0, RAMP_MOST);
            carried = Math.clamp(ramp + rise * gains.leanS, 0, 1);
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
        if (standing == Standing.FREE && !held && !(lacksLift && miss > 0)) {
            double bound = MOST_TRIM * Gravity.STANDARD_MPS2;
            climbIntegral =
                    Math.clamp(climbIntegral + dtS * gains.climbPerS2 * miss, -bound, bound);
        }
        ramp = Math.min(RAMP_MOST, 1 + given / Gravity.STANDARD_MPS2);
        return given;
    }

    /** What a lean accelerates with; a tangent is dear at every step. */
    private double leaningMps2(double rad) {
        if (rad != tiltRad) {
            tiltRad = rad;
            tiltMps2 = Gravity.STANDARD_MPS2 * Math.tan(rad);
        }
        return tiltMps2;
    }

    /**
     * Length; of numbers so small or great that a hypotenuse would take care of, there are none.
     */
    private static double across(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }

    /** Acceleration over the ground: into {@link #acrossMps2}. */
    private void over(double dtS, double[] felt, Standing standing, Wanted wanted, Limits limits) {
        boolean free = standing == Standing.FREE;
        double most = leaningMps2(limits.tiltRad());
        double vx = wanted.x();
        double vy = wanted.y();
        if (wanted.kind() == Wanted.Kind.CLIMB) {
            acrossMps2[0] = acrossIntegral[0];
            acrossMps2[1] = acrossIntegral[1];
            return;
        }
        if (wanted.kind() == Wanted.Kind.POSITION) {
            double farX = wanted.x() - felt[BodyState.PX];
            double farY = wanted.y() - felt[BodyState.PY];
            double far = across(farX, farY);
            double speed = Approach.speed(far, gains.positionPerS, 0.3 * most);
            vx = moves[0] + (far > 0 ? speed * farX / far : 0);
            vy = moves[1] + (far > 0 ? speed * farY / far : 0);
        }
        double fast = across(vx, vy);
        if (fast > limits.speedMps()) {
            vx *= limits.speedMps() / fast;
            vy *= limits.speedMps() / fast;
        }
        double missX = vx - felt[BodyState.VX];
        double missY = vy - felt[BodyState.VY];
        acrossMps2[0] = gains.velocityPerS * missX + acrossIntegral[0];
        acrossMps2[1] = gains.velocityPerS * missY + acrossIntegral[1];
        double asked = across(acrossMps2[0], acrossMps2[1]);
        boolean held = asked > most;
        if (held) {
            acrossMps2[0] *= most / asked;
            acrossMps2[1] *= most / asked;
        }
        // Against the bound of tilt it may only shrink.
        boolean grows = missX * acrossIntegral[0] + missY * acrossIntegral[1] > 0;
        if (free && !(held && grows)) {
            acrossIntegral[0] += dtS * gains.velocityPerS2 * missX;
            acrossIntegral[1] += dtS * gains.velocityPerS2 * missY;
            double size = across(acrossIntegral[0], acrossIntegral[1]);
            if (size > most) {
                acrossIntegral[0] *= most / size;
                acrossIntegral[1] *= most / size;
            }
        }
        if (!free) {
            // Feet or a line would answer: no leaning against them but with the lean of the flight
            // as far as fans carry it. So what they push over the ground its weight takes back.
            double share =
                    standing == Standing.TIED ? 0 : carried * Math.clamp(ramp, LEAST_LIFT, 1);
            acrossMps2[0] = share * acrossIntegral[0];
            acrossMps2[1] = share * acrossIntegral[1];
        }
    }
}
