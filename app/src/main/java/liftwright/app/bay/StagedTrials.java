package liftwright.app.bay;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.Outcome;
import liftwright.answer.Verdict;
import liftwright.numerics.Work;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.review.Staged;
import liftwright.trials.TrialsAnswer;
import liftwright.trials.ask.NotAsked;
import liftwright.trials.ask.Trials;
import liftwright.trials.ask.TrialsCase;

/**
 * The programme of a rig. What passes stand is told at once; gates open as far as the review is
 * answered when a stage is asked for, and what is not judged yet opens none.
 *
 * @param about the rig and what is on record
 * @param reviewed what the review has answered so far
 * @param settings seed and threads
 */
record StagedTrials(TrialsCase about, Reviewed reviewed, Settings settings) implements Staged {

    @Override
    public Optional<? extends Answer> answer(Stage stage, Work work) {
        if (work.stopped()) {
            return Optional.empty();
        }
        TrialsAnswer answer = trials().programme(Optional.empty());
        return Optional.of(stage == Stage.NOMINAL ? unjudged(answer) : answer);
    }

    /** The trials as far as the review is answered. */
    Trials trials() {
        return new Trials(
                about,
                settings,
                question ->
                        reviewed.of(about.rigDigest(), question)
                                .orElseGet(() -> new NotAsked(question)));
    }

    private static TrialsAnswer unjudged(TrialsAnswer answer) {
        Verdict verdict = answer.verdict();
        return new TrialsAnswer(
                new Verdict(Outcome.NOT_JUDGED, verdict.sentence(), Optional.empty(), List.of()),
                answer.findings(),
                answer.sections(),
                answer.evidence());
    }
}
