package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.List;
import liftwright.quantity.Quantity;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.Problem.Code;
import liftwright.rig.Vec3;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.CantKeys;

/** Where jets go: words of direction, and how far the jet leans from there. */
final class Directions {

    private final Ledger ledger;

    Directions(Ledger ledger) {
        this.ledger = ledger;
    }

    /** A direction that needs no side. */
    static Vec3 plain(String word) {
        return switch (word) {
            case "forward" -> new Vec3(1, 0, 0);
            case "back" -> new Vec3(-1, 0, 0);
            case "right" -> new Vec3(0, 1, 0);
            case "left" -> new Vec3(0, -1, 0);
            case "up" -> new Vec3(0, 0, -1);
            case "down", "along" -> new Vec3(0, 0, 1);
            default -> throw new IllegalArgumentException("no plain direction: " + word);
        };
    }

    /** A direction in the axes of {@code mount}, for a fan {@code y} right of its origin. */
    Vec3 of(String word, Spot spot, Mount mount, double y) {
        if (word.equals("outboard") || word.equals("inboard")) {
            int side = sideOf(word, spot, mount, y);
            return new Vec3(0, word.equals("outboard") ? side : -side, 0);
        }
        if (word.equals("along") && Side.of(mount.on()) == Side.NONE) {
            Places.notOnLimb(ledger, spot);
        }
        return plain(word);
    }

    private int sideOf(String word, Spot spot, Mount mount, double y) {
        int side = Side.of(mount, y);
        if (side == Side.NONE) {
            Places.ambiguous(ledger, spot, word);
            return 1;
        }
        return side;
    }

    /** The leans of one fan's jet. */
    List<Fan.Lean> leans(Fields cant, Vec3 blows, Mount mount, Pattern.Place place) {
        var leans = new ArrayList<Fan.Lean>();
        for (Key<Quantity> key : CantKeys.ALL) {
            Stated<Quantity> angle = cant.stated(key).orElse(null);
            if (angle == null) {
                continue;
            }
            Vec3 towards = towards(key, angle.spot(), mount, place);
            if (Math.abs(Pattern.dot(towards, blows)) > 1e-9) {
                ledger.problems()
                        .add(
                                Code.CONTRADICTION,
                                angle.spot(),
                                "a lean “" + key.name() + "” of a jet that blows that way",
                                "a lean at right angles to the jet",
                                "A jet that blows down leans forward, back, left, right, outboard"
                                        + " or inboard.");
                continue;
            }
            leans.add(new Fan.Lean(angle.spot().path(), angle.value(), towards));
        }
        return leans;
    }

    private Vec3 towards(Key<Quantity> key, Spot spot, Mount mount, Pattern.Place place) {
        boolean outward = key.equals(CantKeys.OUTWARD);
        if (outward || key.equals(CantKeys.INWARD)) {
            if (place.outward().equals(Vec3.ZERO)) {
                ledger.problems()
                        .add(
                                Code.CONTRADICTION,
                                spot,
                                "“" + key.name() + "” in a group that is no ring",
                                "“outboard”, “forward” and the like",
                                "Only a ring has a middle to lean away from.");
            }
            return outward ? place.outward() : place.outward().times(-1);
        }
        return of(key.name(), spot, mount, place.at().y());
    }
}
