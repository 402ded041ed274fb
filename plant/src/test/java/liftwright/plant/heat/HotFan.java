package liftwright.plant.heat;

import liftwright.rig.FanType;

/**
 * A fan unit at work as the book has it (Drela, First-order DC electric motor model, 2007): winding
 * current I = (d V − Ω/K_v)/R = I₀ + κ K_v Ω², by the root of that square; warm as its parts are.
 */
final class HotFan {

    final double thrust;
    private final double torque;
    private final double coldKv;
    private final double windingOhm;
    private final double switchOhm;
    private final double noLoadA;
    private final double switching;
    private final double fixedW;
    private final double limitA;
    private final double fadePerK;

    private double kv;
    private double ohm;
    private double hotWindingOhm;
    private double hotSwitchOhm;

    double speed;
    double windingA;
    double duty;
    double busA;

    HotFan(FanType type, double densityRatio) {
        if (!(type.performance() instanceof FanType.Performance.Coefficients own)) {
            throw new IllegalArgumentException("the reference takes coefficients");
        }
        thrust = own.thrust().si() * densityRatio * type.installation().si() * type.scatter().si();
        torque = own.torque().si() * densityRatio;
        FanType.Motor motor = type.motor();
        coldKv = motor.speedConstant().orElseThrow().si();
        windingOhm = motor.windingResistance().orElseThrow().si();
        noLoadA = motor.noLoadCurrent().orElseThrow().si();
        fadePerK = motor.heating().magnetFade().si();
        FanType.Controller controller = type.controller();
        switchOhm = controller.onResistance().si();
        switching = controller.switchingLoss().si();
        fixedW = controller.fixedPower().si();
        limitA = controller.currentLimit().map(q -> q.si()).orElse(1e9);
    }

    /** Copper by 0.393 %/K above 20 °C, switches by 65 % from 25 to 125 °C, magnets fade. */
    void warm(double junctionK, double windingK, double caseK) {
        hotSwitchOhm = switchOhm * (1 + 0.65 * (junctionK - 298.15) / 100);
        hotWindingOhm = windingOhm * (1 + 0.00393 * (windingK - 293.15));
        kv = coldKv / (1 - fadePerK * (caseK - 293.15));
        ohm = hotSwitchOhm + hotWindingOhm;
    }

    double busA(double volt, double asked) {
        operate(volt, asked);
        return busA;
    }

    void operate(double volt, double asked) {
        duty = asked;
        double drive = duty * volt - noLoadA * ohm;
        if (drive <= 0) {
            speed = 0;
            windingA = duty * volt / ohm;
        } else {
            double square = torque * kv * ohm;
            speed = (-1 / kv + Math.sqrt(1 / (kv * kv) + 4 * square * drive)) / (2 * square);
            windingA = noLoadA + torque * kv * speed * speed;
        }
        if (windingA > limitA) {
            windingA = limitA;
            speed = Math.sqrt(Math.max(0, limitA - noLoadA) / (torque * kv));
            duty = (windingA * ohm + speed / kv) / volt;
        }
        busA = duty * windingA + switching * windingA * (1 - duty) + fixedW / volt;
    }

    void dead() {
        speed = 0;
        windingA = 0;
        busA = 0;
        duty = 0;
    }

    /** Heat of switches, switching and what the controller takes for itself, W. */
    double controllerW(double volt) {
        return busA == 0
                ? 0
                : windingA * windingA * hotSwitchOhm
                        + switching * volt * windingA * (1 - duty)
                        + fixedW;
    }

    double windingW() {
        return windingA * windingA * hotWindingOhm;
    }

    /** Iron: the no-load current at the voltage of the turning magnets, W. */
    double ironW() {
        return speed > 0 ? noLoadA * speed / kv : 0;
    }

    double shaftW() {
        return torque * speed * speed * speed;
    }
}
