package liftwright.flight.profile;

import java.util.List;

/**
 * Where the set point of a profile is at which time. It goes straight and evenly; what flies after
 * it cannot, which is told as its drift. Allocates nothing once it is made.
 */
public final class Course {

    /** What the flight computer is asked to do in a leg. */
    public enum Task {
        DEAD,
        IDLE,
        LIFT_OFF,
        FLY,
        LAND
    }

    /** How long a landing waits for the ground below the height where it should be. */
    public static final double LANDING_WAIT_S = 4;

    private final Profile.Step[] steps;
    private final Task[] tasks;
    private final double[] startsS;

    /** Point and heading at the start of each leg: forward, right, height, heading. */
    private final double[][] points;

    private final double endS;

    private Course(List<Profile.Step> steps, Profile.Start start) {
        int n = steps.size();
        this.steps = steps.toArray(new Profile.Step[0]);
        tasks = new Task[n];
        startsS = new double[n];
        points = new double[n + 1][4];
        points[0][2] = start.on() == Profile.Stand.HELD ? start.heightM() : 0;
        double time = 0;
        for (int k = 0; k < n; k++) {
            startsS[k] = time;
            System.arraycopy(points[k], 0, points[k + 1], 0, 4);
            time += leg(k);
        }
        endS = time;
    }

    public static Course of(Profile profile) {
        return new Course(profile.steps(), profile.start());
    }

    /** How long the steps take together, s. */
    static double lengthS(List<Profile.Step> steps, Profile.Start start) {
        return new Course(steps, start).endS;
    }

    private double leg(int k) {
        double[] from = points[k];
        double[] to = points[k + 1];
        return switch (steps[k]) {
            case Profile.Step.MakeLive(double forS) -> stay(k, Task.IDLE, forS);
            case Profile.Step.Hold(double forS) -> stay(k, Task.FLY, forS);
            case Profile.Step.MakeDead(double forS) -> stay(k, Task.DEAD, forS);
            case Profile.Step.Lift(double heightM, double climbMps) -> {
                to[2] = heightM;
                yield stay(
                        k,
                        from[2] == 0 ? Task.LIFT_OFF : Task.FLY,
                        Math.abs(heightM - from[2]) / climbMps);
            }
            case Profile.Step.Move(var forwardM, var rightM, var heightM, var speedMps) -> {
                to[0] = forwardM;
                to[1] = rightM;
                to[2] = heightM.orElse(from[2]);
                double way =
                        Math.hypot(Math.hypot(to[0] - from[0], to[1] - from[1]), to[2] - from[2]);
                yield stay(k, Task.FLY, way / speedMps);
            }
            case Profile.Step.Turn(double byRad, double rateRadps) -> {
                to[3] = from[3] + byRad;
                yield stay(k, Task.FLY, Math.abs(byRad) / rateRadps);
            }
            case Profile.Step.Land(double sinkMps) -> {
                to[2] = 0;
                yield stay(k, Task.LAND, from[2] / sinkMps + LANDING_WAIT_S);
            }
        };
    }

    private double stay(int k, Task task, double forS) {
        tasks[k] = task;
        return forS;
    }

    public int legs() {
        return steps.length;
    }

    public Profile.Step step(int leg) {
        return steps[leg];
    }

    public Task task(int leg) {
        return tasks[leg];
    }

    public double startS(int leg) {
        return startsS[leg];
    }

    public double endS(int leg) {
        return leg + 1 < startsS.length ? startsS[leg + 1] : endS;
    }

    /** End of the last step, s. */
    public double endS() {
        return endS;
    }

    /** The leg that lasts at a time; the last one after the end. */
    public int at(double timeS) {
        int leg = 0;
        while (leg + 1 < startsS.length && timeS >= startsS[leg + 1]) {
            leg++;
        }
        return leg;
    }

    /**
     * The set point: forward, right, height above the ground of the lowest part, m, heading, rad;
     * then how each of them changes, 1/s.
     *
     * <p>That of a landing goes on below the ground while it waits to touch it.
     *
     * @param out in that order, eight numbers, overwritten
     */
    public void point(int leg, double timeS, double[] out) {
        double[] from = points[leg];
        double[] to = points[leg + 1];
        double lasts = endS(leg) - startsS[leg];
        double moves = tasks[leg] == Task.LAND ? lasts - LANDING_WAIT_S : lasts;
        double most = moves > 0 ? lasts / moves : 1;
        double share = moves > 0 ? (timeS - startsS[leg]) / moves : 1;
        boolean going = share >= 0 && share < most;
        for (int i = 0; i < 4; i++) {
            out[i] = from[i] + Math.clamp(share, 0, most) * (to[i] - from[i]);
            out[4 + i] = going && moves > 0 ? (to[i] - from[i]) / moves : 0;
        }
    }
}
