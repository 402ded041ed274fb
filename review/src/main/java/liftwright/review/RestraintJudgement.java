package liftwright.review;

import java.util.List;
import liftwright.answer.Outcome;
import liftwright.quantity.Band;

/**
 * What the draws say of the least margin of what holds the rig.
 *
 * @param byNumbers what the band alone says
 * @param outcome after every downgrade
 * @param nominal at the declared values
 * @param band of the margin
 * @param draws used
 * @param failedDraws draws whose operating point was not found
 * @param downgrades why the outcome is lesser than the numbers
 * @param sample the draws themselves
 */
record RestraintJudgement(
        Outcome byNumbers,
        Outcome outcome,
        double nominal,
        Band band,
        int draws,
        int failedDraws,
        List<String> downgrades,
        RestraintSample sample)
        implements Judgement {

    RestraintJudgement {
        downgrades = List.copyOf(downgrades);
    }
}
