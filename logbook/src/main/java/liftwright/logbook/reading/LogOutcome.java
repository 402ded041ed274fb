package liftwright.logbook.reading;

import java.util.List;
import liftwright.rig.Problem;

/** What came of reading logs in: all of them, or everything that is wrong. */
public sealed interface LogOutcome {

    /**
     * @param imported every source
     */
    record Read(Imported imported) implements LogOutcome {}

    /**
     * Nothing was read in.
     *
     * @param problems at least one, each at its place in its file
     */
    record Refused(List<Problem> problems) implements LogOutcome {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
