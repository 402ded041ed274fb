package liftwright.plant;

import liftwright.physics.FanCooling;
import liftwright.plant.heat.HeatBank;
import liftwright.plant.heat.HeatLoad;
import liftwright.plant.heat.HeatNumbers;
import liftwright.plant.heat.HeatState;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.thrust.FanBank;
import liftwright.plant.thrust.FanUnits;

/**
 * The fans as bodies of heat: they take the temperatures of switches, windings and magnets, and
 * tell what they lose. What a controller loses warms its junction, I²R of the winding warms the
 * winding, and what iron and bearings take warms the case. Both are cooled by the fan's own stream,
 * at the share that its speed is of full speed: that at full duty on full packs without sag.
 */
final class WarmFans implements HeatRun.Warming {

    private final FanBank fans;
    private final FanUnits units;
    private final HeatBank bank;
    private final HeatNumbers numbers;
    private final Circuit circuit;
    private final double[] fullRadps;
    private double[] p = {};

    WarmFans(FanBank fans, FanUnits units, HeatBank bank, HeatNumbers numbers, Circuit circuit) {
        this.fans = fans;
        this.units = units;
        this.bank = bank;
        this.numbers = numbers;
        this.circuit = circuit;
        fullRadps = new double[bank.fans()];
    }

    @Override
    public void load(double[] p, double[] fullV) {
        this.p = p.clone();
        for (int fan = 0; fan < fullRadps.length; fan++) {
            units.order(fan, units.orderedDuty(fan));
            units.operate(fan, fullV[fan]);
            fullRadps[fan] = units.speedRadps(fan);
        }
    }

    @Override
    public void warm(HeatState at) {
        for (int fan = 0; fan < fullRadps.length; fan++) {
            fans.warm(
                    p,
                    fan,
                    numbers.outerK(at, bank.motor(fan)),
                    numbers.fadePerK(fan),
                    numbers.innerK(at, bank.motor(fan)),
                    numbers.innerK(at, bank.controller(fan)),
                    units);
        }
    }

    /** Speed at full duty on full packs without sag, rad/s. */
    double fullRadps(int fan) {
        return fullRadps[fan];
    }

    @Override
    public void tell(NetworkState supply, HeatLoad out) {
        double shaft = 0;
        for (int fan = 0; fan < fullRadps.length; fan++) {
            int controller = bank.controller(fan);
            int motor = bank.motor(fan);
            double speed = 0;
            out.innerW[controller] = 0;
            out.innerW[motor] = 0;
            out.outerW[motor] = 0;
            if (circuit.plan().isFed(fan)) {
                units.account(fan, supply.loadTerminalV(fan));
                double winding = units.copperW() * units.windingShare(fan);
                out.innerW[controller] = units.copperW() - winding + units.controllerW();
                out.innerW[motor] = winding;
                out.outerW[motor] = units.ironW();
                shaft += units.shaftW();
                speed = units.speedRadps(fan);
            }
            double cooled = FanCooling.share(fullRadps[fan] > 0 ? speed / fullRadps[fan] : 0);
            out.toAirWpK[controller] = cooled * numbers.fullAirWpK(controller);
            out.toAirWpK[motor] = cooled * numbers.fullAirWpK(motor);
        }
        out.shaftW = shaft;
    }
}
