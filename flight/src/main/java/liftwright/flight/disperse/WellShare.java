package liftwright.flight.disperse;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Outcome;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;
import liftwright.numerics.ProportionInterval;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;

/**
 * How many flights went well, and what that says of all that could be drawn. One that cannot be
 * told ({@link liftwright.flight.run.Untold}) counts as failed at the lower end and as well at the
 * upper one.
 *
 * @param well kept every limit
 * @param failed did not
 * @param untold cannot be told
 */
record WellShare(int well, int failed, int untold) {

    static final double CONFIDENCE = 0.95;

    private static final int MOST = 1_000_000;

    /** Of drawn flights; that at the declared values is no draw. */
    static WellShare of(List<Flown> drawn) {
        int well = 0;
        int untold = 0;
        for (Flown each : drawn) {
            boolean told = each.untold().isEmpty();
            well += told && each instanceof Flown.Made made && made.well() ? 1 : 0;
            untold += told ? 0 : 1;
        }
        return new WellShare(well, drawn.size() - well - untold, untold);
    }

    int count() {
        return well + failed + untold;
    }

    double lower() {
        return ProportionInterval.clopperPearson(well, count(), CONFIDENCE).lower();
    }

    double upper() {
        return ProportionInterval.clopperPearson(well + untold, count(), CONFIDENCE).upper();
    }

    Band band() {
        return new Band(lower(), upper(), CONFIDENCE, "exact, by Clopper and Pearson", count(), 0);
    }

    double share() {
        return (double) well / count();
    }

    Outcome outcome(double asked) {
        if (count() == 0) {
            return Outcome.CANNOT_BE_TOLD;
        }
        if (lower() >= asked) {
            return Outcome.HOLDS;
        }
        return upper() < asked ? Outcome.DOES_NOT_HOLD : Outcome.CANNOT_BE_TOLD;
    }

    Verdict verdict(double asked) {
        Outcome outcome = outcome(asked);
        if (count() == 0) {
            return new Verdict(
                    outcome,
                    Sentence.words("No flight with drawn tolerances was flown yet"),
                    Optional.empty(),
                    List.of());
        }
        Sentence sentence =
                Sentence.start()
                        .then(Measure.COUNT, well)
                        .then(" of ")
                        .then(Measure.COUNT, count())
                        .then(" flights kept every limit of the profile: ")
                        .then(Measure.PERCENT, share(), band())
                        .then("; asked is ")
                        .then(Measure.PERCENT, asked);
        return new Verdict(
                outcome,
                outcome == Outcome.CANNOT_BE_TOLD ? sentence.then(wouldTell(asked)) : sentence,
                Optional.empty(),
                List.of());
    }

    /** How many flights would tell, if the share stayed what it is. */
    private Sentence wouldTell(double asked) {
        if (untold > 0 && new WellShare(well, failed, 0).outcome(asked) != outcome(asked)) {
            return Sentence.start()
                    .then("; ")
                    .then(Measure.COUNT, untold)
                    .then(" that cannot be told leave it open");
        }
        for (double n = count() * 1.25; n <= MOST; n *= 1.25) {
            int more = (int) n;
            int same = (int) Math.round(more * share());
            if (new WellShare(same, more - same, 0).outcome(asked) != Outcome.CANNOT_BE_TOLD) {
                return Sentence.start()
                        .then("; some ")
                        .then(Measure.COUNT, more)
                        .then(" flights would tell, if the share stayed so");
            }
        }
        return Sentence.words("; no number of flights that could be flown would tell");
    }
}
