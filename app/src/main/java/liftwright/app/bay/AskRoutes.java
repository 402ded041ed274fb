package liftwright.app.bay;

import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import liftwright.review.Stage;
import liftwright.rig.Change;
import liftwright.rig.file.RigReading;
import org.jspecify.annotations.Nullable;

/**
 * {@code ask}: answers about a rig as it stands, as far as wanted; {@code try}: the declared values
 * of a rig with changes, while something is dragged. Each has a lane of its own in each tab, in
 * which the newest request stops the one before, and what is tried has the right of way.
 */
final class AskRoutes {

    /** How often it is told how far a long answer is. */
    static final Duration PROGRESS = Duration.ofMillis(250);

    private final Readings readings;
    private final String version;
    private final Duration progress;
    private final Consumer<Throwable> faults;
    private final Lanes asking = new Lanes();
    private final Lanes trying = new Lanes();
    private final RightOfWay way = new RightOfWay();

    /**
     * @param version of the program
     * @param progress how often it is told how far an answer is
     * @param faults is told what went wrong by a mistake of ours
     */
    AskRoutes(Readings readings, String version, Duration progress, Consumer<Throwable> faults) {
        this.readings = readings;
        this.version = version;
        this.progress = progress;
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
                    asking.run(call.session(), turn, work, () -> answer(asked, work, lines));
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
            new Answering(before, version, work, lines, faults).run();
            return;
        }
        switch (before.reading().with(changes)) {
            case RigReading.Edit.Changed(var changed, var _) ->
                    answer(
                            new Asked(changed, before.questions(), before.units(), before.to()),
                            work,
                            lines);
            case RigReading.Edit.Refused(var change, var reason) ->
                    new Answering(before, version, work, lines, faults)
                            .refuse(change.at() + " cannot be changed: " + reason);
        }
    }

    /**
     * Computes on a thread of its own: a request's thread is one of few that all requests share,
     * and only waits here and tells how far it is.
     */
    private void answer(Asked asked, AskedWork work, Lines lines) {
        var answering = new Answering(asked, version, work, lines, faults);
        var failed = new AtomicReference<@Nullable Throwable>();
        Thread computing =
                Thread.ofPlatform()
                        .daemon()
                        .name("answering")
                        .uncaughtExceptionHandler((_, failure) -> failed.set(failure))
                        .start(answering::run);
        try {
            while (!computing.join(progress)) {
                answering.tellProgress();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            work.stop();
        }
        switch (failed.get()) {
            case null -> {}
            case RuntimeException failure -> throw failure;
            case Error error -> throw error;
            case Throwable other -> throw new IllegalStateException(other);
        }
    }
}
