package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.computed;
import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.Control;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
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

    public static final Key<String> LINK_LOSS =
            later(
                    "link loss",
                    Word.of("cut", "lower", "hold"),
                    "What a lost or frozen signal does.",
                    "cut");
    public static final Key<Quantity> LOSS_TIME =
            later(
                    "loss time",
                    Amount.positive(Measure.TIME),
                    "After which time a signal counts as lost.",
                    "0.3 s");
    public static final Key<Quantity> RATE =
            later(
                    "rate",
                    Amount.positive(Measure.FREQUENCY),
                    "How often commands are given.",
                    "1 kHz");
    public static final Key<Quantity> DELAY =
            later("delay", Amount.notNegative(Measure.TIME), "From sensor to command.", "3 ms");
    public static final Key<Quantity> RISE =
            later(
                    "rise",
                    Amount.positive(Measure.PER_SECOND),
                    "Fastest rise of the throttle.",
                    "50 %/s");
    public static final Key<Quantity> LIVE_BELOW =
            later(
                    "live below",
                    Amount.share(),
                    "It cannot be made live above this throttle.",
                    "3 %");
    public static final Key<String> STOP =
            later("stop", Word.of("cut", "lower", "hold-to-run"), "Kind of stop.", "hold-to-run");
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
                    SensorKeys.SENSORS,
                    SensorKeys.ESTIMATOR,
                    SensorKeys.LOOPS);

    private ControlKeys() {}
}
