package liftwright.flight.run;

import java.util.List;

/**
 * Where a flight was and what pushed it, evenly in time and densely enough to be shown as it moves:
 * {@value #PER_S} moments a second at least, whatever its length.
 *
 * <p>Scene axes: origin on the ground under the start, x forward as the rig looked there, y right,
 * z down. The place is that of the origin of the rig file's own axes, so that a drawing of the rig
 * fits without knowing its centre of mass.
 *
 * @param timesS rising, s
 * @param placeM x, y, z of each moment, m
 * @param turned w, x, y, z of the unit quaternion that takes rig axes to scene axes, of each moment
 * @param fans how many fans there are
 * @param thrustN of every fan along its thrust, moment by moment; below 0 where reversed, N
 * @param lines that can hold the rig, by name
 * @param pullN of every line, moment by moment, ≥ 0, N
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
public record FlightPath(
        double[] timesS,
        double[] placeM,
        double[] turned,
        int fans,
        double[] thrustN,
        List<String> lines,
        double[] pullN) {

    /** Moments kept a second, 1/s. */
    public static final int PER_S = 25;

    public FlightPath {
        lines = List.copyOf(lines);
        int n = timesS.length;
        if (placeM.length != 3 * n
                || turned.length != 4 * n
                || thrustN.length != fans * n
                || pullN.length != lines.size() * n) {
            throw new IllegalArgumentException("every moment has all its numbers");
        }
    }

    /** Of what was not flown. */
    public static FlightPath none() {
        double[] nothing = {};
        return new FlightPath(nothing, nothing, nothing, 0, nothing, List.of(), nothing);
    }

    /** Number of moments. */
    public int moments() {
        return timesS.length;
    }
}
