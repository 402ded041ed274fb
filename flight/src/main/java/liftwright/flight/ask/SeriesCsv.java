package liftwright.flight.ask;

import java.util.Locale;
import liftwright.flight.run.FlightSeries;

/** A flight as a table: one row a moment, units in the head. */
public final class SeriesCsv {

    private SeriesCsv() {}

    public static String of(FlightSeries series) {
        StringBuilder out = new StringBuilder("time [s]");
        for (FlightSeries.Channel channel : series.channels()) {
            out.append(',').append(channel.kind().words());
            out.append(" [").append(channel.kind().unit()).append(']');
        }
        out.append('\n');
        for (int k = 0; k < series.timesS().length; k++) {
            out.append(String.format(Locale.ROOT, "%.4f", series.timesS()[k]));
            for (FlightSeries.Channel channel : series.channels()) {
                out.append(String.format(Locale.ROOT, ",%.6g", channel.values()[k]));
            }
            out.append('\n');
        }
        return out.toString();
    }
}
