package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import liftwright.physics.AircraftWire.Insulation;
import liftwright.physics.Conductor.Metal;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ConductorTest {

    private static final Percentage PRINTED = withPercentage(0.05);

    /** NBS Handbook 100 (1966): 0.15328 Ω·g/m² over 8.89 g/cm³. */
    @Test
    void resistivityOfAnnealedCopper() {
        assertThat(Conductor.COPPER_OHMM).isCloseTo(0.15328 / 8.89e6, withPercentage(0.005));
    }

    /** ASTM B258; diameters and resistances as in printed wire tables. */
    @ParameterizedTest
    @CsvSource({
        "24, 0.5106, 0.2047, 84.213",
        "20, 0.8118, 0.5176, 33.308",
        "16, 1.2908, 1.3087, 13.174",
        "14, 1.6277, 2.0809, 8.2853",
        "12, 2.0525, 3.3088, 5.2107",
        "10, 2.5882, 5.2612, 3.2770",
        "8, 3.2636, 8.3656, 2.0610",
        "6, 4.1154, 13.302, 1.2961",
        "4, 5.1894, 21.151, 0.81515",
        "2, 6.5437, 33.631, 0.51265",
        "0, 8.2515, 53.475, 0.32241",
        "-3, 11.684, 107.22, 0.16080",
    })
    void gaugeRule(int gauge, double diameterMm, double areaMm2, double mohmpm) {
        assertThat(Conductor.solidDiameterM(gauge)).isCloseTo(diameterMm * 1e-3, PRINTED);
        assertThat(Conductor.solidAreaM2(gauge)).isCloseTo(areaMm2 * 1e-6, PRINTED);
        assertThat(Conductor.copperOhmpm(Conductor.solidAreaM2(gauge)))
                .isCloseTo(mohmpm * 1e-3, PRINTED);
    }

    @Test
    void gaugeRuleHasEnds() {
        assertThat(Conductor.solidDiameterM(36)).isCloseTo(0.127e-3, within(1e-12));
        assertThat(Conductor.solidDiameterM(40)).isLessThan(0.127e-3);
        // 4/0 is 211,600 circular mils by definition: 0.46 in.
        assertThat(Conductor.solidDiameterM(-3)).isCloseTo(0.46 * 0.0254, within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> Conductor.solidDiameterM(-4));
        assertThatIllegalArgumentException().isThrownBy(() -> Conductor.solidDiameterM(41));
    }

    /** α = 0.00393 at 20 °C. */
    @ParameterizedTest
    @CsvSource({"60, 1.1572", "80, 1.2358", "105, 1.3340", "150, 1.5109", "200, 1.7074"})
    void warmCopper(double celsius, double ratio) {
        assertThat(Conductor.copperFactor(celsius + 273.15)).isCloseTo(ratio, within(1e-4));
    }

    /** FAA AC 43.13-1B Change 1 (2001), Table 11-9, p. 11-23, as printed. */
    @ParameterizedTest
    @CsvSource({
        "24, 28.40, 475, 2.5",
        "22, 16.20, 755, 3",
        "20, 9.88, 1216, 4",
        "18, 6.23, 1900, 6",
        "16, 4.81, 2426, 7",
        "14, 3.06, 3831, 10",
        "12, 2.02, 5874, 13",
        "10, 1.26, 9354, 17",
        "8, 0.70, 16983, 38",
        "6, 0.44, 26818, 50",
        "4, 0.28, 42615, 68",
        "2, 0.18, 66500, 95",
        "1, 0.15, 81700, 113",
        "0, 0.12, 104500, 128",
        "-1, 0.09, 133000, 147",
        "-2, 0.07, 166500, 172",
        "-3, 0.06, 210900, 204",
    })
    void aircraftWire(int gauge, double ohmPer1000ft, double cmil, double ampere) {
        AircraftWire wire = AircraftWire.of(gauge);
        assertThat(wire.gauge()).isEqualTo(gauge);
        assertThat(AircraftWire.has(gauge)).isTrue();
        // 1 Ω/1000 ft = 3.280840 mΩ/m; 1 cmil = 5.06707e-10 m².
        assertThat(wire.ohmpm()).isCloseTo(ohmPer1000ft * 3.280840e-3, withPercentage(1e-4));
        assertThat(wire.areaM2()).isCloseTo(cmil * 5.06707e-10, withPercentage(1e-3));
        assertThat(wire.ratedA(Insulation.C105)).isEqualTo(ampere);
    }

    /** The same table, 150 °C and 200 °C classes. */
    @ParameterizedTest
    @CsvSource({
        "20, 7, 9",
        "16, 11, 14",
        "12, 19, 25",
        "10, 26, 32",
        "8, 57, 71",
        "4, 103, 133",
        "0, 192, 243",
    })
    void aircraftWireOfHotterClasses(int gauge, double at150, double at200) {
        AircraftWire wire = AircraftWire.of(gauge);
        assertThat(wire.ratedA(Insulation.C150)).isEqualTo(at150);
        assertThat(wire.ratedA(Insulation.C200)).isEqualTo(at200);
    }

    /** Stranding, plating and greatest-against-nominal: 1.13 to 1.18, 24 AWG 1.30, 1/0 1.21. */
    @ParameterizedTest
    @EnumSource(AircraftWire.class)
    void aircraftWireResistsMoreThanSolidCopper(AircraftWire wire) {
        double ratio = wire.ohmpm() / Conductor.copperOhmpm(wire.areaM2());
        switch (wire) {
            case AWG_24 -> assertThat(ratio).isCloseTo(1.30, within(0.005));
            case AWG_1_0 -> assertThat(ratio).isCloseTo(1.21, within(0.005));
            case AWG_1, AWG_2_0, AWG_3_0, AWG_4_0 -> assertThat(ratio).isBetween(1.1, 1.25);
            case AWG_22,
                    AWG_20,
                    AWG_18,
                    AWG_16,
                    AWG_14,
                    AWG_12,
                    AWG_10,
                    AWG_8,
                    AWG_6,
                    AWG_4,
                    AWG_2 ->
                    assertThat(ratio).isBetween(1.125, 1.185);
        }
    }

    @Test
    void aMissingGaugeOrRatingIsSaid() {
        assertThat(AircraftWire.has(9)).isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> AircraftWire.of(9));
        assertThat(AircraftWire.of(18).isRated(Insulation.C150)).isFalse();
        assertThat(AircraftWire.of(18).isRated(Insulation.C105)).isTrue();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AircraftWire.of(18).ratedA(Insulation.C200));
        assertThat(Insulation.C105.limitK()).isEqualTo(105 + 273.15);
        assertThat(Insulation.C150.limitK()).isEqualTo(150 + 273.15);
        assertThat(Insulation.C200.limitK()).isEqualTo(200 + 273.15);
    }

    @Test
    void runsCountOutAndBackAndShareParallels() {
        assertThat(Conductor.outAndBackOhm(3e-3, 1.5, 1)).isCloseTo(9e-3, within(1e-15));
        assertThat(Conductor.outAndBackOhm(3e-3, 1.5, 3)).isCloseTo(3e-3, within(1e-15));
    }

    /** IEC 60364-5-54, IEC 60949, BS 7671: k of copper (print 115/103, 100/86, 143/141/134/132). */
    @ParameterizedTest
    @CsvSource({
        "70, 160, 115.0",
        "70, 140, 102.8",
        "90, 160, 99.9",
        "90, 140, 85.5",
        "90, 250, 143.1",
        "60, 200, 140.9",
        "85, 220, 134.2",
        "180, 350, 132.5",
    })
    void adiabaticCopper(double from, double to, double k) {
        assertThat(Conductor.adiabaticWithstand(Metal.COPPER, from + 273.15, to + 273.15))
                .isCloseTo(k, within(0.06));
    }

    /** The same, aluminium (print 76/66/94/93/89/87). */
    @ParameterizedTest
    @CsvSource({
        "70, 160, 76.0",
        "90, 160, 66.0",
        "90, 250, 94.5",
        "60, 200, 93.2",
        "85, 220, 88.6",
        "180, 350, 87.4",
    })
    void adiabaticAluminium(double from, double to, double k) {
        assertThat(Conductor.adiabaticWithstand(Metal.ALUMINIUM, from + 273.15, to + 273.15))
                .isCloseTo(k, within(0.06));
    }

    /** 4 mm², 1000 A, k = 143: t = (k S / I)² = 0.3272 s. */
    @Test
    void adiabaticTime() {
        assertThat(Conductor.adiabaticTimeS(143, 4e-6, 1000)).isCloseTo(0.3272, within(1e-4));
    }
}
