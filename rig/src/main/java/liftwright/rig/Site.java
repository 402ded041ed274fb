package liftwright.rig;

import java.util.Optional;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;

/**
 * The air the rig works in, and the ground it stands on.
 *
 * @param elevation geometric height above sea level, m
 * @param temperature air temperature, K; empty means that of the standard atmosphere at the
 *     elevation
 * @param pressure station pressure, Pa; empty means that of the standard atmosphere at the
 *     elevation
 * @param humidity relative humidity, 0 to 1
 * @param wind what blows there; empty where nothing is declared of it
 * @param ground what it stands on
 */
public record Site(
        Quantity elevation,
        Optional<Quantity> temperature,
        Optional<Quantity> pressure,
        Quantity humidity,
        Optional<Wind> wind,
        Ground ground) {

    /** A site of whose ground nothing is declared. */
    public Site(
            Quantity elevation,
            Optional<Quantity> temperature,
            Optional<Quantity> pressure,
            Quantity humidity,
            Optional<Wind> wind) {
        this(elevation, temperature, pressure, humidity, wind, Ground.USUAL);
    }

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
        return new Site(elevation, Optional.of(air), pressure, humidity, wind, ground);
    }

    /**
     * @param friction of soles or skids on it, force over force, ≥ 0
     * @param slope 0 where it is level, rad
     * @param slopeTo which way it falls: 0 ahead of the start, clockwise from above, rad
     */
    public record Ground(Quantity friction, Quantity slope, Quantity slopeTo) {

        private static final Dimension ANGLE = new Dimension(0, 0, 0, 0, 0, 1);

        /** Of which nothing is declared: level, with the friction that the format tells. */
        public static final Ground USUAL =
                new Ground(
                        Quantity.exact(0.6, Dimension.NONE),
                        Quantity.exact(0, ANGLE),
                        Quantity.exact(0, ANGLE));
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
