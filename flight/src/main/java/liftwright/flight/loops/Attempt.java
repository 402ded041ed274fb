package liftwright.flight.loops;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Loops of all axes for a craft, as fast as they may be, and the first that is too slow to be worth
 * having.
 *
 * @param shaped what was found
 * @param slow empty where all are fast enough
 */
record Attempt(List<Shaped> shaped, Optional<Slow> slow) {

    /** Times that loops are slowed for the sake of robustness. */
    private static final int MOST_SLOWED = 12;

    private static final double SLOWER = 0.88;

    /**
     * A loop that is too slow.
     *
     * @param radps its crossover
     * @param leastRadps the slowest worth having
     */
    record Slow(Axis axis, Loop.Level level, double radps, double leastRadps, Shaped.Bound bound) {}

    Attempt {
        shaped = List.copyOf(shaped);
    }

    static Attempt of(Craft craft, Asked asked, LoopDesign.Authority authority) {
        Dynamics dynamics = new Dynamics(craft);
        List<Shaped> all = new ArrayList<>();
        Shaped roll = tilt(craft, asked, dynamics, Axis.ROLL, authority.rollRadps2());
        Shaped pitch = tilt(craft, asked, dynamics, Axis.PITCH, authority.pitchRadps2());
        all.add(roll);
        all.add(pitch);
        if (craft.yawHeld() || authority.yawRadps2() >= Asked.LEAST_YAW_RADPS2) {
            all.add(yaw(craft, asked, dynamics, authority.yawRadps2()));
        }
        Shaped slower = roll.outermostRadps() < pitch.outermostRadps() ? roll : pitch;
        all.add(climb(craft, asked, dynamics, authority.liftShare(), slower.outermostRadps()));
        all.add(across(craft, asked, slower));
        return new Attempt(all, slowest(all, asked));
    }

    private static Shaped tilt(
            Craft craft, Asked asked, Dynamics dynamics, Axis axis, double radps2) {
        Actuation act = dynamics.of(axis);
        double reach = Math.sqrt(Math.max(0, radps2) / Asked.TILT_IN_REACH_RAD);
        List<FlexMode> modes = FlexMode.of(craft.flexible(), craft.flexible().harnessShare());
        double legs = 2 * Math.PI * craft.flexible().legsHz() / Asked.BELOW_LEGS;
        return robust(
                slowed ->
                        new Shaper(asked, axis, act, slowed, modes)
                                .loop(Loop.Level.RATE, 0)
                                .loop(
                                        Loop.Level.ATTITUDE,
                                        0,
                                        new Shaper.Cap(Shaped.Bound.AUTHORITY, reach),
                                        new Shaper.Cap(Shaped.Bound.LEGS, legs))
                                .done());
    }

    private static Shaped yaw(Craft craft, Asked asked, Dynamics dynamics, double radps2) {
        Actuation act = dynamics.of(Axis.YAW);
        double reach = Math.sqrt(Math.max(0, radps2) / Asked.YAW_IN_REACH_RAD);
        List<FlexMode> modes = FlexMode.of(craft.flexible(), craft.flexible().harnessShare());
        return robust(
                slowed ->
                        new Shaper(asked, Axis.YAW, act, slowed, modes)
                                .loop(
                                        Loop.Level.RATE,
                                        0,
                                        new Shaper.Cap(
                                                Shaped.Bound.AUTHORITY, reach * asked.ratio()))
                                .loop(Loop.Level.ATTITUDE, 0)
                                .done());
    }

    private static Shaped climb(
            Craft craft, Asked asked, Dynamics dynamics, double liftShare, double tiltRadps) {
        Actuation act = dynamics.of(Axis.CLIMB);
        List<FlexMode> modes = FlexMode.of(craft.flexible(), craft.flexible().massShare());
        double reach =
                Math.max(0, liftShare - 1)
                        * craft.weightN()
                        / craft.massKg()
                        / Asked.CLIMB_IN_REACH_MPS;
        return robust(
                slowed ->
                        new Shaper(asked, Axis.CLIMB, act, slowed, modes)
                                .loop(
                                        Loop.Level.VELOCITY,
                                        0,
                                        new Shaper.Cap(Shaped.Bound.AUTHORITY, reach),
                                        new Shaper.Cap(Shaped.Bound.TILT, tiltRadps))
                                .loop(Loop.Level.POSITION, craft.lags().positionS())
                                .done());
    }

    private static Shaped across(Craft craft, Asked asked, Shaped inner) {
        return robust(
                slowed ->
                        new Shaper(asked, Axis.ACROSS, inner, slowed)
                                .loop(Loop.Level.VELOCITY, craft.lags().velocityS())
                                .loop(Loop.Level.POSITION, craft.lags().positionS())
                                .done());
    }

    private interface Shaping {
        Shaped at(double slowed);
    }

    /** The fastest that swing neither with more nor with less inertia and lag. */
    private static Shaped robust(Shaping shaping) {
        double slowed = 1;
        Shaped tried = shaping.at(1);
        for (int k = 0; k < MOST_SLOWED && !RobustLoops.stable(tried); k++) {
            slowed *= SLOWER;
            tried = shaping.at(slowed);
        }
        return tried;
    }

    private static Optional<Slow> slowest(List<Shaped> all, Asked asked) {
        for (Shaped one : all) {
            double least =
                    switch (one.axis()) {
                        case ROLL, PITCH -> Asked.LEAST_TILT_RADPS;
                        case YAW -> Asked.LEAST_YAW_RADPS;
                        case CLIMB -> Asked.LEAST_CLIMB_RADPS;
                        case ACROSS -> Asked.LEAST_TILT_RADPS / asked.ratio();
                    };
            int at =
                    one.levels()
                            .indexOf(
                                    one.axis() == Axis.CLIMB || one.axis() == Axis.ACROSS
                                            ? Loop.Level.VELOCITY
                                            : Loop.Level.ATTITUDE);
            if (one.radps().get(at) < least * (1 - 1e-9)) {
                return Optional.of(
                        new Slow(
                                one.axis(),
                                one.levels().get(at),
                                one.radps().get(at),
                                least,
                                one.bound().get(at)));
            }
            if (!RobustLoops.stable(one)) {
                return Optional.of(
                        new Slow(
                                one.axis(),
                                one.levels().get(at),
                                one.radps().get(at),
                                one.radps().get(at),
                                Shaped.Bound.ROBUST));
            }
        }
        return Optional.empty();
    }
}
