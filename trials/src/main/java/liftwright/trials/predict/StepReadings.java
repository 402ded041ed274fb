package liftwright.trials.predict;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.trials.Reading;
import liftwright.trials.Run;

/**
 * What the instruments show in one step.
 *
 * @param ordered what is ordered
 * @param endS when it ends, s since the start of the run
 * @param readings at its end; none where it is cut
 * @param worst the worst within it, of what has a limit; none where it is cut
 * @param cut why it must not be run as planned; empty where it may
 * @param notes what else is to be known
 */
public record StepReadings(
        Run.Step ordered,
        double endS,
        List<Reading> readings,
        List<Reading> worst,
        Optional<String> cut,
        List<String> notes) {

    public StepReadings {
        readings = List.copyOf(readings);
        worst = List.copyOf(worst);
        notes = List.copyOf(notes);
    }

    StepReadings withoutReadings(Set<String> fields) {
        return new StepReadings(
                ordered,
                endS,
                readings.stream().filter(one -> !fields.contains(one.channel().field())).toList(),
                worst,
                cut,
                notes);
    }
}
