package liftwright.plant.identify;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.physics.Air;
import liftwright.rig.table.BenchTable;

/**
 * One settled point of a stand, with its air brought in. What was not measured is empty.
 *
 * @param line by which the row is named, from 1
 * @param voltageV between the controller's input leads, V; 0 where nothing electric was measured
 * @param duty 0 to 1
 * @param currentA bus or winding current, A
 * @param speedRadps rad/s
 * @param thrustN N
 * @param torqueNm N·m
 * @param densityShare air density over 1.225 kg/m³
 * @param airspeedMps of the stream towards the rotor, m/s; 0 in still air
 * @param fan the single fan measured
 */
public record BenchPoint(
        int line,
        double voltageV,
        OptionalDouble duty,
        OptionalDouble currentA,
        OptionalDouble speedRadps,
        OptionalDouble thrustN,
        OptionalDouble torqueNm,
        double densityShare,
        double airspeedMps,
        Optional<String> fan) {

    /**
     * The rows of a table. A row that tells temperature or pressure but not both is taken with the
     * standard value of the other (15 °C, 1013.25 hPa); one that tells neither is taken at 1.225
     * kg/m³: {@link FanFit#notes} says so.
     */
    public static List<BenchPoint> of(BenchTable table) {
        return table.rows().stream().map(BenchPoint::of).toList();
    }

    private static BenchPoint of(BenchTable.Row row) {
        double airK = row.airK().orElse(Air.standardTemperatureK(0));
        double pascal = row.pressurePa().orElse(Air.standardPressurePa(0));
        return new BenchPoint(
                row.line(),
                row.voltageV().orElse(0),
                row.duty(),
                row.currentA(),
                row.speedRadps(),
                OptionalDouble.of(row.thrustN()),
                row.torqueNm(),
                Air.densityKgpm3(pascal, airK, 0) / Air.REFERENCE_DENSITY_KGPM3,
                row.airspeedMps().orElse(0),
                row.fan());
    }
}
