package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.numerics.Zonotope;
import liftwright.physics.Gravity;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.Allocation;
import liftwright.plant.balance.FanAtWork;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Vec3;

/**
 * What holds a rig against what turns it, and the one number that tells how much of it is left.
 *
 * <p>With a shared throttle the arms steer where they carry fans: the number is what is left of
 * their reach, 1 − λ, where λ is the least share of {@link LimitName#ARM_REACH} at every joint that
 * cancels all three moments, to first order in the angles and with what each joint does as
 * declared. Where no arm carries a fan, nothing steers, and the number is what is left of {@link
 * LimitName#DRIFT} about the worst axis. With a flight computer it is the least reserve over what
 * is asked of it.
 */
enum Steering {
    ARMS("arm-reach-left"),
    NOTHING("drift-left"),
    COMPUTER("reserve-ratio");

    /** What is worse than this is told as this. */
    static final double WORST = -99;

    private static final double STEP_RAD = 1e-4;
    private static final int JOINTS = 8;

    private final String field;

    Steering(String field) {
        this.field = field;
    }

    static Steering of(Balancing balancing) {
        return switch (balancing.rig().control().kind()) {
            case FLIGHT_COMPUTER -> COMPUTER;
            case SHARED_THROTTLE -> balancing.armsSteer() ? ARMS : NOTHING;
        };
    }

    /** Field of the judged number. */
    String field() {
        return field;
    }

    /** Least that is asked. */
    double demand(Limits limits) {
        return switch (this) {
            case ARMS -> limits.si(LimitName.ARM_REACH_LEFT);
            case NOTHING -> 0;
            case COMPUTER -> 1;
        };
    }

    /** The limits that what is asked comes from. */
    List<LimitName> limits() {
        return switch (this) {
            case ARMS -> List.of(LimitName.ARM_REACH, LimitName.ARM_REACH_LEFT);
            case NOTHING -> List.of(LimitName.DRIFT);
            case COMPUTER ->
                    List.of(LimitName.ROLL_RESERVE, LimitName.PITCH_RESERVE, LimitName.YAW_RESERVE);
        };
    }

    /** Where they come from, in words. */
    String origin(Limits limits) {
        return limits().stream()
                .map(name -> name.key() + ": " + limits.origin(name))
                .collect(Collectors.joining("; "));
    }

    /** Reserve asked about an axis. */
    static LimitName asked(Turn turn) {
        return switch (turn) {
            case ROLL -> LimitName.ROLL_RESERVE;
            case PITCH -> LimitName.PITCH_RESERVE;
            case YAW -> LimitName.YAW_RESERVE;
        };
    }

    /**
     * The judged number.
     *
     * @param worker that has just found {@code point} at the same vector
     * @param reaches of the arms, from {@link #reaches(Balancing)}
     */
    double left(
            Balancing.Worker worker,
            double[] p,
            HoverPoint point,
            double[][] reaches,
            Limits limits) {
        if (!point.converged() || !point.lifts()) {
            return WORST;
        }
        double left =
                switch (this) {
                    case ARMS -> 1 - Zonotope.factorToHold(reaches, array(point.ledger().moment()));
                    case NOTHING ->
                            limits.si(LimitName.DRIFT) - worst(point.ledger().acceleration());
                    case COMPUTER -> reserveRatio(worker, p, point, limits);
                };
        return Math.max(WORST, left);
    }

    private static double worst(Vec3 acceleration) {
        double most = 0;
        for (Turn turn : Turn.values()) {
            most = Math.max(most, Math.abs(turn.of(acceleration)));
        }
        return most;
    }

    /**
     * What each joint does to the moment at its full reach, N·m, at lift-off as declared; joints
     * that do nothing are left out. None where arms do not steer.
     */
    double[][] reaches(Balancing balancing) {
        if (this != ARMS) {
            return new double[0][];
        }
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        Vec3 moment = worker.liftOff(p).ledger().moment();
        double reachRad = balancing.rig().limits().si(LimitName.ARM_REACH);
        double[][] slopes = slopes(worker, p, new double[JOINTS], moment);
        List<double[]> reaches = new ArrayList<>();
        for (double[] slope : slopes) {
            double size = Math.hypot(Math.hypot(slope[0], slope[1]), slope[2]);
            if (size > 1e-6) {
                reaches.add(
                        new double[] {
                            reachRad * slope[0], reachRad * slope[1], reachRad * slope[2]
                        });
            }
        }
        return reaches.toArray(new double[0][]);
    }

    /**
     * Change of the moment with each joint angle, N·m/rad, jets striking as at the angles it starts
     * from.
     *
     * @param at moment there, which the worker has just found
     */
    static double[][] slopes(Balancing.Worker worker, double[] p, double[] turned, Vec3 at) {
        double[][] slopes = new double[JOINTS][];
        for (int joint = 0; joint < JOINTS; joint++) {
            double[] more = turned.clone();
            more[joint] += STEP_RAD;
            Vec3 change = worker.nudged(p, more).moment().minus(at);
            slopes[joint] = array(change.times(1 / STEP_RAD));
        }
        return slopes;
    }

    private static double[] array(Vec3 v) {
        return new double[] {v.x(), v.y(), v.z()};
    }

    /** What a flight computer can do there; empty where full throttle was not found. */
    static Optional<Allocation> allocation(Balancing.Worker worker, double[] p, HoverPoint point) {
        Optional<List<FanAtWork>> full = worker.fullThrottle(p, point.mass().centre());
        return full.map(
                fans -> new Allocation(fans, point.mass().massKg() * Gravity.STANDARD_MPS2));
    }

    private static double reserveRatio(
            Balancing.Worker worker, double[] p, HoverPoint point, Limits limits) {
        Optional<Allocation> can = allocation(worker, p, point);
        if (can.isEmpty()) {
            return WORST;
        }
        double least = Double.POSITIVE_INFINITY;
        for (Turn turn : Turn.values()) {
            for (int sign = -1; sign <= 1; sign += 2) {
                double reserve = reserveRadps2(can.get(), point, turn, sign).orElse(WORST);
                least = Math.min(least, reserve / limits.si(asked(turn)));
            }
        }
        return least;
    }

    /** Reserve about an axis, other moments zero, lift at weight, over the moment of inertia. */
    static Optional<Double> reserveRadps2(Allocation can, HoverPoint point, Turn turn, int sign) {
        double inertia =
                switch (turn) {
                    case ROLL -> point.mass().inertia().xx();
                    case PITCH -> point.mass().inertia().yy();
                    case YAW -> point.mass().inertia().zz();
                };
        return can.reserveNm(turn.axis(), sign, true).map(nm -> nm / inertia);
    }
}
