package liftwright.flight.disperse;

import java.util.List;
import java.util.Optional;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.FlightPath;
import liftwright.flight.run.FlightSeries;
import liftwright.numerics.CounterStream;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.parameters.Range;

/**
 * Flights in closed form: a mass held by a spring that is drawn, a lag that is drawn and a wind. It
 * misses by the wind's pull over the stiffness, and is lost where the lag eats the damping.
 */
final class StandIn implements Flights {

    static final Profile.Limits LIMITS = new Profile.Limits(0.7, 3, 2, 1, 2);

    private final long seed;

    StandIn(long seed) {
        this.seed = seed;
    }

    static double deviate(long seed, String name, int number) {
        return number == 0 ? 0 : CounterStream.normal(seed, CounterStream.channel(name), number);
    }

    @Override
    public FlightOutcome fly(int number) {
        double wind = 3 + deviate(seed, "wind", number);
        double stiffness = 10 * Math.exp(0.2 * deviate(seed, "stiffness", number));
        double lag = 0.1 * (1 + 0.3 * deviate(seed, "lag", number));
        if (lag < 0.03) {
            throw new ImpossibleValueException("lag", lag, Range.POSITIVE);
        }
        double miss = wind * wind / stiffness;
        boolean lost = lag > 0.125;
        double time = 20 * (1 + lag);
        return new FlightOutcome(
                number,
                lost ? FlightOutcome.End.LOST : FlightOutcome.End.LANDED,
                time,
                new FlightOutcome.Figures(
                        miss,
                        1.5 * miss,
                        lag,
                        Math.atan(miss / 9.81),
                        1.2 * miss,
                        lag / 2,
                        1e5 / stiffness,
                        0.5,
                        0.3,
                        18,
                        0),
                Optional.empty(),
                lost
                        ? List.of(
                                new Profile.Abort(Profile.Watch.TILT, 0.7, Profile.Then.MAKE_DEAD))
                        : List.of(),
                List.of(),
                new FlightSeries(new double[0], List.of()),
                FlightPath.none(),
                List.of(),
                List.of(),
                true);
    }
}
