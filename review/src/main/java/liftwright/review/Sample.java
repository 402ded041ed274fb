package liftwright.review;

import java.util.Arrays;
import java.util.Optional;
import liftwright.numerics.Draws;
import liftwright.numerics.Kept;
import liftwright.numerics.Work;
import liftwright.plant.Plant;

/**
 * A judged number over the draws of a rig's declared doubt. Draws are nested: the first 256 of a
 * sample of 16,384 are a sample of 256, and the same for every rig that shares the inputs, which is
 * what remedies are judged on.
 *
 * @param <S> what one thread computes a draw in
 */
abstract class Sample<S> {

    final Plant plant;
    final Settings settings;
    final double[] widthScale;
    private boolean[] solved = new boolean[0];
    private int count;

    /**
     * @param widthScale factor on the doubt of each declared input, in the order of the parameter
     *     table's inputs
     */
    Sample(Plant plant, double[] widthScale, Settings settings) {
        this.plant = plant;
        this.settings = settings;
        this.widthScale = widthScale.clone();
    }

    /** Every doubt as it was declared. */
    static double[] asDeclared(Plant plant) {
        double[] ones = new double[plant.parameters().inputs().size()];
        Arrays.fill(ones, 1);
        return ones;
    }

    abstract S scratch();

    /** Makes room for so many draws, those made so far kept. */
    abstract void reserve(int target);

    /**
     * Computes one draw.
     *
     * @return whether it has an operating point; one that has none counts as nothing, and is
     *     counted
     */
    abstract boolean solve(S scratch, int draw);

    /** What a draw came to, where draws are so dear that long work keeps them. */
    Optional<Kept.Form> form() {
        return Optional.empty();
    }

    private Kept.Form withSolved(Kept.Form form) {
        return new Kept.Form() {
            @Override
            public double[] numbers(int draw) {
                return Kept.flat(new double[] {solved[draw] ? 1 : 0}, form.numbers(draw));
            }

            @Override
            public void putBack(int draw, double[] numbers) {
                double[][] rows = Kept.rows(numbers);
                solved[draw] = rows[0][0] > 0;
                form.putBack(draw, rows[1]);
            }
        };
    }

    /** The judged number in the first {@code draws} draws, in their order. */
    abstract double[] values(int draws);

    /**
     * Makes the sample {@code target} draws long.
     *
     * @return false when stopped before that; the draws complete by then are kept
     */
    final boolean extendTo(int target, Work work) {
        if (target <= count) {
            return true;
        }
        work.stage("draws", target - count);
        reserve(target);
        solved = Arrays.copyOf(solved, target);
        Draws.Body<S> body =
                (scratch, draw) -> {
                    solved[draw] = solve(scratch, draw);
                };
        int threads = settings.threads();
        Optional<Kept.Form> form = form().map(this::withSolved);
        count =
                form.isPresent()
                        ? Draws.forEachKept(
                                work, threads, count, target, this::scratch, body, form.get())
                        : Draws.forEach(work, threads, count, target, this::scratch, body);
        return count >= target;
    }

    /** Whether a draw has an operating point. */
    final boolean isSolved(int draw) {
        return solved[draw];
    }

    /** How many of the first {@code draws} draws have no operating point. */
    final int failed(int draws) {
        int failed = 0;
        for (int i = 0; i < draws; i++) {
            failed += solved[i] ? 0 : 1;
        }
        return failed;
    }
}
