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
 */
public record Site(
        Quantity elevation,
        Optional<Quantity> temperature,
        Optional<Quantity> pressure,
        Quantity humidity) {}
