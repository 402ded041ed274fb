package liftwright.rig;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Dimension;
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
 * @param thermal how one cell warms
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
        Optional<CellTests> measured,
        Thermal thermal) {

    public CellType {
        settling = List.copyOf(settling);
        if (measured.isEmpty()
                && (capacity.isEmpty() || resistance.isEmpty() || openCircuit.isEmpty())) {
            throw new IllegalArgumentException(name + " is neither declared nor measured");
        }
    }

    /** A cell that warms like a common one of its mass. */
    public CellType(
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
        this(
                name,
                chemistry,
                capacity,
                resistance,
                settling,
                resistanceOverCharge,
                ageing,
                temperatureCoefficient,
                mass,
                openCircuit,
                openCircuitDoubt,
                continuousCurrent,
                peakCurrent,
                measured,
                Thermal.usual(mass.si()));
    }

    /**
     * How one cell warms: its core on its surface, the surface in the air about the pack.
     *
     * @param heatCapacity J/K
     * @param coreToSurface W/K
     * @param toAir from one cell's share of the pack's surface, W/K
     */
    public record Thermal(Quantity heatCapacity, Quantity coreToSurface, Quantity toAir) {

        static final double J_PER_KG_K = 1000;
        static final double CORE_W_PER_KG_K = 12;
        static final double AIR_W_PER_KG_K = 0.6;

        private static final Dimension J_PER_K = new Dimension(2, 1, -2, 0, -1, 0);
        private static final Dimension W_PER_K = new Dimension(2, 1, -3, 0, -1, 0);

        /** What common cells have by their mass, kg, above 0; from memory. */
        public static Thermal usual(double massKg) {
            return new Thermal(
                    Cooling.doubted(J_PER_KG_K * massKg, J_PER_K, 0.15),
                    Cooling.doubted(CORE_W_PER_KG_K * massKg, W_PER_K, 0.5),
                    Cooling.doubted(AIR_W_PER_KG_K * massKg, W_PER_K, 0.5));
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
