package liftwright.review;

import java.util.List;
import liftwright.answer.Outcome;
import liftwright.quantity.Band;

/**
 * What the draws say of thrust to weight.
 *
 * @param byNumbers what the band alone says
 * @param outcome after every downgrade
 * @param nominal ratio at the declared values
 * @param nominalLiftN usable lift at the declared values
 * @param nominalWeightN weight at the declared values
 * @param ratio band of lift over weight
 * @param lift band, N
 * @param weight band, N
 * @param draws used
 * @param failedDraws draws whose operating point was not found
 * @param downgrades why the outcome is lesser than the numbers
 * @param sample the draws themselves
 */
record LiftJudgement(
        Outcome byNumbers,
        Outcome outcome,
        double nominal,
        double nominalLiftN,
        double nominalWeightN,
        Band ratio,
        Band lift,
        Band weight,
        int draws,
        int failedDraws,
        List<String> downgrades,
        LiftSample sample)
        implements Judgement {

    @Override
    public Band band() {
        return ratio;
    }
}
