package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.computed;
import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;

import java.util.List;
import liftwright.quantity.Quantity;
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
    public static final Key<String> INSULATION =
            later(
                    "insulation",
                    Word.of("PVC", "XLPE", "ETFE", "silicone", "FEP", "PTFE"),
                    "Material of the insulation.",
                    "silicone");
    public static final Key<Quantity> CLASS =
            later(
                    "class",
                    Amount.positive(Measure.TEMPERATURE),
                    "Temperature class of the insulation.",
                    "180 °C");
    public static final Key<Integer> BUNDLE =
            later(
                    "bundle",
                    new Whole("wires in the bundle", 1, 200),
                    "Wires that lie together.",
                    "6");
    public static final Key<Quantity> AIR =
            later(
                    "air",
                    Amount.notNegative(Measure.SPEED),
                    "Speed of the air along the wire.",
                    "0 m/s");

    public static final Key<String> JOINT =
            open(
                    "joint",
                    new Reference(Reference.To.JOINT),
                    "A connector, lug or splice, both poles together.",
                    "bullet 6 mm",
                    "it is something else");
    public static final Key<String> FUSE_SPEED =
            later("speed", Word.of("fast", "slow", "very fast"), "How fast it opens.", "slow");
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
    public static final Key<Quantity> POINT_CURRENT =
            later("current", Amount.positive(Measure.CURRENT), "Current.", "500 A");
    public static final Key<Quantity> POINT_TIME =
            later("time", Amount.positive(Measure.TIME), "Time until it opens.", "5 s");
    public static final Section POINT =
            Section.of("fuse point", "One point of a fuse's curve.", POINT_CURRENT, POINT_TIME);
    public static final Key<List<Stated<Fields>>> POINTS =
            later(
                    "points",
                    new ListOf<>("points", POINT, 2, 100),
                    "Published time against current.",
                    "[{current: 350 A, time: 60 s}, {current: 500 A, time: 5 s}]");

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
                            BUNDLE,
                            AIR,
                            JOINT,
                            FUSE,
                            FUSE_SPEED,
                            POLE,
                            RESISTANCE,
                            RATING,
                            BREAKS,
                            VOLTAGE,
                            POINTS)
                    .with(
                            Rule.atLeastOne(RUN, JOINT, FUSE, POLE),
                            Rule.atMostOne(RUN, JOINT, FUSE, POLE),
                            Rule.needs(RUN, LENGTH),
                            Rule.onlyWith(LENGTH, RUN),
                            Rule.onlyWith(CONDUCTORS, RUN),
                            Rule.onlyWith(RESISTANCE, JOINT, FUSE),
                            Rule.onlyWith(RATING, JOINT),
                            Rule.onlyWith(BREAKS, FUSE),
                            Rule.onlyWith(VOLTAGE, FUSE),
                            Rule.onlyWith(POINTS, FUSE),
                            Rule.onlyWith(FUSE_SPEED, FUSE),
                            Rule.onlyWith(INSULATION, RUN),
                            Rule.onlyWith(CLASS, RUN),
                            Rule.onlyWith(BUNDLE, RUN),
                            Rule.onlyWith(AIR, RUN));
    public static final ListOf<Fields> CHAIN = new ListOf<>("elements in order", SECTION, 0, 100);

    private ElementKeys() {}
}
