package liftwright.trials.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import liftwright.numerics.Draws;
import liftwright.numerics.Quantiles;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.parameters.ParameterTable;
import liftwright.quantity.Band;
import liftwright.trials.Channel;
import liftwright.trials.Reading;

/**
 * Readings with the band in which an instrument should show them: each draw takes the rig, the
 * set-up, what the law leaves out and the instrument's error at once (JCGM 101:2008).
 *
 * @param readings in the order in which they were wanted
 * @param draws how many were made
 * @param impossible how many of them met a value that cannot be, or a rig that does not get there;
 *     the bands rest on the others
 */
record Predicted(List<Reading> readings, int draws, int impossible) {

    /** Draws of a card whose numbers are quickly computed. */
    static final int DRAWS = 2048;

    private static final double LOW = 0.025;
    private static final double HIGH = 0.975;
    private static final double COVERAGE = 0.95;

    /** Fewer draws than this tell no band. */
    private static final int FEWEST = 200;

    static final String METHOD =
            "draws of the declared doubt, the set-up, the instrument and what the law leaves out";

    /** Computes what instruments without error would show. For one thread. */
    interface Model {

        /**
         * @param p a vector of the card's table
         * @param out one number a reading; NaN where this vector gives none
         */
        void at(double[] p, double[] out);
    }

    Predicted {
        readings = List.copyOf(readings);
    }

    /**
     * @param doubts complete but for the errors of the readings, which this adds
     * @param model makes the model of one thread
     * @return empty where the work was stopped; a reading that too few draws gave is left out
     */
    static Optional<Predicted> of(
            Asked asked, Doubts doubts, List<Wanted> wanted, int draws, Supplier<Model> model) {
        int count = wanted.size();
        if (count == 0) {
            return Optional.of(new Predicted(List.of(), 0, 0));
        }
        double[] expected = new double[count];
        model.get().at(doubts.rows().table().nominal(), expected);
        int[] error = new int[count];
        int[] leftOut = new int[count];
        for (int k = 0; k < count; k++) {
            Channel channel = wanted.get(k).channel();
            String name = channel.part();
            error[k] = doubts.error(name, halfWidth(channel.instrument(), expected[k]));
            leftOut[k] = doubts.leftOut(name, wanted.get(k).leftOut());
        }
        ParameterTable table = doubts.rows().table();
        double[][] shown = new double[draws][];
        asked.work().stage("readings of " + asked.card().id().text(), draws);
        int done =
                Draws.forEach(
                        asked.work(),
                        asked.threads(),
                        draws,
                        () -> new Reader(table, model.get(), error, leftOut),
                        (reader, draw) -> shown[draw] = reader.read(asked.seed(), draw));
        if (done < draws) {
            return Optional.empty();
        }
        List<Reading> readings = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            double[] sorted = told(shown, k);
            if (sorted.length >= FEWEST && Double.isFinite(expected[k])) {
                readings.add(
                        new Reading(
                                wanted.get(k).channel(), expected[k], band(sorted, expected[k])));
            }
        }
        int impossible =
                (int)
                        Arrays.stream(shown)
                                .filter(row -> !Arrays.stream(row).allMatch(Double::isFinite))
                                .count();
        return Optional.of(new Predicted(readings, draws, impossible));
    }

    /** What the draws gave for one reading, rising. */
    private static double[] told(double[][] shown, int reading) {
        return Arrays.stream(shown)
                .mapToDouble(row -> row[reading])
                .filter(Double::isFinite)
                .sorted()
                .toArray();
    }

    /** Of an instrument whose two errors do not hang together. */
    static double halfWidth(Channel.Instrument instrument, double si) {
        return Math.hypot(instrument.errorSi(), instrument.errorShare() * si);
    }

    private static Band band(double[] sorted, double expected) {
        double low = Quantiles.ofSorted(sorted, LOW);
        double high = Quantiles.ofSorted(sorted, HIGH);
        if (low == high) { // nothing is in doubt, and sums differ in their last digit
            return new Band(expected, expected, COVERAGE, METHOD, sorted.length, 0);
        }
        double miss =
                Math.max(
                        Quantiles.standardError(sorted, LOW),
                        Quantiles.standardError(sorted, HIGH));
        return new Band(low, high, COVERAGE, METHOD, sorted.length, miss);
    }

    /** One thread's scratch. */
    private static final class Reader {
        private final ParameterTable table;
        private final Model model;
        private final int[] error;
        private final int[] leftOut;
        private final double[] p;

        Reader(ParameterTable table, Model model, int[] error, int[] leftOut) {
            this.table = table;
            this.model = model;
            this.error = error;
            this.leftOut = leftOut;
            p = new double[table.size()];
        }

        double[] read(long seed, int draw) {
            double[] out = new double[error.length];
            try {
                table.draw(seed, draw, p);
                model.at(p, out);
            } catch (ImpossibleValueException _) {
                Arrays.fill(out, Double.NaN); // counted, and told on the card
                return out;
            }
            for (int k = 0; k < out.length; k++) {
                out[k] = out[k] * p[leftOut[k]] + p[error[k]];
            }
            return out;
        }
    }
}
