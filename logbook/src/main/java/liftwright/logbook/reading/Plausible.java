package liftwright.logbook.reading;

import java.util.List;
import liftwright.plant.recording.Signal;

/**
 * What a test of a rig can measure at all, far beyond any rig: to find a wrong unit, or columns
 * that stand under another's head. Bounds by common sense.
 *
 * @param least SI
 * @param greatest SI
 * @param words the same for a person
 */
record Plausible(double least, double greatest, String words) {

    /** Of a signal. */
    static Plausible of(Signal signal) {
        return switch (signal) {
            case THROTTLE -> new Plausible(-0.05, 1.5, "a throttle from 0 to 100 %");
            case HUMIDITY -> new Plausible(-0.05, 1.2, "a humidity from 0 to 100 %");
            case THRUST, TETHER_LOAD -> new Plausible(-2e4, 2e4, "a force below 20 kN");
            case SCALE -> new Plausible(-2000, 2000, "a mass below 2000 kg");
            case ROLL_MOMENT, PITCH_MOMENT, YAW_MOMENT ->
                    new Plausible(-2e4, 2e4, "a moment below 20 kN·m");
            case CURRENT, WINDING_CURRENT -> new Plausible(-3000, 3000, "a current below 3000 A");
            case VOLTAGE -> new Plausible(-10, 1500, "a voltage below 1500 V");
            case CELL_VOLTAGE -> new Plausible(-1, 6, "a voltage of one cell, below 6 V");
            case SPEED -> new Plausible(-20_000, 20_000, "a speed below 190,000 rpm");
            case TEMPERATURE -> new Plausible(200, 900, "a temperature from −73 °C to 627 °C");
            case AIR_TEMPERATURE -> new Plausible(210, 340, "air from −63 °C to 67 °C");
            case AIR_PRESSURE -> new Plausible(30_000, 120_000, "air at 300 to 1200 hPa");
            case CHARGE_USED -> new Plausible(-1e6, 4e6, "a charge below 1000 Ah");
            case WIND -> new Plausible(-1, 80, "a wind below 80 m/s");
        };
    }

    /** Share of values outside, of those that are numbers. */
    double outside(List<double[]> stretches) {
        int all = 0;
        int out = 0;
        for (double[] stretch : stretches) {
            for (double value : stretch) {
                if (Double.isFinite(value)) {
                    all++;
                    out += value < least || value > greatest ? 1 : 0;
                }
            }
        }
        return all == 0 ? 0 : (double) out / all;
    }
}
