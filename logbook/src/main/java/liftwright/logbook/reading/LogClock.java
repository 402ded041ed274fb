package liftwright.logbook.reading;

/** How times are read. */
sealed interface LogClock {

    /**
     * A number.
     *
     * @param unitS its unit, s
     * @param epoch whether it counts from 1970
     */
    record Count(double unitS, boolean epoch) implements LogClock {}

    /** Hours, minutes and seconds of a day. */
    record OfDay() implements LogClock {}

    /** With a date. */
    record Dated() implements LogClock {}

    static LogClock of(TimeForm form) {
        return switch (form) {
            case SECONDS -> new Count(1, false);
            case MILLISECONDS -> new Count(1e-3, false);
            case MICROSECONDS -> new Count(1e-6, false);
            case MINUTES -> new Count(60, false);
            case CLOCK -> new OfDay();
            case DATE_AND_CLOCK -> new Dated();
            case EPOCH_SECONDS -> new Count(1, true);
            case EPOCH_MILLISECONDS -> new Count(1e-3, true);
        };
    }

    default String told() {
        return switch (this) {
            case Count(var unit, var epoch) ->
                    (unit == 1
                                    ? "seconds"
                                    : unit == 1e-3
                                            ? "milliseconds"
                                            : unit == 1e-6
                                                    ? "microseconds"
                                                    : unit == 60 ? "minutes" : unit + " s each")
                            + (epoch ? " since 1970" : "");
            case OfDay _ -> "clock times of a day";
            case Dated _ -> "dates and clock times";
        };
    }
}
