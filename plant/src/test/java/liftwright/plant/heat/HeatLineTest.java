package liftwright.plant.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The referee of hot wires keeps to what is known in closed form, before it judges anything. */
class HeatLineTest {

    private static final double AIR_K = 293.15;

    /** Ra 1.867e6, Pr 0.7241: Nu 17.39 (Çengel and Ghajar, Example 9-1). */
    @Test
    void naturalConvectionAsInTheBook() {
        assertThat(SurfaceReferee.natural(1.867e6, 0.7241)).isCloseTo(17.39, within(0.02));
        // 0.08 m at 70 °C in 20 °C: 5.867 W/(m² K) there, from another table of air, whose
        // conductivity is 2.3 % lower
        var pipe = new SurfaceReferee(0.08, AIR_K, 101_325, 0, 0, AirTable.PRINTED);
        assertThat(pipe.wattPerM(343.15) / (Math.PI * 0.08 * 50))
                .isCloseTo(5.867, within(0.02 * 5.867));
    }

    /** Re 6071, Pr 0.700: 40.6 (Incropera); Re 42190, Pr 0.7202: 124 (Çengel and Ghajar). */
    @Test
    void crossFlowAsInTheBooks() {
        assertThat(SurfaceReferee.forced(6071, 0.700)).isCloseTo(40.6, within(0.1));
        assertThat(SurfaceReferee.forced(42_190, 0.7202)).isCloseTo(124.45, within(0.1));
    }

    /**
     * No way out: t = (k S / I)², k as printed in IEC 60364-5-54 (115 for 70 to 160 °C, 143 for 90
     * to 250 °C, copper); the law there is of K = 226 and 234.5, here of ρ, α and c.
     */
    @Test
    void adiabaticLaw() {
        assertThat(adiabaticK(70, 160)).isCloseTo(115, within(1.2));
        assertThat(adiabaticK(90, 250)).isCloseTo(143, within(1.5));
        assertThat(adiabaticK(90, 140)).isCloseTo(85.5, within(0.9));
    }

    private static double adiabaticK(double fromC, double toC) {
        var line = new HeatLine(AIR_K);
        double area = 4e-6;
        line.wire(
                new HeatLine.Wire(
                        area, 1.7241e-8 / area, 1e-3, 1.001e-3, 1, 1, 1e-9, 1, 1, k -> 0.0),
                new double[] {1},
                1);
        var run = new HeatLineRun(line, 273.15 + fromC, 1e-4);
        run.ampere(1000);
        double t = run.goUntil(10, 0, 1, 273.15 + toC);
        return 1000 * Math.sqrt(t) / 4;
    }

    /** ln(r₂/r₁) / 2πk and the surface in series carry I²R; half way in ln, half the drop. */
    @Test
    void radialSteadyState() {
        double h = 12;
        double outer = 3e-3;
        double inner = 1e-3;
        var line = new HeatLine(AIR_K);
        line.wire(
                new HeatLine.Wire(
                        2.5e-6,
                        7e-3,
                        inner,
                        outer,
                        1,
                        1,
                        0.17,
                        2e6,
                        0.5,
                        k -> h * 2 * Math.PI * outer * (k - AIR_K)),
                new double[] {0.5},
                60);
        var run = new HeatLineRun(line, AIR_K, 1e-5);
        run.ampere(25);
        run.go(20_000);
        double perK = 0.00393;
        double resistance = Math.log(outer / inner) / (2 * Math.PI * 0.17);
        resistance += 1 / (h * 2 * Math.PI * outer);
        double cold = 25 * 25 * 7e-3;
        double rise = cold * resistance / (1 - cold * perK * resistance);
        assertThat(run.kelvin(0) - AIR_K).isCloseTo(rise, within(1e-3));
    }

    /**
     * A lump at the end of a long bare wire, which takes P through a fin of tanh form: T = P / √(k
     * A h P) coth(m L) for a fin of adiabatic end.
     */
    @Test
    void steadyFin() {
        double area = 3e-6;
        double perimeter = 2 * Math.PI * 1.2e-3;
        double h = 15;
        double length = 0.3;
        var line = new HeatLine(AIR_K);
        line.lump(2, 1e-3, 0);
        line.wire(
                new HeatLine.Wire(
                        area,
                        0,
                        1.0e-3,
                        1.2e-3,
                        1,
                        1,
                        1e3,
                        1,
                        length,
                        k -> h * perimeter * (k - AIR_K)),
                HeatLine.graded(length, 200, 1.02),
                1);
        var run = new HeatLineRun(line, AIR_K, 1e-5);
        run.ampere(20);
        run.go(50_000);
        double m = Math.sqrt(h * perimeter / (390 * area));
        double fin = Math.sqrt(h * perimeter * 390 * area) * Math.tanh(m * length);
        double expected = 20 * 20 * 1e-3 / fin;
        assertThat(run.kelvin(0) - AIR_K).isCloseTo(expected, within(1e-3 * expected));
    }

