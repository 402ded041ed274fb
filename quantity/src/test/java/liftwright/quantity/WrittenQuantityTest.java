package liftwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A number put in place of another in a text that stays as it was. */
class WrittenQuantityTest {

    private static final double FINEST_M = 1.3e-5;

    private static WrittenQuantity length(String text) {
        return WrittenQuantity.read(text, Dimensions.LENGTH).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "550 mm ± 50 mm, 0.6, 600 mm ± 50 mm",
        "550 mm ± 5 %, 0.6, 600 mm ± 5 %",
        "550 mm +3/-1 mm, 0.6, 600 mm +3/-1 mm",
        "22 ± 1 in, 0.0254, 1 ± 1 in",
        "-240 mm, -0.135, -135 mm",
        "−240 mm, -0.135, −135 mm",
        "-240 mm, 0.135, 135 mm",
        "0.78 m, 0.1234567, 0.12346 m",
        "6.5 in, 0.1651, 6.5 in",
        "6 in, 0.15875, 6.25 in",
        "24cm, 0.3, 30cm",
        "5 mm, -0.000001, 0 mm",
    })
    void oneValueIsPutInPlaceOfAnother(String before, double si, String after) {
        assertThat(length(before).with(si, FINEST_M)).isEqualTo(after);
    }

    @ParameterizedTest
    @CsvSource({
        "-40…180 mm, 0.01, -30…190 mm",
        "-40 mm … 18 cm, 0.01, -30 mm … 19 cm",
        "-4 to 18 cm, -0.005, -4.5 to 17.5 cm",
        "1..2 in, 0.0127, 1.5..2.5 in",
    })
    void bothEndsMove(String before, double bySi, String after) {
        assertThat(length(before).hasTwoEnds()).isTrue();
        assertThat(length(before).moved(bySi, FINEST_M)).isEqualTo(after);
    }

    /** A share of nothing cannot be read: the width stays what it was. */
    @Test
    void aToleranceInPercentKeepsItsWidthAtZero() {
        String moved = length("50 mm ± 10 %").with(0, FINEST_M);
        assertThat(moved).isEqualTo("0 mm ± 5 mm");
    }

    @Test
    void whatIsNoLengthIsNotTaken() {
        assertThat(WrittenQuantity.read("5 kg", Dimensions.LENGTH)).isEmpty();
        assertThat(WrittenQuantity.read("there", Dimensions.LENGTH)).isEmpty();
        assertThat(WrittenQuantity.read("", Dimensions.LENGTH)).isEmpty();
    }

    @Test
    void whatIsWrittenReadsAsTheRoundedValueInTheSameUnit() {
        String[] units = {"mm", "cm", "m", "in", "ft", "yd"};
        String[] doubts = {"", " ± 3 %", " ± 0.4 mm", " +1/-2 mm", " ± 1 in bound each"};
        Seeded.check(
                500,
                random -> {
                    String unit = units[random.nextInt(units.length)];
                    String doubt = doubts[random.nextInt(doubts.length)];
                    String before =
                            String.format(
                                    Locale.ROOT,
                                    "%.2f %s%s",
                                    random.nextDouble(0.01, 20),
                                    unit,
                                    doubt);
                    double si = random.nextDouble(-2, 2);
                    var written = length(before);
                    String after = written.with(si, FINEST_M);
                    var read = length(after);
                    assertThat(read.range().from().si()).isCloseTo(si, within(FINEST_M / 2));
                    assertThat(read.unitSi()).isEqualTo(written.unitSi());
                    assertThat(after).endsWith(unit + doubt);
                });
    }
}
