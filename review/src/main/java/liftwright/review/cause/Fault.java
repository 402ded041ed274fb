package liftwright.review.cause;

import java.util.Set;

/** What may be otherwise than declared. Fans are numbers in the order of the rig's. */
sealed interface Fault {

    record None() implements Fault {}

    /**
     * @param share of its thrust and swirl that it lacks
     */
    record Weak(int fan, double share) implements Fault {}

    /**
     * The thrust of the fan in this seat leans.
     *
     * @param forwardRad towards the front
     * @param rightRad towards the right
     */
    record Seat(int fan, double forwardRad, double rightRad) implements Fault {}

    /** The thrust of this fan leans, wherever it sits, as seen in its own seat. */
    record Crooked(int fan, double forwardRad, double rightRad) implements Fault {}

    /**
     * All fans of one mount turn about their middle, in proportion to thrust.
     *
     * @param rollRad about forward, right-hand, at the thrust of lift-off
     * @param pitchRad about right, likewise
     */
    record Twist(Set<Integer> fans, double rollRad, double pitchRad) implements Fault {}

    /**
     * @param joint 0 to 7, as the joints of arms are ordered elsewhere
     */
    record Arm(int joint, double rad) implements Fault {}

    record Centre(double forwardM, double rightM) implements Fault {}

    /**
     * @param fans that spin the other way
     * @param factor swirl of these over that declared
     */
    record Spins(Set<Integer> fans, double factor) implements Fault {}

    /** Moments over the thrust of all fans, m. */
    record Moments(double rollM, double pitchM, double yawM) implements Fault {}
}
