package liftwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Whatever is written, the parser answers, and what it answers is of use. */
class QuantityFuzzTest {

    private static final List<String> SOUND =
            List.of(
                    "4.2 mΩ ± 4 % each",
                    "68 ± 0.4 kg bound shared",
                    "0.10 +0.15/−0.20",
                    "-40…180 mm",
                    "12 °C ± 2 K",
                    "8 W/(m·K)",
                    "1.5e-3 N·s²/rad²",
                    "1 Ω/1000 ft",
                    "0.005 deg/s/√Hz",
                    "0.004 1/K",
                    "10 mm +0.1 mm/-200 µm",
                    "1,000 mm",
                    "16 lb",
                    "5 ft-lb");

    private static final List<String> PIECES =
            List.of(
                    " ",
                    "  ",
                    "±",
                    "+/-",
                    "+",
                    "-",
                    "−",
                    "/",
                    "·",
                    "*",
                    "^",
                    "²",
                    "⁻",
                    "(",
                    ")",
                    "%",
                    "each",
                    "shared",
                    "bound",
                    "to",
                    "…",
                    "..",
                    "...",
                    ".",
                    ",",
                    "e",
                    "E",
                    "1",
                    "0",
                    "1000",
                    "1e",
                    "lb",
                    "lbf",
                    "°C",
                    "°",
                    "m",
                    "mm",
                    "kg",
                    "Ω",
                    "µ",
                    "√Hz",
                    "inH2O",
                    "AWG",
                    "KV",
                    "\u0000",
                    "\ud83d\ude81",
                    "\ud83d",
                    "\u202e",
                    "\u00a0",
                    "\n",
                    "'",
                    "\"",
                    "×",
                    "–",
                    "∞",
                    "NaN",
                    "９",
                    "1/",
                    "/1000 ft");

    private static final List<Dimension> NEEDS =
            List.of(
                    Dimensions.DIMENSIONLESS,
                    Dimensions.LENGTH,
                    Dimensions.FORCE,
                    Dimensions.MASS,
                    Dimensions.TEMPERATURE,
                    Dimensions.SPEED_CONSTANT);

    @Test
    void textOfPiecesIsAlwaysAnswered() {
        Seeded.check(
                6_000,
                random -> {
                    var text = new StringBuilder();
                    for (int n = random.nextInt(12); n > 0; n--) {
                        text.append(pick(random, PIECES));
                    }
                    isAnswered(text.toString(), random);
                });
    }

    @Test
    void soundTextWithASlipIsAlwaysAnswered() {
        Seeded.check(
                6_000,
                random -> {
                    var text = new StringBuilder(pick(random, SOUND));
                    for (int n = random.nextInt(1, 4); n > 0 && !text.isEmpty(); n--) {
                        slip(text, random);
                    }
                    isAnswered(text.toString(), random);
                });
    }

    @Test
    void anyCharactersAreAlwaysAnswered() {
        Seeded.check(
                2000,
                random -> {
                    var text = new StringBuilder();
                    for (int n = random.nextInt(40); n > 0; n--) {
                        text.append((char) random.nextInt(random.nextBoolean() ? 128 : 0x10000));
                    }
                    isAnswered(text.toString(), random);
                });
    }

    private static void slip(StringBuilder text, RandomGenerator random) {
        int at = random.nextInt(text.length());
        switch (random.nextInt(4)) {
            case 0 -> text.deleteCharAt(at);
            case 1 -> text.insert(at, pick(random, PIECES));
            case 2 -> text.setCharAt(at, (char) random.nextInt(32, 127));
            default -> text.insert(at, text.substring(random.nextInt(text.length())));
        }
    }

    private static void isAnswered(String text, RandomGenerator random) {
        var needed = pick(random, NEEDS);
        isUseful(text, t -> QuantityParser.parse(t));
        isUseful(text, t -> QuantityParser.parse(t, needed));
        isUseful(text, t -> QuantityParser.parseRange(t, needed));
        isUseful(text, QuantityParser::parseTolerance);
        isUseful(text, QuantityParser::parseTemperatureDifference);
        isUseful(text, QuantityParser::parseUnit);
        if (QuantityParser.parse(text, needed) instanceof Reading.Parsed<Quantity>(var q)) {
            assertThat(q.dimension()).isEqualTo(needed);
            assertThat(q.si()).isFinite();
            assertThat(Read.quantity(QuantityWriter.write(q))).isEqualTo(q);
        }
    }

    /** The place lies in the text, and a suggestion can be read. */
    private static void isUseful(String text, Function<String, Reading<?>> read) {
        if (read.apply(text) instanceof Reading.Refused<?>(var refusal)) {
            assertThat(refusal.offset()).isBetween(0, text.length());
            assertThat(refusal.length()).isBetween(0, text.length() - refusal.offset());
            refusal.suggestion()
                    .ifPresent(
                            better ->
                                    assertThat(read.apply(better))
                                            .as("%s for %s", better, text)
                                            .isInstanceOf(Reading.Parsed.class));
        }
    }

    private static <T> T pick(RandomGenerator random, List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
