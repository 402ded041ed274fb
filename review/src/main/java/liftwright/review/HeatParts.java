package liftwright.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.Plant;
import liftwright.plant.heat.HeatPart;
import liftwright.rig.Element;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;
import liftwright.rig.book.WireGauge;

/**
 * The parts that warm, and which of them are alike: made from one place in the rig file. What is
 * told of those is told once, of the worst of them.
 *
 * @param all as the plant counts them
 * @param groups alike parts, in the order of the first of each
 * @param elements of the wiring by their names
 */
record HeatParts(Rig rig, List<HeatPart> all, List<Group> groups, Map<PartId, Element> elements) {

    /**
     * Alike parts.
     *
     * @param parts numbers of the parts
     */
    record Group(HeatPart.Kind kind, RigPath declaredAt, List<Integer> parts) {}

    private record Key(HeatPart.Kind kind, RigPath declaredAt) {}

    static HeatParts of(Plant plant) {
        Map<Key, List<Integer>> alike = new LinkedHashMap<>();
        List<HeatPart> all = plant.heatParts();
        for (int part = 0; part < all.size(); part++) {
            HeatPart one = all.get(part);
            alike.computeIfAbsent(
                            new Key(one.kind(), madeFrom(plant.rig(), one)), _ -> new ArrayList<>())
                    .add(part);
        }
        List<Group> groups = new ArrayList<>();
        alike.forEach((key, parts) -> groups.add(new Group(key.kind, key.declaredAt, parts)));
        Map<PartId, Element> elements = new HashMap<>();
        for (Wiring.Chain chain : plant.rig().wiring().chains()) {
            chain.elements().forEach(element -> elements.put(element.id(), element));
        }
        return new HeatParts(plant.rig(), all, groups, elements);
    }

    /** Fans of one type are alike wherever they hang; all else where it is declared. */
    private static RigPath madeFrom(Rig rig, HeatPart part) {
        return switch (part.kind()) {
            case SWITCHES, CONTROLLER, WINDING, MAGNETS ->
                    RigPath.of("fan types", rig.fans().get(part.owner()).type().name());
            case WIRE, JOINT, FUSE, POLE, CELLS -> part.declaredAt();
        };
    }

    HeatPart part(int part) {
        return all.get(part);
    }

    String id(int part) {
        return all.get(part).id().text();
    }

    /** The element of the wiring that a part is; empty for what is none. */
    Optional<Element> element(int part) {
        return Optional.ofNullable(elements.get(all.get(part).id()));
    }

    /** Whether it has a limit at all. */
    boolean isLimited(int part) {
        return all.get(part).limitK() < Double.POSITIVE_INFINITY;
    }

    /** What a kind is, in words that a sentence can go on from. */
    static String word(HeatPart.Kind kind) {
        return switch (kind) {
            case WIRE -> "wire";
            case JOINT -> "joint";
            case FUSE -> "fuse";
            case POLE -> "contactor pole";
            case SWITCHES -> "switches of the controller";
            case CONTROLLER -> "sink of the controller";
            case WINDING -> "motor winding";
            case MAGNETS -> "magnets";
            case CELLS -> "cells";
        };
    }

    /** What a part is, more closely: {@code wire 20 AWG}, {@code joint bullet 6 mm}. */
    String what(int part) {
        HeatPart.Kind kind = all.get(part).kind();
        return element(part)
                .map(
                        element ->
                                switch (element) {
                                    case Element.Run run ->
                                            word(kind)
                                                    + " "
                                                    + (run.conductors() > 1
                                                            ? run.conductors() + " × "
                                                            : "")
                                                    + new WireGauge(run.gauge());
                                    case Element.Joint joint -> word(kind) + " " + joint.kind();
                                    case Element.Fuse fuse ->
                                            word(kind)
                                                    + " "
                                                    + Math.round(fuse.rating().si())
                                                    + " A";
                                    case Element.Pole pole ->
                                            word(kind) + " of " + pole.contactor().name();
                                })
                .orElseGet(() -> word(kind));
    }

    /** The same, with how many there are alike. */
    String what(Group group, int worst) {
        int alike = group.parts().size();
        return alike == 1 ? what(worst) : what(worst) + ", worst of " + alike;
    }
}
