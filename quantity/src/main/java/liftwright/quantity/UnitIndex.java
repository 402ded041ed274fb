package liftwright.quantity;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Every way to write every unit, with its prefixes, found by one look-up. Built at the start of
 * every run, so without lambdas and {@code +} on strings, which cost a cold machine milliseconds.
 */
final class UnitIndex {

    /**
     * What one spelling stands for.
     *
     * @param unit the row of the table it belongs to
     * @param symbol how the product writes it, prefix included
     * @param ascii the same without signs beyond ASCII
     * @param scale of the unit with its prefix
     */
    record Entry(Unit unit, String symbol, String ascii, Scale scale) {}

    private static final Map<String, Entry> BY_SPELLING = build();

    private UnitIndex() {}

    static @Nullable Entry find(String spelling) {
        return BY_SPELLING.get(spelling);
    }

    /** Every spelling and what it stands for, in the order of the table. */
    static Map<String, Entry> all() {
        return BY_SPELLING;
    }

    private static Map<String, Entry> build() {
        var map = new LinkedHashMap<String, Entry>(1024);
        for (Unit unit : Units.ALL) {
            var plain = new Entry(unit, unit.symbol(), unit.ascii(), unit.scale());
            for (String spelling : unit.spellings()) {
                put(map, spelling, plain);
            }
            for (Prefix prefix : Prefix.ALL) {
                if (unit.prefixes().contains(prefix.symbol())) {
                    addPrefixed(map, unit, prefix);
                }
            }
        }
        return map;
    }

    private static void addPrefixed(Map<String, Entry> map, Unit unit, Prefix prefix) {
        var entry =
                new Entry(
                        unit,
                        prefix.symbol().concat(unit.symbol()),
                        prefix.ascii().concat(unit.ascii()),
                        unit.scale().times(Scale.of(1, prefix.tenPower())));
        for (String before : prefix.spellings()) {
            for (String spelling : unit.spellings()) {
                put(map, before.concat(spelling), entry);
            }
        }
    }

    private static void put(Map<String, Entry> map, String spelling, Entry entry) {
        if (map.put(spelling, entry) != null) {
            throw new IllegalStateException("two units are written " + spelling);
        }
    }
}
