package liftwright.flight.run;

import java.util.Arrays;
import liftwright.flight.loops.Wanted;
import liftwright.flight.profile.Course;

/**
 * The set point of a flight: that of its course, or of the landing that an abort began. Allocates
 * nothing.
 */
final class Pilotage {

    /** How fast a landing comes down that nobody wrote down, m/s; common practice. */
    static final double ABORT_SINK_MPS = 0.4;

    private final Course course;
    private final double soleM;

    /** Forward, right, height, heading, and how they change. */
    final double[] point = new double[8];

    private final double[] last = new double[8];

    /** How long a rig may take to come off the ground, s; then its lift is spent. */
    private static final double LIFT_OFF_S = 10;

    /** Set point above the start while it waits for that, m. */
    private static final double ABOVE_M = 0.3;

    /** And below the ground once a landing touched it, m: lift goes down evenly. */
    private static final double BELOW_M = 0.3;

    /** For so long, s; then fans idle. */
    static final double SET_DOWN_S = 2;

    private int leg;
    private double lastS;
    private double waitedS;
    private boolean waits;
    private boolean landing;
    private boolean dead;
    private double sinceS;

    Pilotage(Course course, double soleM) {
        this.course = course;
        this.soleM = soleM;
    }

    int leg() {
        return leg;
    }

    /** Whether something took it off its course. */
    boolean ended() {
        return landing || dead;
    }

    boolean isDead() {
        return dead;
    }

    /** Comes down where it is, once; nothing takes it back. */
    void land(double timeS, double x, double y, double heightM) {
        if (!ended()) {
            landing = true;
            sinceS = timeS;
            System.arraycopy(point, 0, last, 0, last.length);
            last[0] = x;
            last[1] = y;
            last[2] = heightM;
        }
    }

    /** All fans off, for good. */
    void makeDead() {
        dead = true;
    }

    /** When a flight off its course must be down, s. */
    double landedByS() {
        return sinceS + last[2] / ABORT_SINK_MPS + Course.LANDING_WAIT_S;
    }

    /** Time of the course: waiting on the ground for lift does not count, s. */
    double courseS(double timeS) {
        return timeS - waitedS;
    }

    /**
     * @param flying whether it is in the air
     */
    void go(double timeS, boolean flying) {
        leg = Math.max(leg, course.at(Math.max(0, courseS(timeS)) + 1e-9));
        waits =
                !ended()
                        && !flying
                        && course.task(leg) == Course.Task.LIFT_OFF
                        && waitedS < LIFT_OFF_S;
        if (waits) {
            waitedS += timeS - lastS;
        }
        lastS = timeS;
        if (landing) {
            System.arraycopy(last, 0, point, 0, point.length);
            point[2] = last[2] - ABORT_SINK_MPS * (timeS - sinceS);
            Arrays.fill(point, 4, 8, 0);
            point[6] = -ABORT_SINK_MPS;
            return;
        }
        course.point(leg, Math.max(0, courseS(timeS)), point);
    }

    Course.Task task() {
        return dead ? Course.Task.DEAD : landing ? Course.Task.LAND : course.task(leg);
    }

    /**
     * @param downS how long ago a landing touched the ground, s; 0 before
     */
    void tell(Wanted wanted, double downS) {
        switch (task()) {
            case DEAD, IDLE -> wanted.idle();
            case LAND -> {
                if (downS > SET_DOWN_S) {
                    wanted.idle();
                } else {
                    fly(wanted, downS > 0 ? -BELOW_M : point[2]);
                }
            }
            case LIFT_OFF, FLY -> fly(wanted, waits ? point[2] + ABOVE_M : point[2]);
        }
    }

    private void fly(Wanted wanted, double heightM) {
        wanted.position(point[0], point[1], heightM + soleM, point[3]);
    }
}
