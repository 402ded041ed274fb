package liftwright.quantity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import liftwright.quantity.Refusal.Code;
import org.jspecify.annotations.Nullable;

/**
 * What to say when a quantity is well written but measures something else than what is needed, and
 * what was perhaps meant: pounds of force where pounds of mass stand, ampere-hours for amperes, a
 * length where an area is asked for.
 */
final class WrongDimension {

    /** Units that people take for one another; tried in this order, each way. */
    private static final Map<String, List<String>> MIXED_UP = mixedUp();

    /** What is forgotten behind a unit. */
    private static final List<String> FORGOTTEN =
            List.of(
                    "²", "³", "/s", "/rad²", "/s²", "/V", "/rad", "·m", "/A", "/m", "/K", "/kg",
                    "·s", "·m²", "/m³", "/m²");

    private WrongDimension() {}

    static RefusedException refusal(
            Cursor in, int from, int to, UnitExpression given, Dimension needed) {
        String unit = in.text.substring(from, to);
        var neededName = DimensionName.of(needed);
        String message =
                String.format(
                        Locale.ROOT,
                        "%s is %s, and %s is needed%s",
                        in.text.strip(),
                        DimensionName.of(given.dimension()).words(),
                        neededName.words(),
                        note(unit));
        var guesses = new ArrayList<String>();
        for (String meant : meant(unit, needed)) {
            guesses.add(in.text.substring(0, from) + meant + in.text.substring(to));
            guesses.add(in.text.replace(unit, meant));
        }
        return new RefusedException(
                Code.WRONG_DIMENSION, from, to, message, expected(needed), guesses);
    }

    static RefusedException unitMissing(Cursor in, int place, Dimension needed) {
        var name = DimensionName.of(needed);
        String message =
                String.format(
                        Locale.ROOT,
                        "%s has no unit, and %s is needed",
                        in.text.strip(),
                        name.words());
        return in.refusal(Code.UNIT_MISSING, place, place, message, expected(needed));
    }

    static String expected(Dimension needed) {
        var name = DimensionName.of(needed);
        return needed.equals(Dimension.NONE)
                ? name.words()
                : String.format(Locale.ROOT, "%s in %s", name.words(), name.unitsInWords());
    }

    private static String note(String unit) {
        return switch (unit) {
            case "lb", "oz" ->
                    String.format(Locale.ROOT, "; %s is always a mass, never a force", unit);
            case "lbf", "ozf", "kgf" ->
                    String.format(Locale.ROOT, "; %s is always a force, never a mass", unit);
            case "C" -> "; C is the coulomb, and a C-rate has no size without a capacity";
            default -> "";
        };
    }

    private static List<String> meant(String unit, Dimension needed) {
        var tries = new LinkedHashSet<String>();
        swapEachSymbol(unit, tries);
        if (unit.equals("C") || needed.equals(Dimension.NONE)) {
            return readable(tries, needed); // a C-rate, a number: no power or divisor mends that
        }
        for (String more : FORGOTTEN) {
            tries.add(unit + more);
        }
        for (String base : List.copyOf(tries).subList(0, Math.min(8, tries.size()))) {
            FORGOTTEN.forEach(more -> tries.add(base + more));
        }
        return readable(tries, needed);
    }

    private static List<String> readable(Set<String> tries, Dimension needed) {
        return tries.stream().filter(text -> needed.equals(dimensionOf(text))).limit(4).toList();
    }

    private static void swapEachSymbol(String unit, Set<String> tries) {
        int start = 0;
        while (start < unit.length()) {
            int end = start;
            while (end < unit.length() && isSymbol(unit.charAt(end))) {
                end++;
            }
            String symbol = unit.substring(start, end);
            for (String other : MIXED_UP.getOrDefault(symbol, List.of())) {
                tries.add(unit.substring(0, start) + other + unit.substring(end));
            }
            start = Math.max(end, start + 1);
        }
        if (unit.endsWith("²") || unit.endsWith("³")) {
            tries.add(unit.substring(0, unit.length() - 1));
        }
    }

    private static boolean isSymbol(char c) {
        return Character.isLetter(c) || c == '°';
    }

    private static @Nullable Dimension dimensionOf(String unit) {
        var in = new Cursor(unit);
        try {
            var read = UnitReader.read(in);
            return read == null || !in.atEnd() ? null : read.dimension();
        } catch (RefusedException notAUnit) {
            return null; // a guess that came to nothing
        }
    }

    private static Map<String, List<String>> mixedUp() {
        var map = new HashMap<String, List<String>>();
        pair(map, "lb", "lbf");
        pair(map, "oz", "ozf");
        pair(map, "kg", "kgf");
        pair(map, "g", "gf");
        pair(map, "A", "Ah");
        pair(map, "mA", "mAh");
        pair(map, "W", "Wh");
        pair(map, "kW", "kWh");
        pair(map, "C", "°C");
        pair(map, "F", "°F");
        pair(map, "°", "°C");
        pair(map, "deg", "degC");
        pair(map, "kV", "rpm/V");
        pair(map, "Hz", "rev/s");
        pair(map, "H", "h");
        pair(map, "rpm", "1/min");
        pair(map, "g", "gn");
        pair(map, "m", "min");
        pair(map, "mil", "cmil");
        return Map.copyOf(map);
    }

    private static void pair(Map<String, List<String>> map, String one, String other) {
        add(map, one, other);
        add(map, other, one);
    }

    private static void add(Map<String, List<String>> map, String one, String other) {
        var list = new ArrayList<>(map.getOrDefault(one, List.of()));
        list.add(other);
        map.put(one, List.copyOf(list));
    }
}
