package liftwright.physics;

/**
 * Heat from a surface to the air and the room: natural and forced convection and radiation. Nusselt
 * numbers are those of smooth bodies; ± 15 % is usual against measured wires [INCROPERA].
 */
public final class SurfaceExchange {

    /** Stefan–Boltzmann constant, W/(m²·K⁴) [SP811]. */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /** Emissivity of insulation and of painted or oxidised surfaces; 0.85–0.95, common practice. */
    public static final double USUAL_EMISSIVITY = 0.9;

    /** Greatest Rayleigh number of the law of natural convection at a cylinder [CHURCHILL75]. */
    public static final double MOST_RAYLEIGH = 1e12;

    /** Nusselt number that the law of forced convection keeps without any flow [CHURCHILL77]. */
    private static final double STILL_NUSSELT = 0.3;

    private static final double GRAVITY_MPS2 = Gravity.STANDARD_MPS2;

    private SurfaceExchange() {}

    /**
     * Natural convection at a horizontal cylinder, all Rayleigh numbers up to {@link
     * #MOST_RAYLEIGH}: Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))²
     * [CHURCHILL75].
     *
     * @param rayleigh on the diameter, properties at the film temperature, ≥ 0
     * @param prandtl &gt; 0
     */
    public static double naturalCylinderNusselt(double rayleigh, double prandtl) {
        return natural(0.60, 0.559, rayleigh, prandtl);
    }

    /**
     * Natural convection at a vertical plate, all Rayleigh numbers up to 1e12: Nu = (0.825 + 0.387
     * Ra^(1/6) / (1 + (0.492/Pr)^(9/16))^(8/27))² [CHURCHILL75].
     *
     * @param rayleigh on the height, ≥ 0
     * @param prandtl &gt; 0
     */
    public static double naturalPlateNusselt(double rayleigh, double prandtl) {
        return natural(0.825, 0.492, rayleigh, prandtl);
    }

    private static double natural(double still, double edge, double rayleigh, double prandtl) {
        if (!(rayleigh >= 0 && rayleigh <= MOST_RAYLEIGH) || !(prandtl > 0)) {
            throw new IllegalArgumentException(
                    "a Rayleigh number is from 0 to 1e12 and a Prandtl number above 0, not "
                            + rayleigh
                            + " and "
                            + prandtl);
        }
        double bend = Math.pow(1 + Math.pow(edge / prandtl, 9.0 / 16), 8.0 / 27);
        double root = still + 0.387 * Math.pow(rayleigh, 1.0 / 6) / bend;
        return root * root;
    }

