package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drela, "First-Order DC Electric Motor Model", MIT course note 2007: its equations; the numbers
 * are recomputed from them.
 */
class MotorLawTest {

    private static final double RPM = Math.PI / 30;
    private static final Percentage EXACT = withPercentage(3e-4);

    /** At a voltage and a current: speed, torque, shaft power, efficiency. */
    @ParameterizedTest
    @CsvSource({
        "1390, 0.053, 1.8, 10, 25, 12058.25, 0.159384, 201.26, 0.80504",
        "1000, 0.05, 1.0, 11.1, 20, 10100, 0.181437, 191.90, 0.864414",
        "700, 0.020, 2.5, 44.4, 80, 29960, 1.057244, 3317.0, 0.933840",
    })
    void operatingPoint(
            double kvRpm,
            double r,
            double noLoad,
            double volt,
            double current,
            double rpm,
            double torque,
            double shaft,
            double efficiency) {
        double kv = kvRpm * RPM;
        double q = MotorLaw.torqueNm(current, noLoad, kv);
        assertThat(q).isCloseTo(torque, EXACT);
        // Under the load that takes this torque at this speed, the law finds both.
        double omega = rpm * RPM;
        double kappa = q / (omega * omega);
        double speed = MotorLaw.speedRadps(volt, kappa, kv, r, noLoad, 0);
        assertThat(speed).isCloseTo(omega, EXACT);
        assertThat(MotorLaw.currentAtSpeedA(volt, speed, kv, r))
                .isCloseTo(current, withPercentage(1e-2));
        assertThat(q * speed).isCloseTo(shaft, withPercentage(1e-2));
        assertThat(MotorLaw.efficiency(volt, current, r, noLoad))
                .isCloseTo(efficiency, withPercentage(1e-3));
    }

    /** Referee: the fall of speed in 200,000 small steps. */
    @ParameterizedTest
    @CsvSource({"1.2e-4, 2.3e-7, 2400", "3e-3, 2e-5, 800"})
    void coastingRotor(double inertia, double kappa, double from) {
        double to = from * Math.sqrt(0.1); // a tenth of the thrust
        double seconds = MotorLaw.coastTimeS(inertia, kappa, from, to);
        int steps = 200_000;
        double speed = from;
        for (int k = 0; k < steps; k++) {
            double middle = speed - kappa * speed * speed / inertia * seconds / steps / 2;
            speed -= kappa * middle * middle / inertia * seconds / steps;
        }
        assertThat(speed).isCloseTo(to, withPercentage(1e-4));
    }

    /** Best efficiency, no-load speed, stall current of the same motors. */
    @ParameterizedTest
    @CsvSource({
        "0.053, 1.8, 10, 18.4289, 0.814194",
        "0.05, 1.0, 11.1, 14.8997, 0.870273",
        "0.020, 2.5, 44.4, 74.4983, 0.934011",
    })
    void bestEfficiency(double r, double noLoad, double volt, double current, double best) {
        assertThat(MotorLaw.bestCurrentA(volt, r, noLoad)).isCloseTo(current, withPercentage(1e-3));
        assertThat(MotorLaw.bestEfficiency(volt, r, noLoad)).isCloseTo(best, within(1e-6));
        double star = MotorLaw.bestCurrentA(volt, r, noLoad);
        assertThat(MotorLaw.efficiency(volt, star, r, noLoad)).isCloseTo(best, within(1e-6));
        assertThat(MotorLaw.efficiency(volt, star * 1.1, r, noLoad)).isLessThan(best);
        assertThat(MotorLaw.efficiency(volt, star * 0.9, r, noLoad)).isLessThan(best);
    }

    @ParameterizedTest
    @CsvSource({"1390, 0.053, 1.8, 10, 13767.4, 188.679", "700, 0.020, 2.5, 44.4, 31045.0, 2220"})
    void endsOfTheLine(
            double kvRpm, double r, double noLoad, double volt, double rpm, double stall) {
        double kv = kvRpm * RPM;
        assertThat(MotorLaw.speedRadps(volt, 0, kv, r, noLoad, 0) / RPM)
                .isCloseTo(rpm, withPercentage(1e-3));
        assertThat(MotorLaw.currentAtSpeedA(volt, 0, kv, r)).isCloseTo(stall, withPercentage(1e-3));
    }

