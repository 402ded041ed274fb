package liftwright.app;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import liftwright.answer.Value;
import liftwright.answer.Value.Figure;
import liftwright.learning.replay.NotDrivenException;
import liftwright.learning.replay.Replay;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.StoredTest;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.rig.Rig;

/** The lift that each test of a logbook lacks, for its list. */
record LogLift(Options options, Supplier<Progress> progress) {

    /** Draws for each test: a list shall not be waited for; {@code explain} draws more. */
    private static final int DRAWS = 128;

    /** The latest so many tests. */
    private static final int MOST = 12;

    private static final int MOST_SAMPLES = 20_000;

    Function<StoredTest, Figure> of(RigSource source, Logbook logbook, List<StoredTest> tests)
            throws IOException {
        Map<EntryId, Figure> lifts = new HashMap<>();
        Progress shown = progress.get();
        try (Engine engine = LogVerb.engine(logbook)) {
            for (StoredTest test : tests.reversed()) {
                if (lifts.size() == MOST || shown.stopped()) {
                    break;
                }
                lifts.put(test.id(), lift(source, logbook, engine, test, shown));
            }
        } finally {
            shown.wipe();
        }
        return test ->
                lifts.getOrDefault(
                        test.id(), new Figure.NotComputed("the latest " + MOST + " are computed"));
    }

    private Figure lift(
            RigSource source, Logbook logbook, Engine engine, StoredTest test, Progress shown) {
        try {
            Optional<Rig> rig =
                    test.entry().rig().digest().equals(source.digest())
                            ? source.read().rig()
                            : logbook.rigOf(test).rig();
            if (rig.isEmpty()) {
                return new Figure.NotComputed("the rig does not read");
            }
            return Replay.lift(
                            rig.get().asDeclared(),
                            logbook.recording(test, engine::samples, MOST_SAMPLES),
                            options.seed().orElse(1),
                            DRAWS,
                            Runtime.getRuntime().availableProcessors(),
                            shown)
                    .<Figure>map(
                            lift -> Value.of("test-missing", lift.missingN(), lift.band()).figure())
                    .orElseGet(
                            () ->
                                    new Figure.NotComputed(
                                            shown.stopped() ? "stopped" : "no channel tells lift"));
        } catch (NotDrivenException e) {
            return new Figure.NotComputed("no throttle was recorded");
        } catch (NotToldException | ImpossibleValueException | IllegalArgumentException e) {
            return new Figure.NotComputed(String.valueOf(e.getMessage()));
        } catch (IOException e) {
            return new Figure.NotComputed("cannot be read: " + e.getMessage());
        }
    }
}
