package liftwright.review.bench;

import java.util.Optional;
import liftwright.physics.Air;
import liftwright.physics.FanLaw;
import liftwright.physics.FanLaw.Plausibility;
import liftwright.rig.table.BenchTable;
import liftwright.rig.table.CurrentKind;

/**
 * The power that a row tells, beside the least that its thrust needs (momentum theory).
 *
 * @param drawnW power told: electrical, or of the shaft where only that is told; W
 * @param idealW least power for the thrust through this exit area, W
 * @param electrical whether the power told is electrical
 */
record RowPower(double drawnW, double idealW, boolean electrical) {

    /** Share of its power that the thrust alone needs. */
    double share() {
        return idealW / drawnW;
    }

    Plausibility plausibility() {
        return FanLaw.plausibility(share(), electrical);
    }

    /** Of a row; empty where it tells no power. */
    static Optional<RowPower> of(BenchTable.Row row, CurrentKind kind, double exitM2) {
        double idealW =
                FanLaw.idealPowerWithInflowW(
                        row.thrustN(), densityKgpm3(row), exitM2, row.airspeedMps().orElse(0));
        Optional<Double> electricalW = electricalW(row, kind);
        if (electricalW.isPresent()) {
            return Optional.of(new RowPower(electricalW.get(), idealW, true));
        }
        if (row.torqueNm().isPresent() && row.speedRadps().isPresent()) {
            double shaftW = row.torqueNm().getAsDouble() * row.speedRadps().getAsDouble();
            return shaftW > 0 ? Optional.of(new RowPower(shaftW, idealW, false)) : Optional.empty();
        }
        return Optional.empty();
    }

    /** A winding current is met by the driving voltage d V, at most the whole. */
    private static Optional<Double> electricalW(BenchTable.Row row, CurrentKind kind) {
        if (row.voltageV().isEmpty() || row.currentA().isEmpty()) {
            return Optional.empty();
        }
        double duty =
                switch (kind) {
                    case BUS -> 1;
                    case WINDING -> row.duty().orElse(1);
                };
        double watt = duty * row.voltageV().getAsDouble() * row.currentA().getAsDouble();
        return watt > 0 ? Optional.of(watt) : Optional.empty();
    }

    private static double densityKgpm3(BenchTable.Row row) {
        return Air.densityKgpm3(
                row.pressurePa().orElse(Air.standardPressurePa(0)),
                row.airK().orElse(Air.standardTemperatureK(0)),
                0);
    }
}
