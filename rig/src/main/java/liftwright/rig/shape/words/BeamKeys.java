package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Word;

/** The beam that holds a mount out from what it is on, and gives under thrust. */
public final class BeamKeys {

    public static final Key<String> RUNS =
            required(
                            "runs",
                            Word.of(
                                    "outboard",
                                    "inboard",
                                    "forward",
                                    "back",
                                    "right",
                                    "left",
                                    "up",
                                    "down"),
                            "Which way it runs from where it is clamped to the mount.",
                            "right")
                    .readBy(Key.Question.BALANCE);
    public static final Key<Quantity> LENGTH =
            required(
                            "length",
                            Amount.positive(Measure.LENGTH),
                            "From the clamp to the mount's origin.",
                            "350 mm")
                    .readBy(Key.Question.BALANCE);
    public static final Key<Quantity> OUTSIDE =
            ofTube("outside", Measure.LENGTH, "Outside diameter of a round tube.", "30 mm");
    public static final Key<Quantity> WALL =
            ofTube("wall", Measure.LENGTH, "Thickness of its wall.", "1.5 mm");
    public static final Key<Quantity> MODULUS =
            ofTube("modulus", Measure.MODULUS, "Its modulus of elasticity.", "69 GPa ± 2 %");
    public static final Key<Quantity> SHEAR_MODULUS =
            ofTube("shear modulus", Measure.MODULUS, "Its shear modulus.", "26 GPa ± 2 %");
    public static final Key<Quantity> BENDING =
            measured(
                    "bending rigidity",
                    "E I: force × length² ÷ (2 × slope at the end).",
                    "900 N·m² ± 10 %");
    public static final Key<Quantity> TORSION =
            measured(
                    "torsion rigidity",
                    "G J: torque × length ÷ twist of the end.",
                    "700 N·m² ± 10 %");

    public static final Section SECTION =
            Section.of(
                            "beam",
                            "What holds the mount out; clamped at its root, the same section all along.",
                            RUNS,
                            LENGTH,
                            OUTSIDE,
                            WALL,
                            MODULUS,
                            SHEAR_MODULUS,
                            BENDING,
                            TORSION)
                    .with(
                            Rule.atLeastOne(OUTSIDE, BENDING),
                            Rule.atMostOne(OUTSIDE, BENDING),
                            Rule.needs(OUTSIDE, WALL, MODULUS, SHEAR_MODULUS),
                            Rule.onlyWith(WALL, OUTSIDE),
                            Rule.onlyWith(MODULUS, OUTSIDE),
                            Rule.onlyWith(SHEAR_MODULUS, OUTSIDE),
                            Rule.needs(BENDING, TORSION),
                            Rule.onlyWith(TORSION, BENDING));
    public static final Key<Fields> BEAM =
            open(
                            "beam",
                            SECTION,
                            "What holds the mount out and gives under thrust.",
                            "{runs: outboard, length: 350 mm, outside: 30 mm, wall: 1.5 mm, modulus: 69 GPa, shear modulus: 26 GPa}",
                            "the mount does not give")
                    .readBy(Key.Question.BALANCE);

    private static Key<Quantity> ofTube(
            String name, Measure measure, String meaning, String example) {
        return open(name, Amount.positive(measure), meaning, example, "it is no round tube")
                .readBy(Key.Question.BALANCE);
    }

    private static Key<Quantity> measured(String name, String meaning, String example) {
        return open(
                        name,
                        Amount.positive(Measure.RIGIDITY),
                        meaning,
                        example,
                        "it follows from the tube")
                .readBy(Key.Question.BALANCE);
    }

    private BeamKeys() {}
}
