package liftwright.review.cause;

/** Kinds of causes that measured turning is held against. */
public enum Blame {
    /** One fan gives less than its share; the fault moves with the fan. */
    WEAK_FAN("a fan weaker than its share"),
    /** The seat of one fan is turned; the fault stays with the seat. */
    TURNED_SEAT("a turned seat"),
    /** The jet of one fan is askew in the fan itself; the fault moves and turns with the fan. */
    CROOKED_FAN("a jet askew in its fan"),
    /** A mount twists or bends as its fans push, in proportion to their thrust. */
    MOUNT_TWIST("a mount that gives"),
    /** One joint of an arm is held at another angle than declared. */
    ARM_ANGLE("an arm held otherwise"),
    /** The centre of mass is forward, back, right or left of where it is computed. */
    CENTRE("centre of mass off"),
    /** Fans spin otherwise than declared. */
    SPIN("spins unlike those declared"),
    /** Nothing but the doubt that was declared. */
    AS_DECLARED("declared doubt alone"),
    /** Something that turns the rig about any axis in proportion to thrust. */
    UNKNOWN("none of these");

    private final String words;

    Blame(String words) {
        this.words = words;
    }

    /** As it is told. */
    public String words() {
        return words;
    }

    /** How likely it is before anything is measured, against others; from memory. */
    public double prior() {
        return switch (this) {
            case WEAK_FAN, TURNED_SEAT, MOUNT_TWIST, ARM_ANGLE, CENTRE, SPIN, AS_DECLARED -> 1;
            case CROOKED_FAN -> 0.3; // who makes fans tests them
            case UNKNOWN -> 0.1;
        };
    }

    /** Whether it names a thing on the rig. */
    public boolean isNamed() {
        return switch (this) {
            case WEAK_FAN, TURNED_SEAT, CROOKED_FAN, MOUNT_TWIST, ARM_ANGLE, CENTRE, SPIN -> true;
            case AS_DECLARED, UNKNOWN -> false;
        };
    }
}
