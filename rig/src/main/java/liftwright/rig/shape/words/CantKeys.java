package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.open;

import java.util.List;
import liftwright.quantity.Quantity;
import liftwright.rig.Fan;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Word;

/** How jets lean, and which way rotors turn. */
public final class CantKeys {

    static final Word<Fan.Spin> SENSE = Word.of(Fan.Spin.values(), '-');

    public static final Key<Quantity> FORWARD = lean("forward", "To the front.");
    public static final Key<Quantity> BACK = lean("back", "To the back.");
    public static final Key<Quantity> RIGHT = lean("right", "To the right.");
    public static final Key<Quantity> LEFT = lean("left", "To the left.");
    public static final Key<Quantity> UP =
            lean("up", "Upwards, for a jet that does not blow up or down.");
    public static final Key<Quantity> DOWN = lean("down", "Downwards, likewise.");
    public static final Key<Quantity> OUTBOARD =
            lean("outboard", "Away from the middle plane of the body.");
    public static final Key<Quantity> INBOARD = lean("inboard", "Towards that plane.");
    public static final Key<Quantity> OUTWARD =
            lean("outward", "Away from the middle of the ring.");
    public static final Key<Quantity> INWARD = lean("inward", "Towards it.");

    /** All of them. */
    public static final List<Key<Quantity>> ALL =
            List.of(FORWARD, BACK, RIGHT, LEFT, UP, DOWN, OUTBOARD, INBOARD, OUTWARD, INWARD);

    public static final Section SECTION =
            Section.of(
                    "cant",
                    "How far the jet leans, and how well that is known; several leans add.",
                    ALL.toArray(Key<?>[]::new));

    private static Key<Quantity> lean(String name, String meaning) {
        return open(
                name,
                Amount.of(Measure.ANGLE, Range.between(-1.2, 1.2)),
                meaning,
                "4° ± 0.25°",
                "0°");
    }

    private CantKeys() {}
}
