package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.List;
import liftwright.quantity.Quantity;
import liftwright.rig.Mount;
import liftwright.rig.Problem.Code;
import liftwright.rig.Vec3;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.FanKeys;

/** Where the fans of a group stand: singly, in a row, in rows or in a ring. */
final class Pattern {

    /**
     * A place of the pattern.
     *
     * @param at in the mount's axes, m
     * @param outward away from the middle of the pattern, unit vector; zero where there is no such
     *     way
     */
    record Place(Vec3 at, Vec3 outward) {}

    private final Ledger ledger;
    private final Places places;

    Pattern(Ledger ledger) {
        this.ledger = ledger;
        this.places = new Places(ledger);
    }

    List<Place> of(Fields group, Mount mount) {
        var made = new ArrayList<Place>();
        if (group.has(FanKeys.RING)) {
            ring(group, mount, made);
        } else if (group.has(FanKeys.ROWS)) {
            rows(group, mount, made);
        } else if (group.has(FanKeys.ROW)) {
            row(group, mount, made);
        } else {
            made.add(new Place(middle(group, mount), Vec3.ZERO));
        }
        Vec3 shift = place(group, FanKeys.SHIFT, mount);
        return made.stream().map(p -> new Place(p.at().plus(shift), p.outward())).toList();
    }

    private Vec3 middle(Fields group, Mount mount) {
        return place(group, FanKeys.AT, mount);
    }

    private Vec3 place(Fields group, Key<Fields> key, Mount mount) {
        return group.get(key)
                .map(p -> places.one(p, Side.of(mount), Side.of(mount.on()) != Side.NONE))
                .orElse(Vec3.ZERO);
    }

    private void row(Fields group, Mount mount, List<Place> made) {
        int count = ledger.value(group, FanKeys.ROW);
        if (group.has(FanKeys.FROM)) {
            Vec3 from = place(group, FanKeys.FROM, mount);
            Vec3 way = place(group, FanKeys.TO, mount).plus(from.times(-1));
            for (int i = 0; i < count; i++) {
                double share = count == 1 ? 0.5 : (double) i / (count - 1);
                made.add(new Place(from.plus(way.times(share)), Vec3.ZERO));
            }
            return;
        }
        line(middle(group, mount), runs(group), spacing(group), count, made);
    }

    private void rows(Fields group, Mount mount, List<Place> made) {
        List<Integer> counts =
                group.get(FanKeys.ROWS).orElse(List.of()).stream().map(Stated::value).toList();
        Vec3 along = runs(group);
        Vec3 next = Directions.plain(ledger.value(group, FanKeys.NEXT_ROW));
        if (Math.abs(dot(along, next)) > 0.5) {
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            group.spotOf(
                                    group.has(FanKeys.NEXT_ROW) ? FanKeys.NEXT_ROW : FanKeys.RUNS),
                            "rows that lie in one line",
                            "“next row” across the way in which a row runs",
                            "Say for instance “runs: right” with “next row: back”.");
        }
        double spacing = spacing(group);
        double rowSpacing =
                group.stated(FanKeys.ROW_SPACING)
                        .map(s -> ledger.middle(s.value(), s.spot()))
                        .orElse(spacing);
        Vec3 middle = middle(group, mount);
        for (int i = 0; i < counts.size(); i++) {
            double offset = (i - (counts.size() - 1) / 2.0) * rowSpacing;
            line(middle.plus(next.times(offset)), along, spacing, counts.get(i), made);
        }
    }

    private Vec3 runs(Fields group) {
        return Directions.plain(ledger.value(group, FanKeys.RUNS));
    }

    /** A missing one has been reported. */
    private double spacing(Fields group) {
        Stated<Quantity> stated = group.stated(FanKeys.SPACING).orElse(null);
        return stated == null ? 1 : ledger.middle(stated.value(), stated.spot());
    }

    private static void line(Vec3 middle, Vec3 way, double spacing, int count, List<Place> made) {
        for (int i = 0; i < count; i++) {
            double offset = (i - (count - 1) / 2.0) * spacing;
            made.add(new Place(middle.plus(way.times(offset)), Vec3.ZERO));
        }
    }

    private void ring(Fields group, Mount mount, List<Place> made) {
        int count = ledger.value(group, FanKeys.RING);
        Stated<Quantity> stated = group.stated(FanKeys.RADIUS).orElse(null);
        double radius = stated == null ? 1 : ledger.middle(stated.value(), stated.spot());
        double start = ledger.value(group, FanKeys.START).si();
        Vec3 middle = middle(group, mount);
        for (int i = 0; i < count; i++) {
            double angle = start + 2 * Math.PI * i / count;
            Vec3 outward = new Vec3(Math.cos(angle), Math.sin(angle), 0);
            made.add(new Place(middle.plus(outward.times(radius)), outward));
        }
    }

    static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }
}
