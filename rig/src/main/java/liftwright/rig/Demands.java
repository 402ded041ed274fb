package liftwright.rig;

import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;

/**
 * What is asked of the rig.
 *
 * @param thrustToWeight least usable lift over weight, 1
 * @param hover hover time, s
 * @param reserve charge kept at landing, 0 to 1
 * @param judgedAtCharge charge left at which lift is judged, 0 to 1
 * @param runs how many hovers in a row, ≥ 1
 * @param pause between two of them, s
 */
public record Demands(
        Quantity thrustToWeight,
        Quantity hover,
        Quantity reserve,
        Quantity judgedAtCharge,
        int runs,
        Quantity pause) {

    /** One run; the pause of five minutes is never used. */
    public Demands(
            Quantity thrustToWeight, Quantity hover, Quantity reserve, Quantity judgedAtCharge) {
        this(
                thrustToWeight,
                hover,
                reserve,
                judgedAtCharge,
                1,
                Quantity.exact(300, new Dimension(0, 0, 1, 0, 0, 0)));
    }
}
