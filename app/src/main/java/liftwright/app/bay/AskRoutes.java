package liftwright.app.bay;

import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import liftwright.review.Stage;
import liftwright.rig.Change;
import liftwright.rig.file.RigReading;

/**
 * {@code ask}: answers about a rig as it stands, as far as wanted; {@code try}: the declared values
 * of a rig with changes, while something is dragged. Each has a lane of its own in each tab, in
 * which the newest request stops the one before, and what is tried has the right of way.
 */
final class AskRoutes {

    /** How often it is told how far a long answer is. */
    static final Duration PROGRESS = Duration.ofMillis(250);

    private final Readings readings;
    private final OnRecord onRecord;
    private final String version;
    private final Computing computing;
    private final Consumer<Throwable> faults;
    private final Lanes asking = new Lanes();
    private final Lanes trying = new Lanes();
    private final RightOfWay way = new RightOfWay();

    /**
     * @param onRecord what trials rest on; keeps what is answered
     * @param version of the program
     * @param progress how often it is told how far an answer is
     * @param faults is told what went wrong by a mistake of ours
     */
    AskRoutes(
            Readings readings,
            OnRecord onRecord,
            String version,
            Duration progress,
            Consumer<Throwable> faults) {
        this.readings = readings;
        this.onRecord = onRecord;
        this.version = version;
        computing = new Computing(progress);
        this.faults = faults;
    }

    List<Route> routes() {
        return List.of(Route.of("ask", this::ask), Route.of("try", this::tryOut));
    }

    private Reply ask(Call call) {
        RigReading reading = readings.asked(call.body());
        Asked asked = Asked.of(call.body(), reading, Asked.stage(call.body().text("to")));
        OptionalDouble turn = Asked.turn(call.body());
        return Reply.lines(
                lines -> {
                    var work = new AskedWork(way::give);
                    lines.onGone(work::stop);
                    Answering answering = answering(asked, work, lines);
                    asking.run(
                            call.session(),
                            turn,
                            work,
                            answering::recall,
                            () -> compute(answering, work));
                });
    }

    private Reply tryOut(Call call) {
        RigReading reading = readings.asked(call.body());
        List<Change> changes = ChangesIn.of(call.body());
        Asked before = Asked.of(call.body(), reading, Stage.NOMINAL);
        OptionalDouble turn = Asked.turn(call.body());
        return Reply.lines(
                lines -> {
                    var work = new AskedWork(() -> {});
                    lines.onGone(work::stop);
                    trying.run(
                            call.session(),
                            turn,
                            work,
                            () -> way.first(() -> tried(before, changes, work, lines)));
                });
    }

    private void tried(Asked before, List<Change> changes, AskedWork work, Lines lines) {
        if (work.stopped()) { // a newer one came while this waited: it is not worth reading
            answering(before, work, lines).run();
            return;
        }
        switch (before.reading().with(changes)) {
            case RigReading.Edit.Changed(var changed, var _) ->
                    compute(answering(before.with(changed), work, lines), work);
            case RigReading.Edit.Refused(var change, var reason) ->
                    answering(before, work, lines)
                            .refuse(change.at() + " cannot be changed: " + reason);
        }
    }

    private void compute(Answering answering, AskedWork work) {
        computing.run(work, answering::run, answering::tellProgress);
    }

    private Answering answering(Asked asked, AskedWork work, Lines lines) {
        return new Answering(
                asked, onRecord, work, AnswerLines.of(lines, version, asked.units()), faults);
    }
}
