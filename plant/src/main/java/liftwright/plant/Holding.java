package liftwright.plant;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import liftwright.physics.Gravity;
import liftwright.plant.body.Limb;
import liftwright.plant.body.MassItem;
import liftwright.plant.body.MassProperties;
import liftwright.plant.hold.Ask;
import liftwright.plant.hold.Extent;
import liftwright.plant.hold.FanAlone;
import liftwright.plant.hold.Held;
import liftwright.plant.hold.Hold;
import liftwright.plant.hold.HoldMemory;
import liftwright.plant.hold.HoldRows;
import liftwright.plant.hold.Push;
import liftwright.plant.hold.StandHold;
import liftwright.plant.hold.StandRows;
import liftwright.plant.hold.TetherHold;
import liftwright.plant.hold.TetherNumbers;
import liftwright.plant.hold.TetherRows;
import liftwright.plant.motion.Body;
import liftwright.plant.motion.Peak;
import liftwright.plant.motion.RunawayCase;
import liftwright.plant.motion.RunawayPath;
import liftwright.plant.motion.Spring;
import liftwright.plant.motion.Stop;
import liftwright.plant.motion.Surroundings;
import liftwright.plant.motion.TetherRun;
import liftwright.rig.HoldingStand;
import liftwright.rig.LimitName;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * What holds a rig down, and in, at any vector of its numbers: the stand under the worst of its
 * fans and the tether through a runaway. For one thread. Of a plant that {@link Plant#assembleHeld}
 * made.
 */
public final class Holding {

    /** So long is a runaway followed: through the climb, the fall and the first bounces, s. */
    public static final double HORIZON_S = 6;

    /** A fall into the line, and its first bounce, s. */
    private static final double DROP_S = 3;

    private final Assembler parts;
    private final HoldRows rows;
    private final HoldMemory memory;
    private final FullThrust full;
    private final Optional<Runaway> runaway;

    Holding(Assembler parts, HoldRows rows, HoldMemory memory) {
        this.parts = parts;
        this.rows = rows;
        this.memory = memory;
        full = new FullThrust(parts);
        runaway = rows.tether().map(_ -> new Runaway(parts));
    }

    /**
     * Everything at one vector. Allocates.
     *
     * @param keep whether the runaway keeps its moments
     * @return empty where no operating point was found
     */
    public Optional<Held> at(double[] p, boolean keep) {
        Optional<List<FanAlone>> found = memory.fans(p, rows.before(), () -> full.at(p));
        if (found.isEmpty()) {
            return Optional.empty();
        }
        List<FanAlone> fans = found.get();
        MassProperties mass = parts.ledger.properties(p);
        Extent extent = extent(p, mass, fans);
        Optional<Held.OnStand> stand = rows.stand().map(own -> stand(p, own, fans, mass));
        Optional<Held.OnTether> tether = Optional.empty();
        if (rows.tether().isPresent()) {
            tether = tether(p, rows.tether().get(), fans, mass, extent, keep);
            if (tether.isEmpty()) {
                return Optional.empty();
            }
        }
        List<Ask> asks = new ArrayList<>();
        stand.ifPresent(own -> asks.addAll(asks(own)));
        tether.ifPresent(
                own ->
                        asks.addAll(
                                TetherHold.of(
                                        own.line(), own.rig(), own.ran(), parts.rig.limits())));
        return Optional.of(new Held(fans, extent, mass.massKg(), stand, tether, asks));
    }

    /** Name of the kill that a runaway is stopped by; empty where none is declared. */
    public Optional<String> slowestKill(double[] p) {
        return rows.kills().slowestName(p);
    }

    /** A runaway under the tether that strikes what is overhead; for the picture and the words. */
    public RunawayPath struck(double[] p, Held.OnTether tether, Extent extent) {
        return run(
                p,
                tether.line(),
                tether.stop(),
                OptionalDouble.of(tether.line().overheadM() - extent.heightM()),
                true);
    }

    private List<Ask> asks(Held.OnStand stand) {
        double factor = parts.rig.limits().si(LimitName.RESTRAINT_FACTOR);
        List<Ask> asks = new ArrayList<>();
        for (Hold way : stand.ways()) {
            asks.add(
                    new Ask(
                            what(way.way()),
                            way.over(),
                            way.worst().fans().stream().map(stand.held()::get).toList(),
                            way.worst().load(),
                            OptionalDouble.of(way.capacity()),
                            factor));
        }
        return asks;
    }

    private static Ask.What what(Hold.Way way) {
        return switch (way) {
            case SLIDES -> Ask.What.SLIDES;
            case TURNS -> Ask.What.TURNS;
            case TIPS -> Ask.What.TIPS;
            case BOLT_PULLED -> Ask.What.BOLT_PULLED;
            case BOLT_SHEARED -> Ask.What.BOLT_SHEARED;
            case BOLT_BOTH -> Ask.What.BOLT_BOTH;
        };
    }

    private Held.OnStand stand(
            double[] p, StandRows own, List<FanAlone> fans, MassProperties mass) {
        HoldingStand stand = own.stand();
        Set<PartId> ids = new HashSet<>(stand.fans());
        List<Integer> numbers = new ArrayList<>();
        List<FanAlone> held = new ArrayList<>();
        for (int k = 0; k < fans.size(); k++) {
            if (ids.contains(fans.get(k).id())) {
                numbers.add(k);
                held.add(fans.get(k));
            }
        }
        double heightM = own.heightM(p);
        Carried carried = carried(stand, ids, mass);
        Vec3 off = Push.turned(carried.centre.minus(Push.middle(held)), stand.thrustPoints());
        List<Push> pushes = Push.onStand(held, stand.thrustPoints(), heightM);
        StandHold.Floor floor = own.floor(p, carried.massKg, off, Gravity.STANDARD_MPS2);
        return new Held.OnStand(numbers, pushes, floor, heightM, StandHold.of(pushes, floor));
    }

    private record Carried(double massKg, Vec3 centre) {}

    /** With all fans the whole rig is on the stand; with some of them these alone. */
    private Carried carried(HoldingStand stand, Set<PartId> ids, MassProperties mass) {
        boolean whole = ids.size() == parts.rig.fans().size();
        Set<String> names = new HashSet<>();
        ids.forEach(id -> names.add(id.text()));
        double kg = 0;
        Vec3 moment = Vec3.ZERO;
        for (MassItem item : mass.items()) {
            boolean on =
                    switch (item.kind()) {
                        case WEARER -> stand.carriesWearer();
                        case FAN -> names.contains(item.name());
                        case PACK, OTHER_PART -> whole || stand.carriesWearer();
                    };
            if (on) {
                kg += item.massKg();
                moment = moment.plus(item.at().times(item.massKg()));
            }
        }
        return new Carried(kg, kg > 0 ? moment.times(1 / kg) : Vec3.ZERO);
    }

    private Optional<Held.OnTether> tether(
            double[] p,
            TetherRows own,
            List<FanAlone> fans,
            MassProperties mass,
            Extent extent,
            boolean keep) {
        TetherNumbers line = own.at(p, extent.shoulderHeightM());
        Stop stop = rows.kills().slowest(p);
        RunawayPath path =
                keep
                        ? run(p, line, stop, OptionalDouble.empty(), true)
                        : memory.path(
                                p,
                                rows.before(),
                                dependsOn(line, stop),
                                () -> run(p, line, stop, OptionalDouble.empty(), false));
        if (path.failed()) {
            return Optional.empty();
        }
        RunawayPath drop =
                memory.path(
                        p,
                        rows.before(),
                        new double[] {
                            line.straightM(), line.stiffnessNpm(), line.dampingNspm(), startM(line)
                        },
                        () -> drop(p, line, mass.massKg()));
        Vec3 sum = Vec3.ZERO;
        for (FanAlone fan : fans) {
            sum = sum.plus(fan.direction().times(fan.thrustN()));
        }
        var ran =
                new TetherHold.Ran(
                        startM(line),
                        path.apex().heightM(),
                        Math.max(linePeak(path).forceN(), linePeak(drop).forceN()),
                        Math.max(linePeak(path).stretchM(), linePeak(drop).stretchM()),
                        path.peaks().size() > 1 ? path.peaks().get(1).forceN() : 0,
                        Math.max(landingMps(path), landingMps(drop)));
        return Optional.of(
                new Held.OnTether(
                        line,
                        new TetherHold.Hung(mass.massKg(), sum.length(), extent, open(fans)),
                        ran,
                        stop,
                        path));
    }

    private static Peak linePeak(RunawayPath path) {
        return path.peaks().getFirst();
    }

    private static double landingMps(RunawayPath path) {
        return path.impact().map(blow -> Math.abs(blow.upMps())).orElse(0.0);
    }

    /** All thrust is gone where the runaway would begin: the rig falls into its line. */
    private RunawayPath drop(double[] p, TetherNumbers line, double massKg) {
        return TetherRun.fall(
                new Body(massKg, Body.USUAL_DRAG_AREA_M2, parts.air.densityKgpm3(p)),
                startM(line),
                0,
                new Surroundings(List.of(overhead(line)), OptionalDouble.empty()),
                DROP_S);
    }

    private static Spring overhead(TetherNumbers line) {
        return new Spring(
                "line",
                Spring.Way.LIFTS,
                line.straightM(),
                line.stiffnessNpm(),
                line.dampingNspm());
    }

    /** What a runaway depends on besides the rig; what a kill opens stays the rig's. */
    private double[] dependsOn(TetherNumbers line, Stop stop) {
        return new double[] {
            line.straightM(),
            line.stiffnessNpm(),
            line.dampingNspm(),
            line.down().map(TetherNumbers.Down::straightM).orElse(-1.0),
            line.down().map(TetherNumbers.Down::togetherNpm).orElse(0.0),
            startM(line),
            stop.commandAtS(),
            stop.openAtS()
        };
    }

    /** As high as is asked, or as the line holds it up. */
    private double startM(TetherNumbers line) {
        return Math.max(parts.rig.demands().height().si(), Math.max(0, line.straightM()));
    }

    private RunawayPath run(
            double[] p, TetherNumbers line, Stop stop, OptionalDouble ceilingM, boolean keep) {
        List<Spring> springs = new ArrayList<>();
        springs.add(overhead(line));
        line.down()
                .filter(down -> down.togetherNpm() > 0)
                .ifPresent(
                        down ->
                                springs.add(
                                        new Spring(
                                                "down-lines",
                                                Spring.Way.HOLDS,
                                                down.straightM(),
                                                down.togetherNpm(),
                                                0)));
        Runaway climbs = runaway.orElseThrow();
        climbs.load(p);
        double startM = startM(line);
        return climbs.run(
                new RunawayCase(
                        new RunawayCase.Trigger.AllFull(),
                        startM > 0
                                ? new RunawayCase.Start.Hover(startM)
                                : new RunawayCase.Start.Ground(),
                        stop,
                        new Surroundings(springs, ceilingM),
                        HORIZON_S),
                keep);
    }

    /** Fans with nothing before their intake. */
    private List<TetherHold.OpenIntake> open(List<FanAlone> fans) {
        List<TetherHold.OpenIntake> open = new ArrayList<>();
        Rig rig = parts.rig;
        for (int k = 0; k < fans.size(); k++) {
            if (rig.fans().get(k).intake().isEmpty()) {
                open.add(
                        new TetherHold.OpenIntake(
                                k, fans.get(k).at(), rig.fans().get(k).type().tip().si() / 2));
            }
        }
        return open;
    }

    private Extent extent(double[] p, MassProperties mass, List<FanAlone> fans) {
        double bottom = Double.NEGATIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double side = 0;
        boolean worn = parts.rig.wearer().isPresent();
        for (Limb limb : parts.ledger.limbs(p)) {
            for (Vec3 end : List.of(limb.from(), limb.to())) {
                bottom = Math.max(bottom, end.z());
                top = Math.min(top, end.z());
                side = Math.max(side, Math.hypot(end.x(), end.y()));
            }
        }
        for (int k = 0; k < fans.size(); k++) {
            double radiusM = parts.rig.fans().get(k).type().tip().si() / 2;
            Vec3 at = fans.get(k).at();
            top = Math.min(top, at.z() - radiusM);
            bottom = worn ? bottom : Math.max(bottom, at.z() + radiusM);
            side = Math.max(side, Math.hypot(at.x(), at.y()) + radiusM);
        }
        for (MassItem item : mass.items()) {
            top = Math.min(top, item.at().z());
            bottom = worn ? bottom : Math.max(bottom, item.at().z());
        }
        return new Extent(bottom, top, worn ? 0 : top, side);
    }
}
