package liftwright.plant.identify;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.CellType;
import liftwright.rig.table.CellTests;

/**
 * The tests of a cell and what was declared beside them. What was declared holds; the tests tell
 * the rest. With the resistance, the tests also tell its growth with charge and temperature and the
 * slow resistances that were not declared.
 *
 * @param capacityAs A·s
 * @param resistanceOhm R0 at 25 °C and half charge, Ω
 * @param settling slow resistances declared
 * @param shape growth of resistance with charge
 * @param temperatureCoefficient B, K: what is known before the tests
 * @param openCircuit rest voltage
 * @param openCircuitDoubtV standard deviation of the whole curve, V
 */
record CellGiven(
        CellTests tests,
        Optional<Double> capacityAs,
        Optional<Double> resistanceOhm,
        List<CellType.Settling> settling,
        Optional<CellType.Shape> shape,
        Quantity temperatureCoefficient,
        Optional<CellType.Curve> openCircuit,
        double openCircuitDoubtV) {

    /** Empty for a cell without tests. */
    static Optional<CellGiven> of(CellType cell) {
        return cell.measured()
                .map(
                        tests ->
                                new CellGiven(
                                        tests,
                                        cell.capacity().map(Quantity::si),
                                        cell.resistance().map(Quantity::si),
                                        cell.settling(),
                                        cell.resistanceOverCharge(),
                                        cell.temperatureCoefficient(),
                                        cell.openCircuit(),
                                        deviation(cell.openCircuitDoubt())));
    }

    /** Whether the tests have something to tell; else they only judge what was declared. */
    boolean isAnythingSought() {
        return capacityAs.isEmpty() || resistanceOhm.isEmpty() || openCircuit.isEmpty();
    }

    /** Standard deviation of a declared doubt; of a rectangle its half-width over √3. */
    static double deviation(Quantity value) {
        Tolerance doubt = value.tolerance();
        double half = (doubt.plus() + doubt.minus()) / 2;
        return doubt.form() == Tolerance.Form.BOUND ? half / Math.sqrt(3) : half / 2;
    }
}