    /**
     * A constant heat into the end of a long bare rod: 2 q √(α t / π) / k at the end, which is the
     * semi-infinite solid (Carslaw and Jaeger, section 2.9).
     */
    @Test
    void semiInfiniteSolid() {
        double area = 1e-5;
        var line = new HeatLine(AIR_K);
        line.lump(1e-6, 0.01, 0);
        line.wire(
                new HeatLine.Wire(area, 0, 1e-3, 1.1e-3, 1, 1, 1e-9, 1e-3, 3, k -> 0.0),
                HeatLine.graded(3, 300, 1.03),
                1);
        var run = new HeatLineRun(line, AIR_K, 1e-5);
        run.ampere(10);
        for (double t : new double[] {5, 40}) {
            run.go(t - run.timeS());
            double alpha = 390 / 3.45e6;
            double expected = 2 * (1 / area) * Math.sqrt(alpha * t / Math.PI) / 390;
            assertThat(run.kelvin(0) - AIR_K).isCloseTo(expected, within(2e-3 * expected));
        }
    }

    /**
     * Insulation as a semi-infinite solid seen from the copper: the early heat into it per metre is
     * that of a conductor whose heat capacity grows as √t (flat law, thick wall, short time); the
     * copper of a wire of constant heat is then known from the error function: T = (q/c)·… with H =
     * b P / c, see Carslaw and Jaeger, section 12.4.
     */
    @Test
    void copperInThickInsulation() {
        // C dT/dt = P − b A (heat into a half space of effusivity b): Laplace gives
        // T = P/C · [ 2√t/(β√π) − (1 − e^{β²t} erfc(β√t))/β² ], β = b A / C.
        double inner = 0.05; // a fat conductor: the wall is flat against it
        double k = 0.2;
        double c = 2e6;
        double area = Math.PI * inner * inner;
        var line = new HeatLine(AIR_K);
        line.wire(
                new HeatLine.Wire(area, 1e-3, inner, inner + 0.01, 1, 1, k, c, 1, x -> 0.0),
                new double[] {1},
                120);
        // A small heat capacity of copper would show the wall; so a strong current for a long time.
        var run = new HeatLineRun(line, AIR_K, 1e-5);
        run.ampere(1000);
        double t = 60;
        run.go(t);
        double capacity = 3.45e6 * area;
        double beta = Math.sqrt(k * c) * 2 * Math.PI * inner / capacity;
        double root = beta * Math.sqrt(t);
        double rise = rise(1000 * 1000 * 1e-3 / capacity, beta, root, t);
        // resistance rises with temperature: the rise is small, so its middle serves
        double warm = 1 + 0.00393 * rise / 2;
        assertThat(run.kelvin(0) - AIR_K).isCloseTo(rise * warm, within(2e-3 * rise));
        // and it is not the bare law
        assertThat(rise).isLessThan(0.97 * 1000 * 1000 * 1e-3 / capacity * t);
    }

    private static double rise(double rate, double beta, double root, double t) {
        double erfcx = Math.exp(root * root) * erfc(root);
        return rate
                * (2 * Math.sqrt(t) / (beta * Math.sqrt(Math.PI)) - (1 - erfcx) / (beta * beta));
    }

    private static double erfc(double x) {
        return org.hipparchus.special.Erf.erfc(x);
    }

    /** Finer in space and time, the time to a limit stays: thin wire between cool joints. */
    @Test
    void aFinerReferenceSaysTheSame() {
        double coarse = timeToLimit(48, 60, 0.003);
        double fine = timeToLimit(120, 150, 0.0005);
        assertThat(coarse).isCloseTo(fine, within(0.002 * fine)).isBetween(1.0, 60.0);
    }

    private static double timeToLimit(int pieces, int shells, double allowedK) {
        var surface = new SurfaceReferee(2 * 0.8e-3, AIR_K, 101_325, 0, 0.9, AirTable.PRINTED);
        var line = new HeatLine(AIR_K);
        line.lump(3, 0.3e-3, 0.05);
        int first =
                line.wire(
                        new HeatLine.Wire(
                                0.38e-6,
                                0.05,
                                0.35e-3,
                                0.8e-3,
                                1,
                                1,
                                0.17,
                                2e6,
                                0.2,
                                surface::wattPerM),
                        HeatLine.graded(0.2, pieces, 1.15),
                        shells);
        line.lump(3, 0.3e-3, 0.05);
        var run = new HeatLineRun(line, AIR_K, allowedK);
        run.ampere(16);
        return run.goUntil(500, first, first + pieces, 273.15 + 85);
    }
}
