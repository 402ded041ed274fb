package liftwright.answer;

import java.util.List;
import java.util.Optional;

/**
 * The first line of an answer.
 *
 * @param outcome one of three, or that it was not judged
 * @param sentence one sentence with value, band, limit and state
 * @param wouldTell when it cannot be told: the measurement that would settle it, in words
 * @param downgrades every reason that made the outcome lesser than the numbers alone would
 */
public record Verdict(
        Outcome outcome,
        Sentence sentence,
        Optional<WouldTell> wouldTell,
        List<String> downgrades) {

    public Verdict {
        downgrades = List.copyOf(downgrades);
    }

    /**
     * @param path the declared input, a path in the rig file
     * @param sentence what to measure and how well
     * @param bandShare width of the verdict's band with that doubt halved, over its width now, 0 to
     *     1
     */
    public record WouldTell(String path, Sentence sentence, double bandShare) {}
}
