package liftwright.quantity;

/** The coherent SI unit of any dimension, spelt out in base units. */
final class CoherentUnit {

    private CoherentUnit() {}

    /** For example {@code kg·m²/(s³·A)}; empty for a plain number. */
    static String of(Dimension d) {
        int halves = 2 * d.time() + d.rootTime();
        boolean below = d.rootTime() != 0 && halves < 0;
        int time = below ? d.time() + 1 : d.time();
        String[] symbols = {"kg", "m", "s", "√s", "A", "K", "rad", "dBA"};
        int[] powers = {
            d.mass(),
            d.length(),
            time,
            below ? -1 : d.rootTime(),
            d.current(),
            d.temperature(),
            d.angle(),
            d.level()
        };
        var above = new StringBuilder();
        var under = new StringBuilder();
        int factors = 0;
        for (int i = 0; i < symbols.length; i++) {
            append(powers[i] > 0 ? above : under, symbols[i], Math.abs(powers[i]));
            factors += powers[i] < 0 ? 1 : 0;
        }
        if (under.isEmpty()) {
            return above.toString();
        }
        String divisor = factors > 1 ? "(" + under + ")" : under.toString();
        return (above.isEmpty() ? "1" : above) + "/" + divisor;
    }

    private static void append(StringBuilder out, String symbol, int power) {
        if (power == 0) {
            return;
        }
        if (!out.isEmpty()) {
            out.append('·');
        }
        out.append(symbol);
        if (power > 1) {
            out.append(Superscript.of(power));
        }
    }
}
