package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.FuseOpening;
import liftwright.rig.Problem.Code;
import liftwright.rig.book.PartsBook;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.ElementKeys;

/** When a fuse opens. */
final class FuseBinder {

    private final Ledger ledger;

    FuseBinder(Ledger ledger) {
        this.ledger = ledger;
    }

    FuseOpening bind(Fields fields, Quantity rating) {
        FuseOpening.Speed speed =
                ledger.computed(
                        fields,
                        ElementKeys.FUSE_SPEED,
                        word(PartsBook.fuseSpeed(rating.si())),
                        "common practice: blades up to 40 A open fast, larger forms slowly");
        FuseOpening usual = FuseOpening.usual(speed, rating.si());
        Optional<List<FuseOpening.Point>> own =
                fields.get(ElementKeys.POINTS)
                        .filter(_ -> fields.get(ElementKeys.FUSE).isPresent())
                        .flatMap(points -> points(points, rating, usual));
        ledger.note(
                fields,
                ElementKeys.POINTS,
                "those of a " + word(speed) + " fuse",
                "parts book, " + PartsBook.fuseCurveSource(speed));
        boolean published = fields.has(ElementKeys.POINTS);
        return new FuseOpening(
                speed,
                own.orElse(usual.points()),
                ledger.computed(
                        fields,
                        ElementKeys.TIME_DOUBT,
                        published ? "± 0.3 bound" : "+1.5/−0.6 bound",
                        published
                                ? "a published curve is a typical one; from memory"
                                : "the window that the standard leaves to makers; from memory"),
                ledger.computed(
                        fields,
                        ElementKeys.TIME_CONSTANT,
                        WarmthBinder.bound(
                                Measure.TIME, speed.timeConstantS(), speed.timeConstantS() / 2),
                        "from memory, measure yours"));
    }

    private static String word(FuseOpening.Speed speed) {
        return switch (speed) {
            case VERY_FAST -> "very fast";
            case FAST -> "fast";
            case SLOW -> "slow";
        };
    }

    /**
     * The published points, after the one that all fuses of the form hold; empty after a problem.
     */
    private Optional<List<FuseOpening.Point>> points(
            List<Stated<Fields>> stated, Quantity rating, FuseOpening usual) {
        var points = new ArrayList<FuseOpening.Point>();
        for (Stated<Fields> each : stated) {
            Fields point = each.value();
            if (point.get(ElementKeys.POINT_CURRENT).isEmpty()
                    || point.get(ElementKeys.POINT_TIME).isEmpty()) {
                return Optional.empty(); // the reader has told why
            }
            double currentA = middle(point, ElementKeys.POINT_CURRENT);
            double timeS = middle(point, ElementKeys.POINT_TIME);
            if (!fits(points, currentA, timeS, rating, point)) {
                return Optional.empty();
            }
            points.add(
                    new FuseOpening.Point(
                            Quantity.exact(currentA, Measure.CURRENT.dimension()),
                            Quantity.exact(timeS, Measure.TIME.dimension())));
        }
        FuseOpening.Point held = usual.points().getFirst();
        FuseOpening.Point first = points.getFirst();
        if (held.current().si() < first.current().si() && held.time().si() > first.time().si()) {
            points.addFirst(held);
        }
        return Optional.of(points);
    }

    private double middle(Fields point, Key<Quantity> key) {
        return ledger.middle(ledger.value(point, key), point.spotOf(key));
    }

    private boolean fits(
            List<FuseOpening.Point> before,
            double currentA,
            double timeS,
            Quantity rating,
            Fields point) {
        double leastA = before.isEmpty() ? rating.si() : before.getLast().current().si();
        if (!(currentA > leastA)) {
            wrong(
                    point.spotOf(ElementKeys.POINT_CURRENT),
                    Measure.CURRENT.show(currentA),
                    before.isEmpty()
                            ? "more than the rating, " + Measure.CURRENT.show(leastA)
                            : "more than the point before, " + Measure.CURRENT.show(leastA),
                    before.isEmpty()
                            ? "A fuse holds its rating."
                            : "Write the points in the order of rising current.");
            return false;
        }
        if (!before.isEmpty() && !(timeS < before.getLast().time().si())) {
            wrong(
                    point.spotOf(ElementKeys.POINT_TIME),
                    Measure.TIME.show(timeS),
                    "less than the point before, "
                            + Measure.TIME.show(before.getLast().time().si()),
                    "A larger current opens a fuse sooner.");
            return false;
        }
        return true;
    }

    private void wrong(Spot spot, String found, String expected, String advice) {
        ledger.problems().add(Code.OUT_OF_RANGE, spot, found, expected, advice);
    }
}
