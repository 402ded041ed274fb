package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.HeatLimits;
import liftwright.rig.Heating;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/**
 * The parts of a rig that warm, with their limits, and where their temperatures stand. In order:
 * chain by chain the elements; fan by fan switches, controller, winding, magnets; then packs.
 */
final class HeatParts {

    final List<HeatPart> list;

    /** Places of a part's temperatures in the row of a state; the greatest is the part's. */
    final int[][] places;

    /** Number of the fuse that a part is; −1 for any other. */
    final int[] fuse;

    /** Nodes of a part in its line, without the wire at its mouth; empty for a body. */
    final int[][] nodes;

    /** Body whose heat a part has, and whether it is the inner node's; −1 for lines and packs. */
    final int[] body;

    final boolean[] inner;

    private final HeatLimits limits;
    private final List<HeatPart> made = new ArrayList<>();
    private final List<int[]> madePlaces = new ArrayList<>();
    private final List<int[]> madeNodes = new ArrayList<>();
    private final List<Integer> madeFuse = new ArrayList<>();
    private final List<Integer> madeBody = new ArrayList<>();

    HeatParts(Rig rig, LineRows rows, BodyRows bodies, HeatNumbers n) {
        limits = new HeatLimits(rig.limits());
        int element = 0;
        for (int chain = 0; chain < rig.wiring().chains().size(); chain++) {
            Wiring.Chain of = rig.wiring().chains().get(chain);
            for (Element one : of.elements()) {
                if (rows.lines().nodesOf[element].length > 0) {
                    element(one, chain, element, rows);
                }
                element++;
            }
        }
        for (int fan = 0; fan < rig.fans().size(); fan++) {
            fan(rig.fans().get(fan), fan, bodies, n);
        }
        for (int pack = 0; pack < rig.packs().size(); pack++) {
            pack(rig.packs().get(pack), pack, bodies, n);
        }
        list = List.copyOf(made);
        places = madePlaces.toArray(new int[0][]);
        nodes = madeNodes.toArray(new int[0][]);
        fuse = madeFuse.stream().mapToInt(Integer::intValue).toArray();
        body = madeBody.stream().mapToInt(Integer::intValue).toArray();
        inner = new boolean[body.length];
        for (int part = 0; part < inner.length; part++) {
            inner[part] = body[part] >= 0 && places[part][0] == n.inner(body[part]);
        }
    }

    private void element(Element element, int chain, int number, LineRows rows) {
        int[] own = rows.lines().nodesOf[number];
        switch (element) {
            case Element.Run run ->
                    add(
                            part(HeatPart.Kind.WIRE, element, chain, limits.wire(run.covering())),
                            own,
                            own,
                            -1,
                            -1);
            case Element.Joint _ -> lump(HeatPart.Kind.JOINT, element, chain, own[0], rows, -1);
            case Element.Fuse _ ->
                    lump(HeatPart.Kind.FUSE, element, chain, own[0], rows, rows.fuseOf(number));
            case Element.Pole _ -> lump(HeatPart.Kind.POLE, element, chain, own[0], rows, -1);
        }
    }

    private static HeatPart part(
            HeatPart.Kind kind, Element element, int chain, HeatLimits.Bound bound) {
        return new HeatPart(
                kind,
                element.id(),
                element.declaredAt(),
                chain,
                bound.k(),
                Optional.of(bound.name()),
                bound.origin());
    }

    /** A lump is never cooler than the wire at its mouth. */
    private void lump(
            HeatPart.Kind kind, Element element, int chain, int node, LineRows rows, int fuse) {
        Lines lines = rows.lines();
        int[] seen =
                IntStream.of(node, lines.before[node], lines.after[node])
                        .filter(at -> at == node || (at >= 0 && lines.isWire(at)))
                        .toArray();
        add(part(kind, element, chain, limits.joint()), seen, new int[] {node}, fuse, -1);
    }

    private void fan(Fan fan, int number, BodyRows bodies, HeatNumbers n) {
        int controller = bodies.controller(number);
        int motor = bodies.motor(number);
        Heating heating = fan.type().motor().heating();
        body(
                part(HeatPart.Kind.SWITCHES, fan, number, limits.controller()),
                n.inner(controller),
                controller);
        body(
                part(HeatPart.Kind.CONTROLLER, fan, number, limits.controller()),
                n.outer(controller),
                controller);
        body(
                part(HeatPart.Kind.WINDING, fan, number, limits.winding(heating)),
                n.inner(motor),
                motor);
        body(
                part(HeatPart.Kind.MAGNETS, fan, number, limits.magnets(heating)),
                n.outer(motor),
                motor);
    }

    private static HeatPart part(HeatPart.Kind kind, Fan fan, int number, HeatLimits.Bound bound) {
        return new HeatPart(
                kind,
                fan.id(),
                fan.declaredAt(),
                number,
                bound.k(),
                Optional.of(bound.name()),
                bound.origin());
    }

    private void pack(Pack pack, int number, BodyRows bodies, HeatNumbers n) {
        HeatLimits.Bound bound = limits.cells();
        HeatPart part =
                new HeatPart(
                        HeatPart.Kind.CELLS,
                        pack.id(),
                        pack.declaredAt(),
                        number,
                        bound.k(),
                        Optional.of(bound.name()),
                        bound.origin());
        int body = bodies.warmestCell(number);
        add(part, new int[] {n.inner(body)}, new int[0], -1, -1);
    }

    private void body(HeatPart part, int place, int body) {
        add(part, new int[] {place}, new int[0], -1, body);
    }

    private void add(HeatPart part, int[] seen, int[] nodes, int fuse, int body) {
        made.add(part);
        madePlaces.add(seen);
        madeNodes.add(nodes);
        madeFuse.add(fuse);
        madeBody.add(body);
    }
}
