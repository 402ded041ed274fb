package liftwright.trials.predict;

import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Fan;
import liftwright.rig.FanType;

/**
 * One fan as it truly is: coefficients that drift a little with speed, a thrust of its own with
 * heavy tails, air of its own, bodies that warm. Steady flow by the affinity laws, steady motor.
 */
public final class TrueFan {

    private static final double ROOM_K = 293.15;

    /** Worth of a seller's figure, as the product says that it takes it. */
    private static final Quantity SELLER =
            new Quantity(
                    0.9,
                    Dimension.NONE,
                    new Tolerance(0.05, 0.15, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED));

    public final int number;
    public final FanType type;
    private final double thrust0;
    private final double torque0;
    private final double reference;
    private final double thrustDrift;
    private final double torqueDrift;
    private final double kv20;
    private final double winding20;
    private final double switchOhm;
    private final double noLoad;
    private final double noLoadSlope;
    private final double switching;
    private final double fixedW;
    private final double coolingPower;
    private final double[] heat = new double[8];
    private final double airK;

    /** Torque over what it was, for a fault. */
    public double hungry = 1;

    /** Thrust over what it was, for a fault. */
    public double weak = 1;

    /** Speed constant over what it was: magnets that lost strength. */
    public double fast = 1;

    /** Resistance of the winding and the switches over what it was. */
    public double resistive = 1;

    /** Density of the air over what it was, for jets that come back. */
    public double air = 1;

    public double fullRadps = 1;

    public double speedRadps;
    public double windingA;
    public double busA;
    public double thrustN;
    public double duty;
    public double windingK;
    public double caseK;
    public double sinkK;
    public double junctionK;

    public TrueFan(Fan fan, int number, TrueNumbers draw, double densityShare, double airK) {
        this.number = number;
        this.airK = airK;
        type = fan.type();
        String name = type.name() + "/";
        var at = (FanType.Performance.AtSpeed) type.performance();
        reference = draw.of(at.speed(), name + "speed");
        double thrustAt = draw.of(at.thrust(), name + "thrust");
        double powerAt = draw.of(at.shaftPower(), name + "power");
        double worth = type.data() == FanType.Data.SELLER ? draw.of(SELLER, name + "seller") : 1;
        double own = 1 + type.scatter().tolerance().plus() / 2 * draw.tailed();
        double installed = draw.of(fan.type().installation(), name + "installation");
        thrust0 = thrustAt / (reference * reference) * worth * own * installed * densityShare;
        torque0 = powerAt / Math.pow(reference, 3) * densityShare * (1 + 0.008 * draw.normal());
        thrustDrift = 0.02 * draw.normal();
        torqueDrift = 0.02 * draw.normal();
        FanType.Motor motor = type.motor();
        kv20 = draw.of(motor.speedConstant().orElseThrow(), name + "kv");
        winding20 = draw.of(motor.windingResistance().orElseThrow(), name + "winding");
        double current = draw.of(motor.noLoadCurrent().orElseThrow(), name + "no-load");
        double rising = draw.between(0, 0.5);
        noLoad = current * (1 - rising);
        noLoadSlope = current * rising / reference;
        FanType.Controller controller = type.controller();
        switchOhm = draw.of(controller.onResistance(), name + "switch");
        switching = draw.of(controller.switchingLoss(), name + "switching");
        fixedW = draw.of(controller.fixedPower(), name + "fixed");
        coolingPower = draw.between(0.6, 0.8);
        var warms = motor.heating();
        heat[0] = draw.of(warms.windingHeatCapacity(), name + "wc");
        heat[1] = draw.of(warms.caseHeatCapacity(), name + "cc");
        heat[2] = draw.of(warms.windingToCase(), name + "wtc");
        heat[3] = draw.of(warms.caseToAir(), name + "cta");
        heat[4] = draw.of(controller.cooling().heatCapacity(), name + "hc");
        heat[5] = draw.of(controller.cooling().junctionToSink(), name + "jts");
        heat[6] = draw.of(controller.cooling().toAir(), name + "ta");
        windingK = airK;
        caseK = airK;
        sinkK = airK;
        junctionK = airK;
    }

    /** Operates at a duty. */
    public void atDuty(double volt, double duty) {
        this.duty = duty;
        double kv = kv();
        double ohm = ohm();
        double speed = speedRadps;
        for (int k = 0; k < 3; k++) {
            double a = torque(speed) * kv * ohm;
            double b = 1 / kv + noLoadSlope * ohm;
            double c = noLoad * ohm - duty * volt;
            speed = c >= 0 ? 0 : 2 * -c / (b + Math.sqrt(b * b - 4 * a * c));
        }
        settle(volt, speed);
    }

    /** Stands still and draws nothing. */
    public void off() {
        busA = 0;
        windingA = 0;
        thrustN = 0;
        speedRadps = 0;
        duty = 0;
    }

    /** Operates at a thrust, or at full duty. */
    public void atThrust(double volt, double newton) {
        double speed = Math.sqrt(newton / (weak * air * thrust0 * drift(thrustDrift, speedRadps)));
        speed = Math.sqrt(newton / (weak * air * thrust0 * drift(thrustDrift, speed)));
        double amp = current(speed);
        duty = (amp * ohm() + speed / kv()) / volt;
        if (duty > 1) {
            atDuty(volt, 1);
        } else {
            settle(volt, speed);
        }
    }

    private void settle(double volt, double speed) {
        speedRadps = speed;
        windingA = speed > 0 ? current(speed) : duty * volt / ohm();
        busA = windingA * (duty + switching * (1 - duty)) + fixedW / volt;
        thrustN = weak * air * thrust0 * drift(thrustDrift, speed) * speed * speed;
    }

    private double current(double speed) {
        return noLoad + noLoadSlope * speed + torque(speed) * kv() * speed * speed;
    }

    private double torque(double speed) {
        return hungry * air * torque0 * drift(torqueDrift, speed);
    }

    private double drift(double power, double speed) {
        return Math.pow(Math.max(speed, 0.05 * reference) / reference, power);
    }

    private double kv() {
        return fast * kv20 / (1 - 0.0011 * (caseK - ROOM_K));
    }

    private double ohm() {
        return resistive * (winding20 * (1 + 0.00393 * (windingK - ROOM_K)) + switchOhm);
    }

    /** Warms for a short time; a plain explicit step, the junction as quick as its losses. */
    public void warm(double volt, double forS) {
        double windingW = windingA * windingA * (ohm() - resistive * switchOhm);
        double ironW = (noLoad + noLoadSlope * speedRadps) * speedRadps / kv();
        double switchesW =
                windingA * windingA * switchOhm + switching * volt * windingA * (1 - duty) + fixedW;
        double stream = Math.max(0.04, Math.pow(Math.max(speedRadps, 0) / fullRadps, coolingPower));
        double through = heat[2] * (windingK - caseK);
        windingK += forS * (windingW - through) / heat[0];
        caseK += forS * (ironW + through - heat[3] * stream * (caseK - airK)) / heat[1];
        sinkK += forS * (switchesW - heat[6] * stream * (sinkK - airK)) / heat[4];
        junctionK = sinkK + switchesW / heat[5];
    }
}
