package liftwright.logbook.life;

import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import liftwright.numerics.CounterStream;
import liftwright.numerics.Quantiles;
import liftwright.numerics.Spread;
import liftwright.physics.CellLaw;
import liftwright.quantity.Band;
import liftwright.quantity.Quantity;

/**
 * Draws of declared doubts. One quantity is drawn once: a row that is the measure of the others
 * stays one in every draw, and B is the same for all rows.
 */
final class Doubt {

    private static final int DRAWS = PackLife.DRAWS;
    private static final double COVERAGE = 0.95;

    private final long seed;
    private final IdentityHashMap<Quantity, Drawn> known = new IdentityHashMap<>();

    Doubt(long seed) {
        this.seed = seed;
    }

    /**
     * A number in every draw.
     *
     * @param si without doubt
     * @param draws one each; empty where nothing is in doubt
     */
    record Drawn(double si, Optional<double[]> draws) {

        private double in(int draw) {
            return draws.isPresent() ? draws.get()[draw] : si;
        }

        Drawn over(Drawn other) {
            return with(other, (one, two) -> one / two);
        }

        Drawn with(Drawn other, DoubleBinaryOperator made) {
            double value = made.applyAsDouble(si, other.si);
            if (draws.isEmpty() && other.draws.isEmpty()) {
                return new Drawn(value, Optional.empty());
            }
            double[] all = new double[DRAWS];
            Arrays.setAll(all, k -> made.applyAsDouble(in(k), other.in(k)));
            return new Drawn(value, Optional.of(all));
        }

        PackLife.Figure figure() {
            return new PackLife.Figure(si, draws.map(Drawn::band));
        }

        private static Band band(double[] draws) {
            double[] sorted = draws.clone();
            Arrays.sort(sorted);
            return new Band(
                    Quantiles.ofSorted(sorted, (1 - COVERAGE) / 2),
                    Quantiles.ofSorted(sorted, (1 + COVERAGE) / 2),
                    COVERAGE,
                    "draws of the declared doubts",
                    DRAWS,
                    Quantiles.standardError(sorted, (1 + COVERAGE) / 2));
        }
    }

    /** A quantity by itself. */
    Drawn own(Quantity quantity) {
        Drawn drawn = known.get(quantity);
        if (drawn == null) {
            drawn = draw(quantity, "pack/" + known.size());
            known.put(quantity, drawn);
        }
        return drawn;
    }

    private Drawn draw(Quantity quantity, String name) {
        var doubt = quantity.tolerance();
        if (doubt.isNone()) {
            return new Drawn(quantity.si(), Optional.empty());
        }
        long channel = CounterStream.channel(name);
        boolean bound = doubt.form() == liftwright.quantity.Tolerance.Form.BOUND;
        double[] all = new double[DRAWS];
        Arrays.setAll(
                all,
                k ->
                        quantity.si()
                                + Spread.sample(
                                        doubt.plus(),
                                        doubt.minus(),
                                        bound,
                                        CounterStream.uniform(seed, channel, k)));
        return new Drawn(quantity.si(), Optional.of(all));
    }

    /** A resistance at 25 °C, by the law of the cell. */
    Drawn at25(Quantity ohm, Quantity kelvin, Quantity coefficientK) {
        Drawn factor = own(coefficientK).with(own(kelvin), CellLaw::temperatureFactor);
        return own(ohm).over(factor);
    }
}
