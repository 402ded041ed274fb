package liftwright.review.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.FastEffects;
import liftwright.plant.FaultSupply;
import liftwright.quantity.Measure;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** Packs that no fuse parts from a fan, or from another pack; and fuses far from their pack. */
final class Unfused {

    /**
     * A fuse stands within this much wire of its pack, m: 7 inches of ABYC E-11, from memory. What
     * lies before it is protected by nothing.
     */
    static final double NEAR_M = 0.18;

    private Unfused() {}

    /**
     * A pack and the way on which nothing opens.
     *
     * @param number of the pack in the rig
     */
    record Way(int number, String pack, List<Graph.Arc> arcs) {
        String words() {
            return Stream.concat(Stream.of(pack), arcs.stream().map(Graph.Arc::far))
                    .collect(Collectors.joining(" – "));
        }
    }

    /** Every pack from which a way without a fuse leads to a fan, with the shortest such way. */
    static List<Way> toFans(Graph graph, List<String> packs) {
        return ways(graph, packs, graph::isFan);
    }

    /** Every pack from which a way without a fuse leads to another pack, with the shortest. */
    static List<Way> toPacks(Graph graph, List<String> packs) {
        return ways(graph, packs, graph::isPack);
    }

    private static List<Way> ways(
            Graph graph, List<String> packs, java.util.function.Predicate<String> end) {
        List<Way> found = new ArrayList<>();
        for (int number = 0; number < packs.size(); number++) {
            String pack = packs.get(number);
            int own = number;
            graph.way(pack, arc -> !graph.isFused(arc.chain()), end)
                    .ifPresent(arcs -> found.add(new Way(own, pack, arcs)));
        }
        return found;
    }

    static List<Finding> findings(Rig rig, FaultSupply supply) {
        Graph graph = Graph.of(rig);
        List<String> packs = rig.packs().stream().map(pack -> pack.id().text()).toList();
        List<Finding> findings = new ArrayList<>();
        List<Way> toFans = toFans(graph, packs);
        if (!toFans.isEmpty()) {
            findings.add(toFan(rig, graph, supply, toFans));
        }
        List<Way> toPacks = toPacks(graph, packs);
        if (!toPacks.isEmpty()) {
            findings.add(toPack(graph, toPacks));
        }
        farFuse(rig, graph).ifPresent(findings::add);
        return findings;
    }

    private static Finding toFan(Rig rig, Graph graph, FaultSupply supply, List<Way> ways) {
        Way worst = ways.stream().max(Comparator.comparingDouble(way -> faultA(supply, way))).get();
        double ampere = faultA(supply, worst);
        return Finding.of(
                        rig.wearer().isPresent() ? Severity.STOPS : Severity.WARNS,
                        "unfused-pack",
                        Sentence.words(
                                        "no fuse stands between pack "
                                                + worst.pack
                                                + others(ways.size())
                                                + " and a fan ("
                                                + worst.words()
                                                + "): a dead short at its end draws ")
                                .then(Measure.CURRENT, ampere),
                        "only wire and cells end such a current: put a fuse beside the pack's terminal")
                .about(worst.pack)
                .at(at(graph, worst).toString())
                .judging(Value.of("fault-current", ampere));
    }

    private static Finding toPack(Graph graph, List<Way> ways) {
        Way first = ways.getFirst();
        return Finding.of(
                        Severity.WARNS,
                        "packs-joined-unfused",
                        Sentence.words(
                                "no fuse stands between the packs of "
                                        + first.words()
                                        + ": "
                                        + ways.size()
                                        + " packs can feed a fault within one another"),
                        "a shorted cell takes the current of every pack beside it: a fuse for each pack")
                .about(first.pack)
                .at(at(graph, first).toString());
    }

    /** E/R of the pack and its way. */
    private static double faultA(FaultSupply supply, Way way) {
        double ohm = supply.packOhm()[way.number];
        for (Graph.Arc arc : way.arcs) {
            ohm += supply.chainOhm()[arc.chain()];
        }
        return FastEffects.prospectiveA(supply.fullV()[way.number], ohm);
    }

    private static RigPath at(Graph graph, Way way) {
        return way.arcs.stream()
                .flatMap(arc -> graph.along(arc).stream())
                .findFirst()
                .map(Element::declaredAt)
                .orElse(RigPath.of("wiring"));
    }

    private record Far(Element.Fuse fuse, String pack, double lengthM) {}

    /** The wire that lies before the first fuse of a chain that leaves a pack. */
    private static Optional<Finding> farFuse(Rig rig, Graph graph) {
        List<Far> far = new ArrayList<>();
        rig.packs().stream()
                .map(pack -> pack.id().text())
                .forEach(
                        pack ->
                                graph.from(pack).stream()
                                        .filter(arc -> graph.isFused(arc.chain()))
                                        .map(arc -> before(pack, graph.along(arc)))
                                        .filter(one -> one.lengthM > NEAR_M)
                                        .forEach(far::add));
        return far.stream()
                .max(Comparator.comparingDouble(Far::lengthM))
                .map(
                        worst ->
                                Finding.of(
                                                Severity.NOTES,
                                                "fuse-far-from-pack",
                                                Sentence.start()
                                                        .then(Measure.LENGTH, worst.lengthM)
                                                        .then(
                                                                " of wire between pack "
                                                                        + worst.pack
                                                                        + " and its fuse"
                                                                        + others(far.size())
                                                                        + " is protected by nothing"),
                                                "what chafes there burns until the pack is empty")
                                        .about(worst.fuse.id().text())
                                        .at(worst.fuse.declaredAt().toString())
                                        .against(
                                                Value.of("unprotected-length", worst.lengthM),
                                                new Finding.Limit(
                                                        Value.of("unprotected-length", NEAR_M),
                                                        "ABYC E-11, 7 inches, from memory")));
    }

    private static Far before(String pack, List<Element> elements) {
        double length = 0;
        for (Element element : elements) {
            switch (element) {
                case Element.Run run -> length += run.length().si();
                case Element.Fuse fuse -> {
                    return new Far(fuse, pack, length);
                }
                case Element.Joint _, Element.Pole _ -> {}
            }
        }
        throw new IllegalStateException("a fused chain has a fuse");
    }

    static String others(int parts) {
        return parts == 1 ? "" : " (and " + (parts - 1) + " more)";
    }
}
