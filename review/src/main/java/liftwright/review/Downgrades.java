package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import liftwright.answer.Outcome;
import liftwright.rig.Rig;

/** Why an outcome is lesser than the numbers, whatever the question. */
final class Downgrades {

    private Downgrades() {}

    /** Reasons, to be added to. */
    static List<String> of(Rig rig, boolean nominalFound, int failed, int draws) {
        List<String> reasons = new ArrayList<>(FanClaims.impossible(rig));
        if (!nominalFound) {
            reasons.add("no operating point was found for the declared values");
        }
        if (failed > 0) {
            reasons.add(
                    String.format(
                            Locale.ROOT,
                            "no operating point was found in %d of %d draws",
                            failed,
                            draws));
        }
        return reasons;
    }

    /** What is left of what the numbers say; nothing where the network could not be solved. */
    static Outcome applied(Outcome byNumbers, boolean unsolved, List<String> reasons) {
        if (unsolved) {
            return Outcome.CANNOT_BE_TOLD;
        }
        return reasons.isEmpty() ? byNumbers : byNumbers.downgradedTo(Outcome.CANNOT_BE_TOLD);
    }
}
