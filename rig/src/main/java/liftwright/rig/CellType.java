package liftwright.rig;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.table.CellTests;

/**
 * One kind of cell. Capacity, resistance and rest voltage are all there unless tests are; what is
 * missing is found from these.
 *
 * @param name as declared
 * @param chemistry as declared
 * @param capacity A·s
 * @param resistance R0 at 25 °C, Ω
 * @param settling slower resistances that build up during a discharge
 * @param resistanceOverCharge factor of every resistance against charge; empty if one serves all
 * @param ageing what became of the cell since it was new
 * @param temperatureCoefficient B of R = R25 · exp(B (1/T − 1/298.15 K)), K
 * @param mass kg
 * @param openCircuit rest voltage against charge
 * @param openCircuitDoubt offset of the whole curve, V, nominal 0
 * @param continuousCurrent A
 * @param peakCurrent A
 * @param measured tests of such cells
 */
public record CellType(
        String name,
        String chemistry,
        Optional<Quantity> capacity,
        Optional<Quantity> resistance,
        List<Settling> settling,
        Optional<Shape> resistanceOverCharge,
        Ageing ageing,
        Quantity temperatureCoefficient,
        Quantity mass,
        Optional<Curve> openCircuit,
        Quantity openCircuitDoubt,
        Optional<Quantity> continuousCurrent,
        Optional<Quantity> peakCurrent,
        Optional<CellTests> measured) {

    public CellType {
        settling = List.copyOf(settling);
        if (measured.isEmpty()
                && (capacity.isEmpty() || resistance.isEmpty() || openCircuit.isEmpty())) {
            throw new IllegalArgumentException(name + " is neither declared nor measured");
        }
    }

    /**
     * One resistor–capacitor pair.
     *
     * @param resistance Ω at 25 °C
     * @param time time constant, s
     */
    public record Settling(Quantity resistance, Quantity time) {}

    /**
     * Factor of all resistances, linear between points; the end values hold beyond the ends.
     *
     * @param charge shares left, rising
     * @param factor resistance over that at half charge, at each
     */
    public record Shape(List<Double> charge, List<Double> factor) {
        public Shape {
            charge = List.copyOf(charge);
            factor = List.copyOf(factor);
            if (charge.isEmpty() || charge.size() != factor.size()) {
                throw new IllegalArgumentException("a shape has a factor for each charge");
            }
        }
    }

    /**
     * Age of the cells; each value is 1 for a new cell. Capacitances of the settling pairs stay, so
     * their times grow with resistance.
     *
     * @param capacityLeft capacity over that of a new cell
     * @param resistanceGrowth every resistance over that of a new cell
     */
    public record Ageing(Optional<Quantity> capacityLeft, Optional<Quantity> resistanceGrowth) {

        /** A new cell. */
        public static final Ageing NONE = new Ageing(Optional.empty(), Optional.empty());
    }

    /**
     * Rest voltage, linear between points.
     *
     * @param charge shares left, rising, 0 to 1
     * @param volt V at each
     */
    public record Curve(List<Double> charge, List<Double> volt) {
        public Curve {
            charge = List.copyOf(charge);
            volt = List.copyOf(volt);
        }
    }
}
