package liftwright.review.restraint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.hold.TetherNumbers;
import org.junit.jupiter.api.Test;

/** Falls into a line. */
class FallTableTest {

    private static TetherNumbers line(double straightM, double stiffnessNpm, double dampingNspm) {
        return new TetherNumbers(
                straightM + 3.5,
                2,
                stiffnessNpm,
                dampingNspm,
                1.5,
                9,
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** m g (1 + √(1 + 2 h k/(m g))): check values D7 and D8, no air and no damping. */
    @Test
    void aFallIsCaughtAsInTheClosedForm() {
        assertThat(FallTable.dropN(line(3, 20e3, 0), 100, 3.5, 0)).isCloseTo(5516.63, within(0.06));
        assertThat(FallTable.dropN(line(3, 10e3, 0), 100, 4.8, 0)).isCloseTo(7002.76, within(0.07));
        assertThat(FallTable.dropN(line(3, 50e3, 0), 150, 3.1, 0)).isCloseTo(5578.77, within(0.06));
        assertThat(FallTable.dropN(line(3, 20e3, 0), 100, 3, 0))
                .isCloseTo(2 * 980.665, within(0.02));
    }

    @Test
    void dampingTakesSomeAndTheGroundAll() {
        double hard = FallTable.dropN(line(3, 20e3, 0), 100, 3.5, 1.2);
        assertThat(FallTable.dropN(line(3, 20e3, 300), 100, 3.5, 1.2)).isLessThan(hard);
        assertThat(FallTable.dropN(line(-1, 20e3, 0), 100, 1, 1.2)).isZero();
    }
}
