package liftwright.answer;

import java.util.Locale;
import liftwright.quantity.Measure;

/** The unit that a number of an answer has in JSON: coherent SI, written in ASCII. */
public final class SiUnit {

    private SiUnit() {}

    /** "1" for plain numbers, shares (0.2 is 20 %) and counts. */
    public static String of(Measure measure) {
        return switch (measure) {
            case THRUST -> "N";
            case MASS -> "kg";
            case LENGTH, SMALL_LENGTH -> "m";
            case AREA -> "m2";
            case TIME -> "s";
            case ROTATION -> "rad/s";
            case SPEED -> "m/s";
            case CURRENT -> "A";
            case VOLTAGE -> "V";
            case POWER -> "W";
            case ENERGY -> "J";
            case CHARGE -> "C";
            case RESISTANCE -> "ohm";
            case CAPACITANCE -> "F";
            case TEMPERATURE, TEMPERATURE_DIFFERENCE -> "K";
            case ANGLE -> "rad";
            case MOMENT -> "N.m";
            case ANGULAR_ACCELERATION -> "rad/s2";
            case INERTIA -> "kg.m2";
            case DENSITY -> "kg/m3";
            case PRESSURE -> "Pa";
            case STIFFNESS -> "N/m";
            case IMPACT_ENERGY -> "J";
            case SOUND_LEVEL -> "dBA";
            case FREQUENCY -> "Hz";
            case FAILURE_RATE -> "1/s";
            case RATIO, PERCENT, COUNT -> "1";
        };
    }

    /** What it measures, in plain words: {@code small length}. */
    static String word(Measure measure) {
        return measure.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
