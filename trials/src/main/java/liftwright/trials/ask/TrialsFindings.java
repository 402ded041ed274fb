package liftwright.trials.ask;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.trials.Abort;
import liftwright.trials.TestCard;

/** What should be known of cards before they are used. */
final class TrialsFindings {

    private TrialsFindings() {}

    static Finding unread(String words) {
        return Finding.of(
                Severity.STOPS,
                "pass-unread",
                Sentence.words("a record of tests cannot be read, so no card is open: " + words),
                "an abort may stand in it; put the file back as it was");
    }

    static List<Finding> of(CardStanding card, TestCard made) {
        List<Finding> findings = new ArrayList<>();
        String id = card.planned().id().text();
        card.reasons()
                .forEach(
                        reason ->
                                findings.add(
                                        Finding.of(
                                                        Severity.STOPS,
                                                        "card-closed",
                                                        Sentence.words(id + ": " + reason.words()),
                                                        "a card opens when what it rests on is"
                                                                + " proved on this build")
                                                .about(id)));
        for (Abort abort : made.aborts()) {
            if (abort.value() instanceof Abort.Worth.None(String reason)) {
                findings.add(
                        Finding.of(
                                        Severity.WARNS,
                                        "no-abort-value",
                                        Sentence.words(
                                                id
                                                        + ": no abort value for "
                                                        + abort.channel().part()
                                                        + " lies between what is predicted and its"
                                                        + " limit"),
                                        reason)
                                .about(id));
            }
        }
        return findings;
    }
}
