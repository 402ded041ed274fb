package liftwright.flight.profile;

import java.util.Optional;
import liftwright.rig.Site;

/**
 * What blows in a flight: what its profile says, or else what the site of the rig does.
 *
 * <p>A site does not say when its gust comes. It begins {@value #INTO_HOLD_S} s into the first
 * hold, where the flight should stand still; in a profile without a hold, at its start. What it
 * adds is its highest speed less the mean.
 */
public final class Blowing {

    /** From memory: until a start has settled. */
    private static final double INTO_HOLD_S = 1;

    /** Way over which a gust grows where none is declared, m; from memory, as in a profile. */
    private static final double USUAL_LENGTH_M = 30;

    private Blowing() {}

    /** Empty in still air. */
    public static Optional<Profile.Wind> of(Profile profile, Site site) {
        return profile.wind().or(() -> site.wind().map(wind -> ofSite(profile, wind)));
    }

    private static Profile.Wind ofSite(Profile profile, Site.Wind wind) {
        double mean = wind.mean().si();
        return new Profile.Wind(
                mean,
                wind.from().map(from -> from.si()).orElse(0.0),
                Math.max(0, wind.gust().map(gust -> gust.si()).orElse(mean) - mean),
                gustAtS(Course.of(profile)),
                wind.gustLength().map(way -> way.si()).orElse(USUAL_LENGTH_M),
                true);
    }

    private static double gustAtS(Course course) {
        for (int leg = 0; leg < course.legs(); leg++) {
            if (course.step(leg) instanceof Profile.Step.Hold) {
                return course.startS(leg) + INTO_HOLD_S;
            }
        }
        return 0;
    }
}
