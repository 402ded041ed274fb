package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.computed;
import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.FuseOpening;
import liftwright.rig.Insulation;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Gauge;
import liftwright.rig.shape.kind.Ident;
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

/** What a chain of the wiring is made of. */
public final class ElementKeys {

    public static final Key<String> ID =
            open(
                    "id",
                    new Ident(),
                    "Name of the element within its chain.",
                    "main fuse",
                    "its kind, counted");
    public static final Key<Integer> RUN =
            open("run", new Gauge(), "A wire out and back.", "12 AWG", "it is something else");
    public static final Key<Quantity> LENGTH =
            open(
                    "length",
                    Amount.of(Measure.LENGTH, Range.upTo(200)),
                    "One way.",
                    "550 mm ± 50 mm",
                    "a wire must have one");
    public static final Key<Integer> CONDUCTORS =
            defaulted(
                    "conductors",
                    new Whole("wires side by side each way", 1, 50),
                    "1",
                    "one wire each way is declared",
                    "Equal wires side by side each way.",
                    "2");
    public static final Key<Insulation> INSULATION =
            open(
                            "insulation",
                            new Word<>(insulations()),
                            "Material of the insulation.",
                            "silicone",
                            "the least heat-proof counts: PVC of 70 °C")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> CLASS =
            Key.<Quantity>computed(
                            "class",
                            Amount.of(Measure.TEMPERATURE, Range.between(313.15, 673.15)),
                            "that of the material in the parts book, as far as lists of the trade"
                                    + " agree",
                            "Temperature class of the insulation, as printed on the wire.",
                            "180 °C")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> WALL =
            Key.<Quantity>computed(
                            "wall",
                            Amount.of(Measure.LENGTH, Range.upTo(0.02)),
                            "the usual one of the material and gauge in the parts book",
                            "Thickness of the insulation on one side.",
                            "1 mm ± 0.2 mm")
                    .readBy(Key.Question.HEAT);
    public static final Key<Integer> BUNDLE =
            Key.<Integer>computed(
                            "bundle",
                            new Whole("wires in the bundle", 1, 200),
                            "out and back lie together: twice the conductors; common practice",
                            "Insulated wires that lie together, these among them.",
                            "6")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> AIR =
            defaulted(
                            "air",
                            Amount.of(Measure.SPEED, Range.between(0, 100)),
                            "0 m/s",
                            "still air, which cools least",
                            "Speed of the air across the wire.",
                            "0 m/s")
                    .readBy(Key.Question.HEAT);

    public static final Key<String> JOINT =
            open(
                    "joint",
                    new Reference(Reference.To.JOINT),
                    "A connector, lug or splice, both poles together.",
                    "bullet 6 mm",
                    "it is something else");
    public static final Key<FuseOpening.Speed> FUSE_SPEED =
            Key.<FuseOpening.Speed>computed(
                            "speed",
                            new Word<>(speeds()),
                            "fast up to 40 A, as blades are, slow above, as the larger forms are;"
                                    + " common practice",
                            "How fast a fuse opens.",
                            "slow")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> FUSE =
            open(
                    "fuse",
                    Amount.positive(Measure.CURRENT),
                    "A fuse of that rating.",
                    "250 A",
                    "it is something else");
    public static final Key<String> POLE =
            open(
                    "contactor",
                    new Reference(Reference.To.CONTACTOR),
                    "One pole of a contactor.",
                    "main",
                    "it is something else");
    public static final Key<Quantity> RESISTANCE =
            computed(
                    "resistance",
                    Amount.notNegative(Measure.RESISTANCE),
                    "that of the parts book",
                    "Of a joint (both poles) or a fuse.",
                    "0.3 mΩ ± 30 %");
    public static final Key<Quantity> RATING =
            open(
                    "rating",
                    Amount.positive(Measure.CURRENT),
                    "Current of a joint that may last.",
                    "120 A",
                    "that of the parts book");
    public static final Key<Quantity> BREAKS =
            open(
                    "breaks",
                    Amount.positive(Measure.CURRENT),
                    "Current that a fuse can break.",
                    "2 kA",
                    "that of the parts book");
    public static final Key<Quantity> VOLTAGE =
            open(
                    "voltage",
                    Amount.positive(Measure.VOLTAGE),
                    "DC voltage that a fuse can break.",
                    "80 V",
                    "that of the parts book");
    public static final Key<Quantity> DAMAGE =
            open(
                    "damage",
                    Amount.of(Measure.RATIO, Range.between(1, 100)),
                    "Resistance of a joint over that of a new one.",
                    "2.5",
                    "1: as new");
    public static final Key<Quantity> GROWTH =
            open(
                            "growth",
                            Amount.of(Measure.PER_SECOND, Range.between(0, 1)),
                            "Share of its resistance by which a joint grows, for good, in each"
                                    + " second above its limit.",
                            "2 %/s",
                            "it stays")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> HEAT =
            Key.<Quantity>computed(
                            "heat capacity",
                            Amount.positive(Measure.HEAT_CAPACITY),
                            "of a joint by its mass in the parts book, else 0.04 J/K for each"
                                    + " ampere of its rating, else 4 J/K; of a fuse 0.1 J/K for"
                                    + " each ampere",
                            "Of one pole of a joint, or of a fuse.",
                            "5 J/K ± 30 %")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> POINT_CURRENT =
            required("current", Amount.positive(Measure.CURRENT), "Current.", "500 A")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> POINT_TIME =
            required("time", Amount.positive(Measure.TIME), "Time until it opens from cold.", "5 s")
                    .readBy(Key.Question.HEAT);
    public static final Section POINT =
            Section.of("fuse point", "One point of a fuse's curve.", POINT_CURRENT, POINT_TIME);
    public static final Key<List<Stated<Fields>>> POINTS =
            open(
                            "points",
                            new ListOf<>("points, current rising", POINT, 2, 100),
                            "Published time against current, both from cold; straight between on"
                                    + " logarithmic scales.",
                            "[{current: 350 A, time: 60 s}, {current: 500 A, time: 5 s}]",
                            "those of its speed in the parts book")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> TIME_DOUBT =
            Key.<Quantity>computed(
                            "time doubt",
                            Amount.doubt(Measure.RATIO, "1"),
                            "+150/−60 % bound; ± 30 % bound where points are declared; from memory",
                            "Doubt of all times of the curve together.",
                            "± 30 %")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> TIME_CONSTANT =
            Key.<Quantity>computed(
                            "time constant",
                            Amount.positive(Measure.TIME),
                            "2 s of a very fast fuse, 10 s of a fast one, 60 s of a slow one,"
                                    + " ± 50 % bound; from memory",
                            "Time in which the element of a fuse settles: how long it remembers a"
                                    + " burst.",
                            "60 s ± 30 %")
                    .readBy(Key.Question.HEAT);

