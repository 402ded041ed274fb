package liftwright.plant;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.CellType;
import liftwright.rig.Contactor;
import liftwright.rig.Control;
import liftwright.rig.Declaration;
import liftwright.rig.Declared;
import liftwright.rig.Demands;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Intake;
import liftwright.rig.Limits;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Site;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;
import liftwright.rig.Wiring;
import liftwright.rig.table.Tables;

/** A rig that tests put together part by part, without a file. Values are invented. */
public final class RigSketch {

    public static final Mount FRAME =
            new Mount("frame", Mount.Carrier.FRAME, Vec3.ZERO, si(0), si(0), si(0));

    /** Rest voltages of an invented cell. */
    public static final CellType.Curve CURVE =
            new CellType.Curve(
                    List.of(0.0, 0.05, 0.2, 0.5, 0.8, 1.0),
                    List.of(3.0, 3.45, 3.65, 3.80, 4.00, 4.20));

    public Site site = new Site(si(4), Optional.of(si(285.15)), Optional.empty(), si(0.8));
    public Demands demands = new Demands(si(1.15), si(60), si(0.2), si(0.2));
    public Limits limits = new Limits(Map.of());
    public Optional<Wearer> wearer = Optional.empty();
    public Control.Kind steering = Control.Kind.SHARED_THROTTLE;
    public final List<Fan> fans = new ArrayList<>();
    public final List<Pack> packs = new ArrayList<>();
    public final List<Wiring.Chain> chains = new ArrayList<>();
    public final List<OtherPart> others = new ArrayList<>();
    public final List<Control.Group> groups = new ArrayList<>();

    /** A sketch of a rig that exists, to change it. */
    public static RigSketch of(Rig rig) {
        RigSketch sketch = new RigSketch();
        sketch.site = rig.site();
        sketch.demands = rig.demands();
        sketch.limits = rig.limits();
        sketch.wearer = rig.wearer();
        sketch.steering = rig.control().kind();
        sketch.fans.addAll(rig.fans());
        sketch.packs.addAll(rig.packs());
        sketch.chains.addAll(rig.wiring().chains());
        sketch.others.addAll(rig.otherParts());
        sketch.groups.addAll(rig.control().groups());
        return sketch;
    }

    /** Half a fan: two of them on one terminal are the whole. */
    public static Fan half(Fan fan, PartId id) {
        FanType type = fan.type();
        FanType.Controller controller = type.controller();
        FanType.Performance performance =
                switch (type.performance()) {
                    case FanType.Performance.AtSpeed at ->
                            new FanType.Performance.AtSpeed(
                                    at.speed(),
                                    scaled(at.thrust(), 0.5),
                                    scaled(at.shaftPower(), 0.5));
                    case FanType.Performance.Coefficients at ->
                            new FanType.Performance.Coefficients(
                                    scaled(at.thrust(), 0.5), scaled(at.torque(), 0.5));
                    case FanType.Performance.Measured _ ->
                            throw new IllegalArgumentException("a table does not halve");
                };
        FanType half =
                new FanType(
                        type.name() + " halved",
                        type.ducted(),
                        type.tip(),
                        type.hub(),
                        type.exitArea(),
                        type.mass(),
                        type.data(),
                        performance,
                        new FanType.Motor(
                                type.motor().speedConstant(),
                                type.motor().windingResistance().map(r -> scaled(r, 2)),
                                type.motor().noLoadCurrent().map(i -> scaled(i, 0.5)),
                                type.motor().polePairs()),
                        type.rotor(),
                        new FanType.Controller(
                                scaled(controller.onResistance(), 2),
                                controller.currentLimit().map(limit -> scaled(limit, 0.5)),
                                controller.topVoltage(),
                                controller.topElectricalSpeed(),
                                controller.capacitance(),
                                controller.capacitorVoltage(),
                                controller.cutOff(),
                                scaled(controller.fixedPower(), 0.5),
                                controller.switchingLoss(),
                                controller.mass(),
                                controller.switching()),
                        type.intake(),
                        type.swirl(),
                        type.scatter(),
                        type.installation(),
                        type.lot(),
                        type.extremes());
        return Copies.of(fan).id(id).type(half).unmarked().made();
    }

    private static Quantity scaled(Quantity value, double factor) {
        return new Quantity(
                value.si() * factor, value.dimension(), value.tolerance().scaled(factor));
    }

    /** An exact value; no test here looks at its dimension. */
    public static Quantity si(double value) {
        return Quantity.exact(value, Dimension.NONE);
    }

    /** A value with a share of itself as shared, normal doubt. */
    public static Quantity about(double value, double share) {
        return doubt(value, share, Tolerance.Scope.SHARED);
    }

    /** The same, each part with its own error. */
    public static Quantity each(double value, double share) {
        return doubt(value, share, Tolerance.Scope.EACH);
    }

    private static Quantity doubt(double value, double share, Tolerance.Scope scope) {
        double half = Math.abs(value) * share;
        return new Quantity(
                value, Dimension.NONE, new Tolerance(half, half, Tolerance.Form.NORMAL, scope));
    }

    public static FanType fanType(String name) {
        return fanType(name, FanType.Data.MEASURED, Optional.of(si(130)), si(1));
    }

