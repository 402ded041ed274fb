package liftwright.logbook.reading;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.logbook.engine.Engine;
import liftwright.rig.Problem;
import liftwright.rig.Rig;

/** Reads logs in. */
public final class LogReading {

    /** Most files of one test. */
    public static final int MOST_SOURCES = 50;

    private LogReading() {}

    /**
     * Reads the files of one test. The Parquet files and the files of rejected rows lie in the
     * engine's {@link Engine#scratch() scratch folder}: move them before it is closed.
     *
     * @param sources at least one; the clock of the first is that of the test
     * @param map how their heads are called here
     * @param rig whose parts they name
     * @throws IOException if a file cannot be read or the engine fails; what is wrong with what
     *     stands in the files is told in {@link LogOutcome.Refused}
     */
    public static LogOutcome read(List<Source> sources, LogMap map, Rig rig, Engine engine)
            throws IOException {
        if (sources.isEmpty() || sources.size() > MOST_SOURCES) {
            throw new IllegalArgumentException(sources.size() + " sources");
        }
        var parts = new PartNames(rig);
        var problems = new ArrayList<Problem>();
        var notes = new ArrayList<Note>();
        var tables = new ArrayList<Clocked>();
        var rejected = new ArrayList<Rejected>();
        for (int k = 0; k < sources.size(); k++) {
            var log = new OneLog(sources.get(k), engine.fresh(), map, parts, engine);
            Optional<OneLog.Done> done = log.read();
            problems.addAll(log.faults().inOrder());
            notes.addAll(log.notes());
            if (done.isPresent()) {
                tables.add(done.get().table());
                done.get().rejected().ifPresent(rejected::add);
            }
        }
        if (!problems.isEmpty()) {
            return new LogOutcome.Refused(problems);
        }
        return new LogOutcome.Read(
                new Imported(new Alignment(engine, notes).align(tables), rejected, notes));
    }
}
