package liftwright.flight.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.FlightPath;
import liftwright.flight.run.FlightSeries;
import org.junit.jupiter.api.Test;

/** What a dozen flights can say of those to come. */
class ClearanceTest {

    private static final Profile.Limits LIMITS = new Profile.Limits(0.5, 1.5, 0.5, 0.5, 0.8);

    private static FlightOutcome flight(double tiltRad, double driftM) {
        return new FlightOutcome(
                1,
                FlightOutcome.End.LANDED,
                20,
                new FlightOutcome.Figures(0.1, 0.1, 0.05, tiltRad, driftM, 0, 1e5, 0.5, 0.3, 18, 0),
                Optional.empty(),
                List.of(),
                List.of(),
                new FlightSeries(new double[0], List.of()),
                FlightPath.none(),
                List.of(),
                List.of(),
                true);
    }

    /** By the definition of a one-sided tolerance limit, on the JDK's own normal numbers. */
    @Test
    void theFactorHoldsNineteenInTwentyNineteenTimesInTwenty() {
        var random = new SplittableRandom(4711);
        int held = 0;
        int samples = 200_000;
        for (int k = 0; k < samples; k++) {
            double[] x = new double[FlightQuestion.DRAWN];
            double sum = 0;
            for (int i = 0; i < x.length; i++) {
                x[i] = random.nextGaussian();
                sum += x[i];
            }
            double mean = sum / x.length;
            double squares = 0;
            for (double each : x) {
                squares += Math.pow(each - mean, 2);
            }
            // 1.644854 is above 95 % of a standard normal.
            double bound = mean + Clearance.K_OF_TWELVE * Math.sqrt(squares / (x.length - 1));
            held += bound >= 1.644854 ? 1 : 0;
        }
        assertThat(held / (double) samples).isCloseTo(0.95, within(0.0025));
    }

    @Test
    void onlyWhatHasRoomForTheFlightsToComeClears() {
        List<FlightOutcome> calm = new ArrayList<>();
        List<FlightOutcome> wild = new ArrayList<>();
        for (int k = 0; k < FlightQuestion.DRAWN; k++) {
            calm.add(flight(0.3 + 0.002 * k, 1.0));
            wild.add(flight(0.3 + 0.002 * k, k % 2 == 0 ? 1.4 : 0.2)); // each of them well flown
        }
        assertThat(Clearance.near(LIMITS, calm)).isEmpty();
        assertThat(wild).allMatch(one -> one.isWell(LIMITS));
        assertThat(Clearance.near(LIMITS, wild)).contains("drift");
    }
}
