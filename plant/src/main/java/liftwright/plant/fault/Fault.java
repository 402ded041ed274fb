package liftwright.plant.fault;

import liftwright.rig.PartId;
import liftwright.rig.RigPath;

/**
 * One thing that can go wrong with one part.
 *
 * @param kind what goes wrong
 * @param part with which
 * @param declaredAt where the part is declared
 * @param words what goes wrong, for a reader
 * @param effect what it takes from supply and fans; nothing where that is not the harm of it (a
 *     throttle that freezes, a contactor that does not open)
 */
public record Fault(Kind kind, PartId part, RigPath declaredAt, String words, Effect effect) {

    /** What goes wrong. */
    public enum Kind {
        /** A fan stops. */
        FAN,
        /** A controller stops its motor. */
        CONTROLLER,
        /** A pack gives nothing. */
        PACK,
        /** A fuse opens. */
        FUSE,
        /** A wire breaks. */
        RUN,
        /** A joint opens. */
        JOINT,
        /** A pole of a contactor opens. */
        POLE,
        /** A contactor falls off: all its poles open. */
        CONTACTOR,
        /** A sensor is lost. */
        SENSOR,
        /** A flight computer is lost. */
        COMPUTER,
        /** The throttle link is lost. */
        LINK_LOST,
        /** The throttle link keeps its last value. */
        LINK_FROZEN,
        /** A fan runs up by itself when it is made live. */
        START_UP_SURGE,
        /** A controller loses its motor's position. */
        LOST_SYNC,
        /** Two motor leads are swapped. */
        SWAPPED_LEADS,
        /** Two channels are exchanged. */
        WRONG_CHANNEL,
        /** A signal ground opens. */
        GROUND_OPEN,
        /** What feeds receiver and computer sags too far. */
        BROWN_OUT,
        /** All controllers of a type lower their duty at once. */
        FOLD_BACK,
        /** A contactor does not open. */
        WELDED_CONTACTOR,
        /** A fan stays at full throttle. */
        STUCK_FULL,
        /** A fan stays at its idle duty. */
        STUCK_IDLE,
        /** All fans keep the throttle they have. */
        FROZEN_THROTTLE
    }
}
