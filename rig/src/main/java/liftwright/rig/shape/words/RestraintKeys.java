package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import liftwright.quantity.Quantity;
import liftwright.rig.Restraint;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Word;

/** The section {@code restraint}: what holds the rig during tests. */
public final class RestraintKeys {

    public static final Key<Fields> STAND =
            open(
                            "stand",
                            HoldingStandKeys.SECTION,
                            "A stand, bench, table or cart.",
                            "{height: 1.2 m, mass: 80 kg, feet apart: 1.2 m}",
                            "there is none")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Fields> TETHER =
            open(
                            "tether",
                            TetherKeys.SECTION,
                            "A tether.",
                            "{anchor height: 4 m, length: 2.5 m}",
                            "there is none")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> CEILING =
            open(
                            "ceiling",
                            Amount.positive(Measure.HEIGHT),
                            "Height of the ceiling above the ground.",
                            "5 m",
                            "open sky, as far as is said")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> BEAM =
            open(
                            "beam",
                            Amount.positive(Measure.HEIGHT),
                            "Height of the lowest thing overhead.",
                            "4.2 m",
                            "nothing hangs below the ceiling")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> ROOM_LENGTH =
            open(
                            "length",
                            Amount.positive(Measure.HEIGHT),
                            "Fore and aft.",
                            "12 m",
                            "nothing is assumed")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> ROOM_WIDTH =
            open("width", Amount.positive(Measure.HEIGHT), "Sideways.", "8 m", "nothing is assumed")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<String> FLOOR =
            open(
                            "floor",
                            new Text("what the floor is made of"),
                            "What the floor is made of.",
                            "swept concrete",
                            "not said")
                    .readBy(Key.Question.RESTRAINT);
    public static final Section ROOM_SECTION =
            Section.of(
                    "test room",
                    "What is around and above.",
                    CEILING,
                    BEAM,
                    ROOM_LENGTH,
                    ROOM_WIDTH,
                    FLOOR);
    public static final Key<Fields> ROOM =
            open(
                            "room",
                            ROOM_SECTION,
                            "The room.",
                            "{ceiling: 5 m, beam: 4.2 m}",
                            "nothing is assumed")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> PLATFORM_LENGTH =
            required("length", Amount.positive(Measure.HEIGHT), "Fore and aft.", "0.6 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> PLATFORM_WIDTH =
            required("width", Amount.positive(Measure.HEIGHT), "Sideways.", "0.6 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> RESOLUTION =
            defaulted(
                            "resolution",
                            Amount.positive(Measure.MASS),
                            "100 g",
                            "from memory: a platform scale",
                            "Smallest step that it shows.",
                            "50 g")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Restraint.Under> UNDER =
            Key.<Restraint.Under>computed(
                            "under",
                            Word.of(Restraint.Under.values(), ' '),
                            "the stand where one is declared, else the wearer",
                            "What stands on it.",
                            "wearer")
                    .readBy(Key.Question.RESTRAINT);
    public static final Section PLATFORM_SECTION =
            Section.of(
                    "platform",
                    "A scale that unloading is read on, and that jets may blow on.",
                    PLATFORM_LENGTH,
                    PLATFORM_WIDTH,
                    RESOLUTION,
                    UNDER);
    public static final Key<Fields> PLATFORM =
            open(
                            "platform",
                            PLATFORM_SECTION,
                            "A scale under the wearer or the stand.",
                            "{length: 0.6 m, width: 0.6 m}",
                            "nothing is weighed")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> MATS =
            open(
                            "mats",
                            Amount.notNegative(Measure.LENGTH),
                            "Thickness of mats on the ground.",
                            "300 mm",
                            "none")
                    .readBy(Key.Question.RESTRAINT);

    public static final Section SECTION =
            Section.of(
                    "restraint",
                    "What holds the rig during tests.",
                    STAND,
                    TETHER,
                    ROOM,
                    PLATFORM,
                    MATS);

    private RestraintKeys() {}
}
