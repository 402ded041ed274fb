package liftwright.rig.table;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Measured rows of one kind of fan on a stand, at whatever speed was reached.
 *
 * @param file as the rig file names it
 * @param current which current the rows carry, if they carry one
 * @param rows at least one, in the order of the file
 */
public record BenchTable(String file, CurrentKind current, List<Row> rows) {

    public BenchTable {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a bench table has rows");
        }
    }

    /**
     * One settled point. What the table does not tell is empty, never zero.
     *
     * @param line of the file, from 1
     * @param voltageV between the controller's input leads, V, above 0; empty in every row of a
     *     table that tells torque and speed of the shaft alone
     * @param duty share of time in which the controller connects the motor, 0 to 1; not the
     *     throttle command
     * @param currentA of the kind that the table declares, A, at least 0; there with the voltage
     * @param speedRadps of the rotor, rad/s, above 0
     * @param thrustN on the stand, not corrected for air, N, at least 0
     * @param torqueNm of the shaft, N·m, at least 0
     * @param airK temperature of the air, K
     * @param pressurePa of the air at the stand, not reduced to sea level, Pa
     * @param airspeedMps of the stream towards the rotor, m/s, at least 0
     * @param fan serial number or name of the single fan that was measured
     */
    public record Row(
            int line,
            OptionalDouble voltageV,
            OptionalDouble duty,
            OptionalDouble currentA,
            OptionalDouble speedRadps,
            double thrustN,
            OptionalDouble torqueNm,
            OptionalDouble airK,
            OptionalDouble pressurePa,
            OptionalDouble airspeedMps,
            Optional<String> fan) {}

    /** Whether anything electric was measured. */
    public boolean isElectric() {
        return rows.getFirst().voltageV().isPresent();
    }

    /**
     * Whether every row tells current and speed: then the motor's values can be found from the
     * rows.
     */
    public boolean tellsMotor() {
        return isElectric() && rows.stream().allMatch(row -> row.speedRadps().isPresent());
    }
}
