package liftwright.app.bay;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import liftwright.answer.Section;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.review.Stage;
import liftwright.trials.CardId;
import liftwright.trials.TrialsAnswer;
import liftwright.trials.ask.Trials;

/**
 * One card down a stream, with the way that proves it: the verdict is that of the way, and what was
 * found is of the card.
 *
 * @param staged the trials of the rig
 * @param id of a card of its programme
 * @param work stopped when nobody waits any more
 * @param lines to whoever asked
 * @param faults is told what went wrong by a mistake of ours
 */
record CardAnswering(
        StagedTrials staged,
        CardId id,
        AskedWork work,
        AnswerLines lines,
        Consumer<Throwable> faults) {

    /** Answers, and says how it ended. */
    void run() {
        try {
            Trials trials = staged.trials();
            trials.cards(List.of(id), work)
                    .ifPresent(
                            card ->
                                    lines.tell(
                                            Stage.WHOLE,
                                            Question.TRIALS,
                                            staged.about().rig().name(),
                                            together(trials.programme(Optional.of(id)), card)));
        } catch (NotToldException | ImpossibleValueException e) {
            lines.refuse(Optional.of(Question.TRIALS), String.valueOf(e.getMessage()));
        } catch (Lines.GoneException e) {
            throw e;
        } catch (RuntimeException e) {
            faults.accept(e);
            lines.refuse(Optional.of(Question.TRIALS), "A fault of the program, not of your rig.");
        }
        lines.end(work.stopped());
    }

    private static TrialsAnswer together(TrialsAnswer way, TrialsAnswer card) {
        Stream<Section> proof =
                way.sections().stream().filter(section -> section.id().equals("reproof"));
        return new TrialsAnswer(
                way.verdict(),
                card.findings(),
                Stream.concat(proof, card.sections().stream()).toList(),
                card.evidence());
    }

    void tellProgress() {
        work.progress().ifPresent(far -> lines.progress(Question.TRIALS, far));
    }
}
