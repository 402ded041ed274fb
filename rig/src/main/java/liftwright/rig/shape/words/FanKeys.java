package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.Fan;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Either;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Ident;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.shape.kind.YesNo;

/** The section {@code fans}: one fan, or a group of fans in a pattern. */
public final class FanKeys {

    public static final Key<String> ID =
            required(
                    "id",
                    new Ident(),
                    "Name of the group; its fans are id.1, id.2 and so on.",
                    "left");
    public static final Key<String> TYPE =
            open(
                    "type",
                    new Reference(Reference.To.FAN_TYPE),
                    "Fan type.",
                    "F140",
                    "the type of the group that “like” names");
    public static final Key<String> LIKE =
            open(
                    "like",
                    new Reference(Reference.To.FAN_GROUP),
                    "A group whose keys hold here too, unless written again.",
                    "back-top",
                    "the group stands for itself");
    public static final Key<String> MOUNT =
            open(
                    "mount",
                    new Reference(Reference.To.MOUNT),
                    "What carries the fans.",
                    "left pod",
                    "the mount of the group that “like” names");

    public static final Key<Integer> ROW =
            open(
                    "row",
                    new Whole("fans in the row", 1, 200),
                    "Fans in one row, from “from” to “to”, or “spacing” apart around “at”.",
                    "4",
                    "the group is not a row");
    public static final Key<List<Stated<Integer>>> ROWS =
            open(
                    "rows",
                    new ListOf<>("numbers of fans", new Whole("fans in the row", 1, 100), 1, 50),
                    "Fans in each of several rows around “at”; the first row is the leftmost (outermost for a left mount).",
                    "[4, 4]",
                    "the group is not rows");
    public static final Key<Integer> RING =
            open(
                    "ring",
                    new Whole("fans in the ring", 1, 200),
                    "Fans on a circle around “at”, level, clockwise seen from above.",
                    "6",
                    "the group is not a ring");
    public static final Key<Fields> AT =
            open(
                    "at",
                    PlaceKeys.PLACE,
                    "Place of the fan, or the middle of the pattern.",
                    "{up: 150 mm}",
                    "the mount's origin");
    public static final Key<Fields> FROM =
            open(
                    "from",
                    PlaceKeys.PLACE,
                    "Place of the first fan of a row.",
                    "{right: -240 mm, up: 150 mm}",
                    "the row lies around “at”");
    public static final Key<Fields> TO =
            open(
                    "to",
                    PlaceKeys.PLACE,
                    "Place of the last fan of a row.",
                    "{right: 240 mm, up: 150 mm}",
                    "the row lies around “at”");
    public static final Key<Quantity> SPACING =
            open(
                    "spacing",
                    Amount.positive(Measure.LENGTH),
                    "Between neighbours in a row, middle to middle.",
                    "150 mm",
                    "“from” and “to” must stand there");
    public static final Key<Quantity> ROW_SPACING =
            open(
                    "row spacing",
                    Amount.positive(Measure.LENGTH),
                    "Between rows, middle to middle.",
                    "170 mm",
                    "as “spacing”");
    public static final Key<String> RUNS =
            defaulted(
                    "runs",
                    Word.of("back", "forward", "right", "left", "down", "up"),
                    "back",
                    "from the front to the back",
                    "Which way a row runs from its first fan.",
                    "right");
    public static final Key<String> NEXT_ROW =
            defaulted(
                    "next row",
                    Word.of("right", "left", "back", "forward", "down", "up"),
                    "right",
                    "the first row is the leftmost",
                    "Which way the next row lies.",
                    "back");
    public static final Key<Quantity> RADIUS =
            open(
                    "radius",
                    Amount.positive(Measure.LENGTH),
                    "Of the ring.",
                    "0.78 m",
                    "the group is not a ring");
    public static final Key<Quantity> START =
            defaulted(
                    "start",
                    Amount.any(Measure.ANGLE),
                    "0°",
                    "the first fan is in front",
                    "Where the ring's first fan is, clockwise from the front.",
                    "45°");
    public static final Key<Fields> SHIFT =
            open(
                    "shift",
                    PlaceKeys.PLACE,
                    "Moves the whole group, as when it is like another.",
                    "{down: 300 mm}",
                    "it is not moved");

