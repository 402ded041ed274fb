package liftwright.flight.loops;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is asked of loops.
 *
 * @param marginRad least phase margin, rad
 * @param gainMargin least gain margin, 1
 * @param ratio crossover of a loop over that of the next loop outside it, at least, 1
 * @param declared what the rig file declares of loops; those of tilt and of velocity over the
 *     ground
 */
public record Asked(
        double marginRad, double gainMargin, double ratio, Map<Loop.Level, Declared> declared) {

    /** 50° and a factor of two, each loop 2.5 times as fast as the next (common practice). */
    public static final Asked USUAL = new Asked(Math.toRadians(50), 2, 2.5, Map.of());

    /** Slowest crossovers worth having, rad/s (common practice, from memory). */
    static final double LEAST_TILT_RADPS = 1.2;

    static final double LEAST_YAW_RADPS = 0.2;
    static final double LEAST_CLIMB_RADPS = 0.6;

    /** Below it turning about the upright axis is drift and not control, rad/s². */
    public static final double LEAST_YAW_RADPS2 = 0.1;

    /** Angle off which a loop still answers within its authority, rad (common practice). */
    static final double TILT_IN_REACH_RAD = Math.toRadians(10);

    static final double YAW_IN_REACH_RAD = Math.toRadians(15);

    /** Error of climb within the authority of lift, m/s. */
    static final double CLIMB_IN_REACH_MPS = 0.5;

    /** Lift over weight that tilting by 20° and climbing at a tenth of gravity take, 1. */
    public static final double LEAST_LIFT_SHARE = 1.1 / Math.cos(Math.toRadians(20));

    /** Corner of an integral below its loop's crossover, 1. */
    static final double RATE_CORNER = 1.0 / 8;

    static final double VELOCITY_CORNER = 1.0 / 6;

    /**
     * Least distance of the open loop from −1 with a wearer who gives in the harness, 1:
     * sensitivity of two at most, which alone leaves 29° and a factor of two (common practice).
     */
    public static final double LEAST_HARNESS_DISTANCE = 0.5;

    /** What of that must be left with ± 30 % of inertia and lag: 10° of phase. */
    static final double LEFT_HARNESS_DISTANCE = 2 * Math.sin(Math.toRadians(5));

    /** Crossover of an angle below the swinging of legs, at least, 1. */
    static final double BELOW_LEGS = 1.5;

    /** Lowest alias of one per revolution over the crossover of turn rate, at least, 1. */
    static final double ALIAS_ABOVE = 10;

    /** How far the speed of fans goes from that at hover in flight, 1. */
    static final double SPEED_SPAN = 0.2;

    /** Inertia and lag are taken so much greater and smaller. */
    public static final double DOUBT = 0.3;

    /** What one declared loop says. */
    public record Declared(
            OptionalDouble crossoverRadps, OptionalDouble marginRad, Optional<Boolean> integral) {

        /** Nothing. */
        public static final Declared NOTHING =
                new Declared(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
    }

    public Asked {
        declared = declared.isEmpty() ? Map.of() : Map.copyOf(new EnumMap<>(declared));
    }

    Declared declared(Loop.Level level) {
        return declared.getOrDefault(level, Declared.NOTHING);
    }

    /** The same without the crossover declared of a level. */
    Asked without(Loop.Level level) {
        Map<Loop.Level, Declared> left = new EnumMap<>(Loop.Level.class);
        left.putAll(declared);
        Declared of = declared(level);
        left.put(level, new Declared(OptionalDouble.empty(), of.marginRad(), of.integral()));
        return new Asked(marginRad, gainMargin, ratio, left);
    }

    double marginRad(Loop.Level level) {
        return declared(level).marginRad().orElse(marginRad);
    }

    /** The usual corner of a level's integral below its crossover; 0 without one. */
    double corner(Axis axis, Loop.Level level) {
        boolean own = axis == Axis.CLIMB || axis == Axis.YAW;
        return switch (level) {
            case RATE -> own || declared(level).integral().orElse(true) ? RATE_CORNER : 0;
            case VELOCITY -> VELOCITY_CORNER;
            case ATTITUDE, POSITION -> 0;
        };
    }
}
