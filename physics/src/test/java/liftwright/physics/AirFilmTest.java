package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AirFilmTest {

    /**
     * Incropera, table A.4 (from memory): T, ρ, c_p, μ·1e7, k·1e3, Pr; its densities are those at 1
     * bar.
     */
    @ParameterizedTest
    @CsvSource({
        "250, 1.3947, 1006, 159.6, 22.3, 0.720",
        "300, 1.1614, 1007, 184.6, 26.3, 0.707",
        "350, 0.9950, 1009, 208.2, 30.0, 0.700",
        "400, 0.8711, 1014, 230.1, 33.8, 0.690",
        "450, 0.7740, 1021, 250.7, 37.3, 0.686",
        "500, 0.6964, 1030, 270.1, 40.7, 0.684",
        "600, 0.5804, 1051, 305.8, 46.9, 0.685",
    })
    void tableOfAir(
            double kelvin,
            double density,
            double specificHeat,
            double viscosity,
            double conductivity,
            double prandtl) {
        assertThat(AirFilm.densityKgpm3(100_000, kelvin)).isCloseTo(density, withPercentage(0.2));
        assertThat(AirFilm.specificHeatJpkgK(kelvin)).isCloseTo(specificHeat, withPercentage(0.6));
        assertThat(AirFilm.viscosityPas(kelvin)).isCloseTo(viscosity * 1e-7, withPercentage(1.5));
        assertThat(AirFilm.conductivityWpmK(kelvin))
                .isCloseTo(conductivity * 1e-3, withPercentage(1.5));
        assertThat(AirFilm.prandtl(kelvin)).isCloseTo(prandtl, withPercentage(2));
    }

    /** The fit itself, by hand: 1002.5 + 275e-6 · 100² = 1005.25 at 300 K. */
    @Test
    void specificHeatIsTheFit() {
        assertThat(AirFilm.specificHeatJpkgK(300)).isCloseTo(1005.25, withPercentage(1e-9));
        assertThat(AirFilm.specificHeatJpkgK(200)).isEqualTo(1002.5);
        assertThat(AirFilm.specificHeatJpkgK(600)).isCloseTo(1046.5, withPercentage(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {199.99, 600.01, Double.NaN, Double.POSITIVE_INFINITY})
    void aFilmOutsideTheFitsIsRefused(double kelvin) {
        assertThatIllegalArgumentException().isThrownBy(() -> AirFilm.viscosityPas(kelvin));
        assertThatIllegalArgumentException().isThrownBy(() -> AirFilm.conductivityWpmK(kelvin));
        assertThatIllegalArgumentException().isThrownBy(() -> AirFilm.specificHeatJpkgK(kelvin));
        assertThatIllegalArgumentException().isThrownBy(() -> AirFilm.densityKgpm3(1e5, kelvin));
        assertThat(AirFilm.prandtl(200)).isPositive();
        assertThat(AirFilm.prandtl(600)).isPositive();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aPressureThatIsNoneIsRefused(double pascal) {
        assertThatIllegalArgumentException().isThrownBy(() -> AirFilm.densityKgpm3(pascal, 300));
        assertThat(AirFilm.densityKgpm3(0.5, 300)).isPositive();
    }
}
