package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoltTest {

    /** ISO 898-1, coarse threads: diameter and pitch in mm, stress area in mm². */
    @ParameterizedTest
    @CsvSource({
        "5, 0.8, 14.18",
        "6, 1, 20.12",
        "8, 1.25, 36.61",
        "10, 1.5, 57.99",
        "12, 1.75, 84.27"
    })
    void stressAreasOfTheTable(double diameterMm, double pitchMm, double areaMm2) {
        assertThat(Bolt.stressAreaM2(diameterMm / 1000, pitchMm / 1000) * 1e6)
                .isCloseTo(areaMm2, within(0.0051));
    }
}
