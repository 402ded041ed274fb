package liftwright.answer;

import java.util.ArrayList;
import java.util.List;

/**
 * What an answer's own checks do to its verdict: they can take "holds" away and never give it
 * (architecture contracts 3 and 9).
 */
public final class Checks {

    private Checks() {}

    /**
     * The verdict with every doubt that the evidence raises: a check that failed or could not be
     * computed, a law used outside its validity.
     *
     * @param verdict by the numbers
     * @param evidence of the run that gave them
     */
    public static Verdict downgrade(Verdict verdict, Evidence evidence) {
        List<String> doubts = doubts(evidence);
        if (doubts.isEmpty()) {
            return verdict;
        }
        var downgrades = new ArrayList<>(verdict.downgrades());
        doubts.stream().filter(doubt -> !downgrades.contains(doubt)).forEach(downgrades::add);
        Outcome outcome = verdict.outcome().downgradedTo(Outcome.CANNOT_BE_TOLD);
        Sentence sentence =
                outcome == verdict.outcome()
                        ? verdict.sentence()
                        : Sentence.words(doubts.getFirst() + ". By the numbers alone: ")
                                .then(verdict.sentence());
        return new Verdict(outcome, sentence, verdict.wouldTell(), downgrades);
    }

    /**
     * The last door: no answer leaves that holds against its own evidence.
     *
     * @throws IllegalStateException if it does, which is a fault of the program
     */
    public static void requireHonest(Answer answer) {
        List<String> doubts = doubts(answer.evidence());
        if (answer.verdict().outcome() == Outcome.HOLDS && !doubts.isEmpty()) {
            throw new IllegalStateException(
                    "an answer to " + answer.question() + " holds although " + doubts.getFirst());
        }
    }

    private static List<String> doubts(Evidence evidence) {
        var doubts = new ArrayList<String>();
        for (Evidence.Check check : evidence.checks()) {
            if (!check.passed()) {
                doubts.add(
                        "the check \""
                                + check.name()
                                + "\" failed: "
                                + check.residual()
                                + " is left, "
                                + check.allowed()
                                + " is allowed");
            }
        }
        for (Evidence.Law law : evidence.laws()) {
            if (!law.within()) {
                doubts.add(
                        "the law \""
                                + law.name()
                                + "\" was used outside its range: "
                                + law.validity());
            }
        }
        return doubts;
    }
}
