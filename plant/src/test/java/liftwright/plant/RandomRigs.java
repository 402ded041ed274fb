package liftwright.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.random.RandomGenerator;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Contactor;
import liftwright.rig.Control;
import liftwright.rig.Declared;
import liftwright.rig.Demands;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Intake;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Site;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;

/**
 * Invented rigs of every shape: trees, packs of unequal charge on one bus, rings and cross-ties,
 * islands with and without packs, fans wired straight to a pack, wires of no length, controllers at
 * their current limit, cants, tilted mounts, bent arms, screens.
 */
public final class RandomRigs {

    private static final int[] GAUGES = {4, 8, 10, 12};

    private final RandomGenerator random;
    private final RigSketch sketch = new RigSketch();
    private final List<FanType> types = new ArrayList<>();
    private final List<CellType> cells = new ArrayList<>();
    private final List<Mount> mounts = new ArrayList<>();
    private final double doubt;
    private int elements;

    private RandomRigs(RandomGenerator random, double doubt) {
        this.random = random;
        this.doubt = doubt;
    }

    /** A rig without doubt in any value. */
    public static Rig exact(RandomGenerator random) {
        return new RandomRigs(random, 0).draw();
    }

    /** A rig whose values are in doubt by up to 4 %, shared or each. */
    public static Rig doubtful(RandomGenerator random) {
        return new RandomRigs(random, 0.04).draw();
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private Quantity value(double least, double most) {
        double si = between(least, most);
        return switch (doubt == 0 ? 0 : random.nextInt(3)) {
            case 0 -> RigSketch.si(si);
            case 1 -> RigSketch.about(si, between(0, doubt));
            default -> RigSketch.each(si, between(0, doubt));
        };
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private Rig draw() {
        sketch.site =
                new Site(
                        value(0, 2500),
                        chance(0.5) ? Optional.of(value(260, 310)) : Optional.empty(),
                        chance(0.5) ? Optional.of(value(80_000, 104_000)) : Optional.empty(),
                        value(0.1, 0.9));
        sketch.demands =
                new Demands(
                        RigSketch.si(1.15), RigSketch.si(60), RigSketch.si(0.2), value(0.05, 0.9));
        if (chance(0.6)) {
            sketch.wearer =
                    Optional.of(
                            new Wearer(
                                    value(45, 110),
                                    value(1.5, 2),
                                    chance(0.5) ? Wearer.Body.FEMALE : Wearer.Body.MALE,
                                    arm(),
                                    arm(),
                                    RigSketch.si(0),
                                    measured(),
                                    chance(0.5) ? stance() : Wearer.Stance.STRAIGHT,
                                    Wearer.Strength.UNMEASURED,
                                    Optional.empty()));
        }
        for (int k = random.nextInt(1, 4); k > 0; k--) {
            types.add(fanType("F" + k));
        }
        for (int k = random.nextInt(1, 3); k > 0; k--) {
            cells.add(cellType("C" + k));
        }
        for (int k = random.nextInt(1, 5); k > 0; k--) {
            mounts.add(mount("mount " + k));
        }
        for (int k = random.nextInt(1, 4); k > 0; k--) {
            island("i" + k);
        }
        for (int k = random.nextInt(0, 3); k > 0; k--) {
            String name = "part " + k;
            sketch.others.add(
                    new OtherPart(
                            new PartId(name),
                            RigPath.of("other parts", name),
                            value(0.2, 30),
                            any(mounts),
                            place(),
                            Optional.empty()));
        }
        groups();
        return sketch.rig();
    }

    private void groups() {
        List<PartId> first = new ArrayList<>();
        List<PartId> second = new ArrayList<>();
        for (Fan fan : sketch.fans) {
            (chance(0.5) ? first : second).add(fan.id());
        }
        if (chance(0.7)) {
            sketch.groups.add(group("one", first));
            sketch.groups.add(group("two", second));
        }
    }

    private Control.Group group(String name, List<PartId> fans) {
        double share = chance(0.5) ? 1 : between(0.4, 0.95);
        return new Control.Group(
                name, RigPath.of("control", "groups", name), fans, RigSketch.si(share));
    }

    private Wearer.Arm arm() {
        return new Wearer.Arm(value(-0.5, 1), value(0, 1.2), value(-0.6, 0.6), value(0, 1.5));
    }

    private Wearer.Measured measured() {
        Wearer.Sizes sizes =
                chance(0.5)
                        ? Wearer.Sizes.UNMEASURED
                        : new Wearer.Sizes(
                                Optional.of(value(0.3, 0.45)),
                                Optional.of(value(0.15, 0.22)),
                                Map.of(
                                        Wearer.Segment.UPPER_ARM,
                                        value(0.24, 0.34),
                                        Wearer.Segment.FOREARM,
                                        value(0.22, 0.3),
                                        Wearer.Segment.THIGH,
                                        value(0.35, 0.48)),
                                Map.of(
                                        Wearer.Segment.UPPER_ARM,
                                        value(1, 3),
                                        Wearer.Segment.HEAD,
                                        value(3, 5),
                                        Wearer.Segment.SHANK,
                                        value(2, 5)));
        return new Wearer.Measured(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                sizes);
    }

    private Wearer.Stance stance() {
        return new Wearer.Stance(leg(), leg(), value(-0.3, 0.4), value(-0.2, 0.2));
    }

    private Wearer.Leg leg() {
        return new Wearer.Leg(value(-0.2, 1), value(0, 0.5), value(0, 1.2));
    }

    private <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private Vec3 place() {
        return new Vec3(between(-0.5, 0.5), between(-0.5, 0.5), between(-0.5, 0.5));
    }

    private Mount mount(String name) {
        Mount.Carrier on =
                sketch.wearer.isPresent()
                        ? any(List.of(Mount.Carrier.values()))
                        : Mount.Carrier.FRAME;
        return new Mount(name, on, place(), value(0.1, 0.9), value(-0.2, 0.2), value(-0.2, 0.2));
    }

    private FanType fanType(String name) {
        double speed = between(1500, 3000);
        double thrust = between(40, 120);
        // Between a third and two thirds of what momentum theory asks at least.
        double power = thrust * Math.sqrt(thrust / (4 * 1.225 * 0.0128)) / between(0.4, 0.7);
        double nominalV = between(40, 60);
        double noLoad = between(1, 5);
        FanType.Performance performance =
                chance(0.5)
                        ? new FanType.Performance.AtSpeed(
                                RigSketch.si(speed), value(thrust, thrust), value(power, power))
                        : new FanType.Performance.Coefficients(
                                value(thrust / (speed * speed), thrust / (speed * speed)),
                                value(power / (speed * speed * speed), power / Math.pow(speed, 3)));
        double typicalA = power / nominalV;
        return new FanType(
                name,
                true,
                RigSketch.si(0.140),
                RigSketch.si(0.052),
                value(0.0120, 0.0135),
                value(0.5, 1),
                any(List.of(FanType.Data.values())),
                performance,
                new FanType.Motor(
                        Optional.of(value(speed / nominalV, 1.1 * speed / nominalV)),
                        Optional.of(value(0.005, 0.03)),
                        Optional.of(value(noLoad, noLoad)),
                        OptionalInt.of(5)),
                new FanType.Rotor(Optional.of(RigSketch.si(3200)), Optional.empty()),
                new FanType.Controller(
                        value(0.001, 0.004),
                        chance(0.4)
                                ? Optional.of(value(0.6 * typicalA + 6, 1.4 * typicalA + 6))
                                : Optional.empty(),
                        Optional.of(RigSketch.si(75)),
                        Optional.of(RigSketch.si(30_000)),
                        Optional.empty(),
                        Optional.of(RigSketch.si(80)),
                        Optional.of(RigSketch.si(30)),
                        value(0, 8),
                        value(0, 0.15),
                        value(0.05, 0.2),
                        FanType.Switching.UNKNOWN),
                Optional.empty(),
                RigSketch.si(0.1),
                chance(0.5) ? RigSketch.si(1) : value(1, 1),
                value(0.8, 1),
                Optional.empty(),
                FanType.Extremes.USUAL);
    }

    private CellType cellType(String name) {
        List<CellType.Settling> settling = new ArrayList<>();
        for (int k = random.nextInt(0, 3); k > 0; k--) {
            settling.add(new CellType.Settling(value(0.0002, 0.001), RigSketch.si(20)));
        }
        return new CellType(
                name,
                "LiPo",
                Optional.of(RigSketch.si(28800)),
                Optional.of(value(0.0005, 0.003)),
                settling,
                chance(0.5) ? Optional.of(shape()) : Optional.empty(),
                chance(0.4)
                        ? new CellType.Ageing(
                                Optional.of(value(0.6, 1)), Optional.of(value(0.8, 2.5)))
                        : CellType.Ageing.NONE,
                value(0, 2500),
                value(0.1, 0.3),
                Optional.of(RigSketch.CURVE),
                RigSketch.si(0),
                Optional.of(RigSketch.si(200)),
                Optional.of(RigSketch.si(280)),
                Optional.empty());
    }

    /** Factors at charges that leave the ends open. */
    private CellType.Shape shape() {
        double low = between(0, 0.3);
        return new CellType.Shape(
                List.of(low, 0.5, between(0.6, 1)), List.of(between(1, 4), 1.0, between(0.7, 1.2)));
    }

    private String pack(String group, int number, int series) {
        CellType cell = any(cells);
        Pack pack =
                new Pack(
                        PartId.of(group, number),
                        RigPath.of("packs", group, Integer.toString(number)),
                        cell,
                        series,
                        random.nextInt(1, 4),
                        value(0.1, 0.5),
                        chance(0.3) ? Optional.of(value(1, 4)) : Optional.empty(),
                        value(0, 0.003),
                        any(mounts),
                        place(),
                        RigSketch.si(between(0.1, 1)),
                        chance(0.3) ? Optional.of(value(275, 315)) : Optional.empty(),
                        Optional.empty());
        sketch.packs.add(pack);
        return pack.id().text();
    }

    private String fan(String group, int number) {
        FanType type = any(types);
        List<Fan.Lean> leans = new ArrayList<>();
        if (chance(0.5)) {
            RigPath at = RigPath.of("fans", group, Integer.toString(number), "cant");
            leans.add(new Fan.Lean(at.child("right"), value(-0.2, 0.2), new Vec3(0, 1, 0)));
            leans.add(new Fan.Lean(at.child("forward"), value(-0.2, 0.2), new Vec3(1, 0, 0)));
        }
        Optional<Intake> intake = Optional.empty();
        if (chance(0.5)) {
            intake =
                    Optional.of(
                            new Intake(
                                    RigPath.of("fans", group, Integer.toString(number), "intake"),
                                    chance(0.5)
                                            ? Intake.Screen.PERFORATED_PLATE
                                            : Intake.Screen.WIRE,
                                    value(0.6, 0.85),
                                    value(0.02, 0.05),
                                    random.nextInt(1, 3)));
        }
        Fan fan =
                new Fan(
                        PartId.of(group, number),
                        RigPath.of("fans", group),
                        type,
                        any(mounts),
                        place(),
                        new Vec3(0, 0, 1),
                        leans,
                        Fan.Spin.LEFT_HAND,
                        intake,
                        new Declared<>(
                                RigPath.of("fan types", type.name(), "installation"),
                                type.installation()),
                        Optional.empty());
        sketch.fans.add(fan);
        return fan.id().text();
    }

    private Element[] elements() {
        List<Element> list = new ArrayList<>();
        for (int k = random.nextInt(1, 4); k > 0; k--) {
            String id = "element " + ++elements;
            RigPath at = RigPath.of("wiring", id);
            list.add(
                    switch (random.nextInt(4)) {
                        case 0 ->
                                new Element.Run(
                                        new PartId(id),
                                        at,
                                        GAUGES[random.nextInt(GAUGES.length)],
                                        random.nextInt(1, 3),
                                        value(0.1, 1.5));
                        case 1 ->
                                new Element.Joint(
                                        new PartId(id),
                                        at,
                                        "lug",
                                        value(1e-4, 1e-3),
                                        Optional.of(RigSketch.si(60)));
                        case 2 ->
                                new Element.Fuse(
                                        new PartId(id),
                                        at,
                                        RigSketch.si(250),
                                        value(1e-4, 1e-3),
                                        Optional.of(RigSketch.si(5000)),
                                        Optional.of(RigSketch.si(80)));
                        default ->
                                new Element.Pole(
                                        new PartId(id),
                                        at,
                                        new Contactor(
                                                "contactor " + elements,
                                                1,
                                                value(1e-4, 3e-4),
                                                Optional.of(RigSketch.si(200)),
                                                Optional.empty(),
                                                Optional.empty()));
                    });
        }
        return list.toArray(new Element[0]);
    }

    /** Some resistance, or, now and then, none. */
    private void connect(String from, String to) {
        if (chance(0.12)) {
            if (chance(0.5)) {
                sketch.wire(from, to);
            } else {
                sketch.wire(from, to, RigSketch.run("nothing " + ++elements, 12, 0));
            }
        } else {
            sketch.wire(from, to, elements());
        }
    }

    private void island(String name) {
        int fans = random.nextInt(1, 6);
        switch (random.nextInt(5)) {
            case 0 -> tree(name, fans);
            case 1 -> bus(name, fans);
            case 2 -> mesh(name, fans);
            case 3 -> {
                // Nothing feeds these.
                connect(fan(name + "f", 1), name + " nowhere");
                fan(name + "f", 2);
                pack(name + "p", 1, 14);
            }
            default -> connect(pack(name + "p", 1, 14), fan(name + "f", 1));
        }
    }

    private void tree(String name, int fans) {
        String split = name + " split";
        connect(pack(name + "p", 1, 14), split);
        for (int k = 1; k <= fans; k++) {
            connect(split, fan(name + "f", k));
        }
    }

    private void bus(String name, int fans) {
        String bus = name + " bus";
        for (int k = random.nextInt(2, 5); k > 0; k--) {
            connect(pack(name + "p", k, chance(0.9) ? 14 : 13), bus);
        }
        for (int k = 1; k <= fans; k++) {
            connect(bus, fan(name + "f", k));
        }
    }

    /** A tree of any shape with resistive ties across it. */
    private void mesh(String name, int fans) {
        List<String> nodes = new ArrayList<>();
        for (int k = random.nextInt(1, 4); k > 0; k--) {
            nodes.add(pack(name + "p", k, 14));
        }
        for (int k = 1; k <= fans; k++) {
            nodes.add(fan(name + "f", k));
        }
        for (int k = random.nextInt(1, 5); k > 0; k--) {
            nodes.add(name + " node " + k);
        }
        for (int k = 1; k < nodes.size(); k++) {
            String earlier = nodes.get(random.nextInt(k));
            if (chance(0.5)) {
                connect(earlier, nodes.get(k));
            } else {
                connect(nodes.get(k), earlier);
            }
        }
        for (int k = random.nextInt(0, 4); k > 0; k--) {
            sketch.wire(any(nodes), any(nodes), elements());
        }
    }
}
