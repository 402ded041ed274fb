package liftwright.plant.heat;

import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The parts of a rig that warm, with their limits, and where their temperatures stand. In order:
 * chain by chain the elements; fan by fan switches, controller, winding, magnets; then packs.
 */
final class HeatParts {

    private static final double NONE = 0;

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

    private final Limits limits;
    private final List<HeatPart> made = new ArrayList<>();
    private final List<int[]> madePlaces = new ArrayList<>();
    private final List<int[]> madeNodes = new ArrayList<>();
    private final List<Integer> madeFuse = new ArrayList<>();
    private final List<Integer> madeBody = new ArrayList<>();

    HeatParts(Rig rig, LineRows rows, BodyRows bodies, HeatNumbers n) {
        limits = rig.limits();
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
            case Element.Run run -> {
                double limitK = run.covering().classK() - limits.si(LimitName.WIRE_BELOW_CLASS);
                HeatPart part =
                        new HeatPart(
                                HeatPart.Kind.WIRE,
                                run.id(),
                                run.declaredAt(),
                                chain,
                                limitK,
                                Optional.of(LimitName.WIRE_BELOW_CLASS),
                                limits.origin(LimitName.WIRE_BELOW_CLASS));
                add(part, own, own, -1, -1);
            }
            case Element.Joint _ -> lump(HeatPart.Kind.JOINT, element, chain, own[0], rows, -1);
            case Element.Fuse _ ->
                    lump(HeatPart.Kind.FUSE, element, chain, own[0], rows, rows.fuseOf(number));
            case Element.Pole _ -> lump(HeatPart.Kind.POLE, element, chain, own[0], rows, -1);
        }
    }

    /** A lump is never cooler than the wire at its mouth. */
    private void lump(
            HeatPart.Kind kind, Element element, int chain, int node, LineRows rows, int fuse) {
        Lines lines = rows.lines();
        int[] seen =
                IntStream.of(node, lines.before[node], lines.after[node])
                        .filter(at -> at == node || (at >= 0 && lines.isWire(at)))
                        .toArray();
        HeatPart part =
                new HeatPart(
                        kind,
                        element.id(),
                        element.declaredAt(),
                        chain,
                        limits.si(LimitName.JOINT_TEMPERATURE),
                        Optional.of(LimitName.JOINT_TEMPERATURE),
                        limits.origin(LimitName.JOINT_TEMPERATURE));
        add(part, seen, new int[] {node}, fuse, -1);
    }

    private void fan(Fan fan, int number, BodyRows bodies, HeatNumbers n) {
        int controller = bodies.controller(number);
        int motor = bodies.motor(number);
        body(
                of(HeatPart.Kind.SWITCHES, fan, number, LimitName.CONTROLLER_TEMPERATURE, NONE, ""),
                n.inner(controller),
                controller);
        body(
                of(
                        HeatPart.Kind.CONTROLLER,
                        fan,
                        number,
                        LimitName.CONTROLLER_TEMPERATURE,
                        NONE,
                        ""),
                n.outer(controller),
                controller);
        double ownClass =
                fan.type()
                        .motor()
                        .heating()
                        .windingClassK()
                        .map(most -> most.si() - limits.si(LimitName.WIRE_BELOW_CLASS))
                        .orElse(NONE);
        body(
                of(
                        HeatPart.Kind.WINDING,
                        fan,
                        number,
                        LimitName.WINDING_TEMPERATURE,
                        ownClass,
                        "the declared class of the winding, less what wires stay below theirs"),
                n.inner(motor),
                motor);
        OptionalDouble grade = fan.type().motor().heating().grade().mostK();
        body(
                of(
                        HeatPart.Kind.MAGNETS,
                        fan,
                        number,
                        LimitName.MAGNET_TEMPERATURE,
                        grade.orElse(NONE),
                        "the declared grade of the magnets"),
                n.outer(motor),
                motor);
    }

    /**
     * @param ownK what the part itself declares, K; {@link #NONE} if nothing
     */
    private HeatPart of(
            HeatPart.Kind kind,
            Fan fan,
            int number,
            LimitName name,
            double ownK,
            String ownOrigin) {
        boolean own = ownK != NONE && !limits.declared().containsKey(name);
        return new HeatPart(
                kind,
                fan.id(),
                fan.declaredAt(),
                number,
                own ? ownK : limits.si(name),
                own ? Optional.empty() : Optional.of(name),
                own ? ownOrigin : limits.origin(name));
    }

    private void pack(Pack pack, int number, BodyRows bodies, HeatNumbers n) {
        HeatPart part =
                new HeatPart(
                        HeatPart.Kind.CELLS,
                        pack.id(),
                        pack.declaredAt(),
                        number,
                        limits.si(LimitName.CELL_TEMPERATURE),
                        Optional.of(LimitName.CELL_TEMPERATURE),
                        limits.origin(LimitName.CELL_TEMPERATURE));
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
