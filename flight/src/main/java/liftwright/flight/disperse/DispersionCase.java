package liftwright.flight.disperse;

import java.util.function.Function;
import liftwright.answer.Sentence;
import liftwright.flight.profile.Profile;

/**
 * What is asked of many flights.
 *
 * @param set what was flown
 * @param limits of the profile
 * @param askedShare of the flights that shall keep every limit, in (0, 1)
 * @param askedOrigin where that share comes from
 * @param state what was flown, in words
 * @param replay the command that flies one flight again, without its number
 * @param drivers gives what was drawn in the flights of some numbers
 */
public record DispersionCase(
        FlightSet set,
        Profile.Limits limits,
        double askedShare,
        String askedOrigin,
        Sentence state,
        String replay,
        Function<int[], DriverValues> drivers) {

    public DispersionCase {
        if (!(askedShare > 0 && askedShare < 1)) {
            throw new IllegalArgumentException(
                    "a share of the flights lies between 0 and 1, not " + askedShare);
        }
    }
}
