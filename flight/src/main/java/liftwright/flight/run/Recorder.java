package liftwright.flight.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import liftwright.flight.run.FlightSeries.Kind;

/** Keeps every so-manieth moment of a flight. Allocates nothing once it is made. */
final class Recorder {

    private final double everyS;
    private final double[] moments;
    private final Map<Kind, double[]> values = new EnumMap<>(Kind.class);
    private int kept;

    /**
     * @param lastsS how long the flight may last
     * @param most moments that are kept
     */
    Recorder(double lastsS, int most) {
        everyS = Math.max(0.02, lastsS / (most - 2));
        int room = (int) Math.ceil(lastsS / everyS) + 3;
        moments = new double[room];
        for (Kind kind : Kind.values()) {
            values.put(kind, new double[room]);
        }
    }

    /** Opens a row where the next is due. */
    boolean isDue(double timeS) {
        return kept < moments.length && (kept == 0 || timeS >= moments[kept - 1] + everyS - 1e-9);
    }

    void row(double timeS) {
        moments[kept++] = timeS;
    }

    void put(Kind kind, double value) {
        double[] row = values.get(kind);
        if (row != null) {
            row[kept - 1] = value;
        }
    }

    FlightSeries series() {
        List<FlightSeries.Channel> channels = new ArrayList<>();
        values.forEach(
                (kind, row) ->
                        channels.add(new FlightSeries.Channel(kind, Arrays.copyOf(row, kept))));
        return new FlightSeries(Arrays.copyOf(moments, kept), channels);
    }
}
