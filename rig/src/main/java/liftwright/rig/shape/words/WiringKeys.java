package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.computed;
import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Ident;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.shape.kind.YesNo;

/** The section {@code wiring}: how packs feed fans. */
public final class WiringKeys {

    public static final Key<Integer> POLES =
            defaulted(
                    "poles",
                    new Whole("circuits that one device opens", 1, 200),
                    "1",
                    "one pole is declared",
                    "Circuits that the device opens at once.",
                    "12");
    public static final Key<Quantity> POLE_RESISTANCE =
            defaulted(
                    "resistance",
                    Amount.notNegative(Measure.RESISTANCE),
                    "0.2 mΩ ± 0.1 mΩ bound",
                    "from memory, measure yours",
                    "Of one closed pole.",
                    "0.2 mΩ");
    public static final Key<Quantity> RATING =
            open(
                    "rating",
                    Amount.positive(Measure.CURRENT),
                    "Current of one pole that may last.",
                    "200 A",
                    "not judged");
    public static final Key<Quantity> BREAKS =
            open(
                    "breaks",
                    Amount.positive(Measure.CURRENT),
                    "Current that one pole can break.",
                    "2000 A",
                    "not judged");
    public static final Key<Quantity> VOLTAGE =
            open(
                    "voltage",
                    Amount.positive(Measure.VOLTAGE),
                    "DC voltage that one pole can break.",
                    "100 V",
                    "not judged");
    public static final Key<Quantity> POLE_HEAT =
            computed(
                            "heat capacity",
                            Amount.positive(Measure.HEAT_CAPACITY),
                            "0.2 J/K for each ampere of its rating, else 20 J/K, ± 50 % bound; from"
                                    + " memory",
                            "Of the copper of one pole.",
                            "40 J/K ± 30 %")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> OPENS_IN =
            defaulted(
                            "opens in",
                            Amount.positive(Measure.TIME),
                            "30 ms",
                            "from memory, measure yours",
                            "From the signal to open contacts.",
                            "20 ms")
                    .readBy(Key.Question.FAILURES);
    public static final Key<String> COIL_FROM =
            open(
                            "coil from",
                            new Reference(Reference.To.SUPPLY),
                            "What feeds its coil: a pack, `own battery`, or `own battery` with words"
                                    + " that all who share it write.",
                            "p.1",
                            "nothing is assumed, and said so")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Boolean> NORMALLY_OPEN =
            defaulted(
                            "normally open",
                            new YesNo(),
                            "yes",
                            "common practice: a coil holds it closed",
                            "Whether it opens when its coil loses its supply.",
                            "yes")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> COIL =
            later("coil", Amount.notNegative(Measure.POWER), "Power that holds it closed.", "6 W");
    public static final Key<String> BUILD =
            later("build", Word.of("contacts", "semiconductor"), "How it breaks.", "contacts");
    public static final Section CONTACTOR =
            Section.of(
                    "contactor",
                    "One device that opens circuits.",
                    POLES,
                    POLE_RESISTANCE,
                    RATING,
                    BREAKS,
                    VOLTAGE,
                    POLE_HEAT,
                    OPENS_IN,
                    COIL_FROM,
                    NORMALLY_OPEN,
                    COIL,
                    BUILD);
    public static final Key<Map<String, Stated<Fields>>> CONTACTORS =
            open(
                    "contactors",
                    new MapOf<>("contactors by name", CONTACTOR, MapOf.Names.NEW),
                    "Devices that open circuits.",
                    "{main: {poles: 12, rating: 200 A}}",
                    "there are none");

    public static final Key<String> FEED_ID =
            required("id", new Ident(), "Name of the feed.", "feed");
    public static final Key<String> FROM =
            required(
                    "from",
                    new Reference(Reference.To.PACK),
                    "A pack, or a group of packs each of which has a feed of its own.",
                    "p");
    public static final Key<List<Stated<Fields>>> TRUNK =
            open(
                    "trunk",
                    ElementKeys.CHAIN,
                    "From the pack to where it splits.",
                    "[{joint: bullet 8 mm}, {fuse: 250 A}]",
                    "nothing lies between");
    public static final Key<List<Stated<Fields>>> BRANCH =
            open(
                    "branch",
                    ElementKeys.CHAIN,
                    "From there to each fan.",
                    "[{run: 12 AWG, length: 550 mm}]",
                    "nothing lies between");
    private static final ListOf<String> FANS_OF =
            new ListOf<>("fans", new Reference(Reference.To.FAN), 1, 200);
    public static final Key<Map<String, Stated<List<Stated<String>>>>> FANS =
            required(
                    "fans",
                    new MapOf<>("fans by pack", FANS_OF, MapOf.Names.OF_PARTS),
                    "Which fans each pack feeds.",
                    "{p.1: [back-top.1, back-bottom.4]}");
    public static final Section FEED =
            Section.of(
                    "feed",
                    "Packs that feed fans, each pack through a trunk that splits into branches.",
                    FEED_ID,
                    FROM,
                    TRUNK,
                    BRANCH,
                    FANS);
    public static final Key<List<Stated<Fields>>> FEEDS =
            open(
                    "feeds",
                    ListOf.any("feeds", FEED),
                    "The usual wiring: pack, trunk, split, branches, fans.",
                    "[{id: feed, from: p, fans: {p.1: [fan.1]}}]",
                    "links must feed the fans");

    public static final Key<String> LINK_ID =
            required("id", new Ident(), "Name of the link.", "bus tie");
    public static final Key<String> LINK_FROM =
            required(
                    "from",
                    new Reference(Reference.To.NODE),
                    "Pack, fan or a name of your own where it starts.",
                    "p.1");
    public static final Key<String> LINK_TO =
            required("to", new Reference(Reference.To.NODE), "Where it ends.", "bus");
    public static final Key<List<Stated<Fields>>> THROUGH =
            open(
                    "through",
                    ElementKeys.CHAIN,
                    "What it leads through, in order.",
                    "[{run: 4 AWG, length: 200 mm}]",
                    "a direct connection");
    public static final Section LINK =
            Section.of(
                    "link",
                    "One connection between two places: with links any wiring can be said.",
                    LINK_ID,
                    LINK_FROM,
                    LINK_TO,
                    THROUGH);
    public static final Key<List<Stated<Fields>>> LINKS =
            open(
                    "links",
                    ListOf.any("links", LINK),
                    "Connections one by one, for any wiring.",
                    "[{id: tie, from: p.1, to: bus, through: [{fuse: 250 A}]}]",
                    "there are none");

    public static final Section SECTION =
            Section.of(
                    "wiring",
                    "How packs feed fans; every line is out and back, lengths are one way.",
                    CONTACTORS,
                    FEEDS,
                    LINKS,
                    KillKeys.KILLS,
                    KillKeys.GROUNDS,
                    KillKeys.PRE_CHARGE,
                    KillKeys.DISCHARGE);

    private WiringKeys() {}
}
