package liftwright.plant.motion;

import liftwright.plant.supply.Circuit;
import liftwright.plant.thrust.FanUnits;

/** The door to a run that fans drive, for who knows their numbers. */
public final class Flight {

    /**
     * What the rotors are told.
     *
     * @param startRadps speeds at the fault, rad/s
     * @param duty of each fan from the fault on, 0 to 1
     * @param lowered duty of each fan after a command; 0 stops and may brake it
     * @param stop what acts against it
     * @param opens the chains that it opens
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    public record Told(
            double[] startRadps, double[] duty, double[] lowered, Stop stop, int[] opens) {}

    private Flight() {}

    /**
     * Follows it to its end.
     *
     * @param circuit whole, its packs and chains filled in; left as the run leaves it
     * @param before what the last run of the same rig solved
     * @param heightM of the soles at the fault, m
     * @param horizonS how long at most, s
     * @param keep whether to keep moments
     */
    public static RunawayPath follow(
            Body body,
            Circuit circuit,
            FanUnits units,
            RotorNumbers numbers,
            Told told,
            SolvedBefore before,
            double heightM,
            Surroundings around,
            double horizonS,
            boolean keep) {
        Rotors rotors = new Rotors(circuit, units, numbers, told, before);
        return new Climb(body, around, rotors, keep)
                .run(heightM, 0, told.stop().firstS(), horizonS);
    }
}
