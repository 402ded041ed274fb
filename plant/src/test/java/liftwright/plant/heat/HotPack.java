package liftwright.plant.heat;

import java.util.List;
import liftwright.rig.CellType;
import liftwright.rig.Pack;

/** A pack that warms: core, surface, charge that passed and two slow voltages, in this order. */
final class HotPack {

    /** Slots of a pack. */
    static final int SIZE = 5;

    private final Pack pack;
    private final int at;
    private final double airK;

    /**
     * @param at its first component
     */
    HotPack(Pack pack, int at, double airK) {
        this.pack = pack;
        this.at = at;
        this.airK = airK;
    }

    double emfV(double[] y) {
        return pack.series() * (open(y[at + 2]) - y[at + 3] - y[at + 4]);
    }

    double ohm(double[] y) {
        return pack.series() * cellOhm() * warm(y[at]) / pack.parallel() + pack.interconnect().si();
    }

    private double cellOhm() {
        return pack.cell().resistance().orElseThrow().si();
    }

    private double warm(double kelvin) {
        return Math.exp(pack.cell().temperatureCoefficient().si() * (1 / kelvin - 1 / 298.15));
    }

    private double open(double passedAs) {
        double left =
                pack.charge().si()
                        - passedAs / (pack.parallel() * pack.cell().capacity().orElseThrow().si());
        List<Double> share = pack.cell().openCircuit().orElseThrow().charge();
        List<Double> volt = pack.cell().openCircuit().orElseThrow().volt();
        if (left <= share.getFirst()) {
            return volt.getFirst();
        }
        int k = 1;
        while (k < share.size() - 1 && share.get(k) < left) {
            k++;
        }
        return volt.get(k - 1)
                + (volt.get(k) - volt.get(k - 1))
                        * (left - share.get(k - 1))
                        / (share.get(k) - share.get(k - 1));
    }

    /** Slopes of all its components while it gives a current. */
    void slope(double current, double[] y, double[] f) {
        CellType cell = pack.cell();
        double one = current / pack.parallel();
        double warm = warm(y[at]);
        double heat = one * one * cellOhm() * warm;
        for (int pair = 0; pair < cell.settling().size(); pair++) {
            double slow = y[at + 3 + pair];
            double ohm = cell.settling().get(pair).resistance().si() * warm;
            // R C grows with R: the capacitance is what stays.
            double tau = cell.settling().get(pair).time().si() * warm;
            heat += slow * slow / ohm;
            f[at + 3 + pair] = (ohm * one - slow) / tau;
        }
        CellType.Thermal thermal = cell.thermal();
        double links =
                current * current * pack.interconnect().si() / (pack.series() * pack.parallel());
        double through = thermal.coreToSurface().si() * (y[at] - y[at + 1]);
        f[at] = (heat - through) / (0.9 * thermal.heatCapacity().si());
        f[at + 1] =
                (links + through - thermal.toAir().si() * (y[at + 1] - airK))
                        / (0.1 * thermal.heatCapacity().si());
        f[at + 2] = current;
    }

    void factor(TwoNodes bodies) {
        CellType.Thermal thermal = pack.cell().thermal();
        bodies.add(
                at,
                0.9 * thermal.heatCapacity().si(),
                0.1 * thermal.heatCapacity().si(),
                thermal.coreToSurface().si(),
                thermal.toAir().si());
    }

    /**
     * What its cells have given: rest voltage over the charge that passed (by its mean in 2000
     * parts), less C v²/2 of the slow voltages, J.
     */
    double givenJ(double[] y) {
        double passed = y[at + 2];
        int parts = 2000;
        double volts = 0;
        for (int n = 0; n < parts; n++) {
            volts += open(passed * (n + 0.5) / parts) / parts;
        }
        double kept = 0;
        for (int pair = 0; pair < pack.cell().settling().size(); pair++) {
            CellType.Settling settling = pack.cell().settling().get(pair);
            double slow = y[at + 3 + pair];
            kept += settling.time().si() / settling.resistance().si() * slow * slow / 2;
        }
        return pack.series() * (volts * passed - pack.parallel() * kept);
    }
}
