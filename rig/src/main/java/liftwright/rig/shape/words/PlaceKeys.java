package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.open;

import java.util.List;
import java.util.stream.Stream;
import liftwright.rig.Mount;
import liftwright.rig.shape.kind.AmountRange;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Word;

/** Where a part is, seen by the person who wears the rig or stands behind it. */
public final class PlaceKeys {

    static final Word<Mount.Carrier> CARRIER = Word.of(Mount.Carrier.values(), ' ');

    public static final Key<AmountRange.Ends> FORWARD = way("forward", "To the front.");
    public static final Key<AmountRange.Ends> BACK = way("back", "To the back.");
    public static final Key<AmountRange.Ends> RIGHT = way("right", "To the wearer's right.");
    public static final Key<AmountRange.Ends> LEFT = way("left", "To the wearer's left.");
    public static final Key<AmountRange.Ends> UP =
            way("up", "Upwards; on a limb towards its root.");
    public static final Key<AmountRange.Ends> DOWN =
            way("down", "Downwards; on a limb towards the hand.");
    public static final Key<AmountRange.Ends> OUTBOARD =
            way("outboard", "Away from the middle, on the side where the mount is.");
    public static final Key<AmountRange.Ends> INBOARD = way("inboard", "Towards the middle.");
    public static final Key<AmountRange.Ends> ALONG =
            way("along", "On a limb: along it towards the hand.");

    /** All of them. */
    public static final List<Key<AmountRange.Ends>> WAYS =
            List.of(FORWARD, BACK, RIGHT, LEFT, UP, DOWN, OUTBOARD, INBOARD, ALONG);

    public static final Key<String> MOUNT =
            open(
                    "mount",
                    new Reference(Reference.To.MOUNT),
                    "The mount that carries the part.",
                    "back",
                    "the part is on what “on” says");
    public static final Key<Mount.Carrier> ON =
            open(
                    "on",
                    CARRIER,
                    "What carries the part directly, at its origin.",
                    "trunk",
                    "the part is on its mount");

    /** Along each axis a part is moved once. */
    private static final Rule[] ONE_WAY_EACH = {
        Rule.atMostOne(FORWARD, BACK),
        Rule.atMostOne(RIGHT, LEFT, OUTBOARD, INBOARD),
        Rule.atMostOne(UP, DOWN, ALONG)
    };

    /** A place in axes that are known already. */
    public static final Section PLACE =
            Section.of(
                            "place",
                            "A place in the axes of the mount; what is left out is 0.",
                            WAYS.toArray(Key<?>[]::new))
                    .with(ONE_WAY_EACH);

    /** A place together with what carries the part. */
    public static final Section CARRIED =
            Section.of(
                            "carried place",
                            "What carries the part, and where on it; what is left out is 0.",
                            Stream.concat(Stream.of(MOUNT, ON), WAYS.stream())
                                    .toArray(Key<?>[]::new))
                    .with(
                            Stream.concat(
                                            Stream.of(
                                                    Rule.atLeastOne(MOUNT, ON),
                                                    Rule.atMostOne(MOUNT, ON)),
                                            Stream.of(ONE_WAY_EACH))
                                    .toArray(Rule[]::new));

    private static Key<AmountRange.Ends> way(String name, String meaning) {
        return open(name, new AmountRange(Measure.LENGTH), meaning, "40 mm", "0 mm");
    }

    private PlaceKeys() {}
}
