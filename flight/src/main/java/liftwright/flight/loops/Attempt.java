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
        return made(craft, asked, authority, false);
    }

    /** Whether no loop is too slow; the axes behind one that is are not shaped. */
    static boolean isFast(Craft craft, Asked asked, LoopDesign.Authority authority) {
        return made(craft, asked, authority, true).slow().isEmpty();
    }

    /** What was shaped, and whether it swings neither with more nor with less inertia and lag. */
    private record Tried(Shaped shaped, boolean stable) {}

    private static Attempt made(
            Craft craft, Asked asked, LoopDesign.Authority authority, boolean untilSlow) {
        Dynamics dynamics = new Dynamics(craft);
        List<Axis> axes = new ArrayList<>(List.of(Axis.ROLL, Axis.PITCH));
        if (craft.yawHeld() || authority.yawRadps2() >= Asked.LEAST_YAW_RADPS2) {
            axes.add(Axis.YAW);
        }
        axes.add(Axis.CLIMB);
        axes.add(Axis.ACROSS);
        List<Shaped> all = new ArrayList<>();
        Optional<Slow> slow = Optional.empty();
        for (Axis axis : axes) {
            Tried tried =
                    switch (axis) {
                        case ROLL -> tilt(craft, asked, dynamics, axis, authority.rollRadps2());
                        case PITCH -> tilt(craft, asked, dynamics, axis, authority.pitchRadps2());
                        case YAW -> yaw(craft, asked, dynamics, authority.yawRadps2());
                        case CLIMB ->
                                climb(
                                        craft,
                                        asked,
                                        dynamics,
                                        authority.liftShare(),
                                        slower(all).outermostRadps());
                        case ACROSS -> across(craft, asked, slower(all));
                    };
            all.add(tried.shaped());
            if (slow.isEmpty()) {
                slow = slow(tried, asked);
            }
            if (untilSlow && slow.isPresent()) {
                break;
            }
        }
        return new Attempt(all, slow);
    }

    /** Of roll and pitch, which come first. */
    private static Shaped slower(List<Shaped> all) {
        Shaped roll = all.get(0);
        Shaped pitch = all.get(1);
        return roll.outermostRadps() < pitch.outermostRadps() ? roll : pitch;
    }

    private static Tried tilt(
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

    private static Tried yaw(Craft craft, Asked asked, Dynamics dynamics, double radps2) {
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

    private static Tried climb(
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

    private static Tried across(Craft craft, Asked asked, Shaped inner) {
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
    private static Tried robust(Shaping shaping) {
        double slowed = 1;
        Shaped tried = shaping.at(1);
        boolean stable = RobustLoops.stable(tried);
        for (int k = 0; k < MOST_SLOWED && !stable; k++) {
            slowed *= SLOWER;
            tried = shaping.at(slowed);
            stable = RobustLoops.stable(tried);
        }
        return new Tried(tried, stable);
    }

    private static Optional<Slow> slow(Tried tried, Asked asked) {
        Shaped one = tried.shaped();
        double least =
                switch (one.axis()) {
                    case ROLL, PITCH -> Asked.LEAST_TILT_RADPS;
                    case YAW -> Asked.LEAST_YAW_RADPS;
                    case CLIMB -> Asked.LEAST_CLIMB_RADPS;
                    case ACROSS -> Asked.LEAST_TILT_RADPS / asked.ratio();
                };
        boolean travels = one.axis() == Axis.CLIMB || one.axis() == Axis.ACROSS;
        Loop.Level level = travels ? Loop.Level.VELOCITY : Loop.Level.ATTITUDE;
        int at = one.levels().indexOf(level);
        double radps = one.radps().get(at);
        if (radps < least * (1 - 1e-9)) {
            return Optional.of(new Slow(one.axis(), level, radps, least, one.bound().get(at)));
        }
        return tried.stable()
                ? Optional.empty()
                : Optional.of(new Slow(one.axis(), level, radps, radps, Shaped.Bound.ROBUST));
    }
}
