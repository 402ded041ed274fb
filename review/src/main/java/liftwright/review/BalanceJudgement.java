package liftwright.review;

import java.util.List;
import liftwright.answer.Outcome;
import liftwright.plant.HoverPoint;
import liftwright.quantity.Band;

/**
 * What the draws say of what steering has left at lift-off.
 *
 * @param byNumbers what the band alone says
 * @param outcome after every downgrade
 * @param nominal at the declared values
 * @param band of the judged number
 * @param point lift-off at the declared values
 * @param steering what holds the rig
 * @param draws used
 * @param failedDraws draws whose operating point was not found
 * @param downgrades why the outcome is lesser than the numbers
 * @param sample the draws themselves
 */
record BalanceJudgement(
        Outcome byNumbers,
        Outcome outcome,
        double nominal,
        Band band,
        HoverPoint point,
        Steering steering,
        int draws,
        int failedDraws,
        List<String> downgrades,
        BalanceSample sample)
        implements Judgement {}