    /**
     * Forced convection at a cylinder across the flow: Nu = 0.3 + 0.62 Re^½ Pr^⅓ / (1 +
     * (0.4/Pr)^⅔)^¼ · (1 + (Re/282000)^(5/8))^(4/5) [CHURCHILL77]. Offered by its authors for Re Pr
     * &gt; 0.2; below that it is continued to its 0.3, where natural convection rules anyway.
     *
     * @param reynolds on the diameter, ≥ 0
     * @param prandtl &gt; 0
     */
    public static double crossFlowNusselt(double reynolds, double prandtl) {
        if (!(reynolds >= 0 && reynolds < Double.POSITIVE_INFINITY) || !(prandtl > 0)) {
            throw new IllegalArgumentException(
                    "a Reynolds number is not below 0 and a Prandtl number above 0, not "
                            + reynolds
                            + " and "
                            + prandtl);
        }
        double bend = Math.pow(1 + Math.pow(0.4 / prandtl, 2.0 / 3), 0.25);
        double rough = Math.pow(1 + Math.pow(reynolds / 282_000, 5.0 / 8), 4.0 / 5);
        return STILL_NUSSELT + 0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl) / bend * rough;
    }

    /**
     * Natural and forced convection together at a horizontal cylinder across the flow, Nu⁴ = Nu_f⁴
     * + Nu_n⁴ [INCROPERA]. The 0.3 which the forced law keeps without any flow is taken out, (Nu_f⁴
     * − 0.3⁴), because the natural law has its own: so air that slows down to nothing ends at
     * natural convection, and the sum changes by less than 0.3 % where it is above 1.
     *
     * @param forced Nusselt number of {@link #crossFlowNusselt}
     * @param natural Nusselt number of {@link #naturalCylinderNusselt}
     */
    public static double mixedNusselt(double forced, double natural) {
        if (!(forced >= STILL_NUSSELT) || !(natural >= 0)) {
            throw new IllegalArgumentException(
                    "Nusselt numbers of the two laws are from 0.3 and 0 upwards, not "
                            + forced
                            + " and "
                            + natural);
        }
        double still = STILL_NUSSELT * STILL_NUSSELT;
        double sum = forced * forced * forced * forced - still * still;
        return Math.sqrt(Math.sqrt(sum + natural * natural * natural * natural));
    }

    /**
     * Radiation of a small grey body to a room at the temperature of the air, εσ(T⁴ − T_a⁴)/(T −
     * T_a), in its form without cancellation, W/(m²·K).
     *
     * @param emissivity 0 to 1
     */
    public static double radiationWpm2K(double emissivity, double surfaceK, double airK) {
        if (!(emissivity >= 0 && emissivity <= 1) || !(surfaceK > 0) || !(airK > 0)) {
            throw new IllegalArgumentException(
                    "emissivity is from 0 to 1 and temperatures are above 0 K");
        }
        return emissivity
                * STEFAN_BOLTZMANN
                * (surfaceK * surfaceK + airK * airK)
                * (surfaceK + airK);
    }

    /**
     * Heat that a horizontal round wire gives to the air per metre and kelvin: convection (natural
     * and any declared flow across it, film properties, β = 1/T_f) and radiation. A wire colder
     * than the air takes as much. Standing wires and wires along the flow differ by some 20 %.
     *
     * @param outerM outer diameter, m, &gt; 0
     * @param surfaceK surface, K; its mean with the air within the range of {@link AirFilm}
     * @param airK air and room, K
     * @param pressurePa station pressure, Pa
     * @param airMps speed of the air across the wire, m/s, ≥ 0
     * @param emissivity 0 to 1
     * @return W/(m·K), over the difference of surface and air
     */
    public static double wireWpmK(
            double outerM,
            double surfaceK,
            double airK,
            double pressurePa,
            double airMps,
            double emissivity) {
        if (!(outerM > 0) || !(airMps >= 0)) {
            throw new IllegalArgumentException(
                    "a diameter is above 0 and an air speed not below 0, not "
                            + outerM
                            + " m and "
                            + airMps
                            + " m/s");
        }
        double film = (surfaceK + airK) / 2;
        double viscosity =
                AirFilm.viscosityPas(film) / AirFilm.densityKgpm3(pressurePa, film); // kinematic
        double prandtl = AirFilm.prandtl(film);
        double cube = outerM * outerM * outerM;
        double lift = GRAVITY_MPS2 / film * Math.abs(surfaceK - airK);
        double rayleigh = lift * cube / (viscosity * viscosity) * prandtl;
        double nusselt =
                mixedNusselt(
                        crossFlowNusselt(airMps * outerM / viscosity, prandtl),
                        naturalCylinderNusselt(rayleigh, prandtl));
        double radiation = radiationWpm2K(emissivity, surfaceK, airK);
        return Math.PI * (nusselt * AirFilm.conductivityWpmK(film) + radiation * outerM);
    }

    /**
     * Share of its free surface that each of n wires in a bundle keeps, 1/√n: the girth of a round
     * bundle over the girths of its wires (geometry, without gaps).
     *
     * @param wires n ≥ 1
     */
    public static double bundleFactor(int wires) {
        if (wires < 1) {
            throw new IllegalArgumentException("a bundle has at least one wire, not " + wires);
        }
        return 1 / Math.sqrt(wires);
    }
}
