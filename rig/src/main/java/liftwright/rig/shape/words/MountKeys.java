package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import liftwright.quantity.Quantity;
import liftwright.rig.Mount;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Ident;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;

/** The section {@code mounts}: what carries fans, packs and parts. */
public final class MountKeys {

    public static final Key<Mount.Carrier> ON =
            required("on", PlaceKeys.CARRIER, "What the mount is fixed to.", "trunk");

    public static final Key<Quantity> ALONG =
            open(
                    "along",
                    Amount.of(Measure.SHARE, Range.SHARE),
                    "On a limb: how far from its upper joint.",
                    "60 %",
                    "0 %, at the upper joint");
    public static final Section AT_SECTION =
            Section.of(
                            "mount place",
                            "Place of the mount's origin; what is left out is 0.",
                            PlaceKeys.FORWARD,
                            PlaceKeys.BACK,
                            PlaceKeys.RIGHT,
                            PlaceKeys.LEFT,
                            PlaceKeys.UP,
                            PlaceKeys.DOWN,
                            PlaceKeys.OUTBOARD,
                            PlaceKeys.INBOARD,
                            ALONG)
                    .with(
                            Rule.atMostOne(PlaceKeys.FORWARD, PlaceKeys.BACK),
                            Rule.atMostOne(
                                    PlaceKeys.RIGHT,
                                    PlaceKeys.LEFT,
                                    PlaceKeys.OUTBOARD,
                                    PlaceKeys.INBOARD),
                            Rule.atMostOne(PlaceKeys.UP, PlaceKeys.DOWN));
    public static final Key<Fields> AT =
            open(
                    "at",
                    AT_SECTION,
                    "Where on it, from its origin: the middle between the shoulders on the trunk, the upper joint on a limb.",
                    "{forward: -180 mm, up: 60 mm}",
                    "at its origin");

    public static final Key<Quantity> FORWARD =
            turn("forward", "The mount's “down” leans to the front.");
    public static final Key<Quantity> BACK = turn("back", "It leans to the back.");
    public static final Key<Quantity> RIGHT = turn("right", "It leans to the right.");
    public static final Key<Quantity> LEFT = turn("left", "It leans to the left.");
    public static final Key<Quantity> OUTBOARD =
            turn("outboard", "On a limb: it leans away from the body.");
    public static final Key<Quantity> INBOARD =
            turn("inboard", "On a limb: it leans towards the body.");
    public static final Section TURN_SECTION =
            Section.of(
                            "turn",
                            "How the mount is tilted, or how well that is known: 0° ± 1°.",
                            FORWARD,
                            BACK,
                            RIGHT,
                            LEFT,
                            OUTBOARD,
                            INBOARD)
                    .with(
                            Rule.atMostOne(FORWARD, BACK),
                            Rule.atMostOne(RIGHT, LEFT, OUTBOARD, INBOARD));
    public static final Key<Fields> TURN =
            open(
                    "turn",
                    TURN_SECTION,
                    "Tilt of the mount and its doubt.",
                    "{forward: 0° ± 1°}",
                    "it stands upright, exactly");
    public static final Key<String> TWIN =
            open(
                    "twin",
                    new Ident(),
                    "Name of a mirrored mount on the other side, made from this one.",
                    "right pod",
                    "there is no mirrored mount");
    public static final Key<Quantity> BENDING =
            later(
                    "bending stiffness",
                    Amount.positive(Measure.STIFFNESS),
                    "Force over way at the mount's end.",
                    "40 kN/m");
    public static final Key<Quantity> TWISTING =
            later(
                    "twist",
                    Amount.notNegative(Measure.ANGLE),
                    "How far it twists under full thrust.",
                    "0.5°");

    public static final Section SECTION =
            Section.of(
                    "mount",
                    "A place that carries parts; its axes are those of the body that stands with hanging arms, and turn with the limb it is on.",
                    ON,
                    AT,
                    TURN,
                    TWIN,
                    BeamKeys.BEAM,
                    BENDING,
                    TWISTING);

    private static Key<Quantity> turn(String name, String meaning) {
        return open(
                name,
                Amount.of(Measure.ANGLE, Range.between(-Math.PI / 2, Math.PI / 2)),
                meaning,
                "5°",
                "0°");
    }

    private MountKeys() {}
}
