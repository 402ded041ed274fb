package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.later;

import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Whole;

/** The section {@code restraint}: what holds the rig during tests. */
public final class RestraintKeys {

    public static final Key<Quantity> HEIGHT =
            later(
                    "height",
                    Amount.positive(Measure.HEIGHT),
                    "Of the thrust plane above the ground.",
                    "1.2 m");
    public static final Key<Quantity> MASS =
            later("mass", Amount.positive(Measure.MASS), "Of stand and ballast.", "80 kg");
    public static final Key<Quantity> FEET =
            later("feet apart", Amount.positive(Measure.HEIGHT), "Distance of its feet.", "1.2 m");
    public static final Key<Quantity> BOLT =
            later("bolt strength", Amount.positive(Measure.FORCE), "What one bolt holds.", "8 kN");
    public static final Key<Integer> BOLTS =
            later("bolts", new Whole("bolts", 1, 100), "Number of bolts to the ground.", "4");
    public static final Section STAND_SECTION =
            Section.of("stand", "A stand or bench.", HEIGHT, MASS, FEET, BOLT, BOLTS);
    public static final Key<Fields> STAND =
            later(
                    "stand",
                    STAND_SECTION,
                    "A stand.",
                    "{height: 1.2 m, mass: 80 kg, feet apart: 1.2 m}");

    public static final Key<Quantity> ANCHOR_HEIGHT =
            later(
                    "anchor height",
                    Amount.positive(Measure.HEIGHT),
                    "Of the anchor above the ground.",
                    "4 m");
    public static final Key<Quantity> ANCHOR_STRENGTH =
            later(
                    "anchor strength",
                    Amount.positive(Measure.FORCE),
                    "What the anchor holds.",
                    "22.2 kN");
    public static final Key<Quantity> LINE =
            later("length", Amount.positive(Measure.HEIGHT), "Of the line.", "2.5 m");
    public static final Key<Quantity> STIFFNESS =
            later("stiffness", Amount.positive(Measure.STIFFNESS), "Of the line.", "20 kN/m");
    public static final Key<Quantity> DAMPING =
            later("damping", Amount.notNegative(Measure.DAMPING), "Of the line.", "500 N·s/m");
    public static final Key<Integer> DOWN_LINES =
            later(
                    "down-lines",
                    new Whole("lines to the ground", 0, 20),
                    "Lines that stop a climb.",
                    "3");
    public static final Key<Quantity> DOWN_LENGTH =
            later("down-line length", Amount.positive(Measure.HEIGHT), "Their length.", "1 m");
    public static final Section TETHER_SECTION =
            Section.of(
                    "tether",
                    "Lines that hold the rig.",
                    ANCHOR_HEIGHT,
                    ANCHOR_STRENGTH,
                    LINE,
                    STIFFNESS,
                    DAMPING,
                    DOWN_LINES,
                    DOWN_LENGTH);
    public static final Key<Fields> TETHER =
            later("tether", TETHER_SECTION, "A tether.", "{anchor height: 4 m, length: 2.5 m}");
    public static final Key<Quantity> MATS =
            later(
                    "mats",
                    Amount.notNegative(Measure.LENGTH),
                    "Thickness of mats on the ground.",
                    "300 mm");
    public static final Section SECTION =
            Section.of("restraint", "What holds the rig during tests.", STAND, TETHER, MATS);

    private RestraintKeys() {}
}
