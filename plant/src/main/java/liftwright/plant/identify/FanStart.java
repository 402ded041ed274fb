package liftwright.plant.identify;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.table.CurrentKind;

/** Where a fit begins and what counts beside the rows: declared values, else weak defaults. */
final class FanStart {

    /**
     * Knowledge of a coordinate ln x.
     *
     * @param value x
     * @param deviation of ln x, or of x if it may be negative; 0 for what is held as declared
     * @param declared whether the builder said it
     */
    record Prior(double value, double deviation, boolean declared) {}

    /**
     * R I over V at the strongest row where nothing is declared: 2/m − 1 of m = 1.9, T ∝ V^m,
     * common practice; a factor 3.3 either way.
     */
    private static final double DROP_SHARE = 0.053;

    /** I₀ over the greatest current where nothing is declared; a factor 3.3 either way. */
    private static final double NO_LOAD_SHARE = 0.03;

    private static final double WIDE = 0.6;

    /** A declared ± that reaches 0 is cut here: 5 % of the value is left. */
    private static final double LOWEST = 0.95;

    /** Drift that honest rotors show, 3 to 10 % over their speeds: an exponent of 0 ± 0.2. */
    private static final double DRIFT = 0.1;

    /**
     * Thrust of fixed blades is gone at an advance ratio near pitch over diameter, 0.3 to 1: the
     * slope that takes is within twice this; common practice.
     */
    private static final double INFLOW = 1.5;

    /** Duty at the strongest row where no row tells one. */
    private static final double TOP_DUTY = 0.93;

    private static final double TOP_DUTY_DEVIATION = 0.08;

    final Map<FanUnknown, Prior> priors = new EnumMap<>(FanUnknown.class);
    final Map<FanUnknown, Double> values = new EnumMap<>(FanUnknown.class);
    final double referenceRadps;

    private final CurrentKind kind;
    private final FanPriors known;
    private final List<BenchPoint> points;
    private final boolean electric;

    FanStart(List<BenchPoint> points, CurrentKind kind, FanPriors known) {
        this.points = points;
        this.kind = kind;
        this.known = known;
        electric = points.stream().anyMatch(point -> point.currentA().isPresent());
        if (electric) {
            motor();
        }
        double logs = 0;
        for (BenchPoint point : points) {
            logs += Math.log(speed(point));
        }
        referenceRadps = Math.exp(logs / points.size());
        rotor();
        priors.put(FanUnknown.THRUST_DRIFT, new Prior(0, DRIFT, false));
        priors.put(FanUnknown.TORQUE_DRIFT, new Prior(0, DRIFT, false));
        priors.put(FanUnknown.THRUST_INFLOW, new Prior(0, INFLOW, false));
        priors.put(FanUnknown.TORQUE_INFLOW, new Prior(0, INFLOW, false));
        priors.put(FanUnknown.THRUST_INFLOW_SQUARE, new Prior(0, 2 * INFLOW, false));
        priors.put(FanUnknown.TORQUE_INFLOW_SQUARE, new Prior(0, 2 * INFLOW, false));
    }

    boolean isElectric() {
        return electric;
    }

    private void motor() {
        BenchPoint top = points.getFirst();
        for (BenchPoint point : points) {
            if (power(point) > power(top)) {
                top = point;
            }
        }
        double topA = top.currentA().orElse(1);
        double topV = top.voltageV() * top.duty().orElse(1);
        prior(FanUnknown.WINDING, known.winding(), DROP_SHARE * topV / topA, WIDE);
        prior(FanUnknown.NO_LOAD, known.noLoad(), NO_LOAD_SHARE * topA, WIDE);
        boolean partDuty = points.stream().anyMatch(point -> point.duty().orElse(0) < 0.98);
        if (known.switching().si() > 0 && kind == CurrentKind.BUS && partDuty) {
            prior(FanUnknown.SWITCHING, Optional.of(known.switching()), 0, 0);
        } else {
            values.put(FanUnknown.SWITCHING, known.switching().si());
        }
        OptionalDouble told = speedConstantFromDuties();
        if (known.speedConstant().isPresent() || told.isEmpty()) {
            double drop = 1 - DROP_SHARE;
            double guess = top.speedRadps().orElse(1) / (TOP_DUTY * drop * top.voltageV());
            prior(FanUnknown.SPEED_CONSTANT, known.speedConstant(), guess, TOP_DUTY_DEVIATION);
        } else {
            values.put(FanUnknown.SPEED_CONSTANT, told.getAsDouble());
        }
    }

