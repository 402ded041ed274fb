package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class RootsTest {

    @Test
    void findsThePlantedRootAndNeverLeavesTheBracket() {
        Seeded.check(
                1000,
                random -> {
                    double root = random.nextDouble(-3, 3);
                    double steep = Math.exp(random.nextDouble(-6, 6));
                    double sign = random.nextBoolean() ? 1 : -1;
                    double low = root - random.nextDouble(0.01, 9);
                    double high = root + random.nextDouble(0.01, 9);
                    int shape = random.nextInt(4);
                    DoubleUnaryOperator f =
                            x -> {
                                assertThat(x).isBetween(low, high);
                                double d = steep * (x - root);
                                return sign
                                        * switch (shape) {
                                            case 0 -> Math.expm1(Math.clamp(d, -300, 300));
                                            case 1 -> d + d * d * d;
                                            case 2 -> Math.signum(d) * Math.sqrt(Math.abs(d));
                                            default -> Math.atan(d);
                                        };
                            };
                    double found =
                            random.nextBoolean()
                                    ? Roots.bracketed(f, low, high, 1e-12)
                                    : Roots.bracketed(f, high, low, 1e-12);
                    assertThat(found).isCloseTo(root, within(1e-11));
                });
    }

    @Test
    void isMuchFasterThanBisectionOnASmoothFunction() {
        AtomicInteger calls = new AtomicInteger();
        double root =
                Roots.bracketed(
                        x -> {
                            calls.incrementAndGet();
                            return Math.cos(x) - x;
                        },
                        0,
                        1,
                        0);
        // The fixed point of the cosine (Dottie number).
        assertThat(root).isCloseTo(0.7390851332151607, within(1e-15));
        assertThat(calls.get()).isLessThan(14);
    }

    @Test
    void anEndMayBeTheRoot() {
        assertThat(Roots.bracketed(x -> x, 0, 1, 1e-9)).isZero();
        assertThat(Roots.bracketed(x -> x - 1, 0, 1, 1e-9)).isEqualTo(1);
    }

    @Test
    void refusesWithoutAChangeOfSign() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Roots.bracketed(x -> x * x + 1, -1, 1, 1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Roots.bracketed(_ -> Double.NaN, -1, 1, 1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> Roots.bracketed(x -> Math.abs(x) == 1 ? x : Double.NaN, -1, 1, 1e-9));
    }

    @Test
    void leastStepIsWhereTheStatementBecomesTrue() {
        Seeded.check(
                500,
                random -> {
                    int low = random.nextInt(-1000, 1000);
                    int high = low + random.nextInt(0, 1000);
                    int from = random.nextInt(low - 5, high + 5);
                    AtomicInteger calls = new AtomicInteger();
                    var found =
                            Roots.leastStep(
                                    low,
                                    high,
                                    n -> {
                                        calls.incrementAndGet();
                                        assertThat(n).isBetween(low, high);
                                        return n >= from;
                                    });
                    if (from > high) {
                        assertThat(found).isEmpty();
                    } else {
                        assertThat(found).hasValue(Math.max(low, from));
                    }
                    assertThat(calls.get()).isLessThan(13);
                });
        assertThat(Roots.leastStep(Integer.MIN_VALUE, Integer.MAX_VALUE, n -> n >= 7)).hasValue(7);
        assertThat(Roots.leastStep(2, 1, _ -> true)).isEmpty();
    }
}
