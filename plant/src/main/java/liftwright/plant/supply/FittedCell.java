package liftwright.plant.supply;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.identify.CellFit;
import liftwright.plant.identify.CellUnknown;
import liftwright.plant.parameters.ParameterRows;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.CellType;
import liftwright.rig.RigPath;

/** The parameters of a cell that tests tell, drawn together. */
final class FittedCell {

    private final CellFit fit;
    private final Map<CellUnknown, Integer> places = new EnumMap<>(CellUnknown.class);

    private FittedCell(CellFit fit) {
        this.fit = fit;
    }

    /**
     * Declares them.
     *
     * @return empty for a cell of which everything was declared
     * @throws liftwright.plant.identify.NotToldException if the tests cannot tell the rest
     */
    static Optional<FittedCell> of(CellType type, ParameterRows table) {
        return CellFit.of(type).filter(CellFit::isFound).map(fit -> declare(type, fit, table));
    }

    private static FittedCell declare(CellType type, CellFit fit, ParameterRows table) {
        FittedCell found = new FittedCell(fit);
        RigPath at = RigPath.of("cells", type.name()).child("measured");
        List<ParameterRows.Member> members = new ArrayList<>();
        for (CellFit.Value value : fit.values()) {
            CellUnknown unknown = value.unknown();
            members.add(
                    new ParameterRows.Member(
                            at.child(unknown.words()).toString(),
                            unknown.words() + " of cell " + type.name(),
                            value.value(),
                            unknown.dimension(),
                            unknown.range(),
                            unknown.positive()));
        }
        if (!members.isEmpty()) {
            int first =
                    table.joint(at, "discharges of cell " + type.name(), members, fit.covariance());
            for (int k = 0; k < members.size(); k++) {
                found.places.put(fit.values().get(k).unknown(), first + k);
            }
        }
        return found;
    }

    /** Row of a value; empty if it was declared. */
    Optional<Integer> row(CellUnknown unknown) {
        return Optional.ofNullable(places.get(unknown));
    }

    /** Rows of values that were found. */
    int[] rows(CellUnknown one, CellUnknown other) {
        return new int[] {row(one).orElseThrow(), row(other).orElseThrow()};
    }

    CellType.Curve openCircuit() {
        return fit.openCircuit();
    }

    CellType.Shape shape() {
        return fit.shape();
    }

    /**
     * Doubt of rest voltage: what was declared, or how far one run lies from all if that is more.
     */
    Quantity openCircuitDoubt(Quantity declared) {
        double half = 2 * fit.openCircuitDeviationV();
        Tolerance own = declared.tolerance();
        if (Math.min(own.plus(), own.minus()) >= half) {
            return declared;
        }
        return new Quantity(
                declared.si(),
                Dimensions.VOLTAGE,
                new Tolerance(half, half, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED));
    }
}
