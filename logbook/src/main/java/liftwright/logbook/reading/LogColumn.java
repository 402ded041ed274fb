package liftwright.logbook.reading;

/** What a column of a log is. */
sealed interface LogColumn {

    /** As it stands in the head. */
    String head();

    /** Where its head begins, from 1. */
    int column();

    /** The column of time. */
    record Time(String head, int column) implements LogColumn {}

    /**
     * A channel: SI = (reading + offset) · slope + zero.
     *
     * @param unit as written, for telling
     */
    record Read(
            String head,
            int column,
            Channel channel,
            String unit,
            double offset,
            double slope,
            double zero)
            implements LogColumn {}

    /** Not read. */
    record Left(String head, int column) implements LogColumn {}
}
