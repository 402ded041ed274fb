package liftwright.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import liftwright.answer.Section.Playback.Place;
import liftwright.plant.Plant;
import liftwright.plant.body.MassItem;
import liftwright.plant.heat.HeatPart;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.Wiring;

/**
 * Where the parts that warm lie. A rig file says where packs and fans are; a bus or a split lies in
 * the middle of what it joins, and the elements of a chain along a straight line by their lengths.
 * Good enough to point at, and no plan of the harness.
 */
final class HeatPlaces {

    /** Middles are taken so often; a chain of splits settles in far fewer. */
    private static final int SWEEPS = 60;

    private final Map<String, Vec3> ofNode = new HashMap<>();
    private final Map<PartId, Span> ofElement = new HashMap<>();

    /** From where to where. */
    private record Span(Vec3 from, Vec3 to) {}

    HeatPlaces(Plant plant) {
        Rig rig = plant.rig();
        double[] p = plant.parameters().nominal();
        for (int fan = 0; fan < rig.fans().size(); fan++) {
            ofNode.put(rig.fans().get(fan).id().text(), plant.fanPlace(p, fan));
        }
        for (MassItem item : plant.mass().items()) {
            ofNode.putIfAbsent(item.name(), item.at());
        }
        middles(rig.wiring().chains());
        rig.wiring().chains().forEach(this::spread);
    }

    private void middles(List<Wiring.Chain> chains) {
        Map<String, List<String>> beside = new HashMap<>();
        for (Wiring.Chain chain : chains) {
            beside.computeIfAbsent(chain.from(), _ -> new ArrayList<>()).add(chain.to());
            beside.computeIfAbsent(chain.to(), _ -> new ArrayList<>()).add(chain.from());
        }
        beside.keySet().removeAll(ofNode.keySet());
        List<String> open = beside.keySet().stream().sorted().toList();
        open.forEach(node -> ofNode.put(node, Vec3.ZERO));
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (String node : open) {
                Vec3 sum = Vec3.ZERO;
                for (String other : beside.getOrDefault(node, List.of())) {
                    sum = sum.plus(at(other));
                }
                ofNode.put(node, sum.times(1.0 / beside.getOrDefault(node, List.of()).size()));
            }
        }
    }

    private Vec3 at(String node) {
        return ofNode.getOrDefault(node, Vec3.ZERO);
    }

    /** Runs take the way between the ends by their lengths; all else is a point. */
    private void spread(Wiring.Chain chain) {
        double wholeM = 0;
        for (Element element : chain.elements()) {
            wholeM += lengthM(element);
        }
        Vec3 from = at(chain.from());
        Vec3 way = at(chain.to()).minus(from);
        double beforeM = 0;
        int before = 0;
        for (Element element : chain.elements()) {
            double afterM = beforeM + lengthM(element);
            double first = wholeM > 0 ? beforeM / wholeM : (before + 0.5) / chain.elements().size();
            double last = wholeM > 0 ? afterM / wholeM : first;
            ofElement.put(
                    element.id(),
                    new Span(from.plus(way.times(first)), from.plus(way.times(last))));
            beforeM = afterM;
            before++;
        }
    }

    private static double lengthM(Element element) {
        return element instanceof Element.Run run ? run.length().si() : 0;
    }

    /** Where a part begins. */
    Place from(Rig rig, HeatPart part) {
        return place(span(rig, part).from);
    }

    /** Where it ends; the same place for a point. */
    Place to(Rig rig, HeatPart part) {
        return place(span(rig, part).to);
    }

    private Span span(Rig rig, HeatPart part) {
        return switch (part.kind()) {
            case WIRE, JOINT, FUSE, POLE ->
                    ofElement.getOrDefault(part.id(), new Span(Vec3.ZERO, Vec3.ZERO));
            case SWITCHES, CONTROLLER, WINDING, MAGNETS -> {
                Fan fan = rig.fans().get(part.owner());
                Vec3 at = at(fan.id().text());
                yield new Span(at, at);
            }
            case CELLS -> {
                Vec3 at = at(rig.packs().get(part.owner()).id().text());
                yield new Span(at, at);
            }
        };
    }

    /** Inside axes to those of the rig file: up is against z. */
    private static Place place(Vec3 at) {
        return new Place(
                Rounding.off(at.x(), Rounding.M),
                Rounding.off(at.y(), Rounding.M),
                Rounding.off(0.0 - at.z(), Rounding.M));
    }
}
