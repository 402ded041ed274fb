package liftwright.plant;

/** What the fans are told to do. */
public sealed interface Order {

    /**
     * One throttle for all: the duty of each control group is so much of its full share.
     *
     * @param share 0 to 1
     */
    record Throttle(double share) implements Order {}

    /**
     * Throttles that run linearly in time between two moments.
     *
     * @param fromS first moment, s
     * @param toS second moment, after the first, s
     * @param from throttle of each fan at the first, 0 to 1
     * @param to throttle of each fan at the second, 0 to 1
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Ramp(double fromS, double toS, double[] from, double[] to) implements Order {}

    /**
     * Throttles straight in time from one moment to the next, as they were recorded. Before the
     * first and after the last they stay. Steps end where their run is stopped: ask for each moment
     * in turn with one and the same order, so that they stay as long as they were.
     *
     * @param timesS moments, s since the start of the run; at least two, rising strictly
     * @param shares throttle of each fan at each moment, 0 to 1
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Course(double[] timesS, double[][] shares) implements Order {}

    /**
     * So much upward thrust in all. With a shared throttle one throttle is found that gives it; a
     * flight computer shares it out in proportion to the upward share of each fan, and what a fan
     * at full duty lacks the others give.
     *
     * @param upwardN &gt; 0, N
     */
    record Lift(double upwardN) implements Order {}

    /**
     * Upward thrust that runs linearly in time between two moments; else as {@link Lift}.
     *
     * @param fromS first moment, s
     * @param toS second moment, after the first, s
     * @param fromN thrust at the first, ≥ 0, N
     * @param toN thrust at the second, ≥ 0, N
     */
    record LiftRamp(double fromS, double toS, double fromN, double toN) implements Order {}

    /**
     * A thrust for each fan.
     *
     * @param thrustN along each axis, ≥ 0, N
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Thrusts(double[] thrustN) implements Order {}
}
