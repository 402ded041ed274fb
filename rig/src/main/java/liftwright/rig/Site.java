package liftwright.rig;

import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * The air the rig works in.
 *
 * @param elevation geometric height above sea level, m
 * @param temperature air temperature, K; empty means that of the standard atmosphere at the
 *     elevation
 * @param pressure station pressure, Pa; empty means that of the standard atmosphere at the
 *     elevation
 * @param humidity relative humidity, 0 to 1
 * @param wind what blows there; empty where nothing is declared of it
 */
public record Site(
        Quantity elevation,
        Optional<Quantity> temperature,
        Optional<Quantity> pressure,
        Quantity humidity,
        Optional<Wind> wind) {

    /** A site of whose wind nothing is declared. */
    public Site(
            Quantity elevation,
            Optional<Quantity> temperature,
            Optional<Quantity> pressure,
            Quantity humidity) {
        this(elevation, temperature, pressure, humidity, Optional.empty());
    }

    /** The same place with air of another temperature. */
    public Site at(Quantity air) {
        return new Site(elevation, Optional.of(air), pressure, humidity, wind);
    }

    /**
     * @param mean at the height of the fans, ≥ 0, m/s
     * @param gust highest speed of a gust, ≥ 0, m/s
     * @param gustLength way over which a gust grows to its full speed, &gt; 0, m
     * @param from where it comes from: 0 from the front, clockwise from above, rad
     */
    public record Wind(
            Quantity mean,
            Optional<Quantity> gust,
            Optional<Quantity> gustLength,
            Optional<Quantity> from) {}
}
