package liftwright.rig;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * One kind of cell.
 *
 * @param name as declared
 * @param chemistry as declared
 * @param capacity A·s
 * @param resistance R0 at 25 °C, Ω
 * @param settling slower resistances that build up during a discharge
 * @param temperatureCoefficient B of R = R25 · exp(B (1/T − 1/298.15 K)), K
 * @param mass kg
 * @param openCircuit rest voltage against charge
 * @param openCircuitDoubt offset of the whole curve, V, nominal 0
 * @param continuousCurrent A
 * @param peakCurrent A
 */
public record CellType(
        String name,
        String chemistry,
        Quantity capacity,
        Quantity resistance,
        List<Settling> settling,
        Quantity temperatureCoefficient,
        Quantity mass,
        Curve openCircuit,
        Quantity openCircuitDoubt,
        Optional<Quantity> continuousCurrent,
        Optional<Quantity> peakCurrent) {

    public CellType {
        settling = List.copyOf(settling);
    }

    /**
     * One resistor–capacitor pair.
     *
     * @param resistance Ω at 25 °C
     * @param time time constant, s
     */
    public record Settling(Quantity resistance, Quantity time) {}

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
