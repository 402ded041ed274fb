package liftwright.logbook.reading;

import java.io.IOException;
import java.util.List;
import liftwright.logbook.engine.Engine;
import liftwright.rig.Rig;

/** Reads logs in. */
public final class LogReading {

    private LogReading() {}

    /**
     * Reads the files of one test. The Parquet files and the files of rejected rows lie in the
     * engine's {@link Engine#scratch() scratch folder}: move them before it is closed.
     *
     * @param sources at least one; the clock of the first is that of the test
     * @param map how their heads are called here
     * @param rig whose parts they name
     * @throws IOException if a file cannot be read or the engine fails; nothing of it is the fault
     *     of what stands in the files, which is told in {@link LogOutcome.Refused}
     */
    public static LogOutcome read(List<Source> sources, LogMap map, Rig rig, Engine engine)
            throws IOException {
        throw new IOException("not yet: " + sources + map + rig.name() + engine.pid());
    }
}
