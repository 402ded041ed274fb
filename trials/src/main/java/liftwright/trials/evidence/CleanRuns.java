package liftwright.trials.evidence;

import java.util.Locale;
import liftwright.numerics.ProportionInterval;

/**
 * What runs in a row without a failure show, and what they do not: none of 29 shows that at least
 * 90 in 100 go well, at 95 % confidence.
 *
 * @param runs clean ones in a row, ≥ 0
 * @param reliability shown: in truth at least so many of all runs go well, 0 to 1
 */
public record CleanRuns(int runs, double reliability) {

    /** One-sided confidence of what is told. */
    public static final double CONFIDENCE = 0.95;

    /**
     * The exact (Clopper–Pearson) bound for runs that were alike and told nothing of each other; it
     * holds for runs like these and for nothing else.
     */
    public static CleanRuns of(int runs) {
        // One-sided at 95 % is one end of a two-sided interval at 90 %.
        double lower =
                runs == 0
                        ? 0
                        : ProportionInterval.clopperPearson(runs, runs, 2 * CONFIDENCE - 1).lower();
        return new CleanRuns(runs, lower);
    }

    /** Fewest clean runs that show a reliability. */
    public static int needed(double reliability) {
        return ProportionInterval.trialsWithoutFailure(reliability, CONFIDENCE);
    }

    /** For a sentence, without an end mark. */
    public String clause() {
        return String.format(
                Locale.ROOT,
                "%d clean run%s in a row (which show%s that at least %.0f %% of such runs go well,"
                        + " at %.0f %% confidence)",
                runs,
                runs == 1 ? "" : "s",
                runs == 1 ? "s" : "",
                Math.floor(100 * reliability),
                100 * CONFIDENCE);
    }
}
