package liftwright.plant;

import java.util.Optional;
import liftwright.rig.LimitName;
import liftwright.rig.PartId;
import liftwright.rig.RigPath;

/**
 * How one part stands against one limit. Only numbers: what to say of them is the question's
 * business.
 *
 * @param kind what is limited
 * @param part which part
 * @param declaredAt where the rating is declared, or the part where there is none
 * @param value what the part carries, SI
 * @param rating what it is declared for, SI; the limit itself where the limit is no share of a
 *     rating
 * @param limit what is allowed, SI: the rating with the share or margin in force
 * @param name the share or value that the limit follows; empty where the rating is the limit
 */
public record OperatingLimit(
        Kind kind,
        PartId part,
        RigPath declaredAt,
        double value,
        double rating,
        double limit,
        Optional<LimitName> name) {

    /** What is limited, and on which side. */
    public enum Kind {
        /** Speed against the rotor's declared top speed, rad/s. */
        ROTOR_SPEED(false),
        /** Tip speed over speed of sound at the site, 1. */
        TIP_MACH(false),
        /** Speed × pole pairs against what the controller follows, rad/s. */
        ELECTRICAL_SPEED(false),
        /** Full packs at rest against the controller's absolute maximum, V. */
        CONTROLLER_VOLTAGE(false),
        /** Full packs at rest against the rating of the controller's capacitors, V. */
        CAPACITOR_VOLTAGE(false),
        /** Winding current against the controller's declared limit, A. */
        CONTROLLER_CURRENT(false),
        /** Terminal voltage under load against the controller's cut-off, V. */
        CUT_OFF(true),
        /** Added loss K before the intake against the range of its law, 1. */
        INTAKE_LOSS(false),
        /** Current against the rating of a connector, lug or splice, A. */
        JOINT_CURRENT(false),
        /** Fuse rating against current, A: value is the current, limit the rating over 1.25. */
        FUSE_CURRENT(false),
        /** Prospective fault current against what the fuse can break, A. */
        FUSE_BREAKING(false),
        /** Full packs at rest against the fuse's DC rating, V. */
        FUSE_VOLTAGE(false),
        /** Current against the rating of a contactor's pole, A. */
        CONTACTOR_CURRENT(false),
        /** Prospective fault current against what the contactor can break, A. */
        CONTACTOR_BREAKING(false),
        /** Full packs at rest against the contactor's DC rating, V. */
        CONTACTOR_VOLTAGE(false),
        /** Mean cell voltage under load, V. */
        CELL_UNDER_LOAD(true),
        /** Current of one cell against its continuous rating, A. */
        CELL_CONTINUOUS_CURRENT(false),
        /** Current of one cell against its peak rating, A. */
        CELL_PEAK_CURRENT(false),
        /** A pack that is charged by others, A: none may be. */
        REVERSE_CURRENT(false),
        /** Full packs at rest against the voltage that is hazardous to touch, V. */
        HAZARDOUS_VOLTAGE(false);

        private final boolean least;

        Kind(boolean least) {
            this.least = least;
        }

        /** Whether the limit is the least allowed value rather than the greatest. */
        public boolean isLeast() {
            return least;
        }
    }

    /** Whether the value is on the wrong side. */
    public boolean exceeded() {
        return kind.isLeast() ? value < limit : value > limit;
    }

    /** Distance to the limit over the limit; negative where exceeded. */
    public double margin() {
        return (kind.isLeast() ? value - limit : limit - value) / Math.abs(limit);
    }
}
