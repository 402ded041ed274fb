package liftwright.review.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import liftwright.physics.AircraftWire;
import liftwright.physics.FuseCurve;
import liftwright.plant.FaultSupply;
import liftwright.review.wiring.FaultNet.Place;
import liftwright.rig.Element;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;

/**
 * Which standard size of fuse holds what is asked of it and still opens before the wires behind it
 * are harmed. Fuses that are declared in one place are chosen together.
 *
 * <p>Holding is judged with the first fuse that the standard allows to open, warm from what came
 * before; protecting with the last, cold, into a fault behind every run of its zone and through
 * currents from the run's steady limit to the prospective one. Packs are full, loads draw nothing
 * besides.
 */
final class FuseChoice {

    /** Currents that are tried between a wire's limit and the prospective one. */
    private static final int SWEEP = 24;

    private final Rig rig;
    private final Loads loads;
    private final FaultSupply supply;
    private final double airK;
    private final double pressurePa;
    private final Graph graph;
    private final FaultNet net;
    private final List<Place<Element.Fuse>> fuses;

    FuseChoice(Rig rig, Loads loads, FaultSupply supply, double airK, double pressurePa) {
        this.rig = rig;
        this.loads = loads;
        this.supply = supply;
        this.airK = airK;
        this.pressurePa = pressurePa;
        graph = Graph.of(rig);
        net = new FaultNet(rig, rig.wiring().chains(), supply);
        fuses = net.fuses();
    }

    /**
     * A wire that a fuse lets be harmed.
     *
     * @param run which
     * @param ampere the least current tried at which it is, A
     */
    record Harm(Element.Run run, double ampere) {}

    /**
     * What was found for the fuses of one place in the file.
     *
     * @param fuse the one that carries most
     * @param number how many
     * @param form what it is
     * @param expectedA in hover, A
     * @param worstA A
     * @param prospectiveA greatest into a dead short in its zone, A
     * @param holdsFromA smallest standard size that holds; empty where none does
     * @param fitting standard sizes that hold and protect, A, rising
     * @param state greatest state of the present size, as early as it may open, over 1
     * @param harm what the present size lets be harmed
     * @param harmBySmallest what the smallest size that holds lets be harmed
     * @param thicker gauges by declaration with which that size protects; empty where not needed,
     *     or where none is thick enough
     */
    record Found(
            Element.Fuse fuse,
            int number,
            FuseForms form,
            double expectedA,
            double worstA,
            double prospectiveA,
            OptionalDouble holdsFromA,
            List<Double> fitting,
            double state,
            Optional<Harm> harm,
            Optional<Harm> harmBySmallest,
            Map<RigPath, Integer> thicker) {

        Found {
            fitting = List.copyOf(fitting);
            thicker = Map.copyOf(thicker);
        }

        /** Whether the present size holds. */
        boolean holds() {
            return state < 1;
        }
    }

    /** One for each place in the file at which fuses are declared. */
    List<Found> all() {
        return groups().stream().map(this::found).toList();
    }

    /** What the present sizes let be harmed, by the place at which the fuses are declared. */
    Map<RigPath, Harm> harms() {
        Map<RigPath, Harm> harms = new LinkedHashMap<>();
        for (List<Place<Element.Fuse>> group : groups()) {
            Element.Fuse fuse = group.getFirst().element();
            harm(group, fuse.rating().si(), cases(group), Map.of())
                    .ifPresent(harm -> harms.put(fuse.declaredAt(), harm));
        }
        return harms;
    }

    /** Fuses by the place at which they are declared. */
    List<List<Place<Element.Fuse>>> groups() {
        Map<RigPath, List<Place<Element.Fuse>>> groups = new LinkedHashMap<>();
        for (Place<Element.Fuse> fuse : fuses) {
            groups.computeIfAbsent(fuse.element().declaredAt(), _ -> new ArrayList<>()).add(fuse);
        }
        return List.copyOf(groups.values());
    }

