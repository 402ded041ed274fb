package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.computed;
import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.Control;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Ident;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;

/** The section {@code control}: how throttle reaches the fans. */
public final class ControlKeys {

    public static final Key<Control.Kind> KIND =
            required(
                    "kind",
                    Word.of(Control.Kind.values(), ' '),
                    "Who shares out the thrust.",
                    "shared throttle");
    public static final Key<List<Stated<String>>> GROUP_FANS =
            required(
                    "fans",
                    new ListOf<>("fans", new Reference(Reference.To.FAN), 1, ListOf.LONGEST),
                    "Its fans, or groups of fans.",
                    "[back-top, back-bottom]");
    public static final Key<Quantity> SHARE =
            defaulted(
                    "share",
                    Amount.of(Measure.SHARE, Range.upTo(1)),
                    "100 %",
                    "full throttle is full duty",
                    "Duty of the group at full throttle.",
                    "92 %");
    public static final Section GROUP =
            Section.of("control group", "Fans that get the same command.", GROUP_FANS, SHARE);
    public static final Key<Map<String, Stated<Fields>>> GROUPS =
            computed(
                    "groups",
                    new MapOf<>("groups by name", GROUP, MapOf.Names.NEW),
                    "one group “all” of all fans, with full duty at full throttle",
                    "Groups of fans; every fan belongs to one.",
                    "{back: {fans: [back-top, back-bottom]}}");

    public static final Key<Control.LinkLoss> LINK_LOSS =
            defaulted(
                            "link loss",
                            Word.of(Control.LinkLoss.values(), ' '),
                            "hold",
                            "the worst; test yours",
                            "What a lost or frozen signal does: cuts, lowers the rig, or holds the"
                                    + " last throttle.",
                            "cut")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> LOSS_TIME =
            defaulted(
                            "loss time",
                            Amount.positive(Measure.TIME),
                            "0.3 s",
                            "common practice: at most so long",
                            "After which time a signal counts as lost.",
                            "0.3 s")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> RATE =
            open(
                            "rate",
                            Amount.positive(Measure.FREQUENCY),
                            "How often commands are given.",
                            "1 kHz",
                            "nothing is assumed")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> DELAY =
            open(
                            "delay",
                            Amount.notNegative(Measure.TIME),
                            "From sensor to command.",
                            "3 ms",
                            "nothing is assumed")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> RISE =
            open(
                            "rise",
                            Amount.positive(Measure.PER_SECOND),
                            "Fastest rise of the throttle.",
                            "50 %/s",
                            "nothing limits it")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> LIVE_BELOW =
            open(
                            "live below",
                            Amount.share(),
                            "It cannot be made live above this throttle.",
                            "3 %",
                            "it can be made live at any throttle")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Control.Stop> STOP =
            open(
                            "stop",
                            Word.of(Control.Stop.values(), '-'),
                            "What the throttle does when it is let go.",
                            "hold-to-run",
                            "nothing is assumed")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Integer> COMPUTERS =
            defaulted(
                            "computers",
                            new Whole("flight computers", 1, 10),
                            "1",
                            "one is declared",
                            "Flight computers that stand in for each other.",
                            "2")
                    .readBy(Key.Question.FAILURES);
    public static final Key<String> FED_BY =
            open(
                            "fed by",
                            new Reference(Reference.To.SUPPLY),
                            "What feeds receiver and computer: a pack, `own battery`, or `own"
                                    + " battery` with words that all who share it write.",
                            "p.1",
                            "nothing is assumed, and said so")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> LOWERING =
            defaulted(
                            "lowering",
                            Amount.of(Measure.RATIO, Range.between(0, 1)),
                            "0.9",
                            "common practice",
                            "Thrust over weight while it lowers.",
                            "0.9")
                    .readBy(Key.Question.FAILURES);
    public static final Key<String> RADIO =
            open(
                            "radio",
                            new Ident(),
                            "Name of the radio link of the throttle; the same name is the same link.",
                            "throttle radio",
                            "a link unlike those of the kills, or a wire")
                    .readBy(Key.Question.FAILURES);
    public static final Section SECTION =
            Section.of(
                    "control",
                    "How throttle reaches the fans.",
                    KIND,
                    GROUPS,
                    LINK_LOSS,
                    LOSS_TIME,
                    RATE,
                    DELAY,
                    RISE,
                    LIVE_BELOW,
                    STOP,
                    COMPUTERS,
                    FED_BY,
                    LOWERING,
                    RADIO,
                    SensorKeys.SENSORS,
                    SensorKeys.ESTIMATOR,
                    SensorKeys.LOOPS);

    private ControlKeys() {}
}
