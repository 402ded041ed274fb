package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import liftwright.quantity.Quantity;
import liftwright.rig.Kill;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Ident;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.shape.kind.YesNo;

/** What makes the rig dead, and what lies beside the power wiring. */
public final class KillKeys {

    public static final Key<String> KILL_ID =
            required("id", new Ident(), "Name of the kill switch.", "remote")
                    .readBy(Key.Question.FAILURES);
    public static final Key<List<Stated<String>>> OPENS =
            open(
                            "opens",
                            new ListOf<>(
                                    "contactors", new Reference(Reference.To.CONTACTOR), 1, 100),
                            "Contactors that it opens.",
                            "[main]",
                            "it only commands zero")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Kill.Means> BY =
            defaulted(
                            "by",
                            Word.of(Kill.Means.values(), ' '),
                            "wire",
                            "common practice: the plainest kill",
                            "How it acts.",
                            "radio")
                    .readBy(Key.Question.FAILURES);
    public static final Key<String> HELD_BY =
            open(
                            "held by",
                            new Reference(Reference.To.PERSON),
                            "Who holds it: the wearer or one of the crew.",
                            "watcher",
                            "nobody is said to hold it")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> REACTION =
            open(
                            "reaction",
                            Amount.notNegative(Measure.TIME),
                            "From a surprise to the press, of that person.",
                            "1.5 s",
                            "that of the crew member or wearer, else the limit `watcher reaction`"
                                    + " or `wearer reaction`")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> DELAY =
            defaulted(
                            "delay",
                            Amount.notNegative(Measure.TIME),
                            "50 ms",
                            "from memory, measure yours",
                            "From the press to the signal at the contactor.",
                            "30 ms")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Kill.Order> ORDER =
            Key.<Kill.Order>computed(
                            "order",
                            Word.of(Kill.Order.values(), ' '),
                            "`open at once`, or `command zero only` where it opens nothing",
                            "What happens first.",
                            "command zero then open")
                    .readBy(Key.Question.FAILURES);
    public static final Key<String> RADIO =
            open(
                            "radio",
                            new Ident(),
                            "Name of its radio link; the same name is the same link.",
                            "kill radio",
                            "by radio: a link of its own, unlike the throttle's")
                    .readBy(Key.Question.FAILURES);
    public static final Key<String> FED_BY =
            open(
                            "fed by",
                            new Reference(Reference.To.SUPPLY),
                            "What feeds it: a pack, `own battery`, or `own battery` with words that"
                                    + " all who share it write.",
                            "own battery",
                            "nothing is assumed, and said so")
                    .readBy(Key.Question.FAILURES);
    public static final Key<String> KILL_GROUND =
            open(
                            "ground",
                            new Reference(Reference.To.SIGNAL_GROUND),
                            "Signal ground that its signal returns through.",
                            "signal ground",
                            "none")
                    .readBy(Key.Question.FAILURES);
    public static final Key<List<Stated<String>>> THROUGH =
            open(
                            "through",
                            new ListOf<>("names of your own", new Ident(), 1, 100),
                            "Further things in its way; the same name is the same thing.",
                            "[relay board, hip plug]",
                            "nothing else")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Boolean> OPENS_ON_LOSS =
            defaulted(
                            "opens on loss",
                            new YesNo(),
                            "no",
                            "the worst; test yours",
                            "Whether the loss of its supply, link or line opens it by itself.",
                            "yes")
                    .readBy(Key.Question.FAILURES);
    public static final Section KILL =
            Section.of(
                    "kill",
                    "One kill switch.",
                    KILL_ID,
                    OPENS,
                    BY,
                    HELD_BY,
                    REACTION,
                    DELAY,
                    ORDER,
                    RADIO,
                    FED_BY,
                    KILL_GROUND,
                    THROUGH,
                    OPENS_ON_LOSS);
    public static final Key<List<Stated<Fields>>> KILLS =
            open(
                            "kills",
                            ListOf.any("kill switches", KILL),
                            "Kill switches.",
                            "[{id: remote, opens: [main], by: radio, held by: watcher}]",
                            "nothing makes the rig dead")
                    .readBy(Key.Question.FAILURES);

    public static final Key<String> GROUND_ID =
            required("id", new Ident(), "Name of the ground line.", "signal ground")
                    .readBy(Key.Question.FAILURES);
    public static final Key<String> GROUND_FROM =
            required(
                            "from",
                            new Reference(Reference.To.PART),
                            "Part where it starts.",
                            "flight computer")
                    .readBy(Key.Question.FAILURES);
    public static final Key<String> GROUND_TO =
            required("to", new Reference(Reference.To.PART), "Part where it ends.", "left.1")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> GROUND_RESISTANCE =
            defaulted(
                            "resistance",
                            Amount.notNegative(Measure.RESISTANCE),
                            "40 mΩ ± 30 mΩ bound",
                            "from memory: a metre of thin signal wire",
                            "Of the line.",
                            "40 mΩ")
                    .readBy(Key.Question.FAILURES);
    public static final Section GROUND =
            Section.of(
                    "ground",
                    "One signal ground: it is a conductor beside the return wires.",
                    GROUND_ID,
                    GROUND_FROM,
                    GROUND_TO,
                    GROUND_RESISTANCE);
    public static final Key<List<Stated<Fields>>> GROUNDS =
            open(
                            "grounds",
                            ListOf.any("ground lines", GROUND),
                            "Signal grounds.",
                            "[{id: signal ground, from: flight computer, to: left.1, resistance: 40"
                                    + " mΩ}]",
                            "signals have none beside the return wires")
                    .readBy(Key.Question.FAILURES);

    public static final Key<Quantity> RESISTOR =
            required("resistance", Amount.positive(Measure.RESISTANCE), "Of its resistor.", "50 Ω");
    public static final Key<Quantity> FOR =
            open(
                    "for",
                    Amount.positive(Measure.TIME),
                    "How long it acts.",
                    "3 s",
                    "it acts until nothing flows");
    public static final Section CHARGING =
            Section.of("resistor path", "A path through a resistor.", RESISTOR, FOR);
    public static final Key<Fields> PRE_CHARGE =
            open(
                    "pre-charge",
                    CHARGING,
                    "How each pack fills the capacitors that it feeds before it is joined to them.",
                    "{resistance: 50 Ω, for: 3 s}",
                    "packs meet empty capacitors");
    public static final Key<Fields> DISCHARGE =
            open(
                            "discharge",
                            CHARGING,
                            "How capacitors are emptied after it opened.",
                            "{resistance: 1 kΩ, for: 10 s}",
                            "they keep their charge")
                    .readBy(Key.Question.FAILURES);

    private KillKeys() {}
}
