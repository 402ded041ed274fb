package liftwright.physics;

/**
 * What a rotor throws when it breaks: a blade, a third of the rotor, and how far it flies. A piece
 * leaves along the tangent with the speed its centre of mass had; what spin it keeps is left out of
 * its energy. From 58 ft·lbf, some 79 J, on a fragment counts as hazardous [DDESB12]. A duct or
 * guard that holds the piece back is not counted.
 */
public final class Fragment {

    /** Drag coefficient of a sphere below its drag crisis [HOERNER65]. */
    static final double SPHERE_DRAG = 0.47;

    /** Drag coefficient of a plate square to the stream [HOERNER65]. */
    static final double PLATE_DRAG = 1.17;

    /** Steepest and flattest throw that is tried, rad. */
    private static final double FLATTEST_RAD = Math.toRadians(-10);

    private static final double STEEPEST_RAD = Math.toRadians(60);
    private static final int ANGLES = 36;
    private static final int REFINEMENTS = 20;

    /** Widest slice in the arsinh of the slope. */
    private static final double SLICE = 0.15;

    /** Most by which 1/v_x² grows within a slice, of itself: fast, light pieces slow at once. */
    private static final double GROWTH = 0.25;

    /** Nodes and weight of the three-point rule of Gauss and Legendre on −1 to 1. */
    private static final double NODE = Math.sqrt(0.6);

    private Fragment() {}

    /** Speed of a piece at the moment of release, Ω r, m/s; r to its centre of mass. */
    public static double speedMps(double radiusM, double rotorRadps) {
        return radiusM * rotorRadps;
    }

    /** Pull on the root of a blade, and on the mount once the blade is gone: m r Ω², N. */
    public static double rootLoadN(double massKg, double radiusM, double rotorRadps) {
        return massKg * radiusM * rotorRadps * rotorRadps;
    }

    /**
     * Most speed of any piece that has its share of both mass and moment of inertia, as each of n
     * equal sectors of a rotor has: Ω √(J/m), m/s. No arrangement of mass exceeds it, since the
     * centre of a piece is never farther out than its radius of gyration.
     *
     * @param inertiaKgm2 J of the whole rotor
     * @param massKg m of the whole rotor
     */
    public static double sectorMps(double inertiaKgm2, double massKg, double rotorRadps) {
        return rotorRadps * Math.sqrt(inertiaKgm2 / massKg);
    }

    /** Energy ½ m v², J. */
    public static double energyJ(double massKg, double speedMps) {
        return massKg * speedMps * speedMps / 2;
    }

    /** Speed at which a mass carries an energy, √(2 E/m), m/s. */
    public static double speedForMps(double energyJ, double massKg) {
        return Math.sqrt(2 * energyJ / massKg);
    }

    /**
     * C_d A of a sphere of the mass, 0.47 π/4 (6 m/(π ρ_m))^(2/3), m²: of all bodies that tumble it
     * shows the stream the least on average (a quarter of its surface, after Cauchy), and broken
     * pieces have a higher coefficient [HOERNER65]. A piece that kept its edge to the stream would
     * fly farther; nothing holds it there.
     *
     * @param materialKgpm3 ρ_m of what it is made of
     */
    public static double compactDragM2(double massKg, double materialKgpm3) {
        return roundDragM2(Math.cbrt(6 * massKg / (Math.PI * materialKgpm3)));
    }

    /** C_d A of a sphere, 0.47 π d²/4, m²: the least of a body as wide all round [HOERNER65]. */
    public static double roundDragM2(double diameterM) {
        return SPHERE_DRAG * Math.PI / 4 * diameterM * diameterM;
    }

    /**
     * C_d A of a thin plate that tumbles, 1.17 · A/2, m²: half the face is what a plate shows on
     * average over all directions (Cauchy: a quarter of the surface) [HOERNER65].
     *
     * @param faceM2 A of one face
     */
    public static double tumblingDragM2(double faceM2) {
        return PLATE_DRAG * faceM2 / 2;
    }

    /**
     * Way over which drag alone takes a piece's energy from one value to another, (m/ρ C_d A)
     * ln(E₀/E), m; 0 where it has no more to begin with.
     *
     * @param dragAreaM2 C_d A, m², &gt; 0
     */
    public static double wayToEnergyM(
            double fromJ, double toJ, double massKg, double dragAreaM2, double densityKgpm3) {
        return fromJ <= toJ ? 0 : massKg / (densityKgpm3 * dragAreaM2) * Math.log(fromJ / toJ);
    }

    /**
     * Farthest that a piece falls from where it left, over all angles from 10° below level to 60°
     * above, m; the farthest throw lies at 45° without drag and lower with it.
     *
     * @param speedMps v₀ at release, ≥ 0
     * @param heightM of the release above the ground, ≥ 0
     * @param dragAreaM2 C_d A, m²; 0 for none
     */
    public static double farthestM(
            double speedMps,
            double heightM,
            double massKg,
            double dragAreaM2,
            double densityKgpm3) {
        return farthestWithM(speedMps, heightM, massKg, dragAreaM2, densityKgpm3, 0);
    }