    public static final Section SECTION =
            Section.of(
                            "element",
                            "One thing in a chain: a wire, a joint, a fuse or a pole of a contactor.",
                            ID,
                            RUN,
                            LENGTH,
                            CONDUCTORS,
                            INSULATION,
                            CLASS,
                            WALL,
                            BUNDLE,
                            AIR,
                            JOINT,
                            FUSE,
                            FUSE_SPEED,
                            POLE,
                            RESISTANCE,
                            RATING,
                            DAMAGE,
                            GROWTH,
                            HEAT,
                            BREAKS,
                            VOLTAGE,
                            POINTS,
                            TIME_DOUBT,
                            TIME_CONSTANT)
                    .with(
                            Rule.atLeastOne(RUN, JOINT, FUSE, POLE),
                            Rule.atMostOne(RUN, JOINT, FUSE, POLE),
                            Rule.needs(RUN, LENGTH),
                            Rule.onlyWith(LENGTH, RUN),
                            Rule.onlyWith(CONDUCTORS, RUN),
                            Rule.onlyWith(RESISTANCE, JOINT, FUSE),
                            Rule.onlyWith(RATING, JOINT),
                            Rule.onlyWith(DAMAGE, JOINT),
                            Rule.onlyWith(GROWTH, JOINT),
                            Rule.onlyWith(HEAT, JOINT, FUSE),
                            Rule.onlyWith(BREAKS, FUSE),
                            Rule.onlyWith(VOLTAGE, FUSE),
                            Rule.onlyWith(POINTS, FUSE),
                            Rule.onlyWith(TIME_DOUBT, FUSE),
                            Rule.onlyWith(TIME_CONSTANT, FUSE),
                            Rule.onlyWith(FUSE_SPEED, FUSE),
                            Rule.onlyWith(INSULATION, RUN),
                            Rule.onlyWith(CLASS, RUN),
                            Rule.onlyWith(WALL, RUN),
                            Rule.onlyWith(BUNDLE, RUN),
                            Rule.onlyWith(AIR, RUN));
    public static final ListOf<Fields> CHAIN = new ListOf<>("elements in order", SECTION, 0, 100);

    private ElementKeys() {}

    private static Map<String, Insulation> insulations() {
        var words = new LinkedHashMap<String, Insulation>();
        for (Insulation material : Insulation.values()) {
            words.put(material.word(), material);
        }
        return words;
    }

    private static Map<String, FuseOpening.Speed> speeds() {
        var words = new LinkedHashMap<String, FuseOpening.Speed>();
        words.put("fast", FuseOpening.Speed.FAST);
        words.put("slow", FuseOpening.Speed.SLOW);
        words.put("very fast", FuseOpening.Speed.VERY_FAST);
        return words;
    }
}
