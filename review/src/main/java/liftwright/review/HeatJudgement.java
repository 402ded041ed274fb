package liftwright.review;

import java.util.List;
import liftwright.answer.Outcome;
import liftwright.quantity.Band;

/**
 * What the draws say of the time in the air within every limit.
 *
 * @param nominal time at the declared values, s
 * @param band of the time, s
 * @param failedDraws draws without an operating point
 * @param downgrades why the outcome is lesser than the numbers
 */
record HeatJudgement(
        Outcome byNumbers,
        Outcome outcome,
        double nominal,
        Band band,
        int draws,
        int failedDraws,
        List<String> downgrades,
        HeatSample sample)
        implements Judgement {}
