package liftwright.rig.book;

import java.util.List;
import java.util.stream.IntStream;

/**
 * An American wire gauge, by ASTM B258: d = 0.127 mm · 92^((36 − n)/39).
 *
 * @param number gauge; 0 is 1/0 and −3 is 4/0
 */
public record WireGauge(int number) {

    /** Thinnest wire of the format. */
    public static final int THINNEST = 40;

    /** Thickest wire of the format, 4/0. */
    public static final int THICKEST = -3;

    /** The gauge nearest to an area, mm², above 0. */
    public static WireGauge nearest(double areaMm2) {
        double diameterMm = Math.sqrt(4 * areaMm2 / Math.PI);
        long number = Math.round(36 - 39 * Math.log(diameterMm / 0.127) / Math.log(92));
        return new WireGauge((int) Math.max(THICKEST, Math.min(THINNEST, number)));
    }

    /** Those that power wiring uses, thick to thin. */
    static List<WireGauge> common() {
        return IntStream.of(-3, -2, -1, 0, 1, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24)
                .mapToObj(WireGauge::new)
                .toList();
    }

    /** Bare solid diameter, mm. */
    public double diameterMm() {
        return 0.127 * Math.pow(92, (36 - number) / 39.0);
    }

    /** Bare solid area, mm². */
    public double areaMm2() {
        return Math.PI / 4 * diameterMm() * diameterMm();
    }

    @Override
    public String toString() {
        return (number <= 0 ? 1 - number + "/0" : Integer.toString(number)) + " AWG";
    }
}
