package liftwright.logbook.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a builder says of the files of an instrument: how its heads are called here.
 *
 * @param separator between cells; found where it is not told
 * @param decimal the decimal sign; likewise
 * @param headLine line of the heads, from 1; likewise
 * @param time the column of time; empty: it is called {@code time}
 * @param columns what other columns are
 * @param ignored heads that are not read and need not be told
 */
public record LogMap(
        Optional<Character> separator,
        Optional<Character> decimal,
        Optional<Integer> headLine,
        Optional<TimeColumn> time,
        List<MappedColumn> columns,
        Set<String> ignored) {

    /** Nothing is told: the heads are ours. */
    public static final LogMap NONE =
            new LogMap(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    Set.of());

    public LogMap {
        columns = List.copyOf(columns);
        ignored = Set.copyOf(ignored);
    }

    /**
     * The column of time.
     *
     * @param head as it stands in the file
     * @param form how times are written; found where it is not told
     */
    public record TimeColumn(String head, Optional<TimeForm> form) {}

    /**
     * A column and what it is here: value = (reading + offset) · factor in the unit, then SI.
     *
     * @param head as it stands in the file
     * @param name as a head of ours, without the unit: {@code current p.1}
     * @param unit of the reading; empty: as the head tells
     * @param factor on the reading
     * @param offset added to the reading before, in its unit
     * @param error 95 % of the instrument's errors are smaller, in the unit, ≥ 0
     * @param errorShare of the reading, ≥ 0
     */
    public record MappedColumn(
            String head,
            String name,
            Optional<String> unit,
            double factor,
            double offset,
            double error,
            double errorShare) {}
}
