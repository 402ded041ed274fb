package liftwright.review.failures;

import java.util.List;
import java.util.Locale;
import liftwright.plant.fault.Fault;
import liftwright.rig.Control;
import liftwright.rig.Kill;
import liftwright.rig.Rig;

/** By what the harm of a fault is reckoned. */
public enum FaultRule {
    /** By what it takes from supply and fans. */
    MOVES,

    /** The throttle is lost, and every fan with it. */
    CUTS,

    /** The throttle is lost, and the rig is lowered with the declared share of its weight. */
    LOWERS,

    /** The throttle stays where it was, and a switch that it cannot reach makes the rig dead. */
    HELD_THEN_CUT,

    /** The throttle stays where it was, and nothing that is declared takes it back. */
    HELD,

    /** Fans push on, and nothing tells them what to do. */
    UNSTEERED,

    /** A fan pushes by itself as soon as its pack is connected. */
    STARTS,

    /**
     * Two that should stand in for each other disagree, and nothing declared says which is right.
     */
    DISAGREES,

    /** Nothing that moves the rig. */
    NOTHING;

    /** How a fault of this rig is reckoned. */
    public static FaultRule of(Rig rig, Fault fault) {
        return switch (fault.kind()) {
            case FAN,
                    CONTROLLER,
                    PACK,
                    FUSE,
                    RUN,
                    JOINT,
                    POLE,
                    CONTACTOR,
                    LOST_SYNC,
                    SWAPPED_LEADS,
                    WRONG_CHANNEL,
                    FOLD_BACK,
                    STUCK_FULL,
                    STUCK_IDLE ->
                    byEffect(fault, NOTHING);
            case SENSOR -> sensor(rig, fault);
            case COMPUTER -> rig.control().computers() > 1 ? NOTHING : byEffect(fault, UNSTEERED);
            case LINK_LOST, LINK_FROZEN -> link(rig);
            case FROZEN_THROTTLE -> held(rig);
            case GROUND_OPEN, BROWN_OUT -> byEffect(fault, NOTHING);
            case START_UP_SURGE -> STARTS;
            case WELDED_CONTACTOR -> NOTHING;
        };
    }

    private static FaultRule byEffect(Fault fault, FaultRule without) {
        return fault.effect().isNone() ? without : MOVES;
    }

    /**
     * Words in the names of sensors without which a rig is still held upright: common practice.
     * Every other is taken as one that attitude needs, the worst.
     */
    private static final List<String> NOT_OF_ATTITUDE =
            List.of(
                    "height",
                    "altimeter",
                    "barometer",
                    "range",
                    "position",
                    "gps",
                    "volt",
                    "current");

    /** With a shared throttle nobody reads a sensor; a computer reads all that are declared. */
    private static FaultRule sensor(Rig rig, Fault fault) {
        String name = fault.part().text().toLowerCase(Locale.ROOT);
        if (NOT_OF_ATTITUDE.stream().anyMatch(name::contains)) {
            return NOTHING;
        }
        return switch (rig.control().kind()) {
            case SHARED_THROTTLE -> NOTHING;
            case FLIGHT_COMPUTER ->
                    switch (count(rig, fault)) {
                        case 1 -> UNSTEERED;
                        case 2 -> DISAGREES;
                        default -> NOTHING;
                    };
        };
    }

    private static int count(Rig rig, Fault fault) {
        return rig.control().sensors().stream()
                .filter(sensor -> sensor.declaredAt().equals(fault.declaredAt()))
                .mapToInt(Control.Sensor::count)
                .findFirst()
                .orElse(1);
    }

    private static FaultRule link(Rig rig) {
        return switch (rig.control().linkLoss()) {
            case CUT -> CUTS;
            case LOWER -> LOWERS;
            case HOLD -> held(rig);
        };
    }

    private static FaultRule held(Rig rig) {
        return rig.wiring().kills().stream().anyMatch(kill -> isApart(rig, kill))
                ? HELD_THEN_CUT
                : HELD;
    }

    /** Opens contactors, without the link of the throttle. */
    private static boolean isApart(Rig rig, Kill kill) {
        boolean shares = kill.radio().isPresent() && kill.radio().equals(rig.control().radio());
        return !kill.opens().isEmpty() && !shares;
    }
}