    /**
     * The same, of the throws alone that end with an energy or more, m; 0 if none does.
     *
     * @param leastJ energy at the ground, J
     */
    public static double farthestWithM(
            double speedMps,
            double heightM,
            double massKg,
            double dragAreaM2,
            double densityKgpm3,
            double leastJ) {
        if (speedMps == 0) {
            return 0;
        }
        double perM = densityKgpm3 * dragAreaM2 / (2 * massKg);
        double leastMps = speedForMps(leastJ, massKg);
        double step = (STEEPEST_RAD - FLATTEST_RAD) / ANGLES;
        double best = FLATTEST_RAD;
        double most = 0;
        for (int k = 0; k <= ANGLES; k++) {
            double angle = FLATTEST_RAD + k * step;
            double reach = counted(landing(speedMps, angle, heightM, perM), leastMps);
            if (reach > most) {
                most = reach;
                best = angle;
            }
        }
        double low = Math.max(FLATTEST_RAD, best - step);
        double high = Math.min(STEEPEST_RAD, best + step);
        for (int k = 0; k < REFINEMENTS; k++) {
            double third = (high - low) / 3;
            double left = counted(landing(speedMps, low + third, heightM, perM), leastMps);
            double right = counted(landing(speedMps, high - third, heightM, perM), leastMps);
            most = Math.max(most, Math.max(left, right));
            if (left < right) {
                low += third;
            } else {
                high -= third;
            }
        }
        return most;
    }

    /** Where and how fast a throw ends. */
    private record Landing(double distanceM, double speedMps) {}

    private static double counted(Landing landing, double leastMps) {
        return landing.speedMps >= leastMps ? landing.distanceM : 0;
    }

    /**
     * Distance at which a piece thrown at an angle meets the ground, m. Along the path the slope p
     * = tan ψ only falls, ṗ = −g/v_x, and 1/v_x² = 1/v_x0² + (k/g)(F(p₀) − F(p)) with F(p) = p √(1
     * + p²) + arsinh p (the hodograph of a path with drag k v²; any text on exterior ballistics).
     * So x = ∫ v_x²/g dp and y = ∫ v_x² p/g dp, summed here in slices of arsinh p.
     *
     * @param speedMps v₀, &gt; 0
     * @param angleRad above level, between −90° and 90°
     * @param heightM of the release above the ground, ≥ 0
     * @param dragPerM k = ρ C_d A/(2 m), 1/m, ≥ 0
     */
    public static double reachM(double speedMps, double angleRad, double heightM, double dragPerM) {
        return landing(speedMps, angleRad, heightM, dragPerM).distanceM;
    }

    /** Speed with which such a piece meets the ground, m/s. Arguments as above. */
    public static double impactMps(
            double speedMps, double angleRad, double heightM, double dragPerM) {
        return landing(speedMps, angleRad, heightM, dragPerM).speedMps;
    }

    private static Landing landing(
            double speedMps, double angleRad, double heightM, double dragPerM) {
        double level = speedMps * Math.cos(angleRad);
        if (!(level > 0) || !(heightM >= 0) || !(dragPerM >= 0)) {
            throw new IllegalArgumentException(
                    "a throw has a speed, is not straight up, and starts at or above the ground");
        }
        double slope = asinh(Math.tan(angleRad));
        double atStart = 1 / (level * level) + dragPerM / Gravity.STANDARD_MPS2 * path(slope);
        double x = 0;
        double y = heightM;
        while (true) {
            double next = slope - slice(slope, atStart, dragPerM);
            double fall = sum(slope, next, atStart, dragPerM, true);
            // Upwards the path cannot end; on level ground it may end where it began.
            if (y + fall < 0) {
                double low = next;
                double high = slope;
                for (int k = 0; k < 60; k++) {
                    double middle = (low + high) / 2;
                    if (y + sum(slope, middle, atStart, dragPerM, true) < 0) {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                double square = 1 / (atStart - dragPerM / Gravity.STANDARD_MPS2 * path(low));
                return new Landing(
                        x + sum(slope, low, atStart, dragPerM, false),
                        Math.sqrt(square) * Math.cosh(low));
            }
            y += fall;
            x += sum(slope, next, atStart, dragPerM, false);
            slope = next;
        }
    }

    /** Width of the slice that begins at s. */
    private static double slice(double s, double atStart, double dragPerM) {
        double slowing = dragPerM / Gravity.STANDARD_MPS2;
        double cosh = Math.cosh(s);
        double perS = 2 * slowing * cosh * cosh / (atStart - slowing * path(s));
        return perS * SLICE > GROWTH ? GROWTH / perS : SLICE;
    }

    /** Way across or up over a slice, by the three-point rule. */
    private static double sum(double from, double to, double atStart, double dragPerM, boolean up) {
        double middle = (from + to) / 2;
        double half = (from - to) / 2;
        double sum =
                5 * way(middle - NODE * half, atStart, dragPerM, up)
                        + 8 * way(middle, atStart, dragPerM, up)
                        + 5 * way(middle + NODE * half, atStart, dragPerM, up);
        return sum * half / 9;
    }

    /** v_x²/g dp/ds, times the slope p for the way up; p = sinh s. */
    private static double way(double s, double atStart, double dragPerM, boolean up) {
        double g = Gravity.STANDARD_MPS2;
        double e = Math.exp(s);
        double sinh = (e - 1 / e) / 2;
        double cosh = (e + 1 / e) / 2;
        double square = 1 / (atStart - dragPerM / g * (sinh * cosh + s));
        return square / g * cosh * (up ? sinh : 1);
    }

    /** F(sinh s). */
    private static double path(double s) {
        return Math.sinh(2 * s) / 2 + s;
    }

    private static double asinh(double x) {
        return Math.signum(x) * Math.log(Math.abs(x) + Math.sqrt(x * x + 1));
    }
}
