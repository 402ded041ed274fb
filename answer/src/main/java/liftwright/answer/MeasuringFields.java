package liftwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import liftwright.quantity.Measure;

/** What stands on cards for measuring. */
final class MeasuringFields {

    private static final String DRAWN = "JCGM 101:2008";
    private static final String LAW = "JCGM 100:2008, 5.1.2";
    private static final String PRACTICE = "common practice";
    private static final String CARDS = "MeasuringTest.everyCardIsWhole";
    private static final String BANDS = "ReadingBandsTest.bandsHoldReadingsOfAnotherSampler";
    private static final String STATICS = "MassAndCentreTest.scalesReadWhatStaticsGives";
    private static final String CENTRE_WORTH =
            "MassAndCentreTest.theCentreIsWorthWhatRepeatedWeighingsShow";
    private static final String SWINGS = "SwingsTest.timesAreThoseOfABodyTurnedByTwoCords";
    private static final String SWING_WORTH = "SwingsTest.theInertiaIsWorthWhatRepeatedTimingsShow";
    private static final String PULSES = "PulseTest.agreesWithAnIntegrator";
    private static final String MODES = "TipModesTest.agreesWithStiffnessAndAnotherSolver";
    private static final String LAG = "SpoolTest.agreesWithAnIntegrator";
    private static final String SMALL_LAG = "SpoolTest.smallChangesDieAsTheConstantSays";
    private static final String PIECES = "ProofSpinTest.piecesAndVoltageAreThoseByHand";

    static final List<Field> ROWS = rows();

    private MeasuringFields() {}

    private static List<Field> rows() {
        List<Field> rows = new ArrayList<>();
        words(rows);
        for (Measure measure :
                List.of(
                        Measure.MASS,
                        Measure.LENGTH,
                        Measure.TIME,
                        Measure.VOLTAGE,
                        Measure.CURRENT,
                        Measure.RESISTANCE,
                        Measure.THRUST,
                        Measure.ROTATION,
                        Measure.FREQUENCY,
                        Measure.PERCENT)) {
            ofMeasure(rows, measure);
        }
        body(rows);
        cells(rows);
        fans(rows);
        return List.copyOf(rows);
    }

    private static void words(List<Field> rows) {
        word(rows, "measuring-what", "what", "What is read, of what part or at what step.");
        word(rows, "measuring-reading", "should read", "What an instrument should show.");
        word(rows, "measuring-instrument", "instrument", "What it is read or laid out with.");
        word(rows, "measuring-error", "error ±", "95 % of the instrument's errors are smaller.");
        rows.add(
                field(
                        "measuring-error-share",
                        "error ± of reading",
                        Measure.PERCENT,
                        "Share of the reading that 95 % of the errors stay below, beside the other.",
                        "both in quadrature",
                        PRACTICE,
                        CARDS));
        word(rows, "measuring-origin", "by", "Where the error of an instrument comes from.");
        word(
                rows,
                "mode-standing",
                "standing",
                "How the band of a mode lies to the turns of hover.");
    }

    private static void word(List<Field> rows, String id, String label, String meaning) {
        rows.add(field(id, label, Measure.COUNT, meaning, "in words", "the card", CARDS));
    }

    /** Of a reading, and of the error of what reads it. */
    private static void ofMeasure(List<Field> rows, Measure measure) {
        String word = measure.name().toLowerCase(Locale.ROOT).replace('_', '-');
        String plain =
                switch (measure) {
                    case PERCENT -> "throttle";
                    case ROTATION -> "speed";
                    case FREQUENCY, MASS, LENGTH, TIME, VOLTAGE, CURRENT, RESISTANCE, THRUST ->
                            word;
                    default -> throw new IllegalArgumentException("nothing reads " + measure);
                };
        rows.add(
                field(
                        "reading-" + word,
                        plain,
                        measure,
                        "What an instrument should show on a card for measuring; 95 % of readings lie"
                                + " in its band.",
                        "law of the card at draws of rig, set-up, instrument and what the law leaves"
                                + " out",
                        DRAWN,
                        BANDS));
        rows.add(
                field(
                        "error-" + word,
                        "error ±",
                        measure,
                        "95 % of an instrument's errors are smaller.",
                        "as stated",
                        PRACTICE,
                        CARDS));
    }

