package liftwright.review.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.FastEffects;
import liftwright.plant.Effects;
import liftwright.plant.LeadLoop;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.FanType.Braking;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * Fans of one bus that give energy back all at once when they are slowed from full throttle on full
 * packs: while the packs take it up, and after a contactor or a fuse has parted them from it.
 */
final class BusBraking {

    private final Plant plant;
    private final Rig rig;
    private final SteadyState full;

    private BusBraking(Plant plant) {
        this.plant = plant;
        rig = plant.rig();
        full = plant.state();
        plant.solve(
                plant.parameters().nominal(),
                Effects.ALL.withCharge(false),
                plant.workspace(),
                full);
    }

    static List<Finding> findings(Plant plant) {
        if (plant.rig().fans().stream().noneMatch(fan -> givesBack(fan.type()))) {
            return List.of();
        }
        BusBraking braking = new BusBraking(plant);
        if (!braking.full.converged()) {
            return List.of(); // nothing is known of the speeds
        }
        List<Finding> findings = new ArrayList<>(braking.withPacks());
        braking.withoutPacks().ifPresent(findings::add);
        return findings;
    }

    private static boolean givesBack(FanType type) {
        return type.controller()
                .switching()
                .braking()
                .filter(Braking.FREEWHEEL::equals)
                .isPresent();
    }

    /** The least rating of the controllers of a bus, and of what it is the rating. */
    private record Rating(Fan fan, RigPath at, double ratingV, double limitV, LimitName name) {}

    private Optional<Rating> rating(List<Integer> fans) {
        return fans.stream()
                .map(number -> rig.fans().get(number))
                .flatMap(
                        fan -> {
                            FanType.Controller own = fan.type().controller();
                            RigPath at = RigPath.of("fan types", fan.type().name(), "controller");
                            return Stream.of(
                                            own.topVoltage()
                                                    .map(
                                                            most ->
                                                                    rating(
                                                                            fan,
                                                                            at.child("top voltage"),
                                                                            most,
                                                                            LimitName
                                                                                    .CONTROLLER_VOLTAGE_SHARE)),
                                            own.capacitorVoltage()
                                                    .map(
                                                            most ->
                                                                    rating(
                                                                            fan,
                                                                            at.child(
                                                                                    "capacitor"
                                                                                            + " voltage"),
                                                                            most,
                                                                            LimitName
                                                                                    .CAPACITOR_VOLTAGE_SHARE)))
                                    .flatMap(Optional::stream);
                        })
                .min(Comparator.comparingDouble(Rating::limitV));
    }

    private Rating rating(Fan fan, RigPath at, Quantity most, LimitName name) {
        return new Rating(fan, at, most.si(), most.si() * rig.limits().si(name), name);
    }

    /** With the packs there: how far the power of all of them lifts the bus. */
    private List<Finding> withPacks() {
        List<Finding> findings = new ArrayList<>();
        Finding worst = null;
        double worstOver = 0;
        for (LeadLoop loop : plant.cut(plant.parameters().nominal(), full)) {
            List<Integer> braking =
                    loop.fans().stream()
                            .filter(fan -> givesBack(rig.fans().get(fan).type()))
                            .toList();
            Optional<Rating> rating = rating(loop.fans());
            if (braking.isEmpty() || rating.isEmpty()) {
                continue;
            }
            double power = 0;
            boolean limited = true;
            boolean told = true;
            for (int fan : braking) {
                FanType type = rig.fans().get(fan).type();
                OptionalDouble most = mostBrakingW(type, fan);
                told &= most.isPresent();
                limited &= type.controller().currentLimit().isPresent();
                power += most.orElse(0);
            }
            double volt = FastEffects.fedBackV(loop.sourceV(), loop.resistanceOhm(), power);
            double over = volt / rating.get().limitV;
            if (told && over > worstOver) {
                worstOver = over;
                worst = lifted(loop, braking.size(), volt, limited, rating.get());
            }
        }
        if (worst != null) {
            findings.add(worst);
        }
        return findings;
    }

    /** Empty where a bench table has to tell the motor's values. */
    private OptionalDouble mostBrakingW(FanType type, int fan) {
        FanType.Motor motor = type.motor();
        if (motor.speedConstant().isEmpty() || motor.windingResistance().isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                FastEffects.mostBrakingW(
                        full.fanSpeedRadps(fan) / motor.speedConstant().get().si(),
                        motor.windingResistance().get().si()
                                + type.controller().onResistance().si(),
                        type.controller()
                                .currentLimit()
                                .map(Quantity::si)
                                .orElse(Double.POSITIVE_INFINITY)));
    }

