package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import liftwright.quantity.Quantity;
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

/** What makes the rig dead, and what lies beside the power wiring. */
public final class KillKeys {

    public static final Key<String> KILL_ID =
            later("id", new Ident(), "Name of the kill switch.", "remote");
    public static final Key<List<Stated<String>>> OPENS =
            later(
                    "opens",
                    new ListOf<>("contactors", new Reference(Reference.To.CONTACTOR), 1, 100),
                    "Contactors that it opens.",
                    "[main]");
    public static final Key<String> BY =
            later(
                    "by",
                    Word.of("wire", "radio", "lanyard", "button", "software"),
                    "How it acts.",
                    "radio");
    public static final Key<String> HELD_BY =
            later("held by", new Reference(Reference.To.PERSON), "Who holds it.", "watcher");
    public static final Key<Quantity> REACTION =
            later(
                    "reaction",
                    Amount.notNegative(Measure.TIME),
                    "Reaction of that person.",
                    "1.5 s");
    public static final Key<Quantity> DELAY =
            later(
                    "delay",
                    Amount.notNegative(Measure.TIME),
                    "From the press to the contactor.",
                    "30 ms");
    public static final Key<String> ORDER =
            later(
                    "order",
                    Word.of("open at once", "command zero then open", "command zero only"),
                    "What happens first.",
                    "command zero then open");
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
                    ORDER);
    public static final Key<List<Stated<Fields>>> KILLS =
            later(
                    "kills",
                    ListOf.any("kill switches", KILL),
                    "Kill switches.",
                    "[{id: remote, opens: [main], by: radio, held by: watcher}]");

    public static final Key<String> GROUND_ID =
            later("id", new Ident(), "Name of the ground line.", "signal ground");
    public static final Key<String> GROUND_FROM =
            later("from", new Reference(Reference.To.PART), "Where it starts.", "flight computer");
    public static final Key<String> GROUND_TO =
            later("to", new Reference(Reference.To.PART), "Where it ends.", "left.1");
    public static final Key<Quantity> GROUND_RESISTANCE =
            later("resistance", Amount.notNegative(Measure.RESISTANCE), "Of the line.", "40 mΩ");
    public static final Section GROUND =
            Section.of(
                    "ground",
                    "One signal ground: it is a conductor beside the return wires.",
                    GROUND_ID,
                    GROUND_FROM,
                    GROUND_TO,
                    GROUND_RESISTANCE);
    public static final Key<List<Stated<Fields>>> GROUNDS =
            later(
                    "grounds",
                    ListOf.any("ground lines", GROUND),
                    "Signal grounds.",
                    "[{id: signal ground, from: flight computer, to: left.1, resistance: 40 mΩ}]");

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
            later(
                    "discharge",
                    CHARGING,
                    "How capacitors are emptied after it opened.",
                    "{resistance: 1 kΩ, for: 10 s}");

    private KillKeys() {}
}
