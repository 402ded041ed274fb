package liftwright.logbook.reading;

import java.util.List;

/**
 * How a log is to be read.
 *
 * @param line of the heads, from 1
 * @param separator between cells
 * @param decimal sign
 * @param clock how times are written
 * @param time number of the column of time, from 0
 * @param columns in the order of the file
 */
record LogHead(
        int line, char separator, char decimal, LogClock clock, int time, List<LogColumn> columns) {

    LogHead {
        columns = List.copyOf(columns);
    }

    List<LogColumn.Read> channels() {
        return columns.stream()
                .filter(LogColumn.Read.class::isInstance)
                .map(LogColumn.Read.class::cast)
                .toList();
    }
}
