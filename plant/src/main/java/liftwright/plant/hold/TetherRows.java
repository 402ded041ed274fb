package liftwright.plant.hold;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Quantity;
import liftwright.rig.Restraint;
import liftwright.rig.RigPath;
import liftwright.rig.Tether;

/** The numbers of a tether, and of the room it is in, as rows of a rig's parameter table. */
public final class TetherRows {

    private final Tether tether;
    private final int anchor;
    private final int length;
    private final int stiffness;
    private final int damping;
    private final OptionalInt anchorStrength;
    private final OptionalInt lineStrength;
    private final OptionalInt harnessLimit;
    private final OptionalInt harnessPoint;
    private final OptionalInt sideReach;
    private final OptionalInt overhead;
    private final OptionalInt mats;
    private final OptionalInt roomLength;
    private final OptionalInt roomWidth;
    private final Optional<GantryRows> gantry;
    private final Optional<DownRows> down;

    private record GantryRows(int mass, int apart, int deep, int friction) {}

    private record DownRows(
            int count, int length, int spread, int stiffness, OptionalInt strength) {}

    private TetherRows(Tether tether, Restraint restraint, ParameterRows table) {
        this.tether = tether;
        RigPath at = tether.declaredAt();
        anchor = row(table, at, "anchor height", "height of the anchor", tether.anchorHeight());
        length = row(table, at, "length", "length of the tether", tether.length());
        stiffness = row(table, at, "stiffness", "stiffness of the tether", tether.stiffness());
        damping =
                table.row(
                        at.child("damping"),
                        "damping of the tether",
                        tether.damping(),
                        Range.NOT_NEGATIVE);
        anchorStrength =
                open(
                        table,
                        at,
                        "anchor strength",
                        "strength of the anchor",
                        tether.anchorStrength());
        lineStrength =
                open(table, at, "line strength", "strength of the line", tether.lineStrength());
        harnessLimit =
                open(table, at, "harness limit", "limit of the harness", tether.harnessLimit());
        harnessPoint =
                open(table, at, "harness point", "height of the ring", tether.harnessPoint());
        sideReach = open(table, at, "side reach", "free reach to the sides", tether.sideReach());
        Optional<Restraint.Room> room = restraint.room();
        RigPath inRoom = room.map(Restraint.Room::declaredAt).orElse(at);
        OptionalInt beam =
                open(table, inRoom, "beam", "height of the beam", room.flatMap(r -> r.beam()));
        overhead =
                beam.isPresent()
                        ? beam
                        : open(
                                table,
                                inRoom,
                                "ceiling",
                                "height of the ceiling",
                                room.flatMap(r -> r.ceiling()));
        roomLength =
                open(table, inRoom, "length", "length of the room", room.flatMap(r -> r.length()));
        roomWidth = open(table, inRoom, "width", "width of the room", room.flatMap(r -> r.width()));
        mats =
                StandRows.index(
                        restraint
                                .mats()
                                .map(
                                        thick ->
                                                table.row(
                                                        RigPath.of("restraint", "mats"),
                                                        "thickness of the mats",
                                                        thick,
                                                        Range.NOT_NEGATIVE)));
        gantry =
                tether.gantry()
                        .map(
                                g ->
                                        new GantryRows(
                                                row(
                                                        table,
                                                        g.declaredAt(),
                                                        "mass",
                                                        "mass of the gantry",
                                                        g.mass()),
                                                row(
                                                        table,
                                                        g.declaredAt(),
                                                        "feet apart",
                                                        "distance of the gantry's feet",
                                                        g.feetApart()),
                                                row(
                                                        table,
                                                        g.declaredAt(),
                                                        "feet deep",
                                                        "depth of the gantry's feet",
                                                        g.feetDeep()),
                                                table.row(
                                                        g.declaredAt().child("friction"),
                                                        "friction of the gantry's feet",
                                                        g.friction(),
                                                        Range.NOT_NEGATIVE)));
        down =
                tether.downLines()
                        .map(
                                d ->
                                        new DownRows(
                                                d.count(),
                                                row(
                                                        table,
                                                        at,
                                                        "down-line length",
                                                        "length of the down-lines",
                                                        d.length()),
                                                table.row(
                                                        at.child("down-line spread"),
                                                        "spread of the down-lines",
                                                        d.spread(),
                                                        Range.NOT_NEGATIVE),
                                                row(
                                                        table,
                                                        at,
                                                        "down-line stiffness",
                                                        "stiffness of the down-lines",
                                                        d.stiffness()),
                                                open(
                                                        table,
                                                        at,
                                                        "down-line strength",
                                                        "strength of a down-line",
                                                        d.strength())));
    }

    /** Declares them. */
    public static TetherRows declare(Tether tether, Restraint restraint, ParameterRows table) {
        return new TetherRows(tether, restraint, table);
    }

    private static int row(
            ParameterRows table, RigPath at, String key, String label, Quantity value) {
        return StandRows.row(table, at, key, label, value);
    }

    private static OptionalInt open(
            ParameterRows table, RigPath at, String key, String label, Optional<Quantity> value) {
        return StandRows.index(value.map(v -> row(table, at, key, label, v)));
    }

    public Tether tether() {
        return tether;
    }

    private static OptionalDouble value(double[] p, OptionalInt row) {
        return row.isPresent() ? OptionalDouble.of(p[row.getAsInt()]) : OptionalDouble.empty();
    }

    /**
     * The numbers at a vector.
     *
     * @param shouldersM height of the wearer's shoulders above the soles, or of the top of a rig
     *     that nobody wears, m: where the ring is if nothing is declared
     */
    public TetherNumbers at(double[] p, double shouldersM) {
        return new TetherNumbers(
                p[anchor],
                p[length],
                p[stiffness],
                p[damping],
                value(p, harnessPoint).orElse(shouldersM),
                value(p, overhead).orElse(p[anchor]),
                value(p, mats).orElse(0),
                value(p, anchorStrength),
                value(p, lineStrength),
                value(p, harnessLimit),
                value(p, sideReach),
                half(p, roomLength, roomWidth),
                gantry.map(
                        g ->
                                new TetherNumbers.Gantry(
                                        p[g.mass],
                                        new Footprint(p[g.apart], p[g.deep]),
                                        p[g.friction])),
                down.map(
                        d ->
                                new TetherNumbers.Down(
                                        d.count,
                                        p[d.length],
                                        p[d.spread],
                                        p[d.stiffness],
                                        value(p, d.strength),
                                        value(p, harnessPoint).orElse(shouldersM))));
    }

    /** From the middle of the room to its nearest wall. */
    private static OptionalDouble half(double[] p, OptionalInt length, OptionalInt width) {
        double least =
                Math.min(
                        value(p, length).orElse(Double.POSITIVE_INFINITY),
                        value(p, width).orElse(Double.POSITIVE_INFINITY));
        return Double.isFinite(least) ? OptionalDouble.of(least / 2) : OptionalDouble.empty();
    }
}
