package liftwright.flight.run;

import liftwright.flight.motion.BodyState;
import liftwright.flight.motion.Motion;
import liftwright.flight.profile.Course;
import liftwright.plant.Drive;

/**
 * What is kept of a flight as it goes: its score, its records and its path. Allocates nothing once
 * it is made.
 */
final class Keeping {

    private static final int MOST_MOMENTS = 1200;

    private final Scene scene;
    private final Motion motion;
    private final Drive drive;
    private final Pilotage pilotage;
    private final Watching watching;
    private final int fans;
    private final Score score;
    private final Recorder recorder;
    private final PathRecorder path;

    Keeping(Course course, Scene scene, Drive drive, Pilotage pilotage, Watching watching) {
        this.scene = scene;
        this.drive = drive;
        this.pilotage = pilotage;
        this.watching = watching;
        motion = scene.motion();
        fans = drive.fans();
        score = new Score(course);
        double lastsS = course.endS() + Watching.LONGER_S;
        recorder = new Recorder(lastsS, MOST_MOMENTS);
        path = new PathRecorder(scene, fans, lastsS);
    }

    /** It touches the ground. */
    void touch(double sinkMps) {
        score.touch(sinkMps);
    }

    /**
     * A tick in the air.
     *
     * @param tilt of the state, rad
     * @param duty told to the fans
     */
    void air(double timeS, double dtS, BodyState state, double tilt, double[] duty) {
        score.air(
                pilotage.courseS(timeS),
                dtS,
                pilotage.leg(),
                pilotage.ended(),
                pilotage.point,
                x(state),
                y(state),
                heightM(state),
                tilt,
                isSaturated(duty));
        thrust(dtS);
    }

    /** Any tick. */
    void look(double timeS, double dtS, BodyState state, double tilt) {
        score.energy(drive.powerW() * dtS);
        if (timeS >= 0) {
            path.look(timeS, state, motion, drive);
            if (recorder.isDue(timeS)) {
                record(timeS, state, tilt);
            }
        }
    }

    private boolean isSaturated(double[] duty) {
        boolean saturated = drive.isAnyLimited();
        for (double each : duty) {
            saturated |= each >= 1;
        }
        return saturated;
    }

    /** What of all thrust is of fans in a stream that their law does not hold for. */
    private void thrust(double dtS) {
        double beyond = 0;
        int asked = drive.isAnyBeyondLaw() ? fans : 0;
        for (int fan = 0; fan < asked; fan++) {
            beyond += drive.isBeyondLaw(fan) ? Math.abs(drive.thrustN(fan)) : 0;
        }
        score.thrust(drive.allThrustN() * dtS, beyond * dtS);
    }

    private static double x(BodyState state) {
        return state.y[BodyState.PX];
    }

    private static double y(BodyState state) {
        return state.y[BodyState.PY];
    }

    private double heightM(BodyState state) {
        return state.heightM() - scene.soleM();
    }

    private void record(double timeS, BodyState state, double tilt) {
        double[] q = state.y;
        double w = q[BodyState.QW];
        double i = q[BodyState.QX];
        double j = q[BodyState.QY];
        double k = q[BodyState.QZ];
        recorder.row(timeS);
        recorder.put(FlightSeries.Kind.FORWARD, x(state));
        recorder.put(FlightSeries.Kind.RIGHT, y(state));
        recorder.put(FlightSeries.Kind.HEIGHT, heightM(state));
        recorder.put(FlightSeries.Kind.WANTED_FORWARD, pilotage.point[0]);
        recorder.put(FlightSeries.Kind.WANTED_RIGHT, pilotage.point[1]);
        recorder.put(FlightSeries.Kind.WANTED_HEIGHT, Math.max(0, pilotage.point[2]));
        recorder.put(FlightSeries.Kind.TILT, tilt);
        recorder.put(
                FlightSeries.Kind.ROLL, Math.atan2(2 * (w * i + j * k), 1 - 2 * (i * i + j * j)));
        recorder.put(FlightSeries.Kind.PITCH, Math.asin(Math.clamp(2 * (w * j - k * i), -1, 1)));
        recorder.put(FlightSeries.Kind.HEADING, state.headingRad());
        recorder.put(FlightSeries.Kind.CLIMB, state.upMps());
        recorder.put(FlightSeries.Kind.THRUST, scene.upN(drive));
        double most = 0;
        for (int fan = 0; fan < fans; fan++) {
            most = Math.max(most, drive.dutyInEffect(fan));
        }
        recorder.put(FlightSeries.Kind.GREATEST_DUTY, most);
        recorder.put(FlightSeries.Kind.LEAST_CELL, watching.leastCellV());
        recorder.put(FlightSeries.Kind.PACK_CURRENT, watching.greatestPackA());
        recorder.put(FlightSeries.Kind.CHARGE, watching.leastCharge());
        recorder.put(FlightSeries.Kind.PULL, motion.greatestPullN());
    }

    FlightOutcome.Figures figures() {
        return score.figures(watching.leastCharge());
    }

    FlightSeries series() {
        return recorder.series();
    }

    FlightPath path() {
        return path.path();
    }
}
