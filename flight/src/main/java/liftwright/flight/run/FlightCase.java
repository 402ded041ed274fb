package liftwright.flight.run;

import java.util.Arrays;
import liftwright.flight.profile.Profile;
import liftwright.plant.Plant;
import liftwright.plant.supply.CellDraw;

/**
 * One flight that can be flown again: everything that is drawn in it comes from seed and number.
 *
 * @param plant a rig in numbers, heated or not
 * @param profile what is flown
 * @param seed of everything that is drawn
 * @param number of the flight, ≥ 0; 0 is the one at the declared values, in the wind and with the
 *     noise of its seed
 * @param p the plant's numbers in this flight
 * @param cells how single cells differ
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
public record FlightCase(
        Plant plant, Profile profile, long seed, int number, double[] p, CellDraw cells) {

    /** The flight of a number: 0 at the declared values, else with every tolerance drawn. */
    public static FlightCase of(Plant plant, Profile profile, long seed, int number) {
        double[] p = plant.parameters().nominal();
        if (number == 0) {
            return new FlightCase(plant, profile, seed, 0, p, new CellDraw.Expected());
        }
        plant.parameters().draw(seed, number, p);
        double[] asDeclared = new double[plant.parameters().inputs().size()];
        Arrays.fill(asDeclared, 1);
        return new FlightCase(
                plant, profile, seed, number, p, new CellDraw.Drawn(seed, number, asDeclared));
    }
}