    private static double power(BenchPoint point) {
        return point.voltageV() * point.currentA().orElse(0);
    }

    private OptionalDouble speedConstantFromDuties() {
        double ohm = values.getOrDefault(FanUnknown.WINDING, 0.0) + known.onResistance();
        return points.stream()
                .filter(point -> point.duty().orElse(0) > 0.05 && point.speedRadps().isPresent())
                .mapToDouble(
                        point -> {
                            double driven = point.duty().getAsDouble() * point.voltageV();
                            double amp = point.currentA().orElse(0);
                            return point.speedRadps().getAsDouble()
                                    / Math.max(driven - ohm * amp, 0.3 * driven);
                        })
                .average();
    }

    private void prior(
            FanUnknown unknown, Optional<Quantity> declared, double guess, double deviation) {
        Prior prior =
                declared.map(value -> new Prior(value.si(), relative(value), true))
                        .orElseGet(() -> new Prior(guess, deviation, false));
        priors.put(unknown, prior);
        values.put(unknown, prior.value);
    }

    /** Standard deviation of ln x. */
    private static double relative(Quantity value) {
        Tolerance own = value.tolerance();
        double half =
                (Math.log1p(own.plus() / value.si())
                                - Math.log1p(-Math.min(own.minus() / value.si(), LOWEST)))
                        / 2;
        return switch (own.form()) {
            case NORMAL -> half / 2;
            case BOUND -> half / Math.sqrt(3);
        };
    }

    private double speed(BenchPoint point) {
        if (point.speedRadps().isPresent()) {
            return point.speedRadps().getAsDouble();
        }
        double driven = point.duty().orElse(1) * point.voltageV();
        double ohm = values.getOrDefault(FanUnknown.WINDING, 0.0) + known.onResistance();
        return values.getOrDefault(FanUnknown.SPEED_CONSTANT, 1.0)
                * Math.max(driven - ohm * point.currentA().orElse(0), 0.3 * driven);
    }

    private void rotor() {
        double thrust = 0;
        double thrustBy = 0;
        double torque = 0;
        double torqueBy = 0;
        for (BenchPoint point : points) {
            double speed = speed(point);
            double square = speed * speed * point.densityShare();
            if (point.thrustN().isPresent()) {
                thrust += Math.max(point.thrustN().getAsDouble(), 0);
                thrustBy += square;
            }
            double own = point.torqueNm().orElseGet(() -> torque(point, speed));
            torque += Math.max(own, 0);
            torqueBy += square;
        }
        if (thrust > 0) {
            values.put(FanUnknown.THRUST, thrust / thrustBy);
        }
        if (torque > 0) {
            values.put(FanUnknown.TORQUE, torque / torqueBy);
        }
    }

    /** From the current; a bus current by its power. */
    private double torque(BenchPoint point, double speed) {
        if (point.currentA().isEmpty()) {
            return 0;
        }
        double emf = speed / values.getOrDefault(FanUnknown.SPEED_CONSTANT, 1.0);
        double ohm = values.getOrDefault(FanUnknown.WINDING, 0.0) + known.onResistance();
        double watt = power(point);
        double windingA =
                switch (kind) {
                    case WINDING -> point.currentA().getAsDouble();
                    case BUS -> 2 * watt / (emf + Math.sqrt(emf * emf + 4 * ohm * watt));
                };
        return Math.max(windingA - values.getOrDefault(FanUnknown.NO_LOAD, 0.0), 0.1 * windingA)
                / values.getOrDefault(FanUnknown.SPEED_CONSTANT, 1.0);
    }
}
