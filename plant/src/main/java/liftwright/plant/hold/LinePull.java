package liftwright.plant.hold;

/**
 * How a rig at full thrust pulls sideways on a straight line from above, in whatever direction it
 * thrusts: held at an angle φ from the plumb, a rig of weight W and thrust T pulls with F = W cos φ
 * + √(T² − W² sin² φ) at most, where T ≥ W sin φ (statics).
 */
public final class LinePull {

    /** The angle is looked at in so many steps; the pull is smooth in it. */
    private static final int STEPS = 180;

    private LinePull() {}

    /** Greatest pull at an angle, N; 0 where the thrust cannot hold the rig there. */
    public static double pullN(double weightN, double thrustN, double angleRad) {
        double across = weightN * Math.sin(angleRad);
        return thrustN < across
                ? 0
                : weightN * Math.cos(angleRad) + Math.sqrt(thrustN * thrustN - across * across);
    }

    /**
     * Greatest over the angles of side · pull sin φ − down · pull cos φ, ≥ 0.
     *
     * @param side lever of what pulls to the side
     * @param down lever of what pulls down
     * @param leastRad least angle at which the line can be straight above the ground
     * @param mostRad greatest angle that other lines leave
     */
    public static double greatest(
            double weightN,
            double thrustN,
            double side,
            double down,
            double leastRad,
            double mostRad) {
        double most = 0;
        for (int k = 0; k <= STEPS; k++) {
            double angle = leastRad + (mostRad - leastRad) * k / STEPS;
            double pull = pullN(weightN, thrustN, angle);
            most = Math.max(most, pull * (side * Math.sin(angle) - down * Math.cos(angle)));
        }
        return most;
    }
}
