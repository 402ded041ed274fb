package liftwright.rig.table;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was logged while kills were pressed on a running fan.
 *
 * @param file as it was named
 * @param signal what was logged
 * @param filterS time constant of the smoothing in the instrument, s; empty where nobody said
 * @param rows at least two, time rising
 */
public record KillLog(String file, Signal signal, OptionalDouble filterS, List<Row> rows) {

    /** What tells whether thrust is left. */
    public enum Signal {
        THRUST("thrust"),
        /** Of the pack or of one controller. */
        CURRENT("current"),
        /** Of one rotor. */
        SPEED("speed");

        private final String word;

        Signal(String word) {
            this.word = word;
        }

        /** As the column is called. */
        public String word() {
            return word;
        }
    }

    public KillLog {
        rows = List.copyOf(rows);
        if (rows.size() < 2) {
            throw new IllegalArgumentException("a log has two rows or more");
        }
    }

    /**
     * One moment.
     *
     * @param line of the file, from 1
     * @param timeS s, more than in the row before
     * @param value N, A or rad/s; empty where the reading dropped out
     * @param pressed name of the way to stop that is pressed at this time
     */
    public record Row(int line, double timeS, OptionalDouble value, Optional<String> pressed) {}
}