    public static final Key<String> BLOWS =
            defaulted(
                    "blows",
                    Word.of(
                            "down",
                            "up",
                            "forward",
                            "back",
                            "right",
                            "left",
                            "along",
                            "outboard",
                            "inboard"),
                    "down",
                    "lift fans blow down; on a limb towards the hand",
                    "Where the jet goes, before any cant.",
                    "down");
    public static final Key<Fields> CANT =
            open(
                    "cant",
                    CantKeys.SECTION,
                    "How far the jet leans from there.",
                    "{outboard: 4° ± 0.25°}",
                    "it does not lean");
    public static final Key<Fields> SEAT =
            open(
                    "seat",
                    CantKeys.SECTION,
                    "How far the seat turns the jet besides the cant, or how well each seat is true: 0° ± 0.5° each.",
                    "{forward: 0° ± 0.5° each, right: 0° ± 0.5° each}",
                    "the seats are true, exactly");
    public static final Key<Either.Of<String, List<Stated<Fan.Spin>>>> SPIN =
            defaulted(
                            "spin",
                            new Either<>(
                                    Word.of("alternating", "left-hand", "right-hand"),
                                    new ListOf<>(
                                            "senses, one a fan",
                                            CantKeys.SENSE,
                                            1,
                                            ListOf.LONGEST)),
                            "alternating",
                            "common practice",
                            "Sense of rotation seen along the thrust; alternating begins right-hand.",
                            "[left-hand, right-hand, left-hand, right-hand]")
                    .readBy(Key.Question.BALANCE);
    public static final Key<String> TWIN =
            open(
                    "twin",
                    new Ident(),
                    "Name of a mirrored group on the other side, made from this one.",
                    "right",
                    "there is no mirrored group");
    public static final Key<Fields> INTAKE =
            open(
                    "intake",
                    IntakeKeys.SECTION,
                    "What stands before these fans, in place of the type's.",
                    "{free area: 70 %, face: 800 cm², shared by: 4}",
                    "the type's intake");
    public static final Key<Quantity> INSTALLATION =
            open(
                    "installation",
                    Amount.of(Measure.RATIO, Range.upTo(1.5)),
                    "Thrust when installed over thrust on the stand, for these fans.",
                    "0.88 ± 0.04",
                    "the type's installation");
    public static final Key<Either.Of<String, Map<String, Stated<String>>>> SERIALS =
            open(
                    "serials",
                    new Either<>(
                            new Text("the serial number of a single fan"),
                            new MapOf<>(
                                    "serial numbers by fan",
                                    new Text("a serial number"),
                                    MapOf.Names.OF_PARTS)),
                    "Serial numbers; a fan that is exchanged voids what was learned about it.",
                    "{left.1: A17, left.2: A18}",
                    "no serial numbers");

    public static final Key<Fields> EXCEPT_AT =
            open(
                    "at",
                    PlaceKeys.PLACE,
                    "Place of this fan.",
                    "{up: 150 mm}",
                    "its place in the pattern");
    public static final Key<Fan.Spin> EXCEPT_SPIN =
            open(
                            "spin",
                            CantKeys.SENSE,
                            "Sense of rotation of this fan.",
                            "left-hand",
                            "that of the pattern")
                    .readBy(Key.Question.BALANCE);
    public static final Key<String> EXCEPT_SERIAL =
            open("serial", new Text("a serial number"), "Its serial number.", "A17", "none");
    public static final Key<Boolean> EXCEPT_ABSENT =
            open(
                    "absent",
                    new YesNo(),
                    "Whether the pattern has a gap here; the other fans keep their ids.",
                    "yes",
                    "the fan is there");
    public static final Section EXCEPT_SECTION =
            Section.of(
                    "fan exception",
                    "What differs for one fan of a group.",
                    TYPE,
                    EXCEPT_AT,
                    BLOWS,
                    CANT,
                    SEAT,
                    EXCEPT_SPIN,
                    INTAKE,
                    INSTALLATION,
                    EXCEPT_SERIAL,
                    EXCEPT_ABSENT);
    public static final Key<Map<String, Stated<Fields>>> EXCEPT =
            open(
                    "except",
                    new MapOf<>("exceptions by fan", EXCEPT_SECTION, MapOf.Names.OF_PARTS),
                    "What differs for single fans of this group or its twin.",
                    "{right.2: {spin: left-hand}}",
                    "all are alike");
    public static final Key<String> NOTE =
            open("note", new Text("a note"), "For people only.", "front edge is tight", "none");

    public static final Section SECTION =
            Section.of(
                            "fan group",
                            "One fan, or a group of fans in a pattern.",
                            ID,
                            TYPE,
                            LIKE,
                            MOUNT,
                            ROW,
                            ROWS,
                            RING,
                            AT,
                            FROM,
                            TO,
                            SPACING,
                            ROW_SPACING,
                            RUNS,
                            NEXT_ROW,
                            RADIUS,
                            START,
                            SHIFT,
                            BLOWS,
                            CANT,
                            SEAT,
                            SPIN,
                            TWIN,
                            INTAKE,
                            INSTALLATION,
                            SERIALS,
                            EXCEPT,
                            NOTE)
                    .with(
                            Rule.atLeastOne(TYPE, LIKE),
                            Rule.atLeastOne(MOUNT, LIKE),
                            Rule.atMostOne(ROW, ROWS, RING),
                            Rule.atMostOne(AT, FROM),
                            Rule.atMostOne(SPACING, FROM));

    /** What must hold once a group has what it takes from the one it is like. */
    public static final List<Rule> WHOLE =
            List.of(
                    Rule.needs(FROM, TO),
                    Rule.needs(TO, FROM),
                    Rule.onlyWith(FROM, ROW),
                    Rule.onlyWith(TO, ROW),
                    Rule.onlyWith(SPACING, ROW, ROWS),
                    Rule.onlyWith(ROW_SPACING, ROWS),
                    Rule.onlyWith(RUNS, ROW, ROWS),
                    Rule.atMostOne(RUNS, FROM),
                    Rule.onlyWith(NEXT_ROW, ROWS),
                    Rule.needs(RING, RADIUS),
                    Rule.onlyWith(RADIUS, RING),
                    Rule.onlyWith(START, RING),
                    Rule.needs(ROWS, SPACING));

    private FanKeys() {}
}
