package liftwright.plant.heat;

import static liftwright.plant.RigSketch.si;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import liftwright.plant.RigSketch;
import liftwright.rig.CellType;
import liftwright.rig.Contactor;
import liftwright.rig.Control;
import liftwright.rig.Cooling;
import liftwright.rig.Covering;
import liftwright.rig.Demands;
import liftwright.rig.Element;
import liftwright.rig.FanType;
import liftwright.rig.FuseOpening;
import liftwright.rig.Heating;
import liftwright.rig.Insulation;
import liftwright.rig.Magnets;
import liftwright.rig.PartId;
import liftwright.rig.RigPath;
import liftwright.rig.Site;
import liftwright.rig.Wear;

/** Parts of rigs that warm, all values exact: what tests of heat are put together from. */
final class WarmSketch {

    /** Air at reference density, so that coefficients hold as they are. */
    static final double AIR_K = 293.15;

    static final double PASCAL = 1.225 * 287.05307 * AIR_K;

    static final List<Insulation> MATERIALS = List.of(Insulation.values());

    private WarmSketch() {}

    static RigSketch sketch() {
        RigSketch sketch = new RigSketch();
        sketch.site = new Site(si(0), Optional.of(si(AIR_K)), Optional.of(si(PASCAL)), si(0));
        sketch.demands = new Demands(si(1), si(60), si(0.05), si(0.05));
        return sketch;
    }

    static void oneGroup(RigSketch sketch) {
        sketch.groups.add(
                new Control.Group(
                        "all",
                        RigPath.of("control", "groups", "all"),
                        sketch.fans.stream().map(fan -> fan.id()).toList(),
                        si(1)));
    }

    /** A wire of a class. */
    static Element.Run run(
            String id,
            int gauge,
            int conductors,
            double lengthM,
            Insulation material,
            double classK,
            double wallM,
            int bundle,
            double airMps) {
        return new Element.Run(
                new PartId(id),
                RigPath.of("wiring", "runs", id),
                gauge,
                conductors,
                si(lengthM),
                new Covering(material, true, si(wallM), bundle, si(airMps), si(classK)));
    }

    /**
     * A joint.
     *
     * @param ohm both poles
     * @param ratedA 0 for none
     */
    static Element.Joint joint(String id, double ohm, double ratedA, double capacityJpK) {
        return joint(id, ohm, ratedA, capacityJpK, Wear.NONE);
    }

    static Element.Joint joint(
            String id, double ohm, double ratedA, double capacityJpK, Wear wear) {
        return new Element.Joint(
                new PartId(id),
                RigPath.of("wiring", "joints", id),
                "bullet",
                si(ohm),
                ratedA == 0 ? Optional.empty() : Optional.of(si(ratedA)),
                wear,
                si(capacityJpK));
    }

    /** A fuse of exact times. */
    static Element.Fuse fuse(
            String id, double ratedA, double ohm, FuseOpening.Speed speed, double timeConstantS) {
        FuseOpening usual = FuseOpening.usual(speed, ratedA);
        return new Element.Fuse(
                new PartId(id),
                RigPath.of("wiring", "fuses", id),
                si(ratedA),
                si(ohm),
                Optional.of(si(10_000)),
                Optional.of(si(80)),
                new FuseOpening(speed, usual.points(), si(1), si(timeConstantS)),
                si(4));
    }

    static Element.Pole pole(String id, double ohm, double ratedA) {
        return new Element.Pole(
                new PartId(id),
                RigPath.of("wiring", "poles", id),
                new Contactor(
                        "main " + id,
                        1,
                        si(ohm),
                        Optional.of(si(ratedA)),
                        Optional.of(si(20_000)),
                        Optional.of(si(100)),
                        si(20)));
    }

    /** Numbers of a fan unit. */
    record FanNumbers(
            double thrust,
            double torque,
            double kv,
            double windingOhm,
            double noLoadA,
            double switchOhm,
            Optional<Double> limitA,
            Cooling cooling,
            Heating heating) {}

    /** A fan that takes about a current at a voltage and full duty, and hardly warms. */
    static FanNumbers steadyFan(double ampere, double volt) {
        double kv = 50;
        double ohm = 0.02 * volt / ampere;
        double noLoad = 0.02 * ampere;
        double speed = kv * (volt - ohm * ampere);
        double torque = (ampere - noLoad) / (kv * speed * speed);
        return new FanNumbers(
                1e-5,
                torque,
                kv,
                ohm * 0.9,
                noLoad,
                ohm * 0.1,
                Optional.empty(),
                cooling(1e6, 1e6, 1e5, 1e4),
                heating(1e6, 1e6, 1e5, 1e4));
    }

    /** A motor that does not turn: a resistor of that size, which hardly warms. */
    static FanNumbers resistor(double ohm) {
        return new FanNumbers(
                1e-5,
                1e-7,
                50,
                ohm,
                1e6,
                0,
                Optional.empty(),
                cooling(1e6, 1e6, 1e5, 1e4),
                heating(1e6, 1e6, 1e5, 1e4));
    }

    static Cooling cooling(double whole, double junctionToSink, double junction, double toAir) {
        return new Cooling(si(whole), si(junctionToSink), si(junction), si(toAir));
    }

    static Heating heating(double winding, double frame, double between, double toAir) {
        return new Heating(
                si(winding),
                si(frame),
                si(between),
                si(toAir),
                Optional.empty(),
                Magnets.UNKNOWN,
                si(0.0011));
    }

    static FanType fanType(String name, FanNumbers of) {
        FanType like = RigSketch.fanType(name);
        FanType.Controller own = like.controller();
        return new FanType(
                name,
                true,
                si(0.140),
                si(0.052),
                si(0.0128),
                si(0.74),
                FanType.Data.MEASURED,
                new FanType.Performance.Coefficients(si(of.thrust), si(of.torque)),
                new FanType.Motor(
                        Optional.of(si(of.kv)),
                        Optional.of(si(of.windingOhm)),
                        Optional.of(si(of.noLoadA)),
                        OptionalInt.empty(),
                        of.heating),
                new FanType.Rotor(Optional.empty(), Optional.empty()),
                new FanType.Controller(
                        si(of.switchOhm),
                        of.limitA.map(RigSketch::si),
                        Optional.empty(),
                        Optional.empty(),
                        own.capacitance(),
                        own.capacitorVoltage(),
                        Optional.empty(),
                        si(3),
                        si(0.08),
                        si(0.12),
                        FanType.Switching.UNKNOWN,
                        of.cooling),
                Optional.empty(),
                si(0.1),
                si(1),
                si(1),
                Optional.empty(),
                FanType.Extremes.USUAL);
    }

    /** Numbers of a cell. */
    record CellNumbers(
            double capacityAs,
            double ohm,
            double slowOhm,
            double slowS,
            double heatCapacity,
            double coreToSurface,
            double toAir) {}

    /** A cell that hardly sags, empties or warms. */
    static final CellNumbers STIFF = new CellNumbers(5e6, 2e-5, 1e-5, 20, 1e5, 1e3, 1);

    static CellType cellType(String name, CellNumbers of) {
        return new CellType(
                name,
                "LiPo",
                Optional.of(si(of.capacityAs)),
                Optional.of(si(of.ohm)),
                List.of(new CellType.Settling(si(of.slowOhm), si(of.slowS))),
                Optional.empty(),
                CellType.Ageing.NONE,
                si(1500),
                si(0.165),
                Optional.of(RigSketch.CURVE),
                si(0),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new CellType.Thermal(si(of.heatCapacity), si(of.coreToSurface), si(of.toAir)));
    }
}
