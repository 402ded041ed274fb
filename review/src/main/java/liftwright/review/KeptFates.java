package liftwright.review;

import java.util.List;
import java.util.function.IntFunction;
import java.util.function.ObjIntConsumer;
import liftwright.numerics.Kept;
import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultOutcome;

/** Fates of many failures as numbers: whether each was told at all, and what becomes of the rig. */
record KeptFates(IntFunction<FaultPanel.Found> of, ObjIntConsumer<FaultPanel.Found> to)
        implements Kept.Form {

    private static final List<FaultOutcome> OUTCOMES = List.of(FaultOutcome.values());

    @Override
    public double[] numbers(int number) {
        FaultPanel.Found found = of.apply(number);
        FaultFate fate = found.fate();
        return new double[] {
            found.converged() ? 1 : 0,
            OUTCOMES.indexOf(fate.outcome()),
            fate.margin(),
            fate.impactMps()
        };
    }

    @Override
    public void putBack(int number, double[] numbers) {
        FaultOutcome outcome = OUTCOMES.get((int) numbers[1]);
        to.accept(
                FaultPanel.Found.of(numbers[0] > 0, new FaultFate(outcome, numbers[2], numbers[3])),
                number);
    }
}
