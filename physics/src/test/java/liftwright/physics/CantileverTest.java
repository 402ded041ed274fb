package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tips of clamped beams against tables of tubes and against the bending line, summed in slices. */
class CantileverTest {

    /** EN 10219-2, table of circular hollow sections, from memory: D, t in mm; I, I_t in cm⁴. */
    @ParameterizedTest
    @CsvSource({
        "33.7, 2.6, 3.09, 6.19",
        "42.4, 3.2, 7.62, 15.2",
        "48.3, 3.2, 11.6, 23.2",
        "60.3, 3.2, 23.5, 46.9",
        "76.1, 3.2, 48.8, 97.6"
    })
    void tubesResistAsTheTableOfSectionsSays(
            double outsideMm, double wallMm, double bendingCm4, double torsionCm4) {
        double m4 = Cantilever.tubeSecondMomentM4(outsideMm / 1000, wallMm / 1000);
        double digit = bendingCm4 < 10 ? 0.005 : 0.05;
        assertThat(m4 * 1e8).isCloseTo(bendingCm4, within(digit * 1.001));
        double torsionDigit = torsionCm4 < 10 ? 0.005 : 0.05;
        assertThat(2 * m4 * 1e8).isCloseTo(torsionCm4, within(torsionDigit * 1.001));
    }

    /** A solid rod: π D⁴/64. */
    @Test
    void aWallOfHalfTheTubeIsARod() {
        assertThat(Cantilever.tubeSecondMomentM4(0.02, 0.01))
                .isCloseTo(Math.PI * 1.6e-7 / 64, within(1e-20));
    }

    /**
     * Worked by hand: 100 N at 0.5 m of a rod with E I = 500 N·m² slopes by 1/40 rad and gives
     * 1/120 m; 20 N·m there slope by 1/50 rad and give 5 mm; 30 N·m about one with G J = 300 N·m²
     * twist it by 1/20 rad.
     */
    @Test
    void theTipMovesAsInTheHandbook() {
        assertThat(Cantilever.slopeOfForceRad(100, 0.5, 500)).isCloseTo(0.025, within(1e-15));
        assertThat(Cantilever.wayOfForceM(100, 0.5, 500)).isCloseTo(1.0 / 120, within(1e-15));
        assertThat(Cantilever.slopeOfMomentRad(20, 0.5, 500)).isCloseTo(0.02, within(1e-15));
        assertThat(Cantilever.wayOfMomentM(20, 0.5, 500)).isCloseTo(0.005, within(1e-15));
        assertThat(Cantilever.twistRad(30, 0.5, 300)).isCloseTo(0.05, within(1e-15));
    }

    /** v″ = (F (l − x) + M)/(E I), summed twice in slices by the middle rule. */
    @Test
    void theTipIsTheEndOfTheBendingLine() {
        Seeded.check(
                100,
                random -> {
                    double forceN = random.nextDouble(-500, 500);
                    double momentNm = random.nextDouble(-100, 100);
                    double lengthM = random.nextDouble(0.05, 1.2);
                    double rigidity = random.nextDouble(100, 5000);
                    int slices = 2000;
                    double h = lengthM / slices;
                    double slope = 0;
                    double way = 0;
                    for (int k = 0; k < slices; k++) {
                        double x = (k + 0.5) * h;
                        double bent = (forceN * (lengthM - x) + momentNm) / rigidity * h;
                        way += (slope + bent / 2) * h;
                        slope += bent;
                    }
                    double reach =
                            (Math.abs(forceN) * lengthM + Math.abs(momentNm)) * lengthM / rigidity;
                    assertThat(
                                    Cantilever.slopeOfForceRad(forceN, lengthM, rigidity)
                                            + Cantilever.slopeOfMomentRad(
                                                    momentNm, lengthM, rigidity))
                            .isCloseTo(slope, within(1e-6 * reach));
                    assertThat(
                                    Cantilever.wayOfForceM(forceN, lengthM, rigidity)
                                            + Cantilever.wayOfMomentM(momentNm, lengthM, rigidity))
                            .isCloseTo(way, within(1e-6 * reach * lengthM));
                });
    }
}
