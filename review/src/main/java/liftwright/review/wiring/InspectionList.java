package liftwright.review.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.rig.Element;
import liftwright.rig.LimitName;
import liftwright.rig.PartId;
import liftwright.rig.Rig;

/**
 * What to look at after each run, the least margin first: joints, fuses and poles, which age; wires
 * only where a run warmed them to within {@link #CLOSE_K} of their limit.
 *
 * <p>Margins: what the worst current leaves of the rating in force, or what the hottest moment
 * leaves of the way from {@link #ROOM_K} to the limit, whichever is less.
 */
public final class InspectionList {

    /** A part's drop over its drop when new, at the same current: look closer. Common practice. */
    static final double WATCH = 1.2;

    /** The same: make it anew. Common practice. */
    static final double REPLACE = 1.5;

    static final double CLOSE_K = 20;
    static final double ROOM_K = 293.15;

    public static final String TITLE =
            "After each run, least margin first (make it dead first; capacitors stay charged, so"
                    + " measure before you touch; re-measure the drop at the expected current: watch"
                    + " from 20 % above, replace from 50 %, common practice)";

    private InspectionList() {}

    private record Row(Element element, double margin, double dropV, Optional<Warmth> warmth) {}

    /**
     * @param wireK what runs are warm to for the drop, K
     * @param warmth how hot each part became; empty before any run
     */
    public static Section.Table of(Rig rig, Loads loads, double wireK, Map<PartId, Warmth> warmth) {
        List<Row> found = new ArrayList<>();
        for (int chain = 0; chain < rig.wiring().chains().size(); chain++) {
            for (Element element : rig.wiring().chains().get(chain).elements()) {
                Optional<Warmth> warm = Optional.ofNullable(warmth.get(element.id()));
                if (element instanceof Element.Run
                        && warm.filter(w -> w.leftK() < CLOSE_K).isEmpty()) {
                    continue;
                }
                found.add(
                        new Row(
                                element,
                                margin(rig, element, loads.worstA()[chain], warm),
                                loads.expectedA()[chain] * ElementOhm.fresh(element, wireK),
                                warm));
            }
        }
        found.sort(
                Comparator.comparingDouble(Row::margin).thenComparing(row -> row.element().id()));
        List<List<Value>> rows = found.stream().map(row -> row(row, !warmth.isEmpty())).toList();
        return new Section.Table("inspection", TITLE, columns(!warmth.isEmpty()), rows);
    }

    private static List<String> columns(boolean warm) {
        List<String> columns = new ArrayList<>(List.of("part", "wiring-kind", "inspection-margin"));
        if (warm) {
            columns.add("part-hottest");
        }
        columns.addAll(List.of("drop-new", "drop-watch", "drop-replace", "look-for", "done"));
        return columns;
    }

    private static List<Value> row(Row row, boolean warm) {
        List<Value> cells = new ArrayList<>();
        cells.add(Value.words("part", row.element.id().text()));
        cells.add(Value.words("wiring-kind", SolderingList.kind(row.element)));
        cells.add(
                row.margin == Double.POSITIVE_INFINITY
                        ? Value.words("inspection-margin", "no rating")
                        : Value.of("inspection-margin", row.margin));
        if (warm) {
            cells.add(
                    row.warmth
                            .map(w -> Value.of("part-hottest", w.hottestK()))
                            .orElseGet(() -> Value.words("part-hottest", "–")));
        }
        cells.add(Value.of("drop-new", row.dropV));
        cells.add(Value.of("drop-watch", row.dropV * WATCH));
        cells.add(Value.of("drop-replace", row.dropV * REPLACE));
        cells.add(Value.words("look-for", lookFor(row.element)));
        cells.add(Value.words("done", "[ ]"));
        return cells;
    }

    private static double margin(Rig rig, Element element, double worstA, Optional<Warmth> warm) {
        OptionalDouble most =
                switch (element) {
                    case Element.Run _ -> OptionalDouble.empty();
                    case Element.Joint joint ->
                            scaled(
                                    SolderingList.rating(joint),
                                    rig.limits().si(LimitName.JOINT_CURRENT_SHARE));
                    case Element.Fuse fuse ->
                            scaled(
                                    SolderingList.rating(fuse),
                                    1 / rig.limits().si(LimitName.FUSE_OVER_CURRENT));
                    case Element.Pole pole -> SolderingList.rating(pole);
                };
        double ofCurrent =
                most.isPresent() ? 1 - worstA / most.getAsDouble() : Double.POSITIVE_INFINITY;
        double ofHeat =
                warm.filter(w -> w.isLimited() && w.limitK() > ROOM_K)
                        .map(w -> w.leftK() / (w.limitK() - ROOM_K))
                        .orElse(Double.POSITIVE_INFINITY);
        return Math.min(ofCurrent, ofHeat);
    }

    private static OptionalDouble scaled(OptionalDouble rating, double share) {
        return rating.isPresent()
                ? OptionalDouble.of(rating.getAsDouble() * share)
                : OptionalDouble.empty();
    }

    private static String lookFor(Element element) {
        return switch (element) {
            case Element.Run _ -> "hard, shiny or brown insulation; chafe at edges and ties";
            case Element.Joint _ ->
                    "warmer than its twins, brown or soft sleeve, play, blued metal; tug it";
            case Element.Fuse _ -> "discoloured body or window, loose or warm holder";
            case Element.Pole _ -> "opens and closes by its sound, lugs tight, no smell";
        };
    }
}
