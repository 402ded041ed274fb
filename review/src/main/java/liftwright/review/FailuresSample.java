package liftwright.review;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.numerics.Kept;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultGroup;
import liftwright.review.failures.FaultNumber;

/**
 * The margin of the worst single fault over the draws of the declared doubt. Where it shall tell,
 * the first draws also keep the margin and the numbers of every fault.
 */
final class FailuresSample extends Sample<FailuresSample.Scratch> {

    /** Draws of which every fault is told. */
    static final int TOLD_DRAWS = Stage.FIRST_DRAWS;

    private static final FaultNumber[] NUMBERS = FaultNumber.values();

    private final FaultPanel panel;
    private final int told;
    private double[] worst = new double[0];

    /** By draw, then group. */
    private double[][] margins = new double[0][];

    /** By draw, then group, then number; 0 where a group has none such. */
    private double[][][] numbers = new double[0][][];

    /**
     * @param told draws of which every fault is told: {@link #TOLD_DRAWS}, or 0 where only the
     *     judged number is wanted
     */
    FailuresSample(Plant plant, double[] widthScale, Settings settings, int told) {
        super(plant, widthScale, settings);
        this.told = told;
        panel = new FaultPanel(plant);
    }

    FaultPanel panel() {
        return panel;
    }

    /** Faults to be solved. */
    static final class Scratch {
        final FaultPanel.Worker worker;
        final double[] p;

        Scratch(Plant plant, FaultPanel panel) {
            worker = panel.worker();
            p = new double[plant.parameters().size()];
        }
    }

    @Override
    Scratch scratch() {
        return new Scratch(plant, panel);
    }

    @Override
    void reserve(int target) {
        worst = Arrays.copyOf(worst, target);
        int whole = Math.min(told, target);
        if (whole > margins.length) {
            int groups = panel.groups().size();
            int before = margins.length;
            margins = Arrays.copyOf(margins, whole);
            numbers = Arrays.copyOf(numbers, whole);
            for (int draw = before; draw < whole; draw++) {
                margins[draw] = new double[groups];
                numbers[draw] = new double[groups][NUMBERS.length];
            }
        }
    }

    @Override
    boolean solve(Scratch scratch, int draw) {
        worst[draw] = FaultFate.WORST;
        if (draw < told) {
            Arrays.fill(margins[draw], FaultFate.WORST);
        }
        try {
            plant.parameters().draw(settings.seed(), draw, widthScale, scratch.p);
        } catch (ImpossibleValueException beyond) {
            return false;
        }
        double least = FaultFate.BEST;
        boolean solved = true;
        List<FaultGroup> groups = panel.groups();
        for (int k = 0; k < groups.size(); k++) {
            FaultPanel.Found found = scratch.worker.found(scratch.p, groups.get(k));
            double margin = found.converged() ? found.fate().margin() : FaultFate.WORST;
            solved &= found.converged();
            least = Math.min(least, margin);
            if (draw < told) {
                keep(found, margin, draw, k);
            }
        }
        worst[draw] = least;
        return solved;
    }

    /** Every fault is solved in every draw. */
    @Override
    Optional<Kept.Form> form() {
        return Optional.of(
                new Kept.Form() {
                    @Override
                    public double[] numbers(int draw) {
                        double[] least = {worst[draw]};
                        if (draw >= told) {
                            return Kept.flat(least);
                        }
                        return Kept.flat(least, margins[draw], Kept.flat(numbers[draw]));
                    }

                    @Override
                    public void putBack(int draw, double[] kept) {
                        double[][] rows = Kept.rows(kept);
                        worst[draw] = rows[0][0];
                        if (draw < told) {
                            margins[draw] = rows[1];
                            numbers[draw] = Kept.rows(rows[2]);
                        }
                    }
                });
    }

    private void keep(FaultPanel.Found found, double margin, int draw, int group) {
        margins[draw][group] = margin;
        found.figures()
                .ifPresent(
                        figures -> {
                            for (int k = 0; k < NUMBERS.length; k++) {
                                OptionalDouble number = NUMBERS[k].in(figures);
                                numbers[draw][group][k] = number.orElse(0);
                            }
                        });
    }

    @Override
    double[] values(int draws) {
        return Arrays.copyOf(worst, draws);
    }

    /** Margins of one group in the draws that tell. */
    double[] margins(int group, int draws) {
        double[] found = new double[Math.min(draws, margins.length)];
        for (int draw = 0; draw < found.length; draw++) {
            found[draw] = margins[draw][group];
        }
        return found;
    }

    /** One number of one group in the draws that tell and have an operating point. */
    double[] numbers(FaultNumber number, int group, int draws) {
        int which = Arrays.asList(NUMBERS).indexOf(number);
        double[] found = new double[Math.min(draws, margins.length)];
        int next = 0;
        for (int draw = 0; draw < found.length; draw++) {
            if (isSolved(draw)) {
                found[next++] = numbers[draw][group][which];
            }
        }
        return Arrays.copyOf(found, next);
    }
}
