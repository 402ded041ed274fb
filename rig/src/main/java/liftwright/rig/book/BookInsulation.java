package liftwright.rig.book;

import java.util.List;
import liftwright.rig.Insulation;

/**
 * A material of insulation.
 *
 * @param material which
 * @param celsius temperature that it bears for years, °C: of PVC the lowest of its grades
 * @param spreadK how far lists of the trade differ from it either way, K
 * @param conductivityWpmK thermal conductivity, W/(m K)
 * @param heatJpm3K heat capacity of a volume, J/(m³ K)
 * @param walls usual thickness by the area of the copper
 * @param source where the values come from
 */
public record BookInsulation(
        Insulation material,
        double celsius,
        double spreadK,
        double conductivityWpmK,
        double heatJpm3K,
        List<Wall> walls,
        String source) {

    /** How far conductivity and heat capacity may be off either way, share of them. */
    public static final double DOUBT_SHARE = 0.2;

    /** How far a usual wall may be off either way, share of it. */
    public static final double WALL_DOUBT_SHARE = 0.3;

    private static final double ZERO_CELSIUS_K = 273.15;

    /**
     * Usual thickness.
     *
     * @param upToMm2 largest area of the copper that has it, mm²; infinity for the last
     * @param mm thickness, mm
     */
    public record Wall(double upToMm2, double mm) {}

    public BookInsulation {
        walls = List.copyOf(walls);
    }

    /** In the order of the page. */
    static final List<BookInsulation> ALL =
            List.of(
                    new BookInsulation(
                            Insulation.PVC,
                            70,
                            0,
                            0.20,
                            1.7e6,
                            walls(0.7, 0.8, 1.0, 1.2, 1.6),
                            "grades 70, 90 and 105 °C: the least counts; IEC 60287 and 60853, from"
                                    + " memory"),
                    new BookInsulation(
                            Insulation.XLPE,
                            90,
                            20,
                            0.29,
                            2.4e6,
                            walls(0.5, 0.7, 0.7, 0.9, 1.1),
                            "IEC 60287 and 60853, from memory"),
                    new BookInsulation(
                            Insulation.ETFE,
                            155,
                            20,
                            0.24,
                            3.3e6,
                            walls(0.30, 0.35, 0.45, 0.6, 0.7),
                            "makers' sheets of the material, from memory"),
                    new BookInsulation(
                            Insulation.SILICONE,
                            180,
                            20,
                            0.25,
                            1.55e6,
                            walls(0.8, 1.0, 1.2, 1.6, 1.8),
                            "makers' sheets of the material, from memory"),
                    new BookInsulation(
                            Insulation.FEP,
                            205,
                            20,
                            0.20,
                            2.5e6,
                            walls(0.30, 0.40, 0.50, 0.6, 0.7),
                            "makers' sheets of the material, from memory"),
                    new BookInsulation(
                            Insulation.PTFE,
                            260,
                            20,
                            0.25,
                            2.2e6,
                            walls(0.30, 0.40, 0.50, 0.6, 0.7),
                            "makers' sheets of the material, from memory"));

    private static List<Wall> walls(double... mm) {
        return List.of(
                new Wall(1.5, mm[0]),
                new Wall(6, mm[1]),
                new Wall(16, mm[2]),
                new Wall(35, mm[3]),
                new Wall(Double.POSITIVE_INFINITY, mm[4]));
    }

    public double classK() {
        return celsius + ZERO_CELSIUS_K;
    }

    /** Usual thickness round a conductor of that area, mm², above 0; m. */
    public double wallM(double areaMm2) {
        for (Wall wall : walls) {
            if (areaMm2 <= wall.upToMm2()) {
                return 1e-3 * wall.mm();
            }
        }
        throw new IllegalArgumentException("no area of " + areaMm2 + " mm²");
    }
}
