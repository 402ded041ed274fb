package liftwright.review.restraint;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;

/** Where a rig file tells of nothing that holds the rig. */
public final class NothingHeld {

    private static final String DECLARE =
            "declare “restraint”: a “stand” (mass, height, feet apart) or a “tether” (anchor height,"
                    + " length, anchor strength)";

    private NothingHeld() {}

    /** Cannot be told, and what to declare. */
    public static Verdict verdict() {
        return new Verdict(
                Outcome.CANNOT_BE_TOLD,
                Sentence.words("nothing that holds the rig is declared; " + DECLARE),
                Optional.of(new Verdict.WouldTell("restraint", Sentence.words(DECLARE), 1)),
                List.of("nothing that holds the rig is declared"));
    }

    /** The same as a finding. */
    public static Finding finding() {
        return Finding.of(
                        Finding.Severity.STOPS,
                        "restraint-undeclared",
                        Sentence.words(
                                "whether anything holds the rig cannot be told: none is declared"),
                        DECLARE)
                .at("restraint");
    }
}
