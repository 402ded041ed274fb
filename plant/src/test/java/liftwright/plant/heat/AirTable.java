package liftwright.plant.heat;

/** Dry air as the referees have it: by a printed table, or by the formulas of a standard. */
enum AirTable {

    /**
     * Interpolation in the print of Incropera and DeWitt, Fundamentals of Heat and Mass Transfer,
     * Table A.4, air at one atmosphere (from memory of it). No formula of viscosity or conductivity
     * stands behind it.
     */
    PRINTED {
        @Override
        double viscosity(double kelvin) {
            return between(VISCOSITY_1E7, kelvin) * 1e-7;
        }

        @Override
        double conductivity(double kelvin) {
            return between(CONDUCTIVITY_1E3, kelvin) * 1e-3;
        }

        @Override
        double prandtl(double kelvin) {
            return between(PRANDTL, kelvin);
        }
    },

    /**
     * The formulas of the U.S. Standard Atmosphere 1976, equations 51 and 53, with a specific heat
     * after Dixon (2007): for comparisons that shall not hang on the air.
     */
    STANDARD {
        @Override
        double viscosity(double kelvin) {
            return 1.458e-6 * kelvin * Math.sqrt(kelvin) / (kelvin + 110.4);
        }

        @Override
        double conductivity(double kelvin) {
            return 2.64638e-3
                    * kelvin
                    * Math.sqrt(kelvin)
                    / (kelvin + 245.4 * Math.pow(10, -12 / kelvin));
        }

        @Override
        double prandtl(double kelvin) {
            double heat = 1002.5 + 275e-6 * Math.pow(kelvin - 200, 2);
            return heat * viscosity(kelvin) / conductivity(kelvin);
        }
    };

    private static final double[] KELVIN = {200, 250, 300, 350, 400, 450, 500, 550, 600};
    private static final double[] VISCOSITY_1E7 = {
        132.5, 159.6, 184.6, 208.2, 230.1, 250.7, 270.1, 288.4, 305.8
    };
    private static final double[] CONDUCTIVITY_1E3 = {
        18.1, 22.3, 26.3, 30.0, 33.8, 37.3, 40.7, 43.9, 46.9
    };
    private static final double[] PRANDTL = {
        0.737, 0.720, 0.707, 0.700, 0.690, 0.686, 0.684, 0.683, 0.685
    };

    /** μ, Pa s. */
    abstract double viscosity(double kelvin);

    /** k, W/(m K). */
    abstract double conductivity(double kelvin);

    abstract double prandtl(double kelvin);

    /** ν = μ R T / p, m²/s. */
    double kinematicViscosity(double kelvin, double pascal) {
        return viscosity(kelvin) * 287.053 * kelvin / pascal;
    }

    private static double between(double[] column, double kelvin) {
        if (kelvin < KELVIN[0] || kelvin > KELVIN[KELVIN.length - 1]) {
            throw new IllegalArgumentException("the table ends before " + kelvin + " K");
        }
        int k = 1;
        while (KELVIN[k] < kelvin) {
            k++;
        }
        double share = (kelvin - KELVIN[k - 1]) / (KELVIN[k] - KELVIN[k - 1]);
        return column[k - 1] + share * (column[k] - column[k - 1]);
    }
}
