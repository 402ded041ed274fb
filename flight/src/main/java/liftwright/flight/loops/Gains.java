package liftwright.flight.loops;

/** Gains of granted loops as plain numbers; an axis without a loop has none. */
final class Gains {

    final double[] ratePerS = new double[3];
    final double[] ratePerS2 = new double[3];
    final double[] anglePerS = new double[3];

    /**
     * Half of the angular acceleration that is left at hover, for turns beyond the loops' reach.
     */
    final double[] turnRadps2 = new double[3];

    final double velocityPerS;
    final double velocityPerS2;
    final double positionPerS;
    final double climbPerS;
    final double climbPerS2;
    final double heightPerS;
    final double liftMps2;
    final double yawSlowedS;

    /** By how long roll and pitch lag behind the lean that is asked, s. */
    final double leanS;

    Gains(LoopDesign.Granted granted) {
        Axis[] axes = {Axis.ROLL, Axis.PITCH, Axis.YAW};
        double[] authority = {
            granted.authority().rollRadps2(),
            granted.authority().pitchRadps2(),
            granted.authority().yawRadps2()
        };
        double slowed = 0;
        for (Loop loop : granted.loops()) {
            for (int k = 0; k < axes.length; k++) {
                if (loop.axis() == axes[k] && loop.level() == Loop.Level.RATE) {
                    ratePerS[k] = loop.gainPerS();
                    ratePerS2[k] = loop.integralPerS2();
                    turnRadps2[k] = 0.5 * authority[k];
                    slowed = loop.cascade().actuation().slowedS();
                } else if (loop.axis() == axes[k]) {
                    anglePerS[k] = loop.gainPerS();
                }
            }
        }
        leanS = Math.max(1 / anglePerS[0], 1 / anglePerS[1]);
        yawSlowedS = ratePerS[2] > 0 ? slowed : 0;
        Loop velocity = granted.loop(Axis.ACROSS, Loop.Level.VELOCITY);
        Loop climb = granted.loop(Axis.CLIMB, Loop.Level.VELOCITY);
        velocityPerS = velocity.gainPerS();
        velocityPerS2 = velocity.integralPerS2();
        climbPerS = climb.gainPerS();
        climbPerS2 = climb.integralPerS2();
        positionPerS = granted.loop(Axis.ACROSS, Loop.Level.POSITION).gainPerS();
        heightPerS = granted.loop(Axis.CLIMB, Loop.Level.POSITION).gainPerS();
        liftMps2 =
                (granted.authority().liftShare() - 1)
                        * granted.craft().weightN()
                        / granted.craft().massKg();
    }
}