    private static void body(List<Field> rows) {
        rows.add(
                field(
                        "support-first",
                        "first support",
                        Measure.LENGTH,
                        "Place of the first support along the axis, from the origin of the body.",
                        "outside all parts, to 50 mm",
                        PRACTICE,
                        STATICS));
        rows.add(
                field(
                        "support-second",
                        "second support",
                        Measure.LENGTH,
                        "Place of the second support along the axis, from the origin of the body.",
                        "outside all parts, to 50 mm",
                        PRACTICE,
                        STATICS));
        rows.add(
                field(
                        "centre-along",
                        "centre",
                        Measure.LENGTH,
                        "Place of the centre of mass along the axis.",
                        "first + (second - first) × second reading / both",
                        "statics",
                        STATICS));
        rows.add(
                field(
                        "centre-worth",
                        "found to ±",
                        Measure.SMALL_LENGTH,
                        "Doubt (95 %) of a centre found from these two scales.",
                        "errors of both scales and both supports through the formula",
                        LAW,
                        CENTRE_WORTH));
        rows.add(
                field(
                        "inertia-expected",
                        "inertia",
                        Measure.INERTIA,
                        "Moment of inertia about the axis through the centre of mass.",
                        "parts as points, disks and boxes, parallel axes",
                        "mechanics",
                        SWINGS));
        rows.add(
                field(
                        "cords-long",
                        "cords",
                        Measure.LENGTH,
                        "Length of both cords.",
                        "chosen",
                        PRACTICE,
                        SWINGS));
        rows.add(
                field(
                        "cords-apart",
                        "apart",
                        Measure.LENGTH,
                        "Distance of the two cords.",
                        "twice the radius of gyration, to 50 mm",
                        PRACTICE,
                        SWINGS));
        rows.add(
                field(
                        "inertia-worth",
                        "found to ±",
                        Measure.PERCENT,
                        "Doubt (95 %) of an inertia found from this swing, over the inertia.",
                        "√((2 u_T/T)² + (2 u_D/D)² + (u_L/L)² + (u_m/m)²)",
                        LAW,
                        SWING_WORTH));
        rows.add(
                field(
                        "inertia-a-second",
                        "for 1 s",
                        Measure.INERTIA,
                        "Inertia for a time of one second of all swings; it goes with its square.",
                        "m g D²/(16 π² L n²)",
                        "bifilar suspension",
                        SWINGS));
    }

    private static void cells(List<Field> rows) {
        rows.add(
                field(
                        "pulse-current",
                        "current",
                        Measure.CURRENT,
                        "Current of the pulse, of the whole pack.",
                        "five times the capacity an hour, at most what the cells give for long",
                        PRACTICE,
                        PULSES));
        rows.add(
                field(
                        "pulse-time",
                        "length",
                        Measure.TIME,
                        "Length of the pulse.",
                        "chosen",
                        PRACTICE,
                        PULSES));
        rows.add(
                field(
                        "pulse-sag",
                        "sag",
                        Measure.VOLTAGE,
                        "How far the pack falls from rest to the end of the pulse.",
                        "rest voltage less voltage under current",
                        "equivalent circuit",
                        PULSES));
        rows.add(
                field(
                        "pulse-charge",
                        "at charge",
                        Measure.PERCENT,
                        "Charge that the pulse starts from.",
                        "as declared",
                        "the rig file",
                        PULSES));
        rows.add(
                field(
                        "pulse-retire",
                        "retire at",
                        Measure.RESISTANCE,
                        "Resistance of a cell at 25 °C at which it is retired.",
                        "1.5 times that of a new one",
                        PRACTICE,
                        PULSES));
    }

    private static void fans(List<Field> rows) {
        rows.add(
                field(
                        "mode-free-below",
                        "clear below",
                        Measure.FREQUENCY,
                        "A first mode up to here stays below what the fans shake at.",
                        "0.8 times the slowest turn about hover",
                        PRACTICE,
                        MODES));
        rows.add(
                field(
                        "mode-free-above",
                        "clear above",
                        Measure.FREQUENCY,
                        "A first mode from here on stays above what the fans shake at.",
                        "1.2 times the fastest turn about hover",
                        PRACTICE,
                        MODES));
        rows.add(
                field(
                        "lag-speed",
                        "speed",
                        Measure.ROTATION,
                        "Speed about which the time constant holds.",
                        "fan on its pack at that throttle",
                        "first-order motor",
                        LAG));
        rows.add(
                field(
                        "lag-constant",
                        "time constant",
                        Measure.TIME,
                        "Time in which a small change of speed comes to 63 %.",
                        "J / (1/(K_v² R) + 2 κ Ω), the pack's resistance in R",
                        "first-order motor",
                        SMALL_LAG));
        rows.add(
                field(
                        "lag-sampling",
                        "sample at",
                        Measure.FREQUENCY,
                        "Least rate of the log.",
                        "10 / time constant",
                        PRACTICE,
                        SMALL_LAG));
        rows.add(
                field(
                        "lag-stand",
                        "stand rings above",
                        Measure.FREQUENCY,
                        "Lowest frequency at which the stand may ring by itself.",
                        "5 / (2 π time constant)",
                        PRACTICE,
                        SMALL_LAG));
        rows.add(
                field(
                        "piece-pull",
                        "pull",
                        Measure.THRUST,
                        "Pull that held the piece, and that the mount feels once it is gone.",
                        "m r Ω²",
                        "mechanics",
                        PIECES));
    }

    private static Field field(
            String id,
            String label,
            Measure measure,
            String meaning,
            String formula,
            String source,
            String test) {
        return new Field(id, label, measure, meaning, formula, source, test);
    }
}
