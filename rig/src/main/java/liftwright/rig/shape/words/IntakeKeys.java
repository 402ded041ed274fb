package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.required;

import liftwright.quantity.Quantity;
import liftwright.rig.Intake;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;

/** What stands before the intake of a fan. */
public final class IntakeKeys {

    public static final Key<Intake.Screen> SCREEN =
            defaulted(
                    "screen",
                    Word.of(Intake.Screen.values(), ' '),
                    "perforated plate",
                    "physics of sharp thin edges (Idelchik): the costlier one",
                    "Kind of the grille.",
                    "wire");
    public static final Key<Quantity> FREE_AREA =
            required(
                    "free area",
                    Amount.of(Measure.SHARE, Range.upTo(1)),
                    "Open share of the grille's face.",
                    "88 %");
    public static final Key<Quantity> FACE =
            required(
                    "face", Amount.positive(Measure.AREA), "Area of the grille's face.", "210 cm²");
    public static final Key<Integer> SHARED_BY =
            defaulted(
                    "shared by",
                    new Whole("how many fans breathe through this face", 1, 500),
                    "1",
                    "every fan has a face of its own",
                    "Fans behind this face; their exit areas are summed.",
                    "4");
    public static final Key<Quantity> LOSS =
            later(
                    "loss",
                    Amount.notNegative(Measure.RATIO),
                    "Measured loss of total pressure over the dynamic pressure of the exit.",
                    "0.15 ± 0.03");
    public static final Key<Quantity> OPENING =
            later(
                    "opening",
                    Amount.positive(Measure.LENGTH),
                    "Widest opening that a finger meets.",
                    "8 mm");
    public static final Key<Quantity> DISTANCE =
            later(
                    "distance",
                    Amount.notNegative(Measure.LENGTH),
                    "From the grille to the blades.",
                    "30 mm");
    public static final Section SECTION =
            Section.of(
                    "intake",
                    "What stands before the intake.",
                    SCREEN,
                    FREE_AREA,
                    FACE,
                    SHARED_BY,
                    LOSS,
                    OPENING,
                    DISTANCE);

    private IntakeKeys() {}
}
