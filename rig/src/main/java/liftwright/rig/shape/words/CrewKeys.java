package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.open;

import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Text;

/** The section {@code crew}: people around the rig. */
public final class CrewKeys {

    public static final Key<Quantity> REACTION =
            open(
                            "reaction",
                            Amount.positive(Measure.TIME),
                            "From a surprise to the press of a switch.",
                            "1.5 s",
                            "the limit `watcher reaction`")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> DISTANCE =
            open(
                            "distance",
                            Amount.positive(Measure.HEIGHT),
                            "From the rig.",
                            "6 m",
                            "what reaches this person cannot be told")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<String> ROLE =
            open(
                            "role",
                            new Text("what the person does"),
                            "What the person does.",
                            "holds the remote kill",
                            "not said")
                    .readBy(Key.Question.FAILURES);
    public static final Section SECTION =
            Section.of("crew member", "One person of the crew.", REACTION, DISTANCE, ROLE);

    private CrewKeys() {}
}
