package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** What is made of the wiring, what protects it, and what is looked at. */
final class WiringFields {

    private static final String LIST = "SolderingListTest.everyElementStandsOnceWithWhatItCarries";
    private static final String INSPECTION = "InspectionListTest.theLeastMarginComesFirst";
    private static final String FUSES =
            "FuseChoiceTest.sizesThatHoldAndProtectAreThoseOfTheReferee";
    private static final String FILE = "the rig file";
    private static final String OHM = "Ohm's law";

    static final List<Field> ROWS =
            List.of(
                    new Field(
                            "step",
                            "step",
                            Measure.COUNT,
                            "Place in the order of assembly, from the fans to the packs.",
                            "counted",
                            FILE,
                            LIST),
                    new Field(
                            "wiring-kind",
                            "what",
                            Measure.COUNT,
                            "What an element of the wiring is.",
                            "as declared",
                            FILE,
                            LIST),
                    new Field(
                            "wiring-between",
                            "between",
                            Measure.COUNT,
                            "The nodes that its chain joins, the one nearer to the fans first.",
                            "as declared",
                            FILE,
                            LIST),
                    new Field(
                            "wire-gauge",
                            "gauge",
                            Measure.COUNT,
                            "American wire gauge of one piece.",
                            "as declared",
                            FILE,
                            LIST),
                    new Field(
                            "wire-pieces",
                            "pieces",
                            Measure.COUNT,
                            "Pieces of wire that a run is cut in.",
                            "out and back, for each conductor",
                            FILE,
                            LIST),
                    new Field(
                            "cut-length",
                            "cut to",
                            Measure.LENGTH,
                            "Length of one piece as it is cut.",
                            "length one way, 5 % for bends and slack, 15 mm at each end to strip",
                            "common practice",
                            LIST),
                    new Field(
                            "insulation",
                            "insulation",
                            Measure.COUNT,
                            "Material around the copper.",
                            "as declared",
                            FILE,
                            LIST),
                    new Field(
                            "insulation-class",
                            "class",
                            Measure.TEMPERATURE,
                            "Temperature that the insulation bears for years.",
                            "as declared, or of its material in the parts book; PVC of the lowest"
                                    + " grade where nothing is declared",
                            "lists of the trade, which differ by 20 K",
                            LIST),
                    new Field(
                            "torque",
                            "torque",
                            Measure.MOMENT,
                            "Tightening of a screw where the maker says nothing.",
                            "by thread of the lug",
                            "from memory; the maker's value goes before it",
                            "SolderingListTest.lugsAreTightenedAndCrimpsArePulled"),
                    new Field(
                            "pull-test",
                            "pull test",
                            Measure.THRUST,
                            "Force that a crimped test piece of the same wire must hold.",
                            "by gauge",
                            "UL 486A, from memory; the maker's value goes before it",
                            "SolderingListTest.lugsAreTightenedAndCrimpsArePulled"),
                    new Field(
                            "making",
                            "how",
                            Measure.COUNT,
                            "How it is made.",
                            "by kind",
                            "common practice",
                            LIST),
                    new Field(
                            "done",
                            "done",
                            Measure.COUNT,
                            "A box to tick on paper.",
                            "empty",
                            "the reader",
                            LIST),
                    new Field(
                            "current-expected",
                            "expected",
                            Measure.CURRENT,
                            "Greatest current through a part in the hover that is asked for.",
                            "run on the packs from the declared charge",
                            "Kirchhoff's laws",
                            "LoadsTest.hoverAndFullThrottleOfAnExample"),
                    new Field(
                            "current-worst",
                            "worst",
                            Measure.CURRENT,
                            "Greatest current through a part: hover, or full throttle on full packs"
                                    + " or at the charge that lift is judged at.",
                            "the greatest of the three",
                            "Kirchhoff's laws",
                            "LoadsTest.hoverAndFullThrottleOfAnExample"),
                    new Field(
                            "part-rating",
                            "rating",
                            Measure.CURRENT,
                            "Continuous current that a part is sold for.",
                            "as declared, or the parts book",
                            FILE,
                            LIST),
                    new Field(
                            "voltage-drop",
                            "drop",
                            Measure.VOLTAGE,
                            "Voltage over a part, out and back, at its expected current.",
                            "resistance times current; wires warm",
                            OHM,
                            LIST),
                    new Field(
                            "part-hottest",
                            "hottest",
                            Measure.TEMPERATURE,
                            "The most that a part warms to in the run and after it.",
                            "the heated run",
                            "heat balance",
                            LIST),
                    new Field(
                            "part-temperature-limit",
                            "limit",
                            Measure.TEMPERATURE,
                            "What a part's temperature is held against.",
                            "limits of the rig file, or their defaults",
                            FILE,
                            LIST),
                    new Field(
                            "inspection-margin",
                            "margin",
                            Measure.PERCENT,
                            "What the worst current leaves of the rating in force, or the hottest"
                                    + " moment of the way from 20 °C to the limit, whichever is less.",
                            "1 less current over rating and share; (limit less hottest) over (limit"
                                    + " less 20 °C)",
                            "definition",
                            INSPECTION),
                    new Field(
                            "drop-new",
                            "drop when new",
                            Measure.VOLTAGE,
                            "Voltage over a part without damage, out and back, at its expected"
                                    + " current.",
                            "resistance as new times current; wires warm",
                            OHM,
                            INSPECTION),
                    new Field(
                            "drop-watch",
                            "watch from",
                            Measure.VOLTAGE,
                            "Drop at the expected current from which a part is looked at closely.",
                            "1.2 times the drop when new",
                            "common practice",
                            INSPECTION),
                    new Field(
                            "drop-replace",
                            "replace from",
                            Measure.VOLTAGE,
                            "Drop at the expected current from which a part is made anew.",
                            "1.5 times the drop when new",
                            "common practice",
                            INSPECTION),
                    new Field(
                            "look-for",
                            "look and feel for",
                            Measure.COUNT,
                            "What tells that a part ages.",
                            "by kind",
                            "common practice",
                            INSPECTION),
                    new Field(
                            "unprotected-length",
                            "wire before the fuse",
                            Measure.LENGTH,
                            "Length of wire, one way, between a pack and the first fuse.",
                            "sum of the runs before it",
                            FILE,
                            "UnfusedTest.aFuseFarFromItsPackIsNoted"),
                    new Field(
                            "inrush-current",
                            "inrush",
                            Measure.CURRENT,
                            "Highest current when a full pack meets empty capacitors.",
                            "V sqrt(C/L) exp(-(a/w) atan(w/a)), a = R/2L, w^2 = 1/LC - a^2",
                            "circuit theory; 0.6 µH for each metre of run: common practice",
                            "FastEffectsTest.inrushAgainstARunInTime"),
                    new Field(
                            "pre-charge-power",
                            "resistor at first",
                            Measure.POWER,
                            "Power of the pre-charge resistor when a full pack meets empty"
                                    + " capacitors.",
                            "V^2 / R",
                            OHM,
                            "CapacitorsTest.aResistorBearsWhatTheCapacitorsStore"),
                    new Field(
                            "pre-charge-left",
                            "voltage left",
                            Measure.PERCENT,
                            "Share of the voltage that stands across a contact as it closes.",
                            "exp(-t / RC)",
                            "circuit theory",
                            "CapacitorsTest.aShortPreChargeWarns"),
                    new Field(
                            "bus-voltage",
                            "voltage of the bus",
                            Measure.VOLTAGE,
                            "Most that braking fans lift the bus to while full packs take the power"
                                    + " up.",
                            "(E + sqrt(E^2 + 4 R P)) / 2, P of every braking fan at its current"
                                    + " limit",
                            "energy balance",
                            "BusBrakingTest.aRunInTimeNeverExceedsTheBound"),
                    new Field(
                            "fuse-state",
                            "comes to",
                            Measure.PERCENT,
                            "How far the element of a fuse comes towards opening in the task, by"
                                    + " the earliest that its standard or its declared doubt allows; it"
                                    + " opens at 100 %.",
                            "d theta/dt = (g(I) - theta)/tau, g = 1/(1 - exp(-t(I)/tau)), from"
                                    + " cold",
                            "time-current points of ISO 8820-3 and IEC 60127-2, heat carried over",
                            FUSES),
                    new Field(
                            "fuse-holds",
                            "holds",
                            Measure.COUNT,
                            "Whether a fuse holds in every hover and in the burst after it.",
                            "state below 100 %",
                            "time-current points of its form",
                            FUSES),
                    new Field(
                            "fuse-protects",
                            "protects",
                            Measure.COUNT,
                            "Whether a fuse opens before a wire behind it is harmed, whatever the"
                                    + " fault draws.",
                            "currents from the wire's steady limit to the prospective one; harm is"
                                    + " the short-circuit temperature, or over 5 s above the steady"
                                    + " limit",
                            "IEC 60949; latest times of the fuse's standard or declared doubt",
                            FUSES),
                    new Field(
                            "fuse-choice",
                            "what does both",
                            Measure.COUNT,
                            "Standard sizes that hold and protect, or what would make one do so.",
                            "each size of its form tried",
                            "ISO 8820-3, ISO 8820-5, IEC 60127-2, ISO 3",
                            FUSES));

    private WiringFields() {}
}
