package liftwright.trials.words;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.rig.Rig;
import liftwright.trials.Abort;
import liftwright.trials.Planned;
import liftwright.trials.Reading;
import liftwright.trials.predict.Predictions;
import liftwright.trials.predict.StepReadings;
import liftwright.trials.predict.Stopping;

/**
 * All that a card is printed from.
 *
 * @param rig as declared
 * @param rigDigest of the file it was read from
 * @param planned the card
 * @param changed inputs that its last pass rested on and that are otherwise now
 * @param passedOn date of that pass, in words; empty where it never passed
 * @param settingsHash of what controllers and flight computer were set to; empty where none is
 *     known
 * @param predictions what the instruments will show, where to stop, which steps are not run
 * @param measuring how it is done and what is written back into the file, on a measuring card
 */
public record CardFacts(
        Rig rig,
        String rigDigest,
        Planned planned,
        List<Changed> changed,
        Optional<String> passedOn,
        Optional<String> settingsHash,
        Predictions predictions,
        List<Section.Card.Block> measuring) {

    private static final Predictions NOTHING =
            new Predictions(List.of(), List.of(), new Stopping(0, 0, ""), List.of(), 0);

    public CardFacts {
        changed = List.copyOf(changed);
        measuring = List.copyOf(measuring);
    }

    /** A card of which nothing was computed or passed. */
    public static CardFacts of(Rig rig, String rigDigest, Planned planned) {
        return new CardFacts(
                rig,
                rigDigest,
                planned,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                NOTHING,
                List.of());
    }

    /** Readings of each step. */
    List<List<Reading>> predicted() {
        return predictions.steps().stream().map(StepReadings::readings).toList();
    }

    List<Abort> aborts() {
        return predictions.aborts();
    }

    /** Why a step is not run; empty where it is. */
    Optional<String> cut(int step) {
        return step < predictions.steps().size()
                ? predictions.steps().get(step).cut()
                : Optional.empty();
    }

    /**
     * An input that is otherwise than at the last pass.
     *
     * @param input its path
     * @param was text then; empty where it was not there
     * @param is text now; empty where it is not there
     */
    public record Changed(String input, String was, String is) {}
}
