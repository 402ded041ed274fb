package liftwright.review.referee;

import java.util.List;
import java.util.Optional;

/**
 * A random rig as the referee knows it. Every fan has the same type; packs feed one to three fans
 * each through a trunk and branches; some rigs tie all splits to one bus.
 */
record RefereeRig(
        double elevationM,
        double temperatureC,
        double humidity,
        double judgedAtCharge,
        double demand,
        FanUnit fan,
        Cell cell,
        int series,
        Doubtful extraMass,
        double interconnectMilliohm,
        List<Integer> fansOfPack,
        double share,
        Wire trunk,
        double trunkJointMilliohm,
        double fuseMilliohm,
        Wire branch,
        double branchJointMilliohm,
        Doubtful cantDegrees,
        List<Doubtful> partsKg,
        boolean oneBus) {

    RefereeRig withDemand(double other) {
        return with(judgedAtCharge, other, series);
    }

    RefereeRig withJudgedAtCharge(double other) {
        return with(other, demand, series);
    }

    RefereeRig withSeries(int other) {
        return with(judgedAtCharge, demand, other);
    }

    private RefereeRig with(double judgedAtCharge, double demand, int series) {
        return new RefereeRig(
                elevationM,
                temperatureC,
                humidity,
                judgedAtCharge,
                demand,
                fan,
                cell,
                series,
                extraMass,
                interconnectMilliohm,
                fansOfPack,
                share,
                trunk,
                trunkJointMilliohm,
                fuseMilliohm,
                branch,
                branchJointMilliohm,
                cantDegrees,
                partsKg,
                oneBus);
    }

    int fans() {
        return fansOfPack.stream().mapToInt(Integer::intValue).sum();
    }

    record FanUnit(
            double tipMm,
            double hubMm,
            Doubtful exitAreaCm2,
            Doubtful massKg,
            boolean seller,
            double speedRpm,
            Doubtful thrustN,
            Doubtful shaftPowerW,
            Doubtful scatterPercent,
            Doubtful speedConstantRpmPerV,
            Doubtful windingMilliohm,
            Doubtful noLoadA,
            Doubtful onMilliohm,
            Optional<Double> currentLimitA,
            Optional<Double> cutOffV,
            double fixedW,
            double controllerKg,
            Optional<Screen> screen,
            Doubtful installation) {}

    record Screen(Doubtful freeArea, double faceCm2) {}

    record Cell(
            Doubtful resistanceMilliohm,
            Doubtful settlingMilliohm,
            Doubtful massG,
            List<Double> charge,
            List<Double> volt) {}

    record Wire(int gauge, Doubtful lengthMm) {}
}
