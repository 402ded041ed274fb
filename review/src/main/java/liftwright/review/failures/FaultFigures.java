package liftwright.review.failures;

/**
 * What is left of lift and steering with one fault, at one set of values.
 *
 * @param weightN of the whole, N
 * @param fullLiftN of all that still pushes at full throttle, N
 * @param held what steering has left, by what steers
 */
public record FaultFigures(double weightN, double fullLiftN, Held held) {

    /** What holds the rig, and how much of it is left. */
    public sealed interface Held {}

    /**
     * A flight computer that commands every fan.
     *
     * @param yawHeld with yaw held
     * @param yawFree with yaw let go
     */
    public record ByComputer(Trim yawHeld, Trim yawFree) implements Held {}

    /**
     * What a computer can do.
     *
     * @param liftN greatest trimmed lift, N
     * @param atWeight least reserves with lift at weight
     * @param coming least reserves with the lift with which it comes down
     * @param comingN that lift, N: less than weight and than the greatest trimmed lift
     */
    public record Trim(double liftN, Reserves atWeight, Reserves coming, double comingN) {

        /** Nothing can be trimmed. */
        public static final Trim NONE = new Trim(0, Reserves.NONE, Reserves.NONE, 0);
    }

    /**
     * Least reserve of both ways about each axis, rad/s². Below 0 where not even the trim is
     * possible; negative infinity where nothing holds the other axes.
     */
    public record Reserves(double rollRadps2, double pitchRadps2, double yawRadps2) {

        /** None about any axis. */
        public static final Reserves NONE =
                new Reserves(
                        Double.NEGATIVE_INFINITY,
                        Double.NEGATIVE_INFINITY,
                        Double.NEGATIVE_INFINITY);

        /** Acceleration that is only rounding: hover on the edge of what fans can do, rad/s². */
        static final double NOTHING_RADPS2 = 1e-6;

        /** Whether there is some about every axis. */
        public boolean isSome() {
            return isTilting() && yawRadps2 > NOTHING_RADPS2;
        }

        /** Whether there is some about roll and pitch. */
        boolean isTilting() {
            return rollRadps2 > NOTHING_RADPS2 && pitchRadps2 > NOTHING_RADPS2;
        }

        double of(int axis) {
            return switch (axis) {
                case 0 -> rollRadps2;
                case 1 -> pitchRadps2;
                default -> yawRadps2;
            };
        }
    }

    /**
     * The wearer's arms on a shared throttle.
     *
     * @param left of their reach once they cancel all three moments; below 0 where they cannot
     * @param leftYawFree once they cancel roll and pitch
     */
    public record ByArms(double left, double leftYawFree) implements Held {}

    /**
     * Nothing.
     *
     * @param tiltRadps2 greatest acceleration about roll and pitch, rad/s²
     * @param yawRadps2 about the upright axis, rad/s², ≥ 0
     */
    public record ByNothing(double tiltRadps2, double yawRadps2) implements Held {}
}
