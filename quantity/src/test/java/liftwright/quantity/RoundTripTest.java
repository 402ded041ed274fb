package liftwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.quantity.Tolerance.Form;
import liftwright.quantity.Tolerance.Scope;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the writer writes, the parser reads as the same quantity, to the last bit. */
class RoundTripTest {

    private static final List<Dimension> NAMED = List.copyOf(DimensionName.all().keySet());

    @Test
    void anyQuantityComesBackToTheLastBit() {
        Seeded.check(
                2000,
                random -> {
                    var q = any(random);
                    String text = QuantityWriter.write(q);
                    assertThat(Read.ok(QuantityParser.parse(text, q.dimension())))
                            .as(text)
                            .isEqualTo(q);
                });
    }

    @Test
    void andInAsciiToo() {
        Seeded.check(
                1000,
                random -> {
                    var q = any(random);
                    String text = QuantityWriter.ascii(QuantityWriter.write(q));
                    assertThat(text).matches("\\p{ASCII}*");
                    assertThat(Read.ok(QuantityParser.parse(text, q.dimension())))
                            .as(text)
                            .isEqualTo(q);
                });
    }

    @Test
    void andInTheUnitOfAnotherText() {
        Seeded.check(
                1000,
                random -> {
                    var q = any(random);
                    var units = DimensionName.of(q.dimension()).units();
                    String like = "3 " + units.get(random.nextInt(units.size())) + " ± 1 %";
                    String text = QuantityWriter.writeLike(q, like);
                    assertThat(Read.ok(QuantityParser.parse(text, q.dimension())))
                            .as(text)
                            .isEqualTo(q);
                });
    }

    @ParameterizedTest
    @CsvSource({
        "4.2 mΩ ± 4 % each",
        "68 kg ± 0.4 kg",
        "16 lbf",
        "700 rpm/V ± 2 %",
        "0.1 +0.15/-0.2",
        "80 % ± 5 %",
        "120 kg·mm²",
        "68 °F ± 3 °F",
        "10 mm +0/-5 %",
        "4° ± 0.25°",
        "0.3 m ± 0.05 m bound each",
        "-40 mm",
        "1e-9 kg"
    })
    void aTextOfABuilderComesBackAsItWas(String text) {
        assertThat(QuantityWriter.writeLike(Read.quantity(text), text)).isEqualTo(text);
    }

    @Test
    void anotherDimensionGivesNoUnit() {
        assertThat(QuantityWriter.writeLike(Quantity.exact(5, Dimensions.MASS), "3 mm"))
                .isEqualTo("5 kg");
        assertThat(QuantityWriter.writeLike(Quantity.exact(5, Dimensions.MASS), "rubbish"))
                .isEqualTo("5 kg");
    }

    private static Quantity any(RandomGenerator random) {
        var dimension = random.nextInt(5) == 0 ? strange(random) : pick(random, NAMED);
        double si = anyDouble(random);
        if (dimension.equals(Dimensions.TEMPERATURE)) {
            si = Math.abs(si) % 500;
        }
        return new Quantity(si, dimension, tolerance(random, si));
    }

    /** Shares of the value, plain decimals and any double; even, uneven and none. */
    private static Tolerance tolerance(RandomGenerator random, double si) {
        if (random.nextInt(4) == 0) {
            return Tolerance.NONE;
        }
        double plus = width(random, si);
        double minus = random.nextBoolean() ? plus : width(random, si);
        return new Tolerance(
                plus,
                minus,
                pick(random, List.of(Form.values())),
                pick(random, List.of(Scope.values())));
    }

    private static double width(RandomGenerator random, double si) {
        return switch (random.nextInt(4)) {
            case 0 -> 0;
            case 1 -> Math.abs(si) * (random.nextInt(1, 100) * 0.01);
            case 2 -> random.nextInt(1, 1000) / 1000.0;
            default -> Math.abs(anyDouble(random));
        };
    }

    private static double anyDouble(RandomGenerator random) {
        double sign = random.nextBoolean() ? 1 : -1;
        return switch (random.nextInt(4)) {
            case 0 -> random.nextInt(1000) + 0.0;
            case 1 -> sign * random.nextInt(1, 100_000) / 1000.0;
            case 2 -> sign * random.nextDouble() * Math.pow(10, random.nextInt(-12, 12));
            default -> sign * Math.scalb(1 + random.nextDouble(), random.nextInt(-60, 60));
        };
    }

    private static Dimension strange(RandomGenerator random) {
        return new Dimension(
                random.nextInt(-3, 4),
                random.nextInt(-2, 3),
                random.nextInt(-3, 4),
                random.nextInt(-2, 3),
                random.nextInt(-1, 2),
                random.nextInt(-2, 3),
                random.nextInt(2));
    }

    private static <T> T pick(RandomGenerator random, List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
