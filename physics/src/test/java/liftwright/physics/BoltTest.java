package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bolts against the tables of ISO 898-1, and pulls against a foot turned about its edge. */
class BoltTest {

    /**
     * ISO 898-1: stress area mm²; proof and tensile load of 8.8, proof load of 10.9, N. The
     * standard rounds the area first and the load down to three figures: up to 0.62 %.
     */
    @ParameterizedTest
    @CsvSource({
        "M5, 14.18, 8230, 11350, 11800",
        "M6, 20.12, 11600, 16100, 16700",
        "M8, 36.61, 21200, 29200, 30400",
        "M10, 57.99, 33700, 46400, 48100",
        "M12, 84.27, 48900, 67400, 70000"
    })
    void theTableOfBolts(
            MetricBolt size, double areaMm2, double proof88, double tensile88, double proof109) {
        assertThat(size.stressAreaM2() * 1e6).isCloseTo(areaMm2, within(0.0051));
        assertThat(Bolt.proofN(size, BoltClass.STRONG))
                .isCloseTo(proof88, within(0.0063 * proof88));
        assertThat(Bolt.tensileN(size, BoltClass.STRONG))
                .isCloseTo(tensile88, within(0.005 * tensile88));
        assertThat(Bolt.proofN(size, BoltClass.HARD)).isCloseTo(proof109, within(0.005 * proof109));
    }

    /**
     * The mark tells the strength: its first number is a hundredth of the nominal tensile stress in
     * MPa, the second ten times the share at which it yields (ISO 898-1); proof lies a little
     * below.
     */
    @ParameterizedTest
    @CsvSource({
        "SOFT, 4, 6, 0.93",
        "PLAIN, 5, 8, 0.91",
        "STRONG, 8, 8, 0.90",
        "HARD, 10, 9, 0.88",
        "HARDEST, 12, 9, 0.88"
    })
    void theMarkTellsTheStrength(BoltClass made, int first, int second, double proofOverYield) {
        assertThat(made.mark()).isEqualTo(first + "." + second);
        assertThat(made.tensilePa() / 1e8).isBetween(first - 1e-9, first * 1.045);
        double yield = made.tensilePa() * second / 10;
        assertThat(made.proofPa() / yield).isCloseTo(proofOverYield, within(0.035));
    }

    /** ISO 898-1, nominal proof and tensile stress, MPa, from memory but for 8.8. */
    @ParameterizedTest
    @CsvSource({
        "SOFT, 225, 400",
        "PLAIN, 380, 520",
        "STRONG, 580, 800",
        "HARD, 830, 1040",
        "HARDEST, 970, 1220"
    })
    void stresses(BoltClass made, double proofMpa, double tensileMpa) {
        assertThat(made.proofPa()).isEqualTo(proofMpa * 1e6);
        assertThat(made.tensilePa()).isEqualTo(tensileMpa * 1e6);
    }

    /** 29 CFR 1926.502(d)(15): 5000 lbf. One M8 8.8 eye does not bear it, one M10 does. */
    @Test
    void anAnchorOfOneBolt() {
        double anchor = 5000 * 4.4482216152605;
        assertThat(Bolt.proofN(MetricBolt.M8, BoltClass.STRONG)).isLessThan(anchor);
        assertThat(Bolt.proofN(MetricBolt.M10, BoltClass.STRONG)).isGreaterThan(anchor);
    }

    @ParameterizedTest
    @CsvSource({"M5, 5, 0.8", "M6, 6, 1", "M8, 8, 1.25", "M10, 10, 1.5", "M12, 12, 1.75"})
    void threadsAreCoarse(MetricBolt size, double diameterMm, double pitchMm) {
        assertThat(size.pitchM() * 1000).isCloseTo(pitchMm, within(1e-12));
        assertThat(size.diameterM() * 1000).isCloseTo(diameterMm, within(1e-12));
    }

    /** A stiff foot on springs, turned until the springs hold the moment. */
    @Test
    void pullsAreThoseOfAFootOnSprings() {
        Seeded.check(
                200,
                random -> {
                    double[] away = new double[1 + random.nextInt(6)];
                    for (int k = 0; k < away.length; k++) {
                        away[k] = random.nextDouble(-0.1, 1);
                    }
                    away[0] = random.nextDouble(0.1, 1);
                    double moment = random.nextDouble(1, 2000);
                    double spring = random.nextDouble(1e6, 1e8);
                    double held = 0;
                    double low = 0;
                    double high = 1;
                    for (int step = 0; step < 200; step++) {
                        double angle = (low + high) / 2;
                        held = 0;
                        for (double d : away) {
                            held += Math.max(0, angle * d) * spring * d;
                        }
                        if (held < moment) {
                            low = angle;
                        } else {
                            high = angle;
                        }
                    }
                    for (int k = 0; k < away.length; k++) {
                        double pull = Math.max(0, low * away[k]) * spring;
                        assertThat(Bolt.pullN(moment, away, k))
                                .isCloseTo(pull, within(1e-6 * moment));
                    }
                    assertThat(Bolt.pullN(-moment, away, 0)).isZero();
                });
        assertThat(Bolt.pullN(10, new double[] {0.5, -0.2, 0}, 1)).isZero();
        assertThat(Bolt.pullN(10, new double[] {0.5, -0.2, 0}, 2)).isZero();
        assertThat(Bolt.pullN(10, new double[] {0.5, -0.2, 0}, 0)).isEqualTo(20);
    }

    /** 3, 4, 5. */
    @Test
    void pullAndShearTogether() {
        assertThat(Bolt.used(300, 1000, 200, 500)).isCloseTo(0.5, within(1e-15));
        assertThat(Bolt.SHEAR_SHARE).isBetween(1 / Math.sqrt(3), 0.62);
    }
}
