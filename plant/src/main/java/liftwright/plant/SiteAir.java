package liftwright.plant;

import liftwright.physics.Air;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.rig.RigPath;
import liftwright.rig.Site;

/** The air of the site from the parameter vector. */
public final class SiteAir {

    private static final int STANDARD = -1;

    private final int elevation;
    private final int temperature;
    private final int pressure;
    private final int humidity;

    private SiteAir(int elevation, int temperature, int pressure, int humidity) {
        this.elevation = elevation;
        this.temperature = temperature;
        this.pressure = pressure;
        this.humidity = humidity;
    }

    /** Declares its parameters. */
    public static SiteAir declare(Site site, ParameterRows table) {
        RigPath at = RigPath.of("site");
        return new SiteAir(
                table.row(
                        at.child("elevation"),
                        "elevation of the site",
                        site.elevation(),
                        Range.ANY),
                site.temperature()
                        .map(
                                kelvin ->
                                        table.row(
                                                at.child("temperature"),
                                                "air temperature",
                                                kelvin,
                                                Range.POSITIVE))
                        .orElse(STANDARD),
                site.pressure()
                        .map(
                                pascal ->
                                        table.row(
                                                at.child("pressure"),
                                                "station pressure",
                                                pascal,
                                                Range.POSITIVE))
                        .orElse(STANDARD),
                table.row(
                        at.child("humidity"),
                        "relative humidity",
                        site.humidity(),
                        Range.NOT_NEGATIVE));
    }

    /** K. */
    public double temperatureK(double[] p) {
        return temperature == STANDARD
                ? Air.standardTemperatureK(Air.geopotentialM(p[elevation]))
                : p[temperature];
    }

    /** Pa. */
    public double pressurePa(double[] p) {
        return pressure == STANDARD
                ? Air.standardPressurePa(Air.geopotentialM(p[elevation]))
                : p[pressure];
    }

    /** kg/m³. */
    public double densityKgpm3(double[] p) {
        return Air.densityKgpm3(pressurePa(p), temperatureK(p), p[humidity]);
    }
}
