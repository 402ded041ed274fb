package liftwright.flight.losses;

import liftwright.flight.profile.Profile;
import liftwright.flight.run.FlightOutcome;
import liftwright.review.failures.Asked;

/** What came of a flight with a loss. */
public enum Came {
    /** Recovered: in the air to the end, within height lost, tilt and drift. */
    RECOVERED("recovered"),
    /** Upright to the ground, and no faster than may be. */
    CAME_DOWN("came down upright"),
    /** Neither. */
    LOST("lost");

    /** Greatest tilt of a flight that recovers or comes down upright, rad; our own measure. */
    public static final double TILT_RAD = Math.PI / 4;

    /** Greatest level distance from the set point of a flight that recovers, m; our own measure. */
    public static final double DRIFT_M = 3;

    private final String words;

    Came(String words) {
        this.words = words;
    }

    /** As tables say it. */
    public String words() {
        return words;
    }

    static Came of(FlightOutcome flown, Profile.Limits limits, Asked asked) {
        FlightOutcome.Figures figures = flown.figures();
        boolean upright =
                flown.converged()
                        && flown.end() != FlightOutcome.End.LOST
                        && figures.tiltRad() < TILT_RAD;
        if (!upright) {
            return LOST;
        }
        boolean up = flown.end() == FlightOutcome.End.REACHED && figures.landingMps() == 0;
        if (up && figures.heightLostM() < limits.heightLostM() && figures.driftM() < DRIFT_M) {
            return RECOVERED;
        }
        return !up && figures.landingMps() <= asked.impactMps() ? CAME_DOWN : LOST;
    }
}
