package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.HoldingStand;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.shape.kind.YesNo;

/** A stand, bench, table or cart that holds fans while they run. */
public final class HoldingStandKeys {

    public static final Key<HoldingStand.Kind> KIND =
            defaulted(
                            "kind",
                            Word.of(HoldingStand.Kind.values(), ' '),
                            "stand",
                            "nothing else is declared",
                            "What it is; a cart rolls.",
                            "bench")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<List<Stated<String>>> FANS =
            Key.<List<Stated<String>>>computed(
                            "fans",
                            new ListOf<>(
                                    "fans", new Reference(Reference.To.FAN), 1, ListOf.LONGEST),
                            "all fans",
                            "Fans that it holds, or groups of them.",
                            "[left]")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<String> THRUST =
            defaulted(
                            "thrust",
                            Word.of("up", "down", "forward", "back", "left", "right"),
                            "up",
                            "as worn",
                            "Where that which lifts when worn points on the stand.",
                            "forward")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> HEIGHT =
            required(
                            "height",
                            Amount.positive(Measure.HEIGHT),
                            "Of the middle of thrust above the ground.",
                            "1.2 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> MASS =
            required(
                            "mass",
                            Amount.positive(Measure.MASS),
                            "Of stand and ballast, without what of the rig it carries.",
                            "80 kg")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> CENTRE =
            Key.<Quantity>computed(
                            "centre height",
                            Amount.positive(Measure.HEIGHT),
                            "half the height",
                            "Of the centre of that mass above the ground.",
                            "0.4 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> FEET =
            required(
                            "feet apart",
                            Amount.positive(Measure.HEIGHT),
                            "Distance of its feet, sideways.",
                            "1.2 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> FEET_DEEP =
            Key.<Quantity>computed(
                            "feet deep",
                            Amount.positive(Measure.HEIGHT),
                            "as far as they are apart",
                            "Distance of its feet, fore and aft.",
                            "0.8 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> FRICTION =
            Key.<Quantity>computed(
                            "friction",
                            Amount.of(Measure.RATIO, Range.between(0, 2)),
                            "0.4 ± 0.1 bound: dry feet on concrete; 0.02 ± 0.01 bound for a cart on its wheels; from memory",
                            "Friction of its feet on the ground.",
                            "0.5 ± 0.1 bound")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Integer> BOLTS =
            open(
                            "bolts",
                            new Whole("bolts", 1, 100),
                            "Bolts to the ground, at the corners and along the edges of a rectangle.",
                            "4",
                            "none")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> BOLT =
            open(
                            "bolt strength",
                            Amount.positive(Measure.FORCE),
                            "Pull that one bolt holds with its hole in the ground.",
                            "8 kN",
                            "the size decides")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<HoldingStand.BoltSize> BOLT_SIZE =
            open(
                            "bolt size",
                            new Word<>(sizes()),
                            "Thread of the bolts.",
                            "M10",
                            "the strength decides")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<HoldingStand.BoltClass> BOLT_CLASS =
            defaulted(
                            "bolt class",
                            new Word<>(classes()),
                            "4.6",
                            "the least there is",
                            "Strength class, as stamped on the heads (ISO 898-1).",
                            "8.8")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> BOLTS_APART =
            Key.<Quantity>computed(
                            "bolts apart",
                            Amount.positive(Measure.HEIGHT),
                            "as the feet",
                            "Distance of the bolts, sideways.",
                            "1.1 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> BOLTS_DEEP =
            Key.<Quantity>computed(
                            "bolts deep",
                            Amount.positive(Measure.HEIGHT),
                            "as the feet",
                            "Distance of the bolts, fore and aft.",
                            "0.7 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Integer> CLAMPS =
            open("clamps", new Whole("clamps", 1, 100), "Clamps that press it down.", "2", "none")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> CLAMP_FORCE =
            open(
                            "clamp force",
                            Amount.positive(Measure.FORCE),
                            "Of each clamp.",
                            "1 kN",
                            "clamps must have one")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Boolean> WEARER =
            defaulted(
                            "carries wearer",
                            new YesNo(),
                            "no",
                            "a rig is run on a stand without its wearer",
                            "Whether the wearer is on it.",
                            "no")
                    .readBy(Key.Question.RESTRAINT);

    public static final Section SECTION =
            Section.of(
                            "stand",
                            "A stand, bench, table or cart.",
                            KIND,
                            FANS,
                            THRUST,
                            HEIGHT,
                            MASS,
                            CENTRE,
                            FEET,
                            FEET_DEEP,
                            FRICTION,
                            BOLTS,
                            BOLT,
                            BOLT_SIZE,
                            BOLT_CLASS,
                            BOLTS_APART,
                            BOLTS_DEEP,
                            CLAMPS,
                            CLAMP_FORCE,
                            WEARER)
                    .with(
                            Rule.atMostOne(BOLT, BOLT_SIZE),
                            Rule.onlyWith(BOLT, BOLTS),
                            Rule.onlyWith(BOLT_SIZE, BOLTS),
                            Rule.onlyWith(BOLT_CLASS, BOLT_SIZE),
                            Rule.onlyWith(BOLTS_APART, BOLTS),
                            Rule.onlyWith(BOLTS_DEEP, BOLTS),
                            Rule.needs(CLAMPS, CLAMP_FORCE),
                            Rule.onlyWith(CLAMP_FORCE, CLAMPS));

    private HoldingStandKeys() {}

    private static Map<String, HoldingStand.BoltSize> sizes() {
        var words = new LinkedHashMap<String, HoldingStand.BoltSize>();
        for (HoldingStand.BoltSize size : HoldingStand.BoltSize.values()) {
            words.put(size.name(), size);
        }
        return words;
    }

    private static Map<String, HoldingStand.BoltClass> classes() {
        var words = new LinkedHashMap<String, HoldingStand.BoltClass>();
        for (HoldingStand.BoltClass one : HoldingStand.BoltClass.values()) {
            words.put(one.word(), one);
        }
        return words;
    }
}
