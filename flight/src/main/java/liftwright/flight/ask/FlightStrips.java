package liftwright.flight.ask;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.answer.Section.Strips;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.FlightSeries;
import liftwright.flight.run.FlightSeries.Kind;

/** The flight over time, beside the band of the drawn ones. */
final class FlightStrips {

    private static final int MOST = 600;

    private static final List<Kind> SHOWN =
            List.of(
                    Kind.HEIGHT,
                    Kind.FORWARD,
                    Kind.RIGHT,
                    Kind.TILT,
                    Kind.HEADING,
                    Kind.CLIMB,
                    Kind.THRUST,
                    Kind.GREATEST_DUTY,
                    Kind.PACK_CURRENT,
                    Kind.LEAST_CELL,
                    Kind.CHARGE);

    private FlightStrips() {}

    static Strips of(FlightOutcome shown, List<FlightOutcome> drawn) {
        FlightSeries series = shown.series();
        int every = 1 + series.timesS().length / MOST;
        List<Strips.Strip> strips = new ArrayList<>();
        for (Kind kind : SHOWN) {
            strips.add(strip(kind, series, drawn, every));
        }
        if (!shown.path().lines().isEmpty()) {
            strips.add(strip(Kind.PULL, series, drawn, every));
        }
        List<Strips.Event> events =
                shown.events().stream()
                        .map(event -> new Strips.Event(event.timeS(), event.words(), event.part()))
                        .toList();
        return new Strips(
                "flight-strips", "The flight beside the band of drawn flights", strips, events);
    }

    private static Strips.Strip strip(
            Kind kind, FlightSeries series, List<FlightOutcome> drawn, int every) {
        List<Double> times = new ArrayList<>();
        List<Double> shown = new ArrayList<>();
        List<Double> middle = new ArrayList<>();
        List<Double> low = new ArrayList<>();
        List<Double> high = new ArrayList<>();
        double[] own = series.of(kind);
        double[] others = new double[drawn.size()];
        for (int k = 0; k < own.length; k += every) {
            double timeS = series.timesS()[k];
            times.add(timeS);
            shown.add(own[k]);
            for (int i = 0; i < others.length; i++) {
                others[i] = at(drawn.get(i).series(), kind, timeS);
            }
            NextFlight next =
                    others.length > 1
                            ? NextFlight.of(others)
                            : new NextFlight(own[k], 0, others.length);
            middle.add(next.mean());
            low.add(Math.max(least(kind), next.low()));
            high.add(Math.min(greatest(kind), next.high()));
        }
        return new Strips.Strip(
                kind.words(), field(kind), "", kind.words(), times, shown, middle, low, high);
    }

    /** What the quantity cannot be below. */
    private static double least(Kind kind) {
        return switch (kind) {
            case HEIGHT, TILT, THRUST, GREATEST_DUTY, CHARGE, PULL -> 0;
            case FORWARD,
                    RIGHT,
                    WANTED_FORWARD,
                    WANTED_RIGHT,
                    WANTED_HEIGHT,
                    ROLL,
                    PITCH,
                    HEADING,
                    CLIMB,
                    PACK_CURRENT,
                    LEAST_CELL ->
                    Double.NEGATIVE_INFINITY;
        };
    }

    private static double greatest(Kind kind) {
        return kind == Kind.GREATEST_DUTY || kind == Kind.CHARGE ? 1 : Double.POSITIVE_INFINITY;
    }

    /** Straight between two moments; after its end a flight stays as it was. */
    private static double at(FlightSeries series, Kind kind, double timeS) {
        double[] times = series.timesS();
        double[] values = series.of(kind);
        int found = Arrays.binarySearch(times, timeS);
        int after = found >= 0 ? found : -found - 1;
        if (after <= 0) {
            return values[0];
        }
        if (after >= times.length) {
            return values[times.length - 1];
        }
        double share = (timeS - times[after - 1]) / (times[after] - times[after - 1]);
        return values[after - 1] + share * (values[after] - values[after - 1]);
    }

    private static String field(Kind kind) {
        return switch (kind) {
            case FORWARD, RIGHT, HEIGHT, WANTED_FORWARD, WANTED_RIGHT, WANTED_HEIGHT ->
                    "flight-length";
            case TILT, ROLL, PITCH, HEADING -> "flight-angle";
            case CLIMB -> "flight-speed";
            case THRUST, PULL -> "flight-thrust";
            case GREATEST_DUTY, CHARGE -> "flight-share";
            case LEAST_CELL -> "flight-voltage";
            case PACK_CURRENT -> "flight-current";
        };
    }
}
