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
 * @param height how high the soles, or the lowest part of a rig that nobody wears, may be, m
 * @param yaw whether turning about the upright must be held to zero
 */
public record Demands(
        Quantity thrustToWeight,
        Quantity hover,
        Quantity reserve,
        Quantity judgedAtCharge,
        int runs,
        Quantity pause,
        Quantity height,
        Yaw yaw) {

    /** Whether turning about the upright must be held to zero. */
    public enum Yaw {
        HELD,
        FREE
    }

    /** Up to half a metre, yaw held. */
    public Demands(
            Quantity thrustToWeight,
            Quantity hover,
            Quantity reserve,
            Quantity judgedAtCharge,
            int runs,
            Quantity pause) {
        this(
                thrustToWeight,
                hover,
                reserve,
                judgedAtCharge,
                runs,
                pause,
                Quantity.exact(0.5, new Dimension(1, 0, 0, 0, 0, 0)),
                Yaw.HELD);
    }

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
