package liftwright.quantity;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The unit in which a measure is shown, and from which size on. A measure has few sizes, so that
 * the numbers of a table can be compared at a glance.
 *
 * @param unit as shown; empty for a plain number
 * @param fromSi smallest magnitude that is shown in it, SI
 */
record DisplayUnit(UnitExpression unit, double fromSi) {

    /** Shown as readers know it; only a text to be read back must say °R. */
    private static final UnitExpression FAHRENHEIT_STEP = UnitExpression.known("°R").named("°F");

    private static final Map<Measure, List<DisplayUnit>> SI = table(UnitSystem.SI);
    private static final Map<Measure, List<DisplayUnit>> US = table(UnitSystem.US);

    /** The unit for a value of this magnitude, SI. */
    static UnitExpression of(Measure measure, UnitSystem system, double magnitudeSi) {
        var sizes = sizes(measure, system);
        if (magnitudeSi == 0) { // nothing is nothing in the unit of the usual size
            return sizes.getLast().unit;
        }
        var chosen = sizes.getFirst();
        for (DisplayUnit larger : sizes) {
            if (Math.abs(magnitudeSi) >= larger.fromSi) {
                chosen = larger;
            }
        }
        return chosen.unit;
    }

    private static List<DisplayUnit> sizes(Measure measure, UnitSystem system) {
        var table =
                switch (system) {
                    case SI -> SI;
                    case US -> US;
                };
        return table.getOrDefault(measure, List.of());
    }

    private static Map<Measure, List<DisplayUnit>> table(UnitSystem system) {
        var map = new EnumMap<Measure, List<DisplayUnit>>(Measure.class);
        for (Measure measure : Measure.values()) {
            map.put(measure, system == UnitSystem.US ? us(measure) : si(measure));
        }
        return map;
    }

    private static List<DisplayUnit> us(Measure measure) {
        return switch (measure) {
            case THRUST -> units("lbf");
            case MASS -> units("lb");
            case LENGTH -> units("ft");
            case SMALL_LENGTH -> units("in");
            case AREA -> units("in²");
            case SPEED -> units("ft/s");
            case TEMPERATURE -> units("°F");
            case TEMPERATURE_DIFFERENCE -> List.of(new DisplayUnit(FAHRENHEIT_STEP, 0));
            case MOMENT -> units("lbf·ft");
            case INERTIA -> units("lbf·ft·s²");
            case DENSITY -> units("lb/ft³");
            case PRESSURE -> List.of(from(0, "psf"), from(10_000, "inHg"));
            case STIFFNESS -> units("lbf/in");
            case IMPACT_ENERGY -> units("lbf·ft");
            case TIME,
                    ROTATION,
                    CURRENT,
                    VOLTAGE,
                    POWER,
                    ENERGY,
                    CHARGE,
                    RESISTANCE,
                    CAPACITANCE,
                    ANGLE,
                    ANGULAR_ACCELERATION,
                    SOUND_LEVEL,
                    FREQUENCY,
                    FAILURE_RATE,
                    RATIO,
                    PERCENT,
                    COUNT ->
                    si(measure);
        };
    }

    private static List<DisplayUnit> si(Measure measure) {
        return switch (measure) {
            case THRUST -> units("N");
            case MASS -> units("kg");
            case LENGTH -> units("m");
            case SMALL_LENGTH -> units("mm");
            case AREA -> units("cm²");
            case TIME -> List.of(from(0, "ms"), from(0.1, "s"));
            case ROTATION -> units("rpm");
            case SPEED -> units("m/s");
            case CURRENT -> units("A");
            case VOLTAGE -> units("V");
            case POWER -> List.of(from(0, "W"), from(1000, "kW"));
            case ENERGY -> units("Wh");
            case CHARGE -> units("Ah");
            case RESISTANCE -> List.of(from(0, "mΩ"), from(1, "Ω"));
            case CAPACITANCE -> units("µF");
            case TEMPERATURE -> units("°C");
            case TEMPERATURE_DIFFERENCE -> units("K");
            case ANGLE -> units("°");
            case MOMENT -> units("N·m");
            case ANGULAR_ACCELERATION -> units("°/s²");
            case INERTIA -> units("kg·m²");
            case DENSITY -> units("kg/m³");
            case PRESSURE -> List.of(from(0, "Pa"), from(10_000, "hPa"));
            case STIFFNESS -> List.of(from(0, "N/m"), from(1000, "kN/m"));
            case IMPACT_ENERGY -> units("J");
            case SOUND_LEVEL -> units("dBA");
            case FREQUENCY -> units("Hz");
            case FAILURE_RATE -> units("1/h");
            case PERCENT -> units("%");
            case RATIO, COUNT -> List.of(new DisplayUnit(UnitExpression.ONE, 0));
        };
    }

    private static List<DisplayUnit> units(String text) {
        return List.of(from(0, text));
    }

    private static DisplayUnit from(double fromSi, String text) {
        return new DisplayUnit(UnitExpression.known(text), fromSi);
    }
}
