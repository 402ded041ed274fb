package liftwright.review;

import java.util.List;
import liftwright.answer.Outcome;
import liftwright.quantity.Band;

/**
 * What the draws say of the margin of the worst single fault.
 *
 * @param nominal margin at the declared values
 * @param band of the margin
 * @param failedDraws draws without an operating point
 * @param downgrades why the outcome is lesser than the numbers
 */
record FailuresJudgement(
        Outcome byNumbers,
        Outcome outcome,
        double nominal,
        Band band,
        int draws,
        int failedDraws,
        List<String> downgrades,
        FailuresSample sample)
        implements Judgement {}
