package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Levels and permitted times against the printed tables of both rules. */
class NoiseTest {

    /** 29 CFR 1910.95 table G-16, h; it rounds 92, 97 and 102 dBA by 1 %. */
    @ParameterizedTest
    @CsvSource({
        "90, 8",
        "92, 6",
        "95, 4",
        "97, 3",
        "100, 2",
        "102, 1.5",
        "105, 1",
        "110, 0.5",
        "115, 0.25"
    })
    void oshaTable(double levelDba, double hours) {
        assertThat(Noise.oshaS(levelDba) / 3600).isCloseTo(hours, within(0.0107 * hours));
    }

    /** 29 CFR 1910.95 appendix A, formula, h. */
    @ParameterizedTest
    @CsvSource({"90, 8", "92, 6.063", "97, 3.031", "102, 1.516", "110, 0.5", "115, 0.25"})
    void oshaFormula(double levelDba, double hours) {
        assertThat(Noise.oshaS(levelDba) / 3600).isCloseTo(hours, within(5.1e-4));
    }

    /** NIOSH publication 98-126, table 1-1, min. */
    @ParameterizedTest
    @CsvSource({
        "85, 480",
        "88, 240",
        "91, 120",
        "94, 60",
        "97, 30",
        "100, 15",
        "110, 1.488",
        "115, 0.469"
    })
    void nioshTable(double levelDba, double minutes) {
        assertThat(Noise.nioshS(levelDba) / 60).isCloseTo(minutes, within(5.1e-4));
    }

    /** Worked from both rules: 2 h at 95 dBA and 6 h at 88 dBA; 5 min at 110 dBA. */
    @Test
    void dosesOfADay() {
        double two = 2 * 3600;
        double six = 6 * 3600;
        assertThat(two / Noise.oshaS(95)).isCloseTo(0.50, within(1e-9));
        double hearing = two / Noise.oshaS(95) + six / Noise.oshaS(88);
        assertThat(hearing).isCloseTo(1.0684, within(5e-5));
        assertThat(Noise.oshaAverageDba(hearing)).isCloseTo(90.48, within(5e-3));
        double niosh = two / Noise.nioshS(95) + six / Noise.nioshS(88);
        assertThat(niosh).isCloseTo(4.0198, within(6e-5));
        assertThat(Noise.nioshAverageDba(niosh)).isCloseTo(91.04, within(5e-3));
        assertThat(300 / Noise.oshaS(110)).isCloseTo(0.1667, within(5e-5));
        assertThat(300 / Noise.nioshS(110)).isCloseTo(3.3598, within(5e-5));
        assertThat(Noise.nioshAverageDba(300 / Noise.nioshS(110))).isCloseTo(90.26, within(5e-3));
    }

    /** 29 CFR 1910.95: footnote 2 of table G-16 and the text allow no steady noise above. */
    @Test
    void theCeilingIsTheLastRowOfTheTable() {
        assertThat(Noise.OSHA_CEILING_DBA).isEqualTo(115);
        // 1910.95(d)(2)(i): levels from 80 dBA on are integrated.
        assertThat(Noise.OSHA_THRESHOLD_DBA).isEqualTo(80);
        assertThat(Noise.nioshS(Noise.NIOSH_DBA)).isEqualTo(Noise.oshaS(Noise.OSHA_DBA));
    }

    /** 10 log₁₀ N, worked by hand. */
    @ParameterizedTest
    @CsvSource({
        "1, 0",
        "2, 3.010",
        "4, 6.021",
        "8, 9.031",
        "10, 10.000",
        "16, 12.041",
        "20, 13.010",
        "32, 15.051"
    })
    void equalSources(int sources, double moreDb) {
        assertThat(Noise.equalDb(100, sources)).isCloseTo(100 + moreDb, within(5.1e-4));
        double one = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < sources; k++) {
            one = Noise.sumDb(one, 100);
        }
        assertThat(one).isCloseTo(100 + moreDb, within(5.1e-4));
    }

    @Test
    void unequalSourcesAndDistance() {
        assertThat(Noise.sumDb(80, 74)).isCloseTo(80.973, within(5.1e-4));
        assertThat(Noise.sumDb(74, 80)).isCloseTo(80.973, within(5.1e-4));
        assertThat(Noise.atDistanceDb(100, 1)).isEqualTo(100);
        assertThat(Noise.atDistanceDb(100, 2)).isCloseTo(100 - 6.021, within(5.1e-4));
        assertThatThrownBy(() -> Noise.equalDb(100, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Sound that leaves a ball of any size within the given one is never louder than the bound. */
    @Test
    void theBoundInsideAnArrayHolds() {
        Seeded.check(
                200,
                random -> {
                    double size = random.nextDouble(0.03, 0.3);
                    double distance = random.nextDouble(0.001, 3);
                    double bound = Noise.nearBoundDb(100, distance, size);
                    assertThat(bound)
                            .isCloseTo(
                                    100 - 10 * Math.log10(Math.pow(Math.max(distance, size), 2)),
                                    within(1e-9));
                    assertThat(bound)
                            .isGreaterThanOrEqualTo(
                                    Noise.nearBoundDb(100, distance + 0.1, size) - 1e-12);
                });
    }
}
