package liftwright.review.referee;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.random.RandomGenerator;

/**
 * A declared value of a random rig: number, relative doubt and how it is written.
 *
 * @param value in {@code unit}
 * @param unit as written
 * @param plus upper 95 % half-width over the value
 * @param minus lower half-width over the value
 * @param bound a rectangle instead of a normal
 * @param each a draw for every part
 */
record Doubtful(double value, String unit, double plus, double minus, boolean bound, boolean each) {

    static Doubtful exact(double value, String unit) {
        return new Doubtful(value, unit, 0, 0, false, false);
    }

    Doubtful forEach() {
        return new Doubtful(value, unit, plus, minus, bound, true);
    }

    Doubtful symmetric() {
        return new Doubtful(value, unit, plus, plus, bound, each);
    }

    /** With a doubt of one of the kinds that can be declared. */
    static Doubtful of(RandomGenerator random, double value, String unit, double most) {
        // Written with few digits, so that what is written is what is meant.
        double shown = Double.parseDouble(String.format(Locale.ROOT, "%.4g", value));
        double half = Math.round(1000 * random.nextDouble(0.2 * most, most)) / 1000.0;
        return switch (random.nextInt(5)) {
            case 0 -> exact(shown, unit);
            case 1 -> new Doubtful(shown, unit, half, half, true, false);
            case 2 -> {
                double other = Math.round(1000 * random.nextDouble(0, most)) / 1000.0;
                yield new Doubtful(shown, unit, half, other, false, false);
            }
            default -> new Doubtful(shown, unit, half, half, false, false);
        };
    }

    String written() {
        StringBuilder text = new StringBuilder(plain(value));
        if (!unit.isEmpty()) {
            text.append(' ').append(unit);
        }
        if (plus != 0 || minus != 0) {
            if (plus == minus) {
                text.append(" ± ").append(percent(plus)).append(" %");
            } else {
                text.append(" +")
                        .append(percent(plus))
                        .append("/−")
                        .append(percent(minus))
                        .append(" %");
            }
        }
        if (bound && (plus != 0 || minus != 0)) {
            text.append(" bound");
        }
        if (each && (plus != 0 || minus != 0)) {
            text.append(" each");
        }
        return text.toString();
    }

    static String plain(double value) {
        return new BigDecimal(value, new MathContext(10)).stripTrailingZeros().toPlainString();
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f", 100 * share);
    }

    /**
     * The value in one draw: the definition of contract 1 read once more.
     *
     * @param narrowed factor on the doubt
     */
    double draw(RandomGenerator random, double narrowed) {
        if (plus == 0 && minus == 0) {
            return value;
        }
        if (bound && (plus != 0 || minus != 0)) {
            double u = random.nextDouble();
            return value * (1 + narrowed * (-minus + u * (plus + minus)));
        }
        // Split normal: a side is chosen in proportion to its width, then a half normal goes that
        // way.
        double z = Math.abs(random.nextGaussian());
        boolean up = random.nextDouble() < plus / (plus + minus);
        return value * (1 + narrowed * (up ? plus : -minus) * z / 2);
    }
}