    private Finding lifted(
            LeadLoop loop, int braking, double volt, boolean limited, Rating rating) {
        double hazardous = rig.limits().si(LimitName.HAZARDOUS_VOLTAGE);
        boolean intoHazard = loop.sourceV() <= hazardous && volt > hazardous;
        boolean beyond = volt > rating.ratingV;
        Severity severity =
                beyond && limited
                        ? Severity.STOPS
                        : volt > rating.limitV || intoHazard ? Severity.WARNS : Severity.NOTES;
        Sentence sentence =
                Sentence.words(
                                (braking == 1 ? "one fan" : braking + " fans of one bus")
                                        + " braked from full throttle lift"
                                        + (braking == 1 ? "s" : "")
                                        + " the input of "
                                        + rating.fan.id()
                                        + " to at most ")
                        .then(Measure.VOLTAGE, volt)
                        .then(", and drive ")
                        .then(Measure.CURRENT, (volt - loop.sourceV()) / loop.resistanceOhm())
                        .then(" into full packs");
        if (intoHazard) {
            sentence =
                    sentence.then("; above ")
                            .then(Measure.VOLTAGE, hazardous)
                            .then(" it is hazardous to touch");
        }
        return Finding.of(
                        severity,
                        "bus-brake-rise",
                        sentence,
                        limited
                                ? "every braking controller at its current limit at once; iron and drag"
                                        + " left out"
                                : "no current limit is declared for a braking controller, so it counts as"
                                        + " one that brakes as hard as it can")
                .about(rating.fan.id().text())
                .at(rating.at.toString())
                .against(
                        Value.of("bus-voltage", volt),
                        new Finding.Limit(
                                Value.of("bus-voltage", rating.limitV),
                                rating.name.key()
                                        + " of its rating: "
                                        + rig.limits().origin(rating.name)));
    }

    /** Fans that hang together once the packs are gone, and how they came to be without. */
    private record Island(List<Integer> fans, boolean byContactor) {}

    /** With the packs gone: how little of the rotors' energy the capacitors can take. */
    private Optional<Finding> withoutPacks() {
        Finding worst = null;
        double least = 1;
        for (Island island : islands()) {
            double stored = 0;
            double roomF = 0;
            double startV = 0;
            boolean told = true;
            int braking = 0;
            for (int fan : island.fans) {
                FanType type = rig.fans().get(fan).type();
                startV = Math.max(startV, full.fanTerminalV(fan));
                roomF += type.controller().capacitance().map(Quantity::si).orElse(0.0);
                if (givesBack(type)) {
                    braking++;
                    double speed = full.fanSpeedRadps(fan);
                    told &= type.rotor().inertia().isPresent();
                    stored += type.rotor().inertia().map(Quantity::si).orElse(0.0) * speed * speed;
                }
            }
            Optional<Rating> rating = rating(island.fans);
            if (!told || braking == 0 || stored == 0 || roomF == 0 || rating.isEmpty()) {
                continue; // what is missing is told with each fan's spool-down
            }
            double share = FastEffects.brakeShare(startV, rating.get().ratingV, stored, 1, roomF);
            if (share < least) {
                least = share;
                worst = parted(island, braking, share, rating.get());
            }
        }
        return Optional.ofNullable(worst);
    }

    private Finding parted(Island island, int braking, double share, Rating rating) {
        return Finding.of(
                        island.byContactor ? Severity.STOPS : Severity.WARNS,
                        "bus-brake-open",
                        Sentence.start()
                                .then(Measure.PERCENT, share)
                                .then(
                                        " of the energy in "
                                                + (braking == 1
                                                        ? "the rotor that brakes"
                                                        : "the rotors of "
                                                                + braking
                                                                + " fans on one bus")
                                                + " takes the input of "
                                                + rating.fan.id()
                                                + " to ")
                                .then(Measure.VOLTAGE, rating.ratingV)
                                .then(
                                        island.byContactor
                                                ? ", its rating, braking into an open contactor"
                                                : ", its rating, braking after a fuse or a plug has"
                                                        + " opened"),
                        "with the packs gone, all capacitors of the bus together take what its fans give:"
                                + " let them coast, and command zero before the contactor opens")
                .about(rating.fan.id().text())
                .at(rating.at.toString())
                .against(
                        Value.of("brake-share", share),
                        new Finding.Limit(
                                Value.of("brake-share", 1),
                                "energy balance, drag and winding left out"));
    }

    /**
     * Fans that hang together without a pack once every contactor is open, or, where none is, once
     * every pack is gone.
     */
    private List<Island> islands() {
        Graph graph = Graph.of(rig);
        Predicate<Graph.Arc> closed =
                arc -> graph.along(arc).stream().noneMatch(Element.Pole.class::isInstance);
        List<Island> islands = new ArrayList<>();
        for (List<Integer> fans : together(graph, closed)) {
            String any = rig.fans().get(fans.getFirst()).id().text();
            if (graph.way(any, closed, graph::isPack).isEmpty()) {
                islands.add(new Island(fans, true));
            }
        }
        if (islands.isEmpty()) {
            together(graph, arc -> !graph.isPack(arc.near()) && !graph.isPack(arc.far()))
                    .forEach(fans -> islands.add(new Island(fans, false)));
        }
        return islands;
    }

    private List<List<Integer>> together(Graph graph, Predicate<Graph.Arc> usable) {
        Map<Integer, List<Integer>> groups = new TreeMap<>();
        Set<Integer> taken = new HashSet<>();
        for (int fan = 0; fan < rig.fans().size(); fan++) {
            if (!taken.add(fan)) {
                continue;
            }
            List<Integer> own = new ArrayList<>(List.of(fan));
            for (int other = fan + 1; other < rig.fans().size(); other++) {
                String name = rig.fans().get(other).id().text();
                if (!taken.contains(other)
                        && graph.way(rig.fans().get(fan).id().text(), usable, name::equals)
                                .isPresent()) {
                    own.add(other);
                    taken.add(other);
                }
            }
            groups.put(fan, own);
        }
        return List.copyOf(groups.values());
    }
}
