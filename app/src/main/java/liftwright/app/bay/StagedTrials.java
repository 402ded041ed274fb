package liftwright.app.bay;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import liftwright.answer.Answer;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Verdict;
import liftwright.numerics.Work;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.review.Staged;
import liftwright.trials.TrialsAnswer;
import liftwright.trials.ask.NotAsked;
import liftwright.trials.ask.Trials;
import liftwright.trials.ask.TrialsCase;
import liftwright.trials.day.Day;

/**
 * The programme of a rig. What passes stand is told at once; gates open as far as the review is
 * answered when a stage is asked for, and what is not judged yet opens none.
 *
 * @param about the rig and what is on record
 * @param day as it was written down today; empty where it was not
 * @param reviewed what the review has answered so far
 * @param settings seed and threads
 */
record StagedTrials(TrialsCase about, Optional<Day> day, Reviewed reviewed, Settings settings)
        implements Staged {

    @Override
    public Optional<? extends Answer> answer(Stage stage, Work work) {
        if (work.stopped()) {
            return Optional.empty();
        }
        Trials trials = trials();
        TrialsAnswer answer = trials.programme(Optional.empty());
        return switch (stage) {
            case NOMINAL -> Optional.of(unjudged(answer));
            case BANDED -> Optional.of(answer);
            case WHOLE ->
                    day.isEmpty()
                            ? Optional.of(answer)
                            : trials.today(day.get(), work)
                                    .map(today -> with(answer, today.sections()));
        };
    }

    /** The trials as far as the review is answered. */
    Trials trials() {
        return new Trials(
                about,
                settings,
                question -> answered(question).orElseGet(() -> new NotAsked(question)));
    }

    /**
     * The trials for what is printed, which shall not say that something was not asked yet.
     *
     * @param work told of progress; nobody stops it
     */
    Trials asking(Work work) {
        return new Trials(
                about,
                settings,
                question -> answered(question).orElseGet(() -> ask(question, work)));
    }

    private Optional<Answer> answered(String question) {
        return reviewed.forCards(about.rigDigest(), about.rig(), question);
    }

    private Answer ask(String question, Work work) {
        Answer answer =
                Question.of(question)
                        .amongAll(about.rig(), about.rigDigest(), Settings.standard())
                        .answer(Stage.WHOLE, work)
                        .orElseThrow(() -> new IllegalStateException("nobody stopped it"));
        reviewed.keepForCards(about.rigDigest(), about.rig(), answer);
        return answer;
    }

    private static TrialsAnswer with(TrialsAnswer answer, List<Section> more) {
        return new TrialsAnswer(
                answer.verdict(),
                answer.findings(),
                Stream.concat(answer.sections().stream(), more.stream()).toList(),
                answer.evidence());
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
