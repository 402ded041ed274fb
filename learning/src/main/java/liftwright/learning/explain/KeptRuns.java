package liftwright.learning.explain;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.numerics.Kept;

/**
 * Runs of the plant as numbers.
 *
 * @param runs where they stand; one that did not get to its end is none
 */
record KeptRuns(List<Optional<Bench.Run>> runs) implements Kept.Form {

    @Override
    public double[] numbers(int number) {
        return numbers(runs.get(number));
    }

    @Override
    public void putBack(int number, double[] numbers) {
        runs.set(number, run(numbers));
    }

    static double[] numbers(Optional<Bench.Run> run) {
        return run.map(
                        of -> {
                            double[][] rows =
                                    Arrays.copyOf(of.channels(), of.channels().length + 1);
                            rows[of.channels().length] = of.lift();
                            return Kept.flat(rows);
                        })
                .orElseGet(() -> new double[0]);
    }

    static Optional<Bench.Run> run(double[] numbers) {
        if (numbers.length == 0) {
            return Optional.empty();
        }
        double[][] rows = Kept.rows(numbers);
        int channels = rows.length - 1;
        return Optional.of(new Bench.Run(Arrays.copyOf(rows, channels), rows[channels]));
    }
}
