package liftwright.plant.heat;

import java.util.Optional;
import liftwright.rig.LimitName;
import liftwright.rig.PartId;
import liftwright.rig.RigPath;

/**
 * A part that warms, against its limit.
 *
 * @param kind what it is
 * @param id of the element, fan or pack
 * @param declaredAt where it is written
 * @param owner number of the fan, pack or chain that it belongs to
 * @param limitK temperature that it shall not reach, K
 * @param limit the limit behind it; empty where what the part itself declares decides alone
 * @param limitOrigin where the limit comes from, in words
 */
public record HeatPart(
        Kind kind,
        PartId id,
        RigPath declaredAt,
        int owner,
        double limitK,
        Optional<LimitName> limit,
        String limitOrigin) {

    /** What warms. */
    public enum Kind {
        /** Conductor of a run. */
        WIRE,
        /** One pole of a joint, or the wire at its mouth where that is hotter. */
        JOINT,
        /** Body of a fuse. */
        FUSE,
        /** Pole of a contactor. */
        POLE,
        /** Junction of a controller. */
        SWITCHES,
        /** Sink of a controller. */
        CONTROLLER,
        /** Winding of a motor. */
        WINDING,
        /** Magnets, as warm as the case of their motor. */
        MAGNETS,
        /** Core of the cell of a pack that warms most. */
        CELLS
    }
}
