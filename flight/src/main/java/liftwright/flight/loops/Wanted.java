package liftwright.flight.loops;

/** What the rig is to do: a set point that its owner changes in place. */
public final class Wanted {

    /** How far out the set point is. */
    public enum Kind {
        /** Fans at idle. */
        IDLE,
        /** Level, with a vertical speed. */
        CLIMB,
        VELOCITY,
        POSITION
    }

    private Kind kind = Kind.IDLE;
    private double x;
    private double y;
    private double up;
    private double headingRad;

    /** Fans at idle. */
    public void idle() {
        kind = Kind.IDLE;
    }

    /**
     * Level, at a vertical speed.
     *
     * @param upMps above 0 upwards
     * @param headingRad of the nose from scene x, right is above 0
     */
    public void climb(double upMps, double headingRad) {
        set(Kind.CLIMB, 0, 0, upMps, headingRad);
    }

    /** A velocity in scene axes, z told as up, m/s. */
    public void velocity(double xMps, double yMps, double upMps, double headingRad) {
        set(Kind.VELOCITY, xMps, yMps, upMps, headingRad);
    }

    /** A place in scene axes, z told as height, m. */
    public void position(double xM, double yM, double heightM, double headingRad) {
        set(Kind.POSITION, xM, yM, heightM, headingRad);
    }

    private void set(Kind to, double toX, double toY, double toUp, double heading) {
        kind = to;
        x = toX;
        y = toY;
        up = toUp;
        headingRad = heading;
    }

    public Kind kind() {
        return kind;
    }

    public double x() {
        return x;
    }

    public double y() {
        return y;
    }

    public double up() {
        return up;
    }

    public double headingRad() {
        return headingRad;
    }
}
