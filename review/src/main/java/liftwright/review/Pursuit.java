package liftwright.review;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Outcome;
import liftwright.numerics.Work;
import liftwright.quantity.Band;

/**
 * Decides whether a number meets a demand for at least so much. The demand is met when the lower
 * end of the two-sided 95 % band clears it, missed when the upper end stays below it, and otherwise
 * cannot be told (JCGM 106). An end that lies within two of its own Monte-Carlo errors of the
 * demand is pursued with four times the draws, up to the most allowed; what is still as close then
 * cannot be told.
 *
 * @param sample what was pursued
 * @param outcome what the numbers say
 * @param draws used
 * @param unproven why what the numbers say may not rest on corrections; empty where it may
 * @param <S> what is judged
 */
record Pursuit<S extends Sample<?>>(
        S sample, Outcome outcome, int draws, Optional<String> unproven) {

    /** What rests on no correction that needs its evidence. */
    Pursuit(S sample, Outcome outcome, int draws) {
        this(sample, outcome, draws, Optional.empty());
    }

    private static final double CLOSE = 2.0;

    /** As far as a stage goes; empty when the work was stopped. */
    static <S extends Sample<?>> Optional<Pursuit<S>> of(
            Stage stage, S sample, double demand, Settings settings, Work work) {
        return switch (stage) {
            case NOMINAL -> Optional.of(new Pursuit<>(sample, Outcome.NOT_JUDGED, 0));
            case BANDED -> first(sample, demand, settings, work);
            case WHOLE -> whole(sample, demand, settings, work);
        };
    }

    /** Only what the first draws tell for certain. */
    private static <S extends Sample<?>> Optional<Pursuit<S>> first(
            S sample, double demand, Settings settings, Work work) {
        int draws = Math.min(Stage.FIRST_DRAWS, settings.firstDraws());
        if (!sample.extendTo(draws, work)) {
            return Optional.empty();
        }
        Band band = Bands.of(sample.values(draws));
        double doubt = CLOSE * band.monteCarloError();
        Outcome outcome =
                band.low() - doubt >= demand
                        ? Outcome.HOLDS
                        : band.high() + doubt < demand ? Outcome.DOES_NOT_HOLD : Outcome.NOT_JUDGED;
        return Optional.of(new Pursuit<>(sample, outcome, draws));
    }

    private static <S extends Sample<?>> Optional<Pursuit<S>> whole(
            S sample, double demand, Settings settings, Work work) {
        int draws = settings.firstDraws();
        while (true) {
            if (!sample.extendTo(draws, work)) {
                return Optional.empty();
            }
            Band band = Bands.of(sample.values(draws));
            double doubt = CLOSE * band.monteCarloError();
            if (band.low() - doubt >= demand) {
                return Optional.of(new Pursuit<>(sample, Outcome.HOLDS, draws));
            }
            if (band.high() + doubt < demand) {
                return Optional.of(new Pursuit<>(sample, Outcome.DOES_NOT_HOLD, draws));
            }
            boolean inside = band.low() + doubt < demand && band.high() - doubt >= demand;
            if (inside || draws >= settings.mostDraws()) {
                return Optional.of(new Pursuit<>(sample, Outcome.CANNOT_BE_TOLD, draws));
            }
            draws = Math.min(4 * draws, settings.mostDraws());
        }
    }

    /** Draws of those used that have no operating point. */
    int failed() {
        return sample.failed(draws);
    }

    /**
     * Why the outcome is lesser than the numbers, whatever the question; to be added to.
     *
     * @param nominalFound whether the declared values have an operating point
     */
    List<String> downgrades(boolean nominalFound) {
        List<String> reasons = Downgrades.of(sample.plant.rig(), nominalFound, failed(), draws);
        unproven.ifPresent(reasons::add);
        return reasons;
    }

    /**
     * After every downgrade.
     *
     * @param nominalSolved whether what is judged was solved at the declared values
     */
    Outcome outcome(boolean nominalSolved, List<String> downgrades) {
        return Downgrades.applied(outcome, !nominalSolved || failed() > 0, downgrades);
    }

    /** Of the judged number about what it is at the declared values. */
    Band band(double nominal) {
        return Bands.about(nominal, sample.values(draws));
    }
}
