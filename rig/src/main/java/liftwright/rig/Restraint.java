package liftwright.rig;

import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * What holds the rig during tests.
 *
 * @param stand a stand, bench, table or cart
 * @param tether lines that hold the rig or its wearer
 * @param room what is around and above
 * @param platform a scale under the wearer or the stand
 * @param mats thickness of mats on the ground, m
 */
public record Restraint(
        Optional<HoldingStand> stand,
        Optional<Tether> tether,
        Optional<Room> room,
        Optional<Platform> platform,
        Optional<Quantity> mats) {

    /** Nothing holds it. */
    public static final Restraint NONE =
            new Restraint(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());

    /**
     * The room. What is empty was not declared, and nothing is assumed.
     *
     * @param ceiling height above the ground, m
     * @param beam height of the lowest thing overhead, m
     * @param length m
     * @param width m
     * @param floor what it is made of, in words
     */
    public record Room(
            RigPath declaredAt,
            Optional<Quantity> ceiling,
            Optional<Quantity> beam,
            Optional<Quantity> length,
            Optional<Quantity> width,
            Optional<String> floor) {}

    /**
     * A scale whose platform the jets may blow on.
     *
     * @param length fore and aft, m
     * @param width sideways, m
     * @param resolution smallest step that it shows, kg
     * @param under what stands on it
     */
    public record Platform(
            RigPath declaredAt,
            Quantity length,
            Quantity width,
            Quantity resolution,
            Under under) {}

    /** What stands on a scale. */
    public enum Under {
        WEARER,
        STAND
    }
}
