package liftwright.plant.heat;

/**
 * Heat from a horizontal cylinder to air, typed from the papers: natural convection after Churchill
 * and Chu, Int. J. Heat Mass Transfer 18 (1975) 1049; cross-flow after Churchill and Bernstein,
 * Trans. ASME J. Heat Transfer 99 (1977) 300; both together as the fourth root of the sum of fourth
 * powers (Incropera and DeWitt, section 9.9), less the 0.3 that the cross-flow law keeps in still
 * air; radiation of a grey body to surroundings at the temperature of the air.
 *
 * @param outerM diameter of the cylinder, m
 * @param airK temperature of air and surroundings, K
 * @param pascal pressure of the air, Pa
 * @param airMps air speed across it, m/s
 * @param emissivity of its surface
 * @param film properties of air
 */
record SurfaceReferee(
        double outerM,
        double airK,
        double pascal,
        double airMps,
        double emissivity,
        AirTable film) {

    private static final double STEFAN_BOLTZMANN = 5.670374e-8;
    private static final double GRAVITY = 9.80665;

    /** From a metre of it at a surface temperature, W/m; odd about that of the air. */
    double wattPerM(double surfaceK) {
        return Math.PI * outerM * wattPerM2(surfaceK);
    }

    private double wattPerM2(double surfaceK) {
        double filmK = (surfaceK + airK) / 2;
        double k = film.conductivity(filmK);
        double nusselt = Math.pow(Math.pow(natural(surfaceK), 4) + forced4(filmK), 1 / 4.0);
        double radiation =
                emissivity * STEFAN_BOLTZMANN * (Math.pow(surfaceK, 4) - Math.pow(airK, 4));
        return nusselt * k / outerM * (surfaceK - airK) + radiation;
    }

    private double natural(double surfaceK) {
        double filmK = (surfaceK + airK) / 2;
        double pr = film.prandtl(filmK);
        double nu = film.kinematicViscosity(filmK, pascal);
        double grashof =
                GRAVITY / filmK * Math.abs(surfaceK - airK) * Math.pow(outerM, 3) / (nu * nu);
        return natural(grashof * pr, pr);
    }

    /** Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559 / Pr)^(9/16)]^(8/27)}², β = 1 / T_f. */
    static double natural(double rayleigh, double prandtl) {
        double under = Math.pow(1 + Math.pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
        return Math.pow(0.60 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / under, 2);
    }

    private double forced4(double filmK) {
        if (airMps == 0) {
            return 0;
        }
        double reynolds = airMps * outerM / film.kinematicViscosity(filmK, pascal);
        return Math.pow(forced(reynolds, film.prandtl(filmK)), 4) - Math.pow(0.3, 4);
    }

    /** Nu = 0.3 + 0.62 Re^½ Pr^⅓ / [1 + (0.4/Pr)^⅔]^¼ · [1 + (Re/282000)^⅝]^⅘. */
    static double forced(double reynolds, double prandtl) {
        double low =
                0.62
                        * Math.sqrt(reynolds)
                        * Math.cbrt(prandtl)
                        / Math.pow(1 + Math.pow(0.4 / prandtl, 2.0 / 3), 0.25);
        return 0.3 + low * Math.pow(1 + Math.pow(reynolds / 282_000, 5.0 / 8), 4.0 / 5);
    }
}
