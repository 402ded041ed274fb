package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import liftwright.answer.Section;
import liftwright.answer.Section.Plot;
import liftwright.plant.Discharge;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;

/** Charge and voltage of the worst cell over the run, with their limits and the first end. */
final class EndurancePlots {

    /** More points than these show no more. */
    private static final int MOST_POINTS = 120;

    private EndurancePlots() {}

    static List<Section> of(Rig rig, EnduranceRun run) {
        if (run.curve().size() < 2) {
            return List.of();
        }
        return List.of(
                new Plot(
                        "charge-over-time",
                        "Charge left in the emptiest cell, as far as it can go",
                        "time",
                        "charge-left",
                        series(
                                run,
                                "emptiest cell",
                                EnduranceRun.Step::leastChargeLeft,
                                "reserve",
                                rig.demands().reserve().si())),
                new Plot(
                        "voltage-over-time",
                        "Voltage of the lowest cell, as far as it can go",
                        "time",
                        "least-cell-voltage",
                        series(
                                run,
                                "lowest cell",
                                EnduranceRun.Step::leastCellV,
                                "least allowed",
                                rig.limits().si(LimitName.CELL_UNDER_LOAD))));
    }

    private static List<Plot.Series> series(
            EnduranceRun run,
            String label,
            ToDoubleFunction<EnduranceRun.Step> of,
            String limitLabel,
            double limit) {
        List<EnduranceRun.Step> steps = run.curve();
        List<Plot.Point> curve = new ArrayList<>();
        int every = (steps.size() + MOST_POINTS - 1) / MOST_POINTS;
        for (int k = 0; k < steps.size(); k++) {
            if (k % every == 0 || k == steps.size() - 1) {
                curve.add(new Plot.Point(steps.get(k).timeS(), of.applyAsDouble(steps.get(k))));
            }
        }
        List<Plot.Series> series = new ArrayList<>();
        series.add(
                new Plot.Series(
                        limitLabel,
                        Plot.Mark.DASHES,
                        List.of(
                                new Plot.Point(curve.getFirst().x(), limit),
                                new Plot.Point(curve.getLast().x(), limit))));
        series.add(new Plot.Series(label, Plot.Mark.LINE, curve));
        run.end()
                .ifPresent(
                        end ->
                                series.add(
                                        new Plot.Series(
                                                CauseWords.first(end.cause()) + " ends it",
                                                Plot.Mark.CROSS,
                                                List.of(
                                                        new Plot.Point(
                                                                end.timeS(),
                                                                between(steps, end, of))))));
        return series;
    }

    /** Between the steps beside the end along a straight line. */
    private static double between(
            List<EnduranceRun.Step> steps,
            Discharge.End end,
            ToDoubleFunction<EnduranceRun.Step> of) {
        EnduranceRun.Step before = steps.getFirst();
        for (EnduranceRun.Step step : steps) {
            if (step.timeS() >= end.timeS()) {
                double span = step.timeS() - before.timeS();
                double share = span > 0 ? (end.timeS() - before.timeS()) / span : 1;
                return of.applyAsDouble(before)
                        + share * (of.applyAsDouble(step) - of.applyAsDouble(before));
            }
            before = step;
        }
        return of.applyAsDouble(before);
    }
}
