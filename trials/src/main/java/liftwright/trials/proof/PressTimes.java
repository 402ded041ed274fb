package liftwright.trials.proof;

import java.util.List;
import liftwright.rig.table.KillLog;

/**
 * What one press of a log shows.
 *
 * @param path name of what was pressed
 * @param line of the press in the log, from 1
 * @param outcome its times, or why it has none
 * @param notes what makes the times wider, in words
 */
public record PressTimes(String path, int line, Outcome outcome, List<String> notes) {

    public PressTimes {
        notes = List.copyOf(notes);
    }

    /** What came of a press. */
    public sealed interface Outcome {

        /**
         * Thrust went.
         *
         * @param before what was read before the press: N, A or rad/s
         * @param half until half of the thrust was left
         * @param tenth until a tenth was left
         */
        record Timed(double before, Span half, Span tenth) implements Outcome {}

        /**
         * Thrust did not go, or not for good: the kill failed.
         *
         * @param reason in words
         */
        record Failed(String reason) implements Outcome {}

        /**
         * The log cannot tell.
         *
         * @param reason in words
         */
        record Untold(String reason) implements Outcome {}
    }

    /** All presses of a log, in its order. */
    public static List<PressTimes> of(KillLog log) {
        return new LogPresses(log).all();
    }
}
