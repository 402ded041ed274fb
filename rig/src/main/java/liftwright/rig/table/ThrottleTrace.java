package liftwright.rig.table;

import java.util.List;

/**
 * What is commanded over time, in place of a steady hover. Between rows a command runs straight;
 * after the last it stays.
 *
 * @param file as it was named
 * @param command what the columns command
 * @param groups control group of each column; empty when the only column is for the whole rig
 * @param rows at least two, time rising
 */
public record ThrottleTrace(String file, Command command, List<String> groups, List<Row> rows) {

    /** What a trace may command. */
    public enum Command {
        /** Share of full throttle, 0 to 1. */
        THROTTLE,
        /** Upward thrust of the whole rig, N, at least 0; has no groups. */
        LIFT
    }

    public ThrottleTrace {
        groups = List.copyOf(groups);
        rows = List.copyOf(rows);
        if (rows.size() < 2) {
            throw new IllegalArgumentException("a trace has two rows or more");
        }
        if (command == Command.LIFT && !groups.isEmpty()) {
            throw new IllegalArgumentException("a lift is that of the whole rig");
        }
        int columns = Math.max(1, groups.size());
        if (rows.stream().anyMatch(row -> row.values().size() != columns)) {
            throw new IllegalArgumentException("a row has " + columns + " values");
        }
    }

    /**
     * The commands at one time.
     *
     * @param line of the file, from 1
     * @param timeS s, more than in the row before; 0 is the start of the flight
     * @param values one a group, or the only one; unit by {@link Command}
     */
    public record Row(int line, double timeS, List<Double> values) {
        public Row {
            values = List.copyOf(values);
        }
    }
}
