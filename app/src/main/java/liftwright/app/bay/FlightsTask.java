package liftwright.app.bay;

import java.util.List;
import java.util.Optional;
import liftwright.answer.AnswerJson;
import liftwright.app.flights.FlightsFile;
import liftwright.app.flights.ManyFlights;
import liftwright.app.job.JobTask;
import liftwright.flight.disperse.FlightRange;
import liftwright.flight.disperse.FlightSet;
import liftwright.flight.disperse.FlightsOf;
import liftwright.quantity.UnitSystem;
import liftwright.report.ReaderTexts;

/**
 * Many flights, as the verb {@code disperse} flies them, into a file of its format.
 *
 * @param of which flights
 * @param wanted 1 to this number
 * @param file that keeps them
 */
record FlightsTask(
        ManyFlights flights,
        FlightsOf of,
        int wanted,
        FlightsFile file,
        String rigName,
        JobTasks tasks)
        implements JobTask {

    /** What a program that dies loses at most. */
    private static final long PAUSE_NS = 1_000_000_000L;

    @Override
    public boolean run(Progress work) {
        if (flights.refusal().isPresent()) {
            throw new NoAnswerException(
                    "Nothing can be flown with this rig: its answer to this question says why.");
        }
        FlightSet kept = kept();
        var range = new FlightRange(of, 1, wanted);
        return flights.fly(
                        range,
                        kept,
                        file,
                        new ManyFlights.Pace(JobTasks.threads(), 1, PAUSE_NS),
                        whole(work, wanted))
                .whole();
    }

    private FlightSet kept() {
        return FlightsFile.together(of, file.named(), file.read().stream().toList(), List.of());
    }

    /** Counts what was flown before as done. */
    private static Progress whole(Progress work, int wanted) {
        return new Progress() {
            @Override
            public void stage(String name, long total) {
                work.stage(name, wanted);
                work.already(wanted - total);
            }

            @Override
            public void already(long units) {
                work.already(units);
            }

            @Override
            public void done(long units) {
                work.done(units);
            }

            @Override
            public boolean stopped() {
                return work.stopped();
            }
        };
    }

    @Override
    public Optional<String> document(UnitSystem units) {
        return Optional.of(
                AnswerJson.write(
                        flights.answer(kept(), ManyFlights.USUAL_SHARE, "common practice"),
                        rigName,
                        tasks.version(),
                        new ReaderTexts(units)));
    }
}
