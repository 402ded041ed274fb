package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Falls against worked numbers, the equation of motion and the balance of energy. */
class BallisticsTest {

    private static final double G = 9.80665;

    /** Worked by hand from tanh and ln cosh: 100 kg, C_d A 0.7 m², 1.225 kg/m³. */
    @Test
    void aPersonFallsAlmostAsInVacuum() {
        double terminal = Ballistics.terminalMps(100, 0.7, 1.225);
        assertThat(terminal).isCloseTo(47.8254, within(1e-4));
        assertThat(Ballistics.speedAfterMps(2, terminal)).isCloseTo(18.5830, within(1e-4));
        assertThat(Ballistics.wayAfterM(2, terminal)).isCloseTo(19.0870, within(1e-4));
        assertThat(Ballistics.impactMps(10, terminal)).isCloseTo(13.7098, within(1e-4));
        assertThat(Ballistics.impactMps(10, Double.POSITIVE_INFINITY))
                .isCloseTo(14.0047, within(1e-4));
    }

    /** √(2 g h), worked by hand. */
    @ParameterizedTest
    @CsvSource({
        "0.3, 2.4257", "0.5, 3.1316", "1, 4.4287", "1.8, 5.9417",
        "2, 6.2631", "3, 7.6707", "5, 9.9029", "10, 14.0047"
    })
    void aFallInVacuum(double heightM, double impactMps) {
        double vacuum = Ballistics.terminalMps(80, 0, 1.2);
        assertThat(vacuum).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(Ballistics.impactMps(heightM, vacuum)).isCloseTo(impactMps, within(5e-5));
        assertThat(Ballistics.heightOfM(impactMps)).isCloseTo(heightM, within(1e-4 * heightM));
        assertThat(Ballistics.riseM(impactMps, vacuum)).isCloseTo(heightM, within(1e-4 * heightM));
    }

    @Test
    void fallsFollowTheEquationOfMotion() {
        Seeded.check(
                100,
                random -> {
                    double mass = random.nextDouble(0.01, 200);
                    double area = mass * random.nextDouble(0.001, 0.5);
                    double density = random.nextDouble(0.8, 1.4);
                    double time = random.nextDouble(0.01, 4);
                    double k = density * area / (2 * mass);
                    double[] end =
                            Marched.after(
                                    time,
                                    new double[] {0, 0},
                                    s -> new double[] {s[1], G - k * s[1] * s[1]});
                    double terminal = Ballistics.terminalMps(mass, area, density);
                    assertThat(Ballistics.wayAfterM(time, terminal))
                            .isCloseTo(end[0], within(1e-8 * (1 + end[0])));
                    assertThat(Ballistics.speedAfterMps(time, terminal))
                            .isCloseTo(end[1], within(1e-8 * (1 + end[1])));
                    assertThat(Ballistics.impactMps(end[0], terminal))
                            .isCloseTo(end[1], within(1e-7 * (1 + end[1])));
                    double up = random.nextDouble(0.5, 30);
                    double[] apex =
                            Marched.until(
                                            s -> s[1],
                                            20,
                                            new double[] {0, up},
                                            s -> new double[] {s[1], -G - k * s[1] * s[1]})
                                    .getPrimaryState();
                    assertThat(Ballistics.riseM(up, terminal))
                            .isCloseTo(apex[0], within(1e-8 * (1 + apex[0])));
                });
    }

    @Test
    void dragOnlySlowsAndVacuumIsItsLimit() {
        assertThat(Ballistics.speedAfterMps(2, Double.POSITIVE_INFINITY))
                .isCloseTo(2 * G, within(1e-12));
        assertThat(Ballistics.wayAfterM(2, Double.POSITIVE_INFINITY))
                .isCloseTo(2 * G, within(1e-12));
        assertThat(Ballistics.wayAfterM(2, 1e7)).isCloseTo(2 * G, within(1e-9));
        assertThat(Ballistics.wayAfterM(1e6, 2)).isCloseTo(2e6, within(1.0));
        Seeded.check(
                200,
                random -> {
                    double height = random.nextDouble(0.1, 50);
                    double slow = random.nextDouble(2, 60);
                    double fast = slow * random.nextDouble(1.01, 4);
                    assertThat(Ballistics.impactMps(height, slow))
                            .isLessThan(Ballistics.impactMps(height, fast))
                            .isLessThanOrEqualTo(slow);
                });
    }

    @Test
    void bodiesWithoutMassAreRefused() {
        assertThatThrownBy(() -> Ballistics.terminalMps(0, 1, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Ballistics.terminalMps(1, -1, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Ballistics.terminalMps(1, 1, -1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
