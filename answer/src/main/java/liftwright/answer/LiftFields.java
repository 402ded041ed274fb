package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** What is lifted, by what, and where the rest went. */
final class LiftFields {

    private static final String RESOLVE =
            "thrust with this effect added, solved anew, less the thrust before";
    private static final String TEST = "AnswersOfExamplesTest.theWaterfallAddsUp";

    static final List<Field> ROWS =
            List.of(
                    new Field(
                            "lift-usable",
                            "usable lift",
                            Measure.THRUST,
                            "Upward force of all fans at full throttle as installed, at the judged state.",
                            "sum over fans of installed thrust times the upward part of its direction",
                            "the laws of this table, solved together",
                            "PlantAgainstRefereeTest.withAllEffects"),
                    new Field(
                            "weight",
                            "weight",
                            Measure.THRUST,
                            "Weight of the rig and, if worn, of its wearer.",
                            "sum of masses times 9.80665 m/s²",
                            "standard gravity, 3rd CGPM 1901; the dependence on place is below 0.3 %",
                            "PlantAgainstRefereeTest.withAllEffects"),
                    new Field(
                            "mass",
                            "mass",
                            Measure.MASS,
                            "Mass of what is named, as declared or added up.",
                            "sum of declared masses",
                            "the rig file",
                            TEST),
                    new Field(
                            "thrust-to-weight",
                            "lift over weight",
                            Measure.RATIO,
                            "Usable lift over weight: 1 hovers with nothing left.",
                            "usable lift / weight, on the same draw",
                            "definition",
                            "AnswersOfExamplesTest.theVerdictIsAboutTheLastBarsOfTheWaterfall"),
                    new Field(
                            "thrust-to-weight-demand",
                            "asked lift over weight",
                            Measure.RATIO,
                            "What the rig file, or a default, asks of lift over weight.",
                            "demands/thrust to weight",
                            "declared; the default is common practice",
                            "AnswersOfExamplesTest.theVerdictIsAboutTheLastBarsOfTheWaterfall"),
                    new Field(
                            "thrust-to-weight-gain",
                            "gain in lift over weight",
                            Measure.RATIO,
                            "Lift over weight with a change less that without it.",
                            "difference on the same draws",
                            "definition",
                            "AnswersOfExamplesTest.aRemedysGainIsWhatItAddsToTheRatio"),
                    new Field(
                            "thrust-rated",
                            "rated thrust",
                            Measure.THRUST,
                            "Thrust of all fans at their declared point, in standard air, uninstalled.",
                            "sum over fans of kT times speed squared",
                            "similarity of fans at constant geometry",
                            TEST),
                    new Field(
                            "step-density",
                            "air of the site",
                            Measure.THRUST,
                            "What the site's air takes from, or adds to, the rated thrust.",
                            RESOLVE,
                            "ISO 2533; humidity after Buck 1981",
                            "FanUnitTest.thrustFallsWithThinAirOnlyThroughTheLoad"),
                    new Field(
                            "step-charge",
                            "charge judged at",
                            Measure.THRUST,
                            "What the packs' rest voltage at the judged charge takes.",
                            RESOLVE,
                            "open-circuit table of the cell",
                            TEST),
                    new Field(
                            "step-supply-sag",
                            "supply sag",
                            Measure.THRUST,
                            "What resistance of cells, wires, joints and fuses takes under full load.",
                            RESOLVE,
                            "Kirchhoff's laws",
                            TEST),
                    new Field(
                            "step-group-share",
                            "throttle shares",
                            Measure.THRUST,
                            "What groups that run below full throttle take.",
                            RESOLVE,
                            "control/groups of the rig file",
                            TEST),
                    new Field(
                            "step-intake",
                            "intake and grille",
                            Measure.THRUST,
                            "What the pressure loss of grille and intake takes at equal shaft power.",
                            RESOLVE,
                            "Idelchik, Handbook of Hydraulic Resistance: thin grille",
                            TEST),
                    new Field(
                            "step-lean",
                            "cant",
                            Measure.THRUST,
                            "What is lost because fans do not blow straight down.",
                            RESOLVE,
                            "geometry",
                            "AnswersOfExamplesTest.noFanLiftsMoreThanItsThrust"),
                    new Field(
                            "step-installation",
                            "installation",
                            Measure.THRUST,
                            "What neighbours, body and frame take, as one declared factor.",
                            RESOLVE,
                            "declared; the default is common practice",
                            "FanLawTest.installedThrust"));

    private LiftFields() {}
}
