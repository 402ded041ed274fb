package liftwright.trials.predict;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.numerics.Work;
import liftwright.rig.Rig;
import liftwright.trials.Abort;
import liftwright.trials.Planned;

/**
 * What the instruments of a card will show, and where to stop.
 *
 * @param steps one for each step of the run, in order; none where nothing turns
 * @param aborts one for each limit that is watched
 * @param stopping how long a stop takes
 * @param notes what the numbers rest on and what they do not tell
 * @param draws of the declared doubt that the bands rest on; 0 where there are declared values
 *     alone
 */
public record Predictions(
        List<StepReadings> steps,
        List<Abort> aborts,
        Stopping stopping,
        List<String> notes,
        int draws) {

    /** Draws that the bands rest on: a heated run costs a hundred times what a lift costs. */
    public static final int DRAWS = 256;

    public Predictions {
        steps = List.copyOf(steps);
        aborts = List.copyOf(aborts);
        notes = List.copyOf(notes);
    }

    /** The same without the readings of these fields; where to stop is not touched. */
    public Predictions withoutReadings(Set<String> fields) {
        return new Predictions(
                steps.stream().map(step -> step.withoutReadings(fields)).toList(),
                aborts,
                stopping,
                notes,
                draws);
    }

    /**
     * Computes them.
     *
     * @param conditions air and packs of the day
     * @param seed of every draw; the same seed gives the same on any number of threads
     * @param threads worker threads, ≥ 1
     * @return empty when it was stopped
     */
    public static Optional<Predictions> of(
            Rig rig, Planned card, Conditions conditions, long seed, int threads, Work work) {
        return of(rig, card, conditions, Stopping.of(rig), seed, threads, work);
    }

    /**
     * The same with another time to stop, as measured on the day.
     *
     * @param stopping from a reading until nothing drives the fans
     */
    public static Optional<Predictions> of(
            Rig rig,
            Planned card,
            Conditions conditions,
            Stopping stopping,
            long seed,
            int threads,
            Work work) {
        if (card.run().isEmpty()) {
            return Optional.of(new Predictions(List.of(), List.of(), stopping, List.of(), 0));
        }
        return new Prediction(rig, card.run().get(), conditions, seed)
                .bands(stopping, threads, work);
    }
}
