package liftwright.review;

import java.util.List;
import liftwright.answer.Evidence.Check;
import liftwright.answer.Section;
import liftwright.plant.SteadyState;

/** What every lift answer checks of itself. */
final class LiftChecks {

    /** Power unaccounted for, over all power. */
    static final double POWER_CLOSURE = 1e-9;

    /** Sum of the waterfall against its end, over the sum of absolute terms. */
    static final double LEDGER = 1e-12;

    private LiftChecks() {}

    static List<Check> of(
            SteadyState nominal, Section.Waterfall waterfall, LiftJudgement judgement) {
        return List.of(
                new Check("power closes", nominal.closure(), POWER_CLOSURE),
                new Check("the waterfall adds up", LiftWaterfall.residual(waterfall), LEDGER),
                new Check("draws without an operating point", judgement.failedDraws(), 0));
    }
}
