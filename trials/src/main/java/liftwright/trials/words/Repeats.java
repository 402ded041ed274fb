package liftwright.trials.words;

import java.util.List;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.quantity.Measure;
import liftwright.trials.Planned;

/** How often it has to go well, and what that shows. */
final class Repeats {

    private static final double CONFIDENCE = 0.95;

    private Repeats() {}

    /**
     * With no failure in n runs, and runs that fail independently with one chance, the chance of
     * success is at least (1 − C)^(1/n) with confidence C: the exact binomial bound of Clopper and
     * Pearson for none.
     */
    static double shownShare(int runs) {
        return Math.pow(1 - CONFIDENCE, 1.0 / runs);
    }

    static Block block(Planned planned) {
        int runs = planned.repeats();
        Sentence first =
                Sentence.words("A pass is ")
                        .then(Measure.COUNT, runs)
                        .then(
                                runs == 1
                                        ? " clean run."
                                        : " clean runs in a row; one that was stopped starts the count"
                                                + " anew.");
        Sentence shows =
                Sentence.words("No failure in ")
                        .then(Measure.COUNT, runs)
                        .then(runs == 1 ? " run shows at " : " runs shows at ")
                        .then(Measure.PERCENT, CONFIDENCE)
                        .then(" confidence that at least ")
                        .then(Measure.PERCENT, shownShare(runs))
                        .then(
                                " of such runs go well, and no more than that; 29 show 90 %. Runs under"
                                        + " other conditions are not such runs.");
        Sentence ages =
                planned.agesAfterDays()
                        .map(
                                days ->
                                        Sentence.words("The pass is worth nothing after ")
                                                .then(Measure.COUNT, days)
                                                .then(
                                                        days == 1
                                                                ? " day, or earlier when what it rests"
                                                                        + " on changes."
                                                                : " days, or earlier when what it rests"
                                                                        + " on changes."))
                        .orElse(
                                Sentence.words(
                                        "The pass stands until something that it rests on changes."));
        Sentence lasts =
                Sentence.words("With setting up it takes about ")
                        .then(Measure.COUNT, planned.minutes())
                        .then(" minutes, from common practice; nothing on it is done in a hurry.");
        return new Block.Lines("Repeats", Style.PLAIN, List.of(first, shows, ages, lasts));
    }
}
