package liftwright.rig;

/**
 * What may feed a kill, a coil, or receiver and computer, as the file names it: the id of a pack,
 * or a battery beside the packs.
 */
public final class Supplies {

    /**
     * A battery that feeds nothing else. Words after it make it a battery that all who write the
     * same words share: {@code own battery of the mast}.
     */
    public static final String OWN = "own battery";

    private Supplies() {}

    /** Whether a supply is a battery beside the packs. */
    public static boolean isBattery(String supply) {
        return supply.equals(OWN) || supply.startsWith(OWN + " ");
    }

    /** Whether a supply can be the same for two; {@value #OWN} alone is each its own. */
    public static boolean isShared(String supply) {
        return !supply.equals(OWN);
    }
}
