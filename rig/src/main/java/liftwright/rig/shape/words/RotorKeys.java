package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;

import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Whole;

/** The rotor of a fan type. */
public final class RotorKeys {

    public static final Key<Quantity> TOP_SPEED =
            open(
                    "top speed",
                    Amount.positive(Measure.ROTATION),
                    "Declared maximum.",
                    "30000 rpm",
                    "the rotor's own maximum is not judged");
    public static final Key<Quantity> INERTIA =
            open(
                    "inertia",
                    Amount.positive(Measure.INERTIA),
                    "Of rotor and bell about the shaft.",
                    "120 kg·mm² ± 15 %",
                    "how long thrust lasts after a stop cannot be told");
    public static final Key<Quantity> MASS =
            open(
                            "mass",
                            Amount.positive(Measure.MASS),
                            "Of what turns.",
                            "150 g",
                            "what a burst rotor throws cannot be told")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Integer> BLADES =
            open("blades", new Whole("blades", 1, 60), "Number of blades.", "12", "not said")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> BLADE_MASS =
            open(
                            "blade mass",
                            Amount.positive(Measure.MASS),
                            "Of one blade.",
                            "6 g",
                            "what a lost blade does cannot be told")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> BLADE_CENTRE =
            Key.<Quantity>computed(
                            "blade centre",
                            Amount.positive(Measure.LENGTH),
                            "half way from hub to tip, where `blade mass` stands",
                            "Radius of the centre of mass of a blade.",
                            "48 mm")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> BALANCE =
            later(
                    "balance",
                    Amount.notNegative(Measure.SPEED),
                    "Balance grade: eccentricity times speed (ISO 21940-11).",
                    "2.5 mm/s");
    public static final Section SECTION =
            Section.of(
                    "rotor",
                    "The rotor.",
                    TOP_SPEED,
                    INERTIA,
                    MASS,
                    BLADES,
                    BLADE_MASS,
                    BLADE_CENTRE,
                    BALANCE);

    private RotorKeys() {}
}
