package liftwright.rig;

import liftwright.quantity.Quantity;

/**
 * What is asked of the rig.
 *
 * @param thrustToWeight least usable lift over weight, 1
 * @param hover hover time, s
 * @param reserve charge kept at landing, 0 to 1
 * @param judgedAtCharge charge left at which lift is judged, 0 to 1
 */
public record Demands(
        Quantity thrustToWeight, Quantity hover, Quantity reserve, Quantity judgedAtCharge) {}
