package liftwright.plant.heat;

import java.util.Arrays;
import liftwright.rig.Insulation;

/** Wires and the joints between them as the laws say, typed anew: gauges, walls, rating tests. */
final class WireReferee {

    static final double VISIBLE_EMISSIVITY = 0.9;

    /** American gauges with Ω per 1000 ft and circular mils, AC 43.13-1B, table 11-9. */
    private static final double[][] WIRES = {
        {24, 28.40, 475},
        {22, 16.20, 755},
        {20, 9.88, 1216},
        {18, 6.23, 1900},
        {16, 4.81, 2426},
        {14, 3.06, 3831},
        {12, 2.02, 5874},
        {10, 1.26, 9354},
        {8, 0.70, 16983},
        {6, 0.44, 26818},
        {4, 0.28, 42615},
        {2, 0.18, 66500},
        {1, 0.15, 81700},
        {0, 0.12, 104500},
        {-1, 0.09, 133000},
        {-2, 0.07, 166500},
        {-3, 0.06, 210900}
    };

    private WireReferee() {}

    static double[] wire(int gauge) {
        return Arrays.stream(WIRES).filter(row -> row[0] == gauge).findFirst().orElseThrow();
    }

    /** Conductivity and heat capacity of insulation, as printed in the parts book. */
    static double[] wall(Insulation material) {
        return switch (material) {
            case PVC -> new double[] {0.20, 1.7e6};
            case XLPE -> new double[] {0.29, 2.4e6};
            case ETFE -> new double[] {0.24, 3.3e6};
            case SILICONE -> new double[] {0.25, 1.55e6};
            case FEP -> new double[] {0.20, 2.5e6};
            case PTFE -> new double[] {0.25, 2.2e6};
        };
    }

    /**
     * A joint in its rating test (EIA-364-70): at 25 °C the rated current warms it by 30 K, its two
     * rated wires being the thinnest that stay below 30 K by themselves; never less than a sphere
     * of its volume gives off at 10 W/(m² K).
     */
    static double toAir(double ratedA, double ohm, double capacity, AirTable film) {
        double volume = capacity / HeatLine.COPPER_JPM3K;
        double radius = Math.cbrt(3 * volume / (4 * Math.PI));
        double floor = 10 * 4 * Math.PI * radius * radius;
        if (ratedA == 0) {
            return floor;
        }
        for (int side = 1; ; side++) {
            for (int k = side == 1 ? 0 : WIRES.length - 1; k < WIRES.length; k++) {
                double area = WIRES[k][2] * Math.PI / 4 * 25.4e-6 * 25.4e-6;
                double inner = Math.sqrt(area / (Math.PI * 0.76));
                double outer = inner + 0.8e-3;
                var surface =
                        new SurfaceReferee(2 * outer, 298.15, 101_325, 0, VISIBLE_EMISSIVITY, film);
                double wallKm = Math.log(outer / inner) / (2 * Math.PI * 0.20);
                double rise = rise(ratedA / side, WIRES[k][1] / 304.8, surface, wallKm);
                if (rise <= 30) {
                    // What a wire that heats itself loses more for each kelvin, half way from its
                    // own temperature to the joint's.
                    double middle = 298.15 + (30 + rise) / 2;
                    double own = ratedA / side;
                    double across =
                            given(middle + 0.5, surface, wallKm)
                                    - given(middle - 0.5, surface, wallKm)
                                    - own * own * WIRES[k][1] / 304.8 * 0.00393;
                    double fins = 2 * side * Math.sqrt(HeatLine.COPPER_WPMK * area * across);
                    double whole = ratedA * ratedA * ohm / 30;
                    return Math.max(floor, whole - fins * (1 - rise / 30));
                }
            }
        }
    }

    static double copperRadiusM(int gauge) {
        return Math.sqrt(wire(gauge)[2] * 25.4e-6 * 25.4e-6 / 4 / 0.76);
    }

    /** The current that warms a long wire in the air of these tests to a temperature, A. */
    static double steadyA(
            int gauge,
            Insulation material,
            double wallM,
            int bundle,
            double airMps,
            double copperK) {
        double[] wire = wire(gauge);
        double inner = copperRadiusM(gauge);
        double outer = inner + wallM;
        var surface =
                new SurfaceReferee(
                        2 * outer,
                        WarmSketch.AIR_K,
                        WarmSketch.PASCAL,
                        airMps,
                        VISIBLE_EMISSIVITY,
                        AirTable.PRINTED);
        double wallKm = Math.log(outer / inner) / (2 * Math.PI * wall(material)[0]);
        double free = 1 / Math.sqrt(bundle);
        double low = WarmSketch.AIR_K;
        double high = copperK;
        for (int k = 0; k < 60; k++) {
            double skin = (low + high) / 2;
            if (skin + free * surface.wattPerM(skin) * wallKm < copperK) {
                low = skin;
            } else {
                high = skin;
            }
        }
        double warm = wire[1] / 304.8 * (1 + 0.00393 * (copperK - 293.15));
        return Math.sqrt(free * surface.wattPerM(low) / warm);
    }

    /** Heat through wall and surface from a copper temperature, W/m. */
    private static double given(double copperK, SurfaceReferee surface, double wallKm) {
        double low = 298.15;
        double high = copperK;
        for (int k = 0; k < 60; k++) {
            double skin = (low + high) / 2;
            if (skin + surface.wattPerM(skin) * wallKm < copperK) {
                low = skin;
            } else {
                high = skin;
            }
        }
        return surface.wattPerM(low);
    }

    /** Steady rise of a long wire in its test; 100 where it is beyond use. */
    private static double rise(
            double ampere, double ohmPerM, SurfaceReferee surface, double wallKm) {
        double low = 0;
        double high = 100;
        for (int k = 0; k < 60; k++) {
            double skin = (low + high) / 2;
            double given = surface.wattPerM(298.15 + skin);
            double copper = 298.15 + skin + given * wallKm;
            double made = ampere * ampere * ohmPerM * (1 + 0.00393 * (copper - 293.15));
            if (made > given) {
                low = skin;
            } else {
                high = skin;
            }
        }
        return high > 99 ? 100 : high + surface.wattPerM(298.15 + high) * wallKm;
    }
}
