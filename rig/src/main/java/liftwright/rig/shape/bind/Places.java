package liftwright.rig.shape.bind;

import liftwright.rig.Problem.Code;
import liftwright.rig.Vec3;
import liftwright.rig.shape.kind.AmountRange;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.PlaceKeys;

/** From words of place to axes: x forward, y right, z down (ISO 1151-1). */
final class Places {

    private final Ledger ledger;

    Places(Ledger ledger) {
        this.ledger = ledger;
    }

    /** One place; two ends are a problem here. */
    Vec3 one(Fields place, int side, boolean onLimb) {
        for (Key<AmountRange.Ends> key : PlaceKeys.WAYS) {
            if (place.section().keys().contains(key)) {
                refuseEnds(place, key);
            }
        }
        return spread(place, side, onLimb, 0, 1);
    }

    /**
     * Place of the part {@code index} of {@code count}, from 0.
     *
     * @param side what "outboard" means; {@link Side#NONE} makes that word a problem
     */
    Vec3 spread(Fields place, int side, boolean onLimb, int index, int count) {
        double share = count == 1 ? 0.5 : (double) index / (count - 1);
        boolean first = index == 0;
        double x =
                way(place, PlaceKeys.FORWARD, share, first)
                        - way(place, PlaceKeys.BACK, share, first);
        double y =
                way(place, PlaceKeys.RIGHT, share, first)
                        - way(place, PlaceKeys.LEFT, share, first);
        double z =
                way(place, PlaceKeys.DOWN, share, first) - way(place, PlaceKeys.UP, share, first);
        double out =
                way(place, PlaceKeys.OUTBOARD, share, first)
                        - way(place, PlaceKeys.INBOARD, share, first);
        if (first && side == Side.NONE) {
            refuseOutboard(place, PlaceKeys.OUTBOARD);
            refuseOutboard(place, PlaceKeys.INBOARD);
        }
        if (place.section().keys().contains(PlaceKeys.ALONG)) {
            if (first && !onLimb && place.has(PlaceKeys.ALONG)) {
                notOnLimb(ledger, place.spotOf(PlaceKeys.ALONG));
            }
            z += way(place, PlaceKeys.ALONG, share, first);
        }
        return new Vec3(x + 0.0, y + side * out + 0.0, z + 0.0);
    }

    static void notOnLimb(Ledger ledger, Spot spot) {
        ledger.problems()
                .add(
                        Code.CONTRADICTION,
                        spot,
                        "“along” on something that is no limb",
                        "“along” on a mount on an arm",
                        "Say forward, right or up, or put the mount on an arm.");
    }

    private double way(Fields place, Key<AmountRange.Ends> key, double share, boolean first) {
        Stated<AmountRange.Ends> stated = place.stated(key).orElse(null);
        if (stated == null) {
            return 0;
        }
        AmountRange.Ends ends = stated.value();
        double from = first ? ledger.middle(ends.from(), stated.spot()) : ends.from().si();
        return ends.single() ? from : from + share * (ends.to().si() - from);
    }

    private void refuseEnds(Fields place, Key<AmountRange.Ends> key) {
        Stated<AmountRange.Ends> stated = place.stated(key).orElse(null);
        if (stated != null && !stated.value().single()) {
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            stated.spot(),
                            "two ends",
                            "one " + key.name(),
                            "Two ends spread packs only; a row of fans goes “from” and “to”.");
        }
    }

    private void refuseOutboard(Fields place, Key<AmountRange.Ends> key) {
        if (place.has(key)) {
            ambiguous(ledger, place.spotOf(key), key.name());
        }
    }

    static void ambiguous(Ledger ledger, Spot spot, String word) {
        ledger.problems()
                .add(
                        Code.CONTRADICTION,
                        spot,
                        "“" + word + "” in the middle plane of the body",
                        "“left” or “right”",
                        "In the middle neither side is outboard: say which is meant.");
    }
}
