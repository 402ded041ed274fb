package liftwright.answer;

import java.util.ArrayList;
import java.util.List;

/**
 * What an answer's own checks do to its verdict. A law left can take "holds" away and never gives
 * it; a check that failed takes every verdict away, since the numbers themselves are in doubt.
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
        Outcome outcome =
                failed(evidence)
                        ? Outcome.CANNOT_BE_TOLD
                        : verdict.outcome().downgradedTo(Outcome.CANNOT_BE_TOLD);
        Sentence sentence =
                outcome == verdict.outcome()
                        ? verdict.sentence()
                        : Sentence.words(
                                        doubts.getFirst()
                                                + ". By the numbers alone "
                                                + verdict.outcome().label()
                                                + ": ")
                                .then(verdict.sentence());
        return new Verdict(outcome, sentence, verdict.wouldTell(), downgrades);
    }

    /**
     * The last door: no answer leaves that claims more than its own evidence carries.
     *
     * @throws IllegalStateException if one would, which is a fault of the program
     */
    public static void requireHonest(Answer answer) {
        List<String> doubts = doubts(answer.evidence());
        Outcome outcome = answer.verdict().outcome();
        boolean tooMuch =
                failed(answer.evidence())
                        ? outcome != Outcome.CANNOT_BE_TOLD
                        : outcome == Outcome.HOLDS && !doubts.isEmpty();
        if (tooMuch) {
            throw new IllegalStateException(
                    "an answer to "
                            + answer.question()
                            + " says \""
                            + outcome.label()
                            + "\" although "
                            + doubts.getFirst());
        }
    }

    private static boolean failed(Evidence evidence) {
        return evidence.checks().stream().anyMatch(check -> !check.passed());
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
