package liftwright.flight.ask;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.FlightOutcome.Figures;

/**
 * Whether so few drawn flights as an answer has can say that flights to come keep their limits.
 *
 * <p>A dozen that went well bears out no more than that most do. That nineteen in twenty stay below
 * a limit is told where mean and spread of the dozen leave room for it: the one-sided tolerance
 * bound of a normal sample, mean + k s. It takes figures to be spread about normally; rare ways to
 * be lost are not in it, and {@code disperse} counts those.
 */
final class Clearance {

    /**
     * Of 12 values, to hold 95 % of all with 95 % confidence: 2.736 standard deviations; tables of
     * one-sided normal tolerance limits, from memory, held by a test against its definition.
     */
    static final double K_OF_TWELVE = 2.736;

    private record Limited(String what, ToDoubleFunction<Figures> figure, double limit) {}

    private Clearance() {}

    /**
     * The figure that comes nearest beyond its limit; empty where all clear them.
     *
     * @param drawn {@link FlightQuestion#DRAWN} flights
     */
    static Optional<String> near(Profile.Limits limits, List<FlightOutcome> drawn) {
        return List.of(
                        new Limited("tilt", Figures::tiltRad, limits.tiltRad()),
                        new Limited("drift", Figures::driftM, limits.driftM()),
                        new Limited("height lost", Figures::heightLostM, limits.heightLostM()),
                        new Limited("miss", Figures::missM, limits.missM()),
                        new Limited("landing", Figures::landingMps, limits.landingMps()))
                .stream()
                .filter(one -> bound(one.figure, drawn) > one.limit)
                .map(Limited::what)
                .findFirst();
    }

    private static double bound(ToDoubleFunction<Figures> figure, List<FlightOutcome> drawn) {
        double[] values = drawn.stream().map(FlightOutcome::figures).mapToDouble(figure).toArray();
        double mean = 0;
        for (double value : values) {
            mean += value / values.length;
        }
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return mean + K_OF_TWELVE * Math.sqrt(squares / (values.length - 1));
    }
}
