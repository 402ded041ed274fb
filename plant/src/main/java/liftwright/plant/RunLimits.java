package liftwright.plant;

import java.util.Optional;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.supply.SupplyStepper;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;

/** How far the limits of a run are at the moment it stands at. */
final class RunLimits {

    /** What pulls on the supply: fans that follow orders at once, or rotors in time. */
    interface Pull {
        /** Whether a controller has stopped its fan for good. */
        boolean isStopped(int fan);

        /** Whether a lift is ordered. */
        boolean ordersLift();

        /** How far an ordered lift is from what the fans can do; see {@link FansUnderOrder}. */
        double margin();
    }

    /**
     * A step errs by 1e-5 of a pack's charge, so its current leaves the straight line by less than
     * this; the knees of a cell's rest voltage make it crest.
     */
    private static final double BEND = 0.003;

    private final double reserve;
    private final double leastCellV;
    private final double[] peakA;
    private final double[] cutOffV;

    private final Optional<HeatRun> heat;

    /**
     * @param heat empty where none is computed
     */
    RunLimits(Rig rig, Optional<HeatRun> heat) {
        this.heat = heat;
        reserve = rig.demands().reserve().si();
        leastCellV = rig.limits().si(LimitName.CELL_UNDER_LOAD);
        peakA =
                rig.packs().stream()
                        .mapToDouble(
                                pack ->
                                        pack.cell()
                                                .peakCurrent()
                                                .map(most -> most.si() * pack.parallel())
                                                .orElse(Double.POSITIVE_INFINITY))
                        .toArray();
        cutOffV =
                rig.fans().stream()
                        .mapToDouble(
                                fan ->
                                        fan.type()
                                                .controller()
                                                .cutOff()
                                                .map(volt -> volt.si())
                                                .orElse(Double.NEGATIVE_INFINITY))
                        .toArray();
    }

    /** Whether the current of a pack is within what a step may bend above both its ends. */
    boolean isNearPeak(int pack, SupplyStepper stepper) {
        return stepper.packA(pack) > (1 - BEND) * peakA[pack];
    }

    double leastCellV() {
        return leastCellV;
    }

    /** In the units of the limit; 0 or less where it is reached. */
    double distance(Cause cause, int part, SupplyStepper stepper, NetworkState network, Pull fans) {
        return switch (cause) {
            case RESERVE -> stepper.leastChargeLeft(part) - reserve;
            case EMPTY -> stepper.leastChargeLeft(part);
            case CELL_VOLTAGE -> stepper.leastCellV(part) - leastCellV;
            case CELL_CURRENT -> peakA[part] - stepper.packA(part);
            case CUT_OFF ->
                    fans.isStopped(part) || network.loadTerminalV(part) == 0
                            ? Double.POSITIVE_INFINITY
                            : network.loadTerminalV(part) - cutOffV[part];
            case FULL_THROTTLE -> fans.ordersLift() ? fans.margin() : Double.POSITIVE_INFINITY;
            case OVERHEATED -> heat.orElseThrow().roomK(stepper.state(), part);
            case FUSE_OPENED -> heat.orElseThrow().fuseRoom(stepper.state(), stepper, part);
        };
    }
}
