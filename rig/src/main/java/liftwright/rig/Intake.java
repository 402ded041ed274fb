package liftwright.rig;

import liftwright.quantity.Quantity;

/**
 * What stands before a fan's intake.
 *
 * @param declaredAt where it is written
 * @param screen its kind
 * @param freeArea open share of its face, 0 to 1
 * @param face area of the face, m²
 * @param sharedBy how many fans breathe through this face, ≥ 1
 */
public record Intake(
        RigPath declaredAt, Screen screen, Quantity freeArea, Quantity face, int sharedBy) {

    public enum Screen {
        PERFORATED_PLATE,
        WIRE
    }
}
