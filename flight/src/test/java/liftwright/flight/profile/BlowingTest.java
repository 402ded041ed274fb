package liftwright.flight.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import liftwright.flight.Examples;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Rig;
import liftwright.rig.Site;
import org.junit.jupiter.api.Test;

/** Whose wind blows in a flight. */
class BlowingTest {

    private static final String CALM =
            """
            liftwright profile: 1
            steps:
              - make live: 2 s
              - lift: {to: 1 m, at: 0.5 m/s}
              - hold: 5 s
            """;

    private final Rig rig = Examples.rig("curlew");

    private static Quantity of(double si) {
        return Quantity.exact(si, Dimension.NONE);
    }

    private Site site(Optional<Site.Wind> wind) {
        Site own = rig.site();
        return new Site(own.elevation(), own.temperature(), own.pressure(), own.humidity(), wind);
    }

    @Test
    void theProfilesOwnWindGoesFirst() {
        Profile own = Examples.profile(rig, CALM + "wind: {mean: 1 m/s, from: 90°}\n");
        Profile.Wind wind = Blowing.of(own, rig.site()).orElseThrow();
        assertThat(wind.meanMps()).isEqualTo(1);
        assertThat(wind.gustMps()).isZero();
    }

    /** A gust of 5 m/s in a wind of 3 adds 2; the hold begins after 2 s and 1 m at 0.5 m/s. */
    @Test
    void theSitesWindBlowsElseAndItsGustComesInTheHold() {
        var told =
                new Site.Wind(
                        of(3), Optional.of(of(5)), Optional.of(of(25)), Optional.of(of(Math.PI)));
        Profile.Wind wind =
                Blowing.of(Examples.profile(rig, CALM), site(Optional.of(told))).orElseThrow();
        assertThat(wind.meanMps()).isEqualTo(3);
        assertThat(wind.fromRad()).isEqualTo(Math.PI);
        assertThat(wind.gustMps()).isEqualTo(2);
        assertThat(wind.gustLengthM()).isEqualTo(25);
        assertThat(wind.gustAtS()).isCloseTo(2 + 2 + 1, within(1e-12));
        assertThat(wind.turbulent()).isTrue();
    }

    @Test
    void withoutEitherTheAirIsStill() {
        assertThat(Blowing.of(Examples.profile(rig, CALM), site(Optional.empty()))).isEmpty();
    }
}
