package liftwright.flight.motion;

import java.util.Optional;

/**
 * What moves the air, as declared. Directions are of where wind comes from, clockwise from the
 * scene's forward axis seen from above: 0 is a head wind at the start, π/2 one from the right.
 *
 * @param meanMps mean wind, the same at all heights (near the ground there is less), ≥ 0, m/s
 * @param fromRad where it comes from
 * @param at20FtMps wind at 20 ft, by which the turbulence is measured, ≥ 0, m/s; 0: no turbulence
 * @param gust one gust at most
 * @param washMps standard deviation, per axis, of the turbulence that the rig's own jets make when
 *     it stands on the floor with jets that carry its weight, ≥ 0, m/s
 * @param washReachM height of the centre of mass at which that has faded, falling evenly, &gt; 0, m
 */
public record Wind(
        double meanMps,
        double fromRad,
        double at20FtMps,
        Optional<Gust> gust,
        double washMps,
        double washReachM) {

    /** Turbulence of the own wash on the floor, from memory: 1.5 m/s. */
    public static final double USUAL_WASH_MPS = 1.5;

    /** Memory of that turbulence, from memory: eddies of 0.5 m that pass at 5 m/s. */
    public static final double WASH_S = 0.1;

    /** No air moves. */
    public static final Wind NONE = new Wind(0, 0, 0, Optional.empty(), 0, 1);

    /**
     * A gust that grows over a length of air and stays.
     *
     * @param atS when it begins, s
     * @param fullMps V_m, ≥ 0, m/s
     * @param lengthM d_m, &gt; 0, m
     * @param fromRad where it comes from
     */
    public record Gust(double atS, double fullMps, double lengthM, double fromRad) {}

    public Wind {
        if (!(meanMps >= 0 && at20FtMps >= 0 && washMps >= 0 && washReachM > 0)) {
            throw new IllegalArgumentException("a wind has a speed of 0 or more");
        }
    }

    /** A steady wind with the turbulence that goes with it, and no more. */
    public static Wind of(double meanMps, double fromRad) {
        return new Wind(meanMps, fromRad, meanMps, Optional.empty(), 0, 1);
    }

    /** The same with a gust. */
    public Wind with(Gust other) {
        return new Wind(meanMps, fromRad, at20FtMps, Optional.of(other), washMps, washReachM);
    }

    /**
     * The same for a clock that begins sooner.
     *
     * @param soonerS by how much, ≥ 0, s
     */
    public Wind onClock(double soonerS) {
        Optional<Gust> later =
                gust.map(one -> new Gust(one.atS + soonerS, one.fullMps, one.lengthM, one.fromRad));
        return new Wind(meanMps, fromRad, at20FtMps, later, washMps, washReachM);
    }

    /** The same with the rig's own wash. */
    public Wind withWash(double onFloorMps, double reachM) {
        return new Wind(meanMps, fromRad, at20FtMps, gust, onFloorMps, reachM);
    }

    /** The same without turbulence of the wind. */
    public Wind smooth() {
        return new Wind(meanMps, fromRad, 0, gust, washMps, washReachM);
    }
}
