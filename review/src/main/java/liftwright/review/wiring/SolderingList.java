package liftwright.review.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.rig.Element;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.book.WireGauge;

/**
 * Everything of the wiring that somebody has to cut, crimp, solder or screw, in an order in which
 * it can be made: from the fans towards the packs, so that the lead of a pack is the last to be
 * closed and nothing is worked on that is live.
 *
 * <p>Each row is one element; a run is cut in two pieces for each of its conductors, out and back.
 */
public final class SolderingList {

    /** More wire than the way is long, share of it: bends, and the slack of a strain relief. */
    static final double SLACK_SHARE = 0.05;

    /** More wire at each end of a piece, m: stripped, and cut clean. */
    static final double END_M = 0.015;

    static final String ALLOWANCE_WORDS =
            "each piece 5 % and 15 mm at each end longer than the way: common practice";

    private static final String NOTHING = "–";
    private static final String BOX = "[ ]";

    /** What is made, by column. */
    private static final List<String> MADE =
            List.of(
                    "step",
                    "part",
                    "wiring-kind",
                    "wiring-between",
                    "wire-gauge",
                    "wire-pieces",
                    "cut-length",
                    "insulation",
                    "insulation-class",
                    "torque",
                    "pull-test",
                    "making",
                    "done");

    /** What it carries, by column; those of heat only after a run that warmed it. */
    private static final List<String> CARRIED =
            List.of(
                    "step",
                    "part",
                    "current-expected",
                    "current-worst",
                    "part-rating",
                    "voltage-drop",
                    "part-hottest",
                    "part-temperature-limit");

    private final List<String> carried;
    private final List<Map<String, Value>> rows;

    private SolderingList(List<String> carried, List<Map<String, Value>> rows) {
        this.carried = carried;
        this.rows = rows;
    }

    /**
     * @param wireK what runs are warm to for the drop, K
     * @param warmth how hot each part became; empty before any run
     */
    public static SolderingList of(Rig rig, Loads loads, double wireK, Map<PartId, Warmth> warmth) {
        Graph graph = Graph.of(rig);
        List<Map<String, Value>> rows = new ArrayList<>();
        for (Graph.Arc arc : graph.outward().reversed()) {
            List<Element> fromFan = graph.along(arc).reversed();
            for (Element element : fromFan) {
                rows.add(row(rows.size() + 1, graph, arc, element, loads, wireK, warmth));
            }
        }
        List<String> carried =
                CARRIED.stream().filter(column -> !warmth.isEmpty() || !isOfHeat(column)).toList();
        return new SolderingList(carried, rows);
    }

    private static boolean isOfHeat(String column) {
        return column.equals("part-hottest") || column.equals("part-temperature-limit");
    }

    /** What is made, for the bench. */
    public Section.Table made() {
        return table(
                "soldering",
                "Soldering list, from the fans to the packs ("
                        + ALLOWANCE_WORDS
                        + "; torque and pull from memory, the maker's go before)",
                MADE);
    }

    /** What each part carries. */
    public Section.Table carried() {
        return table("soldering-loads", "What each part of the soldering list carries", carried);
    }

    private Section.Table table(String id, String title, List<String> chosen) {
        return new Section.Table(
                id,
                title,
                chosen,
                rows.stream()
                        .map(
                                row ->
                                        chosen.stream()
                                                .map(
                                                        column ->
                                                                Optional.ofNullable(row.get(column))
                                                                        .orElseGet(
                                                                                () -> none(column)))
                                                .toList())
                        .toList());
    }

    private static Value none(String column) {
        return Value.words(column, NOTHING);
    }

    private static Map<String, Value> row(
            int step,
            Graph graph,
            Graph.Arc arc,
            Element element,
            Loads loads,
            double wireK,
            Map<PartId, Warmth> warmth) {
        Map<String, Value> row = new LinkedHashMap<>();
        put(row, "step", OptionalDouble.of(step));
        word(row, "part", element.id().text());
        word(row, "wiring-kind", kind(element));
        word(row, "wiring-between", arc.far() + " to " + arc.near());
        if (element instanceof Element.Run run) {
            word(row, "wire-gauge", new WireGauge(run.gauge()).toString());
            put(row, "wire-pieces", OptionalDouble.of(2.0 * run.conductors()));
            put(row, "cut-length", OptionalDouble.of(cutM(run)));
            word(
                    row,
                    "insulation",
                    run.covering().declared() ? run.covering().material().word() : "not declared");
            put(row, "insulation-class", OptionalDouble.of(run.covering().classK()));
        }
        Making making = Making.of(element);
        put(row, "torque", making.torqueNm());
        put(row, "pull-test", pullN(graph, arc, element));
        word(row, "making", making.words());
        double expected = loads.expectedA()[arc.chain()];
        put(row, "current-expected", OptionalDouble.of(expected));
        put(row, "current-worst", OptionalDouble.of(loads.worstA()[arc.chain()]));
        put(row, "part-rating", rating(element));
        put(row, "voltage-drop", OptionalDouble.of(expected * ElementOhm.of(element, wireK)));
        Optional.ofNullable(warmth.get(element.id()))
                .ifPresent(
                        warm -> {
                            put(row, "part-hottest", OptionalDouble.of(warm.hottestK()));
                            if (warm.isLimited()) {
                                put(
                                        row,
                                        "part-temperature-limit",
                                        OptionalDouble.of(warm.limitK()));
                            }
                        });
        word(row, "done", BOX);
        return row;
    }

    private static void word(Map<String, Value> row, String field, String words) {
        row.put(field, Value.words(field, words));
    }

    private static void put(Map<String, Value> row, String field, OptionalDouble si) {
        if (si.isPresent()) {
            row.put(field, Value.of(field, si.getAsDouble()));
        }
    }

    /** Length of one piece as it is cut, m. */
    static double cutM(Element.Run run) {
        return run.length().si() * (1 + SLACK_SHARE) + 2 * END_M;
    }

    static String kind(Element element) {
        return switch (element) {
            case Element.Run run ->
                    run.conductors() == 1 ? "wire" : run.conductors() + " wires each way";
            case Element.Joint joint -> joint.kind();
            case Element.Fuse _ -> "fuse";
            case Element.Pole pole -> "pole of " + pole.contactor().name();
        };
    }

    static OptionalDouble rating(Element element) {
        return switch (element) {
            case Element.Run _ -> OptionalDouble.empty();
            case Element.Joint joint ->
                    joint.rating()
                            .map(rating -> OptionalDouble.of(rating.si()))
                            .orElse(OptionalDouble.empty());
            case Element.Fuse fuse -> OptionalDouble.of(fuse.rating().si());
            case Element.Pole pole ->
                    pole.contactor()
                            .rating()
                            .map(rating -> OptionalDouble.of(rating.si()))
                            .orElse(OptionalDouble.empty());
        };
    }

    /** Of a crimp with the thinnest wire beside it in its chain. */
    private static OptionalDouble pullN(Graph graph, Graph.Arc arc, Element element) {
        if (!(element instanceof Element.Joint joint) || !Making.isCrimped(joint)) {
            return OptionalDouble.empty();
        }
        return graph.chain(arc.chain()).elements().stream()
                .filter(Element.Run.class::isInstance)
                .map(Element.Run.class::cast)
                .map(run -> Making.pullN(run.gauge()))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .min();
    }
}