    private Found found(List<Place<Element.Fuse>> group) {
        Place<Element.Fuse> most = group.getFirst();
        for (Place<Element.Fuse> fuse : group) {
            if (loads.worstA()[fuse.chain()] > loads.worstA()[most.chain()]) {
                most = fuse;
            }
        }
        Element.Fuse fuse = most.element();
        FuseForms form = FuseForms.of(fuse.opening().speed(), fuse.rating().si());
        List<FaultCase> cases = cases(group);
        OptionalDouble holds = OptionalDouble.empty();
        List<Double> fitting = new ArrayList<>();
        Optional<Harm> bySmallest = Optional.empty();
        for (double size : form.series().ratingsA()) {
            if (!holds(group, size)) {
                continue;
            }
            Optional<Harm> harm = harm(group, size, cases, Map.of());
            if (holds.isEmpty()) {
                holds = OptionalDouble.of(size);
                bySmallest = harm;
            }
            if (harm.isPresent()) {
                break; // a larger one opens later still
            }
            fitting.add(size);
        }
        double prospective = 0;
        for (FaultCase one : cases) {
            FaultNet.Flow flow = net.solve(one.fault(), 0, Set.of());
            for (Place<Element.Fuse> own : group) {
                prospective =
                        Math.max(prospective, flow.through(one.fault(), own.chain(), own.place()));
            }
        }
        return new Found(
                fuse,
                group.size(),
                form,
                loads.expectedA()[most.chain()],
                loads.worstA()[most.chain()],
                prospective,
                holds,
                fitting,
                state(group, fuse.rating().si()),
                harm(group, fuse.rating().si(), cases, Map.of()),
                bySmallest,
                fitting.isEmpty() && holds.isPresent()
                        ? thicker(group, holds.getAsDouble(), cases)
                        : Map.of());
    }

    /** Whether a size holds for every fuse of the group, with the usual margin over hover. */
    boolean holds(List<Place<Element.Fuse>> group, double size) {
        double margin = rig.limits().si(LimitName.FUSE_OVER_CURRENT);
        return group.stream().allMatch(fuse -> size >= margin * loads.expectedA()[fuse.chain()])
                && state(group, size) < 1;
    }

    private double state(List<Place<Element.Fuse>> group, double size) {
        double most = 0;
        for (Place<Element.Fuse> fuse : group) {
            FuseLoad load =
                    FuseLoad.of(rig, loads.expectedA()[fuse.chain()], loads.worstA()[fuse.chain()]);
            most =
                    Math.max(
                            most,
                            load.greatestState(FuseForms.window(fuse.element(), size).early()));
        }
        return most;
    }

    /** Faults behind the runs of the group's zone that its fuses stand in the way of. */
    List<FaultCase> cases(List<Place<Element.Fuse>> group) {
        Set<Place<Element.Run>> zone = new HashSet<>();
        group.forEach(fuse -> zone.addAll(zone(fuse)));
        List<FaultCase> cases = new ArrayList<>();
        Set<String> alike = new HashSet<>();
        for (Place<Element.Run> run : net.runs()) {
            if (!zone.contains(run)) {
                continue;
            }
            for (FaultCase one : FaultCase.of(net, run)) {
                List<Place<Element.Fuse>> cutting =
                        group.stream().filter(fuse -> one.isCutBy(net, fuse)).toList();
                if (!cutting.isEmpty() && alike.add(likeness(one, cutting))) {
                    cases.add(one);
                }
            }
        }
        return cases;
    }

    /** Cases of one likeness end alike: the same wire, the same currents. */
    private String likeness(FaultCase one, List<Place<Element.Fuse>> cutting) {
        Element.Run run = one.run().element();
        FaultNet.Flow flow = net.solve(one.fault(), 0, Set.of());
        StringBuilder text = new StringBuilder();
        text.append(
                String.format(
                        Locale.ROOT,
                        "%s %d %d %s %.4g %.4g",
                        run.declaredAt(),
                        run.gauge(),
                        run.conductors(),
                        run.covering().material(),
                        one.boltedA(),
                        loads.expectedA()[one.run().chain()]));
        fuses.stream()
                .mapToDouble(f -> flow.through(one.fault(), f.chain(), f.place()))
                .filter(ampere -> ampere > 1)
                .sorted()
                .forEach(ampere -> text.append(String.format(Locale.ROOT, " %.4g", ampere)));
        return text + " " + cutting.size();
    }

    /** Runs that a fuse parts from what feeds them, up to the next fuse and to the next pack. */
    Set<Place<Element.Run>> zone(Place<Element.Fuse> fuse) {
        Set<Place<Element.Run>> zone = new HashSet<>();
        Set<String> seen = new HashSet<>();
        List<String> next = new ArrayList<>();
        Wiring.Chain own = rig.wiring().chains().get(fuse.chain());
        if (walk(zone, fuse.chain(), fuse.place() + 1, 1)) {
            next.add(own.to());
        }
        if (walk(zone, fuse.chain(), fuse.place() - 1, -1)) {
            next.add(own.from());
        }
        while (!next.isEmpty()) {
            String node = next.removeFirst();
            if (!seen.add(node) || graph.isPack(node)) {
                continue; // a pack feeds what lies beyond it by itself
            }
            for (Graph.Arc arc : graph.from(node)) {
                boolean forward = rig.wiring().chains().get(arc.chain()).from().equals(node);
                int count = rig.wiring().chains().get(arc.chain()).elements().size();
                if (arc.chain() != fuse.chain()
                        && walk(zone, arc.chain(), forward ? 0 : count - 1, forward ? 1 : -1)) {
                    next.add(arc.far());
                }
            }
        }
        return zone;
    }