    /** Quadratic loads: speed and winding current in closed form. */
    @ParameterizedTest
    @CsvSource({
        "1390, 0.053, 1.8, 10, 1e-7, 1262.679, 25.0075, 201.316, 0.805022",
        "1390, 0.053, 1.8, 10, 2e-7, 1146.501, 40.0668, 301.407, 0.752261",
        "700, 0.020, 2.5, 44.4, 1e-7, 3144.744, 74.9932, 3109.97, 0.934009",
    })
    void quadraticLoad(
            double kvRpm,
            double r,
            double noLoad,
            double volt,
            double kappa,
            double omega,
            double current,
            double shaft,
            double efficiency) {
        double kv = kvRpm * RPM;
        double speed = MotorLaw.speedRadps(volt, kappa, kv, r, noLoad, 0);
        assertThat(speed).isCloseTo(omega, withPercentage(1e-4));
        double i = MotorLaw.currentAtSpeedA(volt, speed, kv, r);
        assertThat(i).isCloseTo(current, withPercentage(1e-3));
        assertThat(MotorLaw.torqueNm(i, noLoad, kv) * speed).isCloseTo(shaft, withPercentage(1e-3));
        assertThat(MotorLaw.efficiency(volt, i, r, noLoad)).isCloseTo(efficiency, within(1e-6));
        assertThat(MotorLaw.speedAtCurrentRadps(current, kappa, kv, noLoad, 0))
                .isCloseTo(omega, withPercentage(1e-3));
    }

    /** The large motor with J = 1e-4 kg·m²: 10.747 ms unloaded, 10.066 ms loaded. */
    @Test
    void spinUp() {
        double kv = 700 * RPM;
        assertThat(MotorLaw.unloadedTimeConstantS(1e-4, 0.020, kv))
                .isCloseTo(10.747e-3, withPercentage(0.01));
        assertThat(MotorLaw.loadedTimeConstantS(1e-4, 0.020, kv, 1e-7, 3144.744))
                .isCloseTo(10.066e-3, withPercentage(0.01));
    }

    /** K_t = 60/(2π·1000) N·m/A for 1000 rpm/V: torque and EMF constant are one number. */
    @Test
    void torqueConstant() {
        assertThat(MotorLaw.torqueNm(1, 0, 1000 * RPM)).isCloseTo(0.00954930, EXACT);
    }

    /** A motor below its friction stands still, and the current it stalls at has no speed. */
    @Test
    void standsStillBelowTheNoLoadDrop() {
        assertThat(MotorLaw.speedRadps(0.0954, 1e-7, 100, 0.053, 1.8, 0)).isZero();
        assertThat(MotorLaw.speedRadps(-5, 1e-7, 100, 0.053, 1.8, 0)).isZero();
        assertThat(MotorLaw.speedAtCurrentRadps(1.8, 1e-7, 100, 1.8, 0)).isZero();
        assertThat(MotorLaw.speedAtCurrentRadps(1, 1e-7, 100, 1.8, 0)).isZero();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MotorLaw.speedAtCurrentRadps(5, 0, 100, 1.8, 0));
        // With a rising no-load current even an unloaded motor has a speed at a current.
        assertThat(MotorLaw.speedAtCurrentRadps(5, 0, 100, 1, 0.01))
                .isCloseTo(400, withPercentage(1e-9));
    }

    /** Two no-load points: a = 1 A, b = 2 mA·s/rad; without load V = R (a + b Ω) + Ω/K_v. */
    @Test
    void noLoadCurrentMayRiseWithSpeed() {
        double speed = MotorLaw.speedRadps(10, 0, 100, 0.05, 1, 0.002);
        assertThat(0.05 * (1 + 0.002 * speed) + speed / 100).isCloseTo(10, within(1e-12));
    }

    /** Common practice: magnets −0.11 %/K, copper +0.393 %/K, switches 1.65 × at 125 °C. */
    @Test
    void hotMotor() {
        assertThat(MotorLaw.kvAt(100, 293.15)).isEqualTo(100);
        assertThat(MotorLaw.kvAt(100, 373.15)).isCloseTo(100 / 0.912, within(1e-9));
        assertThat(MotorLaw.windingAt(0.02, 393.15)).isCloseTo(0.02786, within(1e-12));
        assertThat(MotorLaw.switchAt(1e-3, 298.15)).isEqualTo(1e-3);
        assertThat(MotorLaw.switchAt(1e-3, 398.15)).isCloseTo(1.65e-3, within(1e-15));
        assertThat(MotorLaw.SWITCH_RATIO_AT_125C).isBetween(1.5, 1.8);
    }
}
