package liftwright.quantity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A dimension in words, and the units that it is usually written in.
 *
 * @param words with its article, such as "a force"
 * @param units first the coherent or most usual SI unit, then others; each is read by the parser
 */
record DimensionName(String words, List<String> units) {

    private static final Map<Dimension, DimensionName> NAMES = names();

    /** The name of {@code dimension}; one without a name is described by its coherent SI unit. */
    static DimensionName of(Dimension dimension) {
        var name = NAMES.get(dimension);
        if (name != null) {
            return name;
        }
        String unit = CoherentUnit.of(dimension);
        return new DimensionName("something in " + unit, List.of(unit));
    }

    /** The dimensions that have a name, and the names. */
    static Map<Dimension, DimensionName> all() {
        return NAMES;
    }

    /** "N, kN or lbf". */
    String unitsInWords() {
        int n = units.size();
        return n == 1
                ? units.getFirst()
                : String.join(", ", units.subList(0, n - 1)) + " or " + units.getLast();
    }

    private static Map<Dimension, DimensionName> names() {
        var map = new LinkedHashMap<Dimension, DimensionName>();
        put(map, Dimensions.DIMENSIONLESS, "a plain number or a share", "%");
        put(map, Dimensions.LENGTH, "a length", "m", "mm", "in", "ft");
        put(map, Dimensions.AREA, "an area", "m²", "cm²", "mm²", "in²");
        put(map, Dimensions.VOLUME, "a volume", "m³", "L");
        put(map, Dimensions.MASS, "a mass", "kg", "g", "lb", "oz");
        put(map, Dimensions.TIME, "a time", "s", "ms", "min", "h");
        put(map, Dimensions.FREQUENCY, "a frequency or a rate", "Hz", "kHz", "1/h");
        put(map, Dimensions.ANGLE, "an angle", "rad", "°");
        put(map, Dimensions.ANGULAR_SPEED, "a speed of rotation", "rad/s", "rpm", "deg/s");
        put(map, Dimensions.ANGULAR_ACCELERATION, "an angular acceleration", "rad/s²", "deg/s²");
        put(map, Dimensions.SPEED, "a speed", "m/s", "km/h", "mph", "kt", "ft/s");
        put(map, Dimensions.ACCELERATION, "an acceleration", "m/s²", "gn", "ft/s²");
        put(map, Dimensions.VOLUME_FLOW, "a volume flow", "m³/s", "L/s", "ft³/min");
        put(map, Dimensions.MASS_FLOW, "a mass flow", "kg/s");
        put(map, Dimensions.DENSITY, "a density", "kg/m³", "lb/ft³", "slug/ft³");
        put(map, Dimensions.MASS_PER_LENGTH, "a mass per length", "kg/m", "g/m", "lb/ft");
        put(map, Dimensions.FORCE, "a force", "N", "kN", "lbf", "kgf");
        put(map, Dimensions.PRESSURE, "a pressure", "Pa", "hPa", "psi", "inHg", "inH2O");
        put(map, Dimensions.DYNAMIC_VISCOSITY, "a dynamic viscosity", "Pa·s");
        put(map, Dimensions.STIFFNESS, "a stiffness", "N/m", "N/mm", "lbf/in");
        put(map, Dimensions.DAMPING, "a damping", "N/(m/s)", "lbf/(ft/s)");
        put(map, Dimensions.TORQUE, "a torque or an energy", "N·m", "J", "Wh", "lbf·ft");
        put(map, Dimensions.POWER, "a power", "W", "kW", "hp");
        put(map, Dimensions.SPECIFIC_ENERGY, "an energy per mass", "J/kg", "Wh/kg");
        put(map, Dimensions.SPECIFIC_POWER, "a power per mass", "W/kg", "kW/kg");
        put(map, Dimensions.THRUST_PER_POWER, "a thrust per power", "N/W", "gf/W", "lbf/hp");
        put(map, Dimensions.INERTIA, "a moment of inertia", "kg·m²", "g·cm²", "lbf·in·s²");
        put(map, Dimensions.CURRENT, "a current", "A", "mA");
        put(map, Dimensions.VOLTAGE, "a voltage", "V", "mV");
        put(map, Dimensions.RESISTANCE, "a resistance", "Ω", "mΩ", "ohm", "mohm");
        put(map, Dimensions.RESISTANCE_PER_LENGTH, "a resistance per length", "Ω/m", "Ω/1000 ft");
        put(map, Dimensions.RESISTIVITY, "a resistivity", "Ω·m", "Ω·mm²/m");
        put(map, Dimensions.CHARGE, "a charge", "C", "Ah", "mAh");
        put(map, Dimensions.CAPACITANCE, "a capacitance", "F", "µF");
        put(map, Dimensions.INDUCTANCE, "an inductance", "H", "µH");
        put(map, Dimensions.CURRENT_DENSITY, "a current density", "A/m²", "A/mm²");
        put(map, Dimensions.MELTING_INTEGRAL, "a melting integral", "A²·s");
        put(map, Dimensions.SPEED_CONSTANT, "a speed constant", "rad/(s·V)", "rpm/V");
        put(map, Dimensions.TORQUE_CONSTANT, "a torque constant", "N·m/A");
        put(map, Dimensions.THRUST_COEFFICIENT, "a thrust coefficient", "N·s²/rad²", "N/rpm²");
        put(map, Dimensions.TORQUE_COEFFICIENT, "a torque coefficient", "N·m·s²/rad²", "N·m/rpm²");
        put(map, Dimensions.TEMPERATURE, "a temperature", "K", "°C", "°F");
        put(map, Dimensions.TEMPERATURE_COEFFICIENT, "a temperature coefficient", "1/K", "%/K");
        put(map, Dimensions.TEMPERATURE_GRADIENT, "a temperature gradient", "K/m");
        put(map, Dimensions.HEAT_CAPACITY, "a heat capacity", "J/K");
        put(map, Dimensions.SPECIFIC_HEAT, "a specific heat", "J/(kg·K)");
        put(map, Dimensions.THERMAL_CONDUCTANCE, "a thermal conductance", "W/K");
        put(map, Dimensions.THERMAL_RESISTANCE, "a thermal resistance", "K/W");
        put(map, Dimensions.THERMAL_CONDUCTIVITY, "a thermal conductivity", "W/(m·K)");
        put(map, Dimensions.HEAT_TRANSFER_COEFFICIENT, "a heat transfer coefficient", "W/(m²·K)");
        put(map, Dimensions.HEAT_FLUX, "a heat flux", "W/m²");
        put(map, Dimensions.SOUND_LEVEL, "a sound level", "dBA");
        put(map, Dimensions.ANGULAR_SPEED_NOISE, "a noise of a rate", "rad/s/√Hz", "deg/s/√Hz");
        put(map, Dimensions.ACCELERATION_NOISE, "a noise of an acceleration", "m/s²/√Hz");
        return map;
    }

    private static void put(
            Map<Dimension, DimensionName> map, Dimension dimension, String words, String... units) {
        map.put(dimension, new DimensionName(words, List.of(units)));
    }
}