    /** Takes the runs on the way; whether the end of the chain is reached before a fuse. */
    private boolean walk(Set<Place<Element.Run>> zone, int chain, int start, int step) {
        List<Element> elements = rig.wiring().chains().get(chain).elements();
        for (int place = start; place >= 0 && place < elements.size(); place += step) {
            switch (elements.get(place)) {
                case Element.Run run -> zone.add(new Place<>(chain, place, run));
                case Element.Fuse _ -> {
                    return false;
                }
                case Element.Joint _, Element.Pole _ -> {}
            }
        }
        return true;
    }

    /**
     * The first wire that a size lets be harmed; empty where it protects all.
     *
     * @param gauges that are tried in place of declared ones
     */
    Optional<Harm> harm(
            List<Place<Element.Fuse>> group,
            double size,
            List<FaultCase> cases,
            Map<RigPath, Integer> gauges) {
        Set<Place<Element.Fuse>> own = new HashSet<>(group);
        Map<Place<Element.Fuse>, FuseCurve> late = new HashMap<>();
        for (Place<Element.Fuse> fuse : fuses) {
            double rating = own.contains(fuse) ? size : fuse.element().rating().si();
            late.put(fuse, FuseForms.window(fuse.element(), rating).late());
        }
        FaultNet wires = gauges.isEmpty() ? net : thickened(gauges);
        for (FaultCase one : cases) {
            WireHarm wire = wire(one.run().element(), gauges);
            double least = wire.steadyA();
            if (least >= one.boltedA()) {
                continue; // it carries even that for good
            }
            double settled = loads.expectedA()[one.run().chain()];
            for (double ohm :
                    one.faultOhms(wires, Math.max(1.001 * least, 0.01 * one.boltedA()), SWEEP)) {
                FaultCase.End end =
                        one.run(
                                wires,
                                ohm,
                                fuses,
                                fuse -> Objects.requireNonNull(late.get(fuse)),
                                wire.new Course(settled));
                if (end.harmed()) {
                    return Optional.of(new Harm(one.run().element(), end.firstA()));
                }
            }
        }
        return Optional.empty();
    }

    private WireHarm wire(Element.Run run, Map<RigPath, Integer> gauges) {
        return new WireHarm(
                run,
                gauges.getOrDefault(run.declaredAt(), run.gauge()),
                airK,
                pressurePa,
                rig.limits().si(LimitName.WIRE_BELOW_CLASS));
    }

    private FaultNet thickened(Map<RigPath, Integer> gauges) {
        return new FaultNet(
                rig,
                rig.wiring().chains().stream()
                        .map(
                                chain ->
                                        new Wiring.Chain(
                                                chain.id(),
                                                chain.from(),
                                                chain.to(),
                                                chain.elements().stream()
                                                        .map(element -> thickened(element, gauges))
                                                        .toList()))
                        .toList(),
                supply);
    }

    private static Element thickened(Element element, Map<RigPath, Integer> gauges) {
        return switch (element) {
            case Element.Run run ->
                    new Element.Run(
                            run.id(),
                            run.declaredAt(),
                            gauges.getOrDefault(run.declaredAt(), run.gauge()),
                            run.conductors(),
                            run.length(),
                            run.covering());
            case Element.Joint _, Element.Fuse _, Element.Pole _ -> element;
        };
    }

    /**
     * Gauges with which a size protects: the wire that is harmed made one step thicker, again and
     * again; empty where even the thickest does not help.
     */
    private Map<RigPath, Integer> thicker(
            List<Place<Element.Fuse>> group, double size, List<FaultCase> cases) {
        List<AircraftWire> table = List.of(AircraftWire.values());
        Map<RigPath, Integer> gauges = new LinkedHashMap<>();
        Optional<Harm> harm = harm(group, size, cases, gauges);
        while (harm.isPresent()) {
            Element.Run run = harm.get().run();
            int now = gauges.getOrDefault(run.declaredAt(), run.gauge());
            int row = table.indexOf(AircraftWire.of(now));
            if (row + 1 >= table.size()) {
                return Map.of();
            }
            gauges.put(run.declaredAt(), table.get(row + 1).gauge());
            harm = harm(group, size, cases, gauges);
        }
        return gauges;
    }
}
