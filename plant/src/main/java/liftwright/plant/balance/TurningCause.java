package liftwright.plant.balance;

/**
 * Why a rig turns, in the fixed order in which a ledger adds them: each cause is what its own step
 * changes, all steps before it in place.
 */
public enum TurningCause {
    /** Where the fans sit against the centre of mass, were all alike ones equal and upright. */
    PLACE,
    /** Thrusts of alike fans (one type, one control group) that differ from their mean. */
    THRUST_MISMATCH,
    /** The angle at which an arm holds its fans. */
    ARM_ANGLE,
    /** Where the fans are declared to blow, cant included. */
    CANT,
    /** What the seat of each fan turns, beside its cant. */
    SEAT_ANGLE,
    /** Tilt of the mounts. */
    MOUNT_ANGLE,
    /** Beams that twist under thrust and swirl. */
    MOUNT_TWIST,
    /** Beams that bend under thrust. */
    FRAME_SLOPE,
    /** What the jets carry away as swirl turns the rig against the spins. */
    SWIRL,
    /** Jets that strike limbs and parts of the rig. */
    JETS
}
