package liftwright.flight.run;

import liftwright.flight.profile.Course;
import liftwright.flight.profile.Profile;

/** What a flight is judged by, added up as it goes. Allocates nothing. */
final class Score {

    private static final double LAST_S = 1;

    private final Course course;
    private final int lastHold;

    double heightLostM;
    double tiltRad;
    double driftM;
    double landingMps;
    double airS;
    double energyJ;
    private double saturatedS;
    private double impulseNs;
    private double beyondLawNs;
    private double missSum;
    private double missS;
    private double worstMissM;
    private double nowMissM;

    Score(Course course) {
        this.course = course;
        int found = -1;
        for (int leg = 0; leg < course.legs(); leg++) {
            if (course.step(leg) instanceof Profile.Step.Hold) {
                found = leg;
            }
        }
        lastHold = found;
    }

    /**
     * A tick in the air.
     *
     * @param leg of the course
     * @param ended whether an abort took the flight off its course
     * @param point set point, as the course tells it
     */
    void air(
            double timeS,
            double dtS,
            int leg,
            boolean ended,
            double[] point,
            double x,
            double y,
            double heightM,
            double tilt,
            boolean saturated) {
        airS += dtS;
        tiltRad = Math.max(tiltRad, tilt);
        saturatedS += saturated ? dtS : 0;
        double squareM2 = (x - point[0]) * (x - point[0]) + (y - point[1]) * (y - point[1]);
        double across = Math.sqrt(squareM2);
        double below = Math.max(0, point[2]) - heightM;
        driftM = Math.max(driftM, across);
        heightLostM = Math.max(heightLostM, below);
        nowMissM = Math.sqrt(squareM2 + below * below);
        if (!ended && leg == lastHold && timeS >= course.endS(leg) - LAST_S) {
            missSum += nowMissM * dtS;
            missS += dtS;
            worstMissM = Math.max(worstMissM, nowMissM);
        }
    }

    /** Sink at a touch-down. */
    void touch(double sinkMps) {
        landingMps = Math.max(landingMps, sinkMps);
    }

    /** Impulse of a tick in the air: of all fans, and of those beyond their law. */
    void thrust(double allNs, double beyondNs) {
        impulseNs += allNs;
        beyondLawNs += beyondNs;
    }

    private double beyondLawShare() {
        return impulseNs > 0 ? beyondLawNs / impulseNs : 0;
    }

    void energy(double joule) {
        energyJ += joule;
    }

    /** Where no hold was reached, the distance at the end of the flight counts as the miss. */
    FlightOutcome.Figures figures(double chargeLeft) {
        boolean held = missS > 0;
        boolean wanted = lastHold >= 0;
        double miss = held ? missSum / missS : wanted ? nowMissM : 0;
        return new FlightOutcome.Figures(
                miss,
                held ? worstMissM : miss,
                heightLostM,
                tiltRad,
                driftM,
                airS > 0 ? saturatedS / airS : 0,
                energyJ,
                chargeLeft,
                landingMps,
                airS,
                beyondLawShare());
    }
}
