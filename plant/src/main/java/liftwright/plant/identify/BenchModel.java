package liftwright.plant.identify;

import java.util.List;
import java.util.OptionalDouble;
import liftwright.numerics.Dual;
import liftwright.plant.identify.FanUnknown.Channel;
import liftwright.rig.table.CurrentKind;

/**
 * What a fan unit with given coefficients would show at a point, given its speed: thrust, torque,
 * current, driving voltage. The steady laws of {@link liftwright.physics.FanUnit}, with slopes.
 *
 * <p>Speed is taken as read: telemetry counts turns, and is far better than a scale or a clamp. A
 * point without speed takes it from its duty and current, Ω = K_v (d V − R I). A point without duty
 * takes the duty that its speed and load need, so it tells nothing about K_v.
 */
final class BenchModel {

    /** Values of {@link FanUnknown}s: fitted ones with slopes, the others constant. */
    @FunctionalInterface
    interface Values {
        Dual of(FanUnknown unknown);
    }

    private final CurrentKind kind;
    private final FanPriors priors;
    private final double referenceRadps;

    BenchModel(CurrentKind kind, FanPriors priors, double referenceRadps) {
        this.kind = kind;
        this.priors = priors;
        this.referenceRadps = referenceRadps;
    }

    double referenceRadps() {
        return referenceRadps;
    }

    /** What a channel measured at a point; empty where it tells nothing. */
    OptionalDouble measured(BenchPoint point, Channel channel) {
        return switch (channel) {
            case THRUST -> point.thrustN();
            case CURRENT -> point.currentA();
            case TORQUE -> point.torqueNm();
            case VOLTAGE ->
                    point.duty().isPresent() && point.speedRadps().isPresent()
                            ? OptionalDouble.of(point.duty().getAsDouble() * point.voltageV())
                            : OptionalDouble.empty();
        };
    }

    /** What a channel should have measured there. */
    Dual expected(BenchPoint point, Channel channel, Values x) {
        Dual speed = speed(point, x);
        return switch (channel) {
            case THRUST ->
                    rotor(
                            point,
                            speed,
                            x.of(FanUnknown.THRUST),
                            x.of(FanUnknown.THRUST_DRIFT),
                            x.of(FanUnknown.THRUST_INFLOW),
                            x.of(FanUnknown.THRUST_INFLOW_SQUARE));
            case TORQUE -> torque(point, speed, x);
            case CURRENT -> current(point, speed, x);
            case VOLTAGE -> driving(speed, winding(point, speed, x), x);
        };
    }

    private Dual rotor(
            BenchPoint point, Dual speed, Dual coefficient, Dual drift, Dual first, Dual second) {
        Dual plain = speed.times(speed).times(coefficient).times(point.densityShare());
        Dual drifted = speed.over(referenceRadps).log().times(drift).exp().times(plain);
        if (point.airspeedMps() == 0) {
            return drifted;
        }
        Dual advance = speed.pow(-1).times(2 * Math.PI * point.airspeedMps() / priors.tipM());
        return advance.times(second).plus(first).times(advance).plus(1).times(drifted);
    }

    private Dual torque(BenchPoint point, Dual speed, Values x) {
        return rotor(
                point,
                speed,
                x.of(FanUnknown.TORQUE),
                x.of(FanUnknown.TORQUE_DRIFT),
                x.of(FanUnknown.TORQUE_INFLOW),
                x.of(FanUnknown.TORQUE_INFLOW_SQUARE));
    }

    private Dual winding(BenchPoint point, Dual speed, Values x) {
        return torque(point, speed, x)
                .times(x.of(FanUnknown.SPEED_CONSTANT))
                .plus(x.of(FanUnknown.NO_LOAD));
    }

    private Dual driving(Dual speed, Dual windingA, Values x) {
        return windingA.times(x.of(FanUnknown.WINDING).plus(priors.onResistance()))
                .plus(speed.over(x.of(FanUnknown.SPEED_CONSTANT)));
    }

    private Dual current(BenchPoint point, Dual speed, Values x) {
        Dual windingA = winding(point, speed, x);
        return switch (kind) {
            case WINDING -> windingA;
            case BUS -> {
                Dual duty =
                        point.duty().isPresent()
                                ? windingA.times(0).plus(point.duty().getAsDouble())
                                : driving(speed, windingA, x).over(point.voltageV());
                yield windingA.times(share(duty, x)).plus(priors.fixedPower() / point.voltageV());
            }
        };
    }

    /** d + k_sw (1 − d). */
    private static Dual share(Dual duty, Values x) {
        return duty.negated().plus(1).times(x.of(FanUnknown.SWITCHING)).plus(duty);
    }

    private Dual speed(BenchPoint point, Values x) {
        Dual constant = x.of(FanUnknown.SPEED_CONSTANT);
        Dual none = constant.times(0);
        if (point.speedRadps().isPresent()) {
            return none.plus(point.speedRadps().getAsDouble());
        }
        Dual duty = none.plus(point.duty().orElse(1));
        Dual amp = none.plus(point.currentA().orElseThrow());
        Dual windingA =
                switch (kind) {
                    case WINDING -> amp;
                    case BUS ->
                            amp.minus(priors.fixedPower() / point.voltageV()).over(share(duty, x));
                };
        return duty.times(point.voltageV())
                .minus(windingA.times(x.of(FanUnknown.WINDING).plus(priors.onResistance())))
                .times(constant);
    }

    /** Whether a point can be used: it tells its speed, or what gives it. */
    static boolean isUsable(BenchPoint point) {
        return point.speedRadps().isPresent() || point.currentA().isPresent();
    }

    static List<Channel> channels() {
        return List.of(Channel.values());
    }
}
