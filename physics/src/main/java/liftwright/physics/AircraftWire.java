package liftwright.physics;

/**
 * Tin-plated stranded copper aircraft wire: greatest resistance at 20 °C, nominal section and
 * current rating in a bundle, as printed in [AC43.13] Table 11-9. Use these for voltage drop: they
 * lie 13 % to 30 % above solid copper of the same section (plating, lay, greatest against nominal).
 *
 * <p>The ratings hold at 70 °C ambient, 33 or more wires in the bundle for 24 to 10 AWG and 9 for 8
 * AWG and thicker, at most 20 % of the harness capacity in use, 60,000 ft altitude. Single wires in
 * free air carry more. Not every gauge has ratings for the hotter insulation classes here.
 */
public enum AircraftWire {
    AWG_24(24, 28.40, 475, 2.5),
    AWG_22(22, 16.20, 755, 3),
    AWG_20(20, 9.88, 1216, 4, 7, 9),
    AWG_18(18, 6.23, 1900, 6),
    AWG_16(16, 4.81, 2426, 7, 11, 14),
    AWG_14(14, 3.06, 3831, 10),
    AWG_12(12, 2.02, 5874, 13, 19, 25),
    AWG_10(10, 1.26, 9354, 17, 26, 32),
    AWG_8(8, 0.70, 16983, 38, 57, 71),
    AWG_6(6, 0.44, 26818, 50),
    AWG_4(4, 0.28, 42615, 68, 103, 133),
    AWG_2(2, 0.18, 66500, 95),
    AWG_1(1, 0.15, 81700, 113),
    AWG_1_0(0, 0.12, 104500, 128, 192, 243),
    AWG_2_0(-1, 0.09, 133000, 147),
    AWG_3_0(-2, 0.07, 166500, 172),
    AWG_4_0(-3, 0.06, 210900, 204);

    /** Temperature class of the insulation: the conductor's limit. */
    public enum Insulation {
        C105(378.15),
        C150(423.15),
        C200(473.15);

        private final double limitK;

        Insulation(double limitK) {
            this.limitK = limitK;
        }

        /** Conductor temperature limit, K. */
        public double limitK() {
            return limitK;
        }
    }

    /** 1 Ω/1000 ft in Ω/m [SP811]. */
    private static final double OHMPM_PER_OHM_PER_1000FT = 1 / 304.8;

    /** 1 circular mil, the circle of 25.4 µm diameter, in m² (definition). */
    private static final double M2_PER_CMIL = Math.PI / 4 * 25.4e-6 * 25.4e-6;

    private final int gauge;
    private final double ohmPer1000ft;
    private final double cmil;
    private final double ratedA105;
    private final double ratedA150;
    private final double ratedA200;

    AircraftWire(int gauge, double ohmPer1000ft, double cmil, double ratedA105) {
        this(gauge, ohmPer1000ft, cmil, ratedA105, 0, 0);
    }

    AircraftWire(
            int gauge,
            double ohmPer1000ft,
            double cmil,
            double ratedA105,
            double ratedA150,
            double ratedA200) {
        this.gauge = gauge;
        this.ohmPer1000ft = ohmPer1000ft;
        this.cmil = cmil;
        this.ratedA105 = ratedA105;
        this.ratedA150 = ratedA150;
        this.ratedA200 = ratedA200;
    }

    /** The table's gauges, AWG; 0 is 1/0, −1 is 2/0, −2 is 3/0, −3 is 4/0. */
    public int gauge() {
        return gauge;
    }

    /** Greatest resistance of one conductor at 20 °C, Ω/m. */
    public double ohmpm() {
        return ohmPer1000ft * OHMPM_PER_OHM_PER_1000FT;
    }

    /** Nominal section of copper, m². */
    public double areaM2() {
        return cmil * M2_PER_CMIL;
    }

    /** Whether the table has a rating for this class of insulation. */
    public boolean isRated(Insulation insulation) {
        return rating(insulation) > 0;
    }

    /**
     * Rated current in a bundle, A, under the conditions named above.
     *
     * @throws IllegalArgumentException if {@link #isRated} is false
     */
    public double ratedA(Insulation insulation) {
        double rating = rating(insulation);
        if (rating == 0) {
            throw new IllegalArgumentException(
                    "no " + insulation + " rating for " + this + " in the table");
        }
        return rating;
    }

    /** Whether the table has this gauge. */
    public static boolean has(int gauge) {
        for (AircraftWire wire : values()) {
            if (wire.gauge == gauge) {
                return true;
            }
        }
        return false;
    }

    /**
     * The table's row of a gauge.
     *
     * @throws IllegalArgumentException if {@link #has} is false
     */
    public static AircraftWire of(int gauge) {
        for (AircraftWire wire : values()) {
            if (wire.gauge == gauge) {
                return wire;
            }
        }
        throw new IllegalArgumentException("no aircraft wire of gauge " + gauge);
    }

    private double rating(Insulation insulation) {
        return switch (insulation) {
            case C105 -> ratedA105;
            case C150 -> ratedA150;
            case C200 -> ratedA200;
        };
    }
}
