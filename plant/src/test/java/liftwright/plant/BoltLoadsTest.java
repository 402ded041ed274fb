package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.physics.Bolt;
import liftwright.rig.HoldingStand.BoltClass;
import liftwright.rig.HoldingStand.BoltSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes and classes that a file may name, with the law of the section, against ISO 898-1. */
class BoltLoadsTest {

    private static double proofN(BoltSize size, BoltClass made) {
        return Bolt.stressAreaM2(size.diameterM(), size.pitchM()) * made.proofPa();
    }

    /**
     * ISO 898-1: proof and tensile load of 8.8, proof load of 10.9, N. The standard rounds the area
     * first and the load down to three figures: up to 0.62 %.
     */
    @ParameterizedTest
    @CsvSource({
        "M5, 8230, 11350, 11800",
        "M6, 11600, 16100, 16700",
        "M8, 21200, 29200, 30400",
        "M10, 33700, 46400, 48100",
        "M12, 48900, 67400, 70000"
    })
    void theTableOfBolts(BoltSize size, double proof88, double tensile88, double proof109) {
        assertThat(proofN(size, BoltClass.CLASS_8_8)).isCloseTo(proof88, within(0.0063 * proof88));
        double area = Bolt.stressAreaM2(size.diameterM(), size.pitchM());
        assertThat(area * BoltClass.CLASS_8_8.ultimatePa())
                .isCloseTo(tensile88, within(0.005 * tensile88));
        assertThat(proofN(size, BoltClass.CLASS_10_9))
                .isCloseTo(proof109, within(0.005 * proof109));
    }

    /**
     * The mark tells the strength: its first number is a hundredth of the nominal tensile stress in
     * MPa, the second ten times the share of it at which it yields; proof lies a little below.
     */
    @ParameterizedTest
    @CsvSource({
        "CLASS_4_6, 4, 6, 0.94",
        "CLASS_5_8, 5, 8, 0.91",
        "CLASS_8_8, 8, 8, 0.91",
        "CLASS_10_9, 10, 9, 0.89"
    })
    void theMarkTellsTheStrength(BoltClass made, int first, int second, double proofOverYield) {
        assertThat(made.word()).isEqualTo(first + "." + second);
        assertThat(made.ultimatePa() / 1e8).isBetween(first - 1e-9, first * 1.041);
        assertThat(made.proofPa() / (made.ultimatePa() * second / 10))
                .isCloseTo(proofOverYield, within(0.006));
    }

    /** 29 CFR 1926.502(d)(15): 5000 lbf. One M8 8.8 eye does not bear it, one M10 does. */
    @Test
    void anAnchorOfOneBolt() {
        double anchorN = 5000 * 4.4482216152605;
        assertThat(proofN(BoltSize.M8, BoltClass.CLASS_8_8)).isLessThan(anchorN);
        assertThat(proofN(BoltSize.M10, BoltClass.CLASS_8_8)).isGreaterThan(anchorN);
    }
}
