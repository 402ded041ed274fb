package liftwright.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.plant.body.FanPlace;
import liftwright.plant.hold.FanAlone;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.thrust.FanUnits;

/**
 * Every fan of a rig at full duty alone, on full packs with settled cells and cold motors, beams
 * straight: what no fault, and no throttle, makes it exceed. For one thread.
 */
public final class FullThrust {

    private final Assembler parts;
    private final NetworkState supply;
    private final FanUnits units;

    FullThrust(Assembler parts) {
        this.parts = parts;
        supply = parts.network.newState();
        units = parts.fans.newUnits();
    }

    /**
     * All fans, in the rig's order, one after the other alone; a fan that no pack feeds pushes
     * nothing. Allocates.
     *
     * @param p vector of {@link Plant#parameters}
     * @return empty where no operating point was found
     */
    public Optional<List<FanAlone>> at(double[] p) {
        double airK = parts.air.temperatureK(p);
        parts.fans.load(p, parts.air.densityKgpm3(p), true, true, true, units);
        parts.packs.rest(p, false, supply.emfV);
        parts.packs.resistance(p, airK, false, true, supply.packOhm);
        parts.wires.resistance(p, airK, supply.chainOhm);
        for (int fan = 0; fan < units.fans(); fan++) {
            units.order(fan, 0);
        }
        List<FanPlace> places = FanPlace.of(parts.rig, parts.pose, parts.lines, p);
        List<FanAlone> fans = new ArrayList<>();
        for (int fan = 0; fan < units.fans(); fan++) {
            double thrustN = 0;
            double torqueNm = 0;
            if (parts.network.isFed(fan)) {
                units.order(fan, 1);
                parts.network.solve(supply, units);
                units.order(fan, 0);
                if (!supply.converged()) {
                    return Optional.empty();
                }
                units.account(fan, supply.loadTerminalV(fan));
                thrustN = units.thrustN();
                double speedRadps = units.speedRadps(fan);
                torqueNm = speedRadps > 0 ? units.shaftW() / speedRadps : 0;
            }
            fans.add(
                    new FanAlone(
                            parts.rig.fans().get(fan).id(),
                            places.get(fan).at(),
                            places.get(fan).actual(),
                            thrustN,
                            parts.swirls.momentNm(p, fan, torqueNm)));
        }
        return Optional.of(fans);
    }
}