    public static FanType fanType(
            String name, FanType.Data data, Optional<Quantity> currentLimit, Quantity scatter) {
        return new FanType(
                name,
                true,
                si(0.140),
                si(0.052),
                about(0.0128, 0.02),
                about(0.74, 0.02),
                data,
                new FanType.Performance.AtSpeed(si(2722.7), about(92, 0.03), about(4600, 0.04)),
                new FanType.Motor(
                        Optional.of(about(54.45, 0.02)),
                        Optional.of(about(0.012, 0.10)),
                        Optional.of(about(2.5, 0.2)),
                        OptionalInt.of(5)),
                new FanType.Rotor(Optional.of(si(3141.6)), Optional.empty()),
                new FanType.Controller(
                        about(0.002, 0.2),
                        currentLimit,
                        Optional.of(si(75)),
                        Optional.of(si(25132.7)),
                        Optional.of(si(940e-6)),
                        Optional.of(si(80)),
                        Optional.of(si(40)),
                        si(5),
                        si(0.08),
                        si(0.12),
                        FanType.Switching.UNKNOWN),
                Optional.empty(),
                si(0.1),
                scatter,
                si(0.9),
                Optional.empty(),
                FanType.Extremes.USUAL);
    }

    public static CellType cellType(String name) {
        return new CellType(
                name,
                "LiPo",
                Optional.of(each(28800, 0.02)),
                Optional.of(each(0.0009, 0.08)),
                List.of(new CellType.Settling(about(0.0005, 0.1), si(25))),
                Optional.empty(),
                CellType.Ageing.NONE,
                si(1000),
                si(0.165),
                Optional.of(CURVE),
                new Quantity(
                        0,
                        Dimension.NONE,
                        new Tolerance(0.01, 0.01, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED)),
                Optional.of(si(200)),
                Optional.of(si(280)),
                Optional.empty());
    }

    public static Fan fan(String group, int number, FanType type) {
        return fan(group, number, type, FRAME, List.of(), Optional.empty());
    }

    public static Fan fan(
            String group,
            int number,
            FanType type,
            Mount mount,
            List<Fan.Lean> leans,
            Optional<Intake> intake) {
        RigPath at = RigPath.of("fans", group);
        return new Fan(
                PartId.of(group, number),
                at,
                type,
                mount,
                new Vec3(0.1 * number, -0.2, 0.05),
                new Vec3(0, 0, 1),
                leans,
                number % 2 == 0 ? Fan.Spin.LEFT_HAND : Fan.Spin.RIGHT_HAND,
                intake,
                new Declared<>(
                        RigPath.of("fan types", type.name(), "installation"), type.installation()),
                Optional.empty());
    }

    public static Pack pack(String group, int number, CellType cell, int series, double charge) {
        return new Pack(
                PartId.of(group, number),
                RigPath.of("packs", group),
                cell,
                series,
                1,
                si(0.25),
                Optional.empty(),
                si(0.0015),
                FRAME,
                new Vec3(0, 0, -0.1),
                si(charge),
                Optional.empty(),
                Optional.empty());
    }

    public static Element run(String id, int gauge, double lengthM) {
        return new Element.Run(
                new PartId(id), RigPath.of("wiring", "runs", id), gauge, 1, si(lengthM));
    }

    public static Element joint(String id, double ohm) {
        return new Element.Joint(
                new PartId(id),
                RigPath.of("wiring", "joints", id),
                "bullet",
                si(ohm),
                Optional.of(si(90)));
    }

    public static Element fuse(String id, double ohm) {
        return new Element.Fuse(
                new PartId(id),
                RigPath.of("wiring", "fuses", id),
                si(250),
                si(ohm),
                Optional.of(si(10_000)),
                Optional.of(si(80)));
    }

    public static Element pole(String id, double ohm) {
        return new Element.Pole(
                new PartId(id),
                RigPath.of("wiring", "poles", id),
                new Contactor(
                        "main",
                        2,
                        si(ohm),
                        Optional.of(si(200)),
                        Optional.of(si(2000)),
                        Optional.of(si(100))));
    }

    public RigSketch wire(String from, String to, Element... elements) {
        chains.add(
                new Wiring.Chain(
                        new PartId("chain." + (chains.size() + 1)), from, to, List.of(elements)));
        return this;
    }

    public Rig rig() {
        return rig(new Declaration(new Declaration.Tree.Entries(Map.of())));
    }

    public Rig rig(Declaration declaration) {
        Set<Mount> mounts = new LinkedHashSet<>();
        Set<FanType> types = new LinkedHashSet<>();
        Set<CellType> cells = new LinkedHashSet<>();
        fans.forEach(fan -> mounts.add(fan.mount()));
        fans.forEach(fan -> types.add(fan.type()));
        packs.forEach(pack -> mounts.add(pack.mount()));
        packs.forEach(pack -> cells.add(pack.cell()));
        others.forEach(other -> mounts.add(other.mount()));
        return new Rig(
                "sketch",
                1,
                "",
                site,
                demands,
                limits,
                wearer,
                List.copyOf(mounts),
                List.copyOf(types),
                fans,
                List.copyOf(cells),
                packs,
                new Wiring(chains, List.of(), Optional.empty()),
                others,
                new Control(steering, groups),
                declaration,
                Tables.NONE,
                List.of());
    }
}
