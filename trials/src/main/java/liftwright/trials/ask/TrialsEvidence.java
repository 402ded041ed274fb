package liftwright.trials.ask;

import java.util.List;
import liftwright.answer.Evidence;
import liftwright.answer.Sentence;
import liftwright.plant.HeldCorrections;
import liftwright.review.CorrectionWords;
import liftwright.review.Settings;

/** What an answer about trials rests on. */
final class TrialsEvidence {

    private TrialsEvidence() {}

    static Evidence of(
            TrialsCase about, HeldCorrections corrections, Settings settings, int draws) {
        return CorrectionWords.on(
                about.rig(),
                corrections,
                new Evidence(
                        about.rigDigest(),
                        "none",
                        settings.seed(),
                        draws,
                        Sentence.words(
                                "on "
                                        + about.today()
                                        + ", with "
                                        + (about.passes().size() == 1
                                                ? "1 pass"
                                                : about.passes().size() + " passes")
                                        + " on record; runs start as the rig file declares"),
                        List.of(
                                new Evidence.Law(
                                        "a pass holds for the build it was made on",
                                        "every input of the rig that the card rests on is as it was",
                                        "what no file says (a loose screw, another person) is not seen",
                                        true),
                                new Evidence.Law(
                                        "runs in which everything warms",
                                        "the same stepper as for the question of heat",
                                        "as told there",
                                        true)),
                        about.rig().defaults().stream()
                                .map(
                                        used ->
                                                new Evidence.Assumption(
                                                        used.at().toString(),
                                                        used.value(),
                                                        used.origin()))
                                .toList(),
                        List.of(
                                new Evidence.Check(
                                        "files of passes that cannot be read",
                                        about.unread().size(),
                                        0))));
    }
}
