package liftwright.rig.stand;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Tolerance;
import liftwright.rig.DefaultUsed;

/**
 * A thrust stand as its builder plans it. Doubts are even: {@link Doubt}.
 *
 * @param name as declared, or empty
 * @param thrustN greatest thrust to be measured, N, &gt; 0
 * @param wantedShare expanded uncertainty (k = 2) that would do, as a share of the thrust
 * @param cell what weighs
 * @param lever between fan and cell; empty where the fan presses on the cell itself
 * @param alignment angle between the fan's axis and what the cell weighs, rad
 * @param jet parts that the jet blows on and the cell weighs
 * @param clearance of walls
 * @param air how well the air is known; empty where the thrust is that of the day's air
 * @param repeats of the reading
 * @param defaults what the file leaves open: what stands in, or that it is left out
 */
public record Stand(
        String name,
        double thrustN,
        double wantedShare,
        Cell cell,
        Optional<Lever> lever,
        Optional<Doubted> alignment,
        Optional<Jet> jet,
        Clearance clearance,
        Optional<Air> air,
        Repeats repeats,
        List<DefaultUsed> defaults) {

    public Stand {
        defaults = List.copyOf(defaults);
    }

    /**
     * A doubt with equal sides.
     *
     * @param halfWidth in the unit of what it belongs to; for a normal one twice the standard
     *     deviation, for a bound half the rectangle
     * @param form distribution
     */
    public record Doubt(double halfWidth, Tolerance.Form form) {}

    /**
     * A value and its doubt.
     *
     * @param si the value
     */
    public record Doubted(double si, Doubt doubt) {}

    /**
     * The load cell. Every share but the creep and the calibration is of the rating; all but the
     * calibration are bounds.
     *
     * @param ratingN greatest load, N
     * @param classShare nonlinearity, hysteresis and scatter together
     * @param creepShare of the load, within the time of one run
     * @param perKelvin drift of the zero over temperature, 1/K
     * @param warmingK how much cell or air may warm between tare and reading, K
     * @param zeroDriftN how far the zero may move between tare and reading, N at the cell
     * @param stepN one step of the display, N at the cell
     * @param calibration of the scale factor, as a share
     */
    public record Cell(
            double ratingN,
            double classShare,
            Optional<Double> creepShare,
            Optional<Double> perKelvin,
            Optional<Double> warmingK,
            Optional<Double> zeroDriftN,
            Optional<Double> stepN,
            Optional<Doubt> calibration) {}

    /**
     * @param fanArm from the pivot to the fan's axis, m
     * @param cellArm from the pivot to the cell, m
     */
    public record Lever(Doubted fanArm, Doubted cellArm) {}

    /** What the jet does to the reading. */
    public sealed interface Jet {

        /**
         * To be guessed from where the parts are.
         *
         * @param areaM2 of the parts, seen by the jet
         * @param distanceM from the fan's exit
         * @param exitAreaM2 of the fan
         */
        record Placed(double areaM2, double distanceM, double exitAreaM2) implements Jet {}

        /**
         * Measured, for instance with the parts in place and out of it.
         *
         * @param lossShare of the thrust that the reading misses
         */
        record Measured(Doubted lossShare) implements Jet {}
    }

    /** What walls and the air that comes back do to the thrust. */
    public sealed interface Clearance {

        /**
         * To be guessed from where the walls are, in rotor diameters.
         *
         * @param behind the fan, where it blows
         * @param inFront of the fan, where it breathes
         */
        record Placed(double behind, double inFront) implements Clearance {}

        /**
         * Measured, for instance out of doors and in the room.
         *
         * @param doubt of the thrust, as a share
         */
        record Measured(Doubt doubt) implements Clearance {}
    }

    /**
     * Doubts of the air's state, at 15 °C and 1013.25 hPa.
     *
     * @param kelvin of the temperature, K
     * @param pascal of the pressure, Pa
     */
    public record Air(Doubt kelvin, Doubt pascal) {}

    /**
     * @param runs whose mean is taken, at least 2
     * @param scatterShare standard deviation of one run, as a share of the thrust
     */
    public record Repeats(int runs, double scatterShare) {}
}
