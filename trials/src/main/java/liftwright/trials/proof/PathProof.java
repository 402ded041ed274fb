package liftwright.trials.proof;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Outcome;

/**
 * What is proved of one way to stop.
 *
 * @param path its name
 * @param presses how many were timed, ≥ 0
 * @param half until half of the thrust was left, the worst of the presses; empty where none was
 *     timed
 * @param tenth until a tenth was left, as that
 * @param outcome against the limit
 * @param reasons why it does not hold or cannot be told, and what makes the times wider; in words
 */
public record PathProof(
        String path,
        int presses,
        Optional<Span> half,
        Optional<Span> tenth,
        Outcome outcome,
        List<String> reasons) {

    public PathProof {
        reasons = List.copyOf(reasons);
        if (half.isPresent() != tenth.isPresent()
                || (presses > 0) != half.isPresent()
                || (outcome == Outcome.HOLDS && presses == 0)
                || outcome == Outcome.NOT_JUDGED) {
            throw new IllegalArgumentException("not a proof of " + path);
        }
    }

    boolean holds() {
        return outcome == Outcome.HOLDS;
    }
}
