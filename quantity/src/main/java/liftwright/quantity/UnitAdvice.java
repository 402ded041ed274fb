package liftwright.quantity;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Words that people write for units, and those that look like units and have no fixed size. */
final class UnitAdvice {

    /**
     * @param message why it is no unit
     * @param expected what to write
     * @param instead texts that may have been meant, often none
     */
    record Advice(String message, String expected, List<String> instead) {}

    private static final Map<String, Advice> NO_UNITS = noUnits();

    /** In lower case; several where the word alone does not tell. */
    private static final Map<String, List<String>> WORDS = everydayWords();

    private UnitAdvice() {}

    static @Nullable Advice notAUnit(String word) {
        var exact = NO_UNITS.get(word);
        return exact != null ? exact : NO_UNITS.get(word.toLowerCase(Locale.ROOT));
    }

    static List<String> inWords(String word) {
        return WORDS.getOrDefault(word.toLowerCase(Locale.ROOT), List.of());
    }

    /** The words that are explained, in lower case. */
    static Set<String> words() {
        return WORDS.keySet();
    }

    private static Map<String, Advice> noUnits() {
        var map = new HashMap<String, Advice>();
        map.put(
                "awg",
                new Advice(
                        "AWG is a wire gauge, which counts drawing steps and has no size as a unit",
                        "an area (mm², cmil) here, or the gauge where the file asks for a wire",
                        List.of()));
        map.put(
                "db",
                new Advice(
                        "dB is a logarithm of a ratio and has no size as a unit",
                        "the ratio itself",
                        List.of()));
        map.put(
                "kv",
                new Advice(
                        "the speed constant K_v has the unit rpm/V",
                        "rpm/V for a speed constant, kV for a voltage",
                        List.of("rpm/V", "kV")));
        map.put(
                "ton",
                new Advice(
                        "a ton is 2000 lb to some, 2240 lb or 1000 kg to others",
                        "t for 1000 kg, or lb",
                        List.of("t")));
        map.put("gal", new Advice("a gallon differs between countries", "L", List.of()));
        map.put("per", new Advice("division is written with /", "/ between units", List.of("/")));
        return Map.copyOf(map);
    }

    private static Map<String, List<String>> everydayWords() {
        var map = new HashMap<String, List<String>>();
        put(map, "m", "metre", "metres", "meter", "meters", "mtr");
        put(map, "mm", "millimetre", "millimetres", "millimeter", "millimeters");
        put(map, "cm", "centimetre", "centimetres", "centimeter", "centimeters");
        put(map, "in", "inch", "inches", "\"", "\u2033", "''");
        put(map, "ft", "foot", "feet", "'", "\u2032");
        put(map, "yd", "yard", "yards");
        put(map, "mi", "mile", "miles");
        put(map, "mil", "mils", "thou");
        put(map, "µm", "micron", "microns");
        put(map, "in²", "sqin");
        put(map, "ft²", "sqft");
        put(map, "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms");
        put(map, "g", "gram", "grams", "gr", "gm");
        map.put("lbs", List.of("lb", "lbf"));
        map.put("pound", List.of("lb", "lbf"));
        map.put("pounds", List.of("lb", "lbf"));
        put(map, "lb", "lbm");
        map.put("ounce", List.of("oz", "ozf"));
        map.put("ounces", List.of("oz", "ozf"));
        put(map, "kgf", "kp", "kilopond");
        put(map, "gf", "pond");
        put(map, "t", "tonne", "tonnes");
        put(map, "s", "sec", "secs", "second", "seconds");
        put(map, "ms", "msec", "msecs", "millisecond", "milliseconds");
        put(map, "µs", "usec", "microsecond", "microseconds");
        put(map, "min", "mins", "minute", "minutes");
        put(map, "h", "hr", "hrs", "hour", "hours");
        put(map, "A", "amp", "amps", "ampere", "amperes");
        put(map, "V", "volt", "volts");
        put(map, "Ω", "ohms");
        put(map, "W", "watt", "watts");
        put(map, "kW", "kilowatt", "kilowatts");
        put(map, "J", "joule", "joules");
        put(map, "N", "newton", "newtons");
        put(map, "N·m", "nm"); // Nm and NM; nm is the nanometre and is read as such
        put(map, "mN·m", "mnm");
        put(map, "Hz", "hertz", "cps");
        put(map, "F", "farad", "farads");
        put(map, "H", "henry", "henries");
        put(map, "PS", "cv", "pk");
        put(map, "hp", "bhp", "horsepower");
        put(map, "rev", "turn", "turns", "revs", "revolution", "revolutions");
        put(map, "rev/s", "rps");
        put(map, "°", "degree", "degrees", "degs", "\u00ba");
        put(map, "rad", "radian", "radians");
        put(map, "deg/s", "dps");
        put(map, "°C", "celsius", "centigrade", "\u00bac", "c");
        put(map, "°F", "fahrenheit", "\u00baf", "f");
        put(map, "K", "kelvin", "kelvins", "degk", "°k");
        put(map, "km/h", "kph", "kmh", "kmph");
        put(map, "m/s", "mps");
        put(map, "ft/s", "fps");
        put(map, "kt", "kts", "knots", "kn");
        put(map, "ft³/min", "cfm");
        put(map, "mL", "cc", "ccm");
        put(map, "L", "litre", "litres", "liter", "liters");
        put(map, "cmil", "circmil");
        put(map, "kcmil", "mcm");
        put(map, "%", "percent", "pct", "pc");
        put(map, "mbar", "millibar", "millibars");
        put(map, "gn", "gee", "gees");
        return Map.copyOf(map);
    }

    private static void put(Map<String, List<String>> map, String unit, String... words) {
        for (String word : words) {
            map.put(word, List.of(unit));
        }
    }
}
