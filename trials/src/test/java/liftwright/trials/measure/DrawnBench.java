package liftwright.trials.measure;

import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Site;

/** A fan and its pack with every number drawn, read with instruments that err. */
final class DrawnBench {

    private DrawnBench() {}

    /** Thrust, current, speed and voltage at 60 % as they would be read. */
    static double[] read(Rig rig, Fan fan, RandomGenerator random) {
        String id = ThrustTest.nearest(rig, fan).iterator().next();
        Pack pack =
                rig.packs().stream()
                        .filter(one -> one.id().text().equals(id))
                        .findFirst()
                        .orElseThrow();
        Rig drawn = airOf(rig, random);
        double[] found = new ThrustTest.Bench(drawn, fan(fan, random), pack(pack, random)).at(0.6);
        FanType type = fan.type();
        // What a seller's label is worth besides its 0.9.
        if (type.data() == FanType.Data.SELLER) {
            found[0] *= (0.9 + split(0.05, 0.15, random)) / 0.9;
        }
        double[] left = {0.04, 0.08, 0.02, 0.01};
        double[] fixed = {0.2, 0.3, 0, 0.01};
        double[] share = {0.02, 0.02, 0.003, 0.001};
        for (int k = 0; k < 4; k++) {
            double error = Math.hypot(fixed[k], share[k] * found[k]) / 2;
            found[k] =
                    found[k] * (1 + left[k] / 2 * random.nextGaussian())
                            + error * random.nextGaussian();
        }
        return found;
    }

    private static double split(double plus, double minus, RandomGenerator random) {
        double size = Math.abs(random.nextGaussian()) / 2;
        return random.nextDouble() * (plus + minus) < plus ? size * plus : -size * minus;
    }

    private static Quantity one(Quantity value, RandomGenerator random) {
        return Quantity.exact(Made.drawn(value, random), value.dimension());
    }

    private static Optional<Quantity> one(Optional<Quantity> value, RandomGenerator random) {
        return value.map(q -> one(q, random));
    }

    /** Mean of as many cells as the pack has, side by side and in a row. */
    private static Quantity mean(Quantity value, int count, RandomGenerator random) {
        if (!Made.isEach(value)) {
            return one(value, random);
        }
        double sum = 0;
        for (int k = 0; k < count; k++) {
            sum += Made.drawn(value, random);
        }
        return Quantity.exact(sum / count, value.dimension());
    }

    private static Rig airOf(Rig rig, RandomGenerator random) {
        Site site = rig.site();
        return rig.at(
                new Site(
                        one(site.elevation(), random),
                        one(site.temperature(), random),
                        one(site.pressure(), random),
                        one(site.humidity(), random)));
    }

    private static Fan fan(Fan fan, RandomGenerator random) {
        FanType type = fan.type();
        FanType.Performance performance =
                switch (type.performance()) {
                    case FanType.Performance.AtSpeed at ->
                            new FanType.Performance.AtSpeed(
                                    one(at.speed(), random),
                                    one(at.thrust(), random),
                                    one(at.shaftPower(), random));
                    case FanType.Performance.Coefficients at ->
                            new FanType.Performance.Coefficients(
                                    one(at.thrust(), random), one(at.torque(), random));
                    case FanType.Performance.Measured _ -> throw new AssertionError("a table");
                };
        FanType.Controller was = type.controller();
        FanType drawn =
                new FanType(
                        type.name(),
                        type.ducted(),
                        type.tip(),
                        type.hub(),
                        type.exitArea(),
                        type.mass(),
                        type.data(),
                        performance,
                        new FanType.Motor(
                                one(type.motor().speedConstant(), random),
                                one(type.motor().windingResistance(), random),
                                one(type.motor().noLoadCurrent(), random),
                                type.motor().polePairs()),
                        type.rotor(),
                        new FanType.Controller(
                                one(was.onResistance(), random),
                                one(was.currentLimit(), random),
                                was.topVoltage(),
                                was.topElectricalSpeed(),
                                was.capacitance(),
                                was.capacitorVoltage(),
                                was.cutOff(),
                                one(was.fixedPower(), random),
                                one(was.switchingLoss(), random),
                                was.mass(),
                                was.switching()),
                        type.intake(),
                        type.swirl(),
                        one(type.scatter(), random),
                        type.installation(),
                        type.lot(),
                        type.extremes());
        return new Fan(
                fan.id(),
                fan.declaredAt(),
                drawn,
                fan.mount(),
                fan.at(),
                fan.blows(),
                fan.leans(),
                fan.spin(),
                fan.intake(),
                fan.installation(),
                fan.serial());
    }

    private static Pack pack(Pack pack, RandomGenerator random) {
        CellType cell = pack.cell();
        int count = pack.series() * pack.parallel();
        double off = mean(cell.openCircuitDoubt(), count, random).si();
        CellType.Curve curve = cell.openCircuit().orElseThrow();
        List<Double> volt = curve.volt().stream().map(v -> v + off).toList();
        CellType drawn =
                new CellType(
                        cell.name(),
                        cell.chemistry(),
                        cell.capacity(),
                        cell.resistance().map(q -> mean(q, count, random)),
                        cell.settling().stream()
                                .map(
                                        s ->
                                                new CellType.Settling(
                                                        mean(s.resistance(), count, random),
                                                        s.time()))
                                .toList(),
                        cell.resistanceOverCharge(),
                        new CellType.Ageing(
                                cell.ageing().capacityLeft(),
                                cell.ageing().resistanceGrowth().map(q -> mean(q, count, random))),
                        one(cell.temperatureCoefficient(), random),
                        cell.mass(),
                        Optional.of(new CellType.Curve(curve.charge(), volt)),
                        Quantity.exact(0, cell.openCircuitDoubt().dimension()),
                        cell.continuousCurrent(),
                        cell.peakCurrent(),
                        Optional.empty());
        return new Pack(
                pack.id(),
                pack.declaredAt(),
                drawn,
                pack.series(),
                pack.parallel(),
                pack.extraMass(),
                pack.mass(),
                one(pack.interconnect(), random),
                pack.mount(),
                pack.at(),
                pack.charge(),
                one(pack.temperature(), random),
                pack.serial());
    }
}
