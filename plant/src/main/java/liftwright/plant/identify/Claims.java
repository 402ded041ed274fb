package liftwright.plant.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.FanType;

/** What is declared of a fan beside what its rows say. */
final class Claims {

    private Claims() {}

    static List<FanFit.Difference> against(FanFit fit, FanType type) {
        List<FanFit.Difference> found = new ArrayList<>();
        switch (type.performance()) {
            case FanType.Performance.AtSpeed point -> performance(fit, point, found);
            case FanType.Performance.Coefficients both -> performance(fit, both, found);
            case FanType.Performance.Measured measured ->
                    measured.claimed()
                            .ifPresent(
                                    claimed -> {
                                        switch (claimed) {
                                            case FanType.Performance.AtSpeed point ->
                                                    performance(fit, point, found);
                                            case FanType.Performance.Coefficients both ->
                                                    performance(fit, both, found);
                                            case FanType.Performance.Measured _ -> {
                                                // a claim is no table: its record refuses it
                                            }
                                        }
                                    });
        }
        FanType.Motor motor = type.motor();
        motor(fit, FanUnknown.SPEED_CONSTANT, motor.speedConstant(), found);
        motor(fit, FanUnknown.WINDING, motor.windingResistance(), found);
        motor(fit, FanUnknown.NO_LOAD, motor.noLoadCurrent(), found);
        return List.copyOf(found);
    }

    private static void motor(
            FanFit fit,
            FanUnknown unknown,
            Optional<Quantity> declared,
            List<FanFit.Difference> found) {
        declared.ifPresent(
                value ->
                        fit.coefficient(unknown)
                                .ifPresent(
                                        own ->
                                                found.add(
                                                        new FanFit.Difference(
                                                                unknown.words(),
                                                                value.si(),
                                                                own.value(),
                                                                own.deviation()))));
    }

    private static void performance(
            FanFit fit, FanType.Performance.AtSpeed point, List<FanFit.Difference> found) {
        double speed = point.speed().si();
        at(
                fit,
                "thrust at the speed claimed",
                FanUnknown.THRUST,
                point.thrust().si(),
                speed,
                2,
                found);
        at(
                fit,
                "shaft power at the speed claimed",
                FanUnknown.TORQUE,
                point.shaftPower().si(),
                speed,
                3,
                found);
    }

    private static void performance(
            FanFit fit, FanType.Performance.Coefficients both, List<FanFit.Difference> found) {
        coefficient(fit, FanUnknown.THRUST, both.thrust().si(), found);
        coefficient(fit, FanUnknown.TORQUE, both.torque().si(), found);
    }

    private static void coefficient(
            FanFit fit, FanUnknown unknown, double declared, List<FanFit.Difference> found) {
        fit.coefficient(unknown)
                .ifPresent(
                        own ->
                                found.add(
                                        new FanFit.Difference(
                                                unknown.words(),
                                                declared,
                                                own.value(),
                                                own.deviation())));
    }

    private static void at(
            FanFit fit,
            String label,
            FanUnknown unknown,
            double declared,
            double speedRadps,
            int power,
            List<FanFit.Difference> found) {
        double drift =
                fit.value(
                        unknown == FanUnknown.THRUST
                                ? FanUnknown.THRUST_DRIFT
                                : FanUnknown.TORQUE_DRIFT);
        double factor =
                Math.pow(speedRadps, power) * Math.pow(speedRadps / fit.referenceRadps(), drift);
        fit.coefficient(unknown)
                .ifPresent(
                        own ->
                                found.add(
                                        new FanFit.Difference(
                                                label,
                                                declared,
                                                own.value() * factor,
                                                own.deviation())));
    }
}
