package liftwright.plant;

import liftwright.physics.FanCooling;
import liftwright.plant.drive.SpinningFans;
import liftwright.plant.heat.HeatBank;
import liftwright.plant.heat.HeatLoad;
import liftwright.plant.heat.HeatNumbers;
import liftwright.plant.heat.HeatState;
import liftwright.plant.motion.RotorLaws;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.thrust.FanBank;
import liftwright.plant.thrust.FanUnits;

/**
 * Rotors in time as bodies of heat: as {@link WarmFans}, at the speeds that they have. What the
 * winding takes beyond its own heat and friction leaves at the shaft, where it speeds the rotor up
 * or moves air.
 */
final class WarmRotors implements HeatRun.Warming {

    private final WarmFans steady;
    private final FanUnits units;
    private final SpinningFans fans;
    private final HeatBank bank;
    private final HeatNumbers numbers;

    WarmRotors(
            FanBank bankOfFans,
            FanUnits units,
            SpinningFans fans,
            HeatBank bank,
            HeatNumbers numbers,
            Circuit circuit) {
        this.units = units;
        this.fans = fans;
        this.bank = bank;
        this.numbers = numbers;
        steady = new WarmFans(bankOfFans, units, bank, numbers, circuit);
    }

    @Override
    public void load(double[] p, double[] fullV) {
        steady.load(p, fullV);
    }

    @Override
    public void warm(HeatState at) {
        steady.warm(at);
        fans.laws().take(units);
    }

    @Override
    public void tell(NetworkState supply, HeatLoad out) {
        RotorLaws laws = fans.laws();
        double shaft = 0;
        for (int fan = 0; fan < units.fans(); fan++) {
            int controller = bank.controller(fan);
            int motor = bank.motor(fan);
            double speed = fans.fed().facedRadps(fan);
            double winding = fans.fed().windingA(fan);
            double copper = winding * winding * laws.ohm(fan);
            double ofWinding = copper * units.windingShare(fan);
            double driven = laws.drivenNm(fan, winding) * speed;
            double iron = laws.frictionNm(fan, speed) * speed;
            double drawn = fans.fed().volt(fan) * fans.fed().busA(fan);
            out.innerW[controller] = drawn - driven - ofWinding;
            out.innerW[motor] = ofWinding;
            out.outerW[motor] = iron;
            shaft += driven - iron;
            double full = steady.fullRadps(fan);
            double cooled = FanCooling.share(full > 0 ? speed / full : 0);
            out.toAirWpK[controller] = cooled * numbers.fullAirWpK(controller);
            out.toAirWpK[motor] = cooled * numbers.fullAirWpK(motor);
        }
        out.shaftW = shaft;
    }
}
