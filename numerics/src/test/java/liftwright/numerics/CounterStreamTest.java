package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CounterStreamTest {

    /** Known answers of philox4x32, 10 rounds: Random123, tests/kat_vectors [SALMON11]. */
    @ParameterizedTest
    @CsvSource({
        "00000000 00000000 00000000 00000000, 00000000 00000000,"
                + " 6627e8d5 e169c58d bc57ac4c 9b00dbd8",
        "ffffffff ffffffff ffffffff ffffffff, ffffffff ffffffff,"
                + " 408f276d 41c83b0e a20bc7c6 6d5451fd",
        "243f6a88 85a308d3 13198a2e 03707344, a4093822 299f31d0,"
                + " d16cfe09 94fdcceb 5001e420 24126ea1",
    })
    void givesThePublishedKnownAnswers(String counter, String key, String expected) {
        int[] c = words(counter);
        int[] k = words(key);
        int[] x = words(expected);
        long first = CounterStream.block(c[0], c[1], c[2], c[3], k[0], k[1], false);
        long second = CounterStream.block(c[0], c[1], c[2], c[3], k[0], k[1], true);
        assertThat(new int[] {(int) (first >>> 32), (int) first}).containsExactly(x[0], x[1]);
        assertThat(new int[] {(int) (second >>> 32), (int) second}).containsExactly(x[2], x[3]);
    }

    private static int[] words(String text) {
        return java.util.Arrays.stream(text.trim().split(" "))
                .mapToInt(word -> Integer.parseUnsignedInt(word, 16))
                .toArray();
    }

    /** FNV-1a test values: Fowler, Noll, Vo, Eastlake, "The FNV Non-Cryptographic Hash". */
    @ParameterizedTest
    @CsvSource({
        "'', cbf29ce484222325",
        "a, af63dc4c8601ec8c",
        "foobar, 85944171f73967e8",
    })
    void hashesBytesAsFnv1a(String text, String expected) {
        assertThat(CounterStream.fnv1a(text.getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(Long.parseUnsignedLong(expected, 16));
    }

    @Test
    void everyPartOfAnAddressMakesAnotherNumber() {
        Set<Long> seen = new HashSet<>();
        long[] high = {0, 1L << 32};
        int count = 0;
        for (long seed : new long[] {0, 1, 1L << 32}) {
            for (long low = 0; low < 3; low++) {
                for (long upper : high) {
                    for (int draw = 0; draw < 5; draw++) {
                        for (int step = 0; step < 5; step++) {
                            seen.add(CounterStream.bits(seed, low | upper, draw, step));
                            count++;
                        }
                    }
                }
            }
        }
        assertThat(seen).hasSize(count).hasSizeGreaterThan(400);
    }

    @Test
    void anAddressIsKeyAndCounterAsDocumented() {
        long channel = 0x85a308d3_243f6a88L;
        long seed = 0x299f31d0_a4093822L;
        // Counter words: channel low, channel high, step, draw; key words: seed low, seed high.
        assertThat(CounterStream.bits(seed, channel, 0x03707344, 0x13198a2e))
                .isEqualTo(0xd16cfe09_94fdccebL);
        assertThat(CounterStream.uniform(seed, channel, 0x03707344, 0x13198a2e))
                .isEqualTo((0xd16cfe0994fdcL + 0.5) / 4503599627370496.0);
    }

    @Test
    void namesThatDifferInOneLetterLieFarApart() {
        long one = CounterStream.channel("left.ring[3].fan.kT");
        long other = CounterStream.channel("left.ring[4].fan.kT");
        assertThat(Long.bitCount(one ^ other)).isBetween(16, 48);
    }

    @Test
    void uniformsFillTheUnitIntervalEvenly() {
        Seeded.check(
                20,
                random -> {
                    long seed = random.nextLong();
                    long channel = random.nextLong();
                    int n = 20_000;
                    int[] cell = new int[20];
                    for (int draw = 0; draw < n; draw++) {
                        double u = CounterStream.uniform(seed, channel, draw);
                        assertThat(u).isGreaterThan(0).isLessThan(1);
                        cell[(int) (u * cell.length)]++;
                    }
                    double chiSquare = 0;
                    double expected = n / (double) cell.length;
                    for (int c : cell) {
                        chiSquare += (c - expected) * (c - expected) / expected;
                    }
                    // 19 degrees of freedom: above 60 once in 3e6.
                    assertThat(chiSquare).isLessThan(60);
                });
    }

    @Test
    void normalsHaveTheMomentsOfANormal() {
        Seeded.check(
                10,
                random -> {
                    long seed = random.nextLong();
                    int n = 40_000;
                    double sum = 0;
                    double square = 0;
                    double neighbours = 0;
                    double before = 0;
                    for (int draw = 0; draw < n; draw++) {
                        double z = CounterStream.normal(seed, 7, draw, 3);
                        sum += z;
                        square += z * z;
                        neighbours += z * before;
                        before = z;
                    }
                    // Five standard errors each.
                    assertThat(sum / n).isCloseTo(0, within(5 / Math.sqrt(n)));
                    assertThat(square / n).isCloseTo(1, within(5 * Math.sqrt(2.0 / n)));
                    assertThat(neighbours / n).isCloseTo(0, within(5 / Math.sqrt(n)));
                });
    }

    /** Referee: the hash and the finaliser in unbounded integers, reduced modulo 2⁶⁴. */
    @Test
    void aChannelNeverChanges() {
        BigInteger modulus = BigInteger.ONE.shiftLeft(64);
        Seeded.check(
                200,
                random -> {
                    String name = "pack[" + random.nextInt() + "].größe." + random.nextLong();
                    BigInteger hash = new BigInteger("cbf29ce484222325", 16);
                    for (byte next : name.getBytes(StandardCharsets.UTF_8)) {
                        hash =
                                hash.xor(BigInteger.valueOf(next & 0xFF))
                                        .multiply(new BigInteger("100000001b3", 16))
                                        .mod(modulus);
                    }
                    for (String factor : new String[] {"ff51afd7ed558ccd", "c4ceb9fe1a85ec53"}) {
                        hash =
                                hash.xor(hash.shiftRight(33))
                                        .multiply(new BigInteger(factor, 16))
                                        .mod(modulus);
                    }
                    hash = hash.xor(hash.shiftRight(33));
                    assertThat(CounterStream.channel(name)).isEqualTo(hash.longValue());
                    assertThat(CounterStream.normal(3, hash.longValue(), 9))
                            .isEqualTo(
                                    Gaussian.quantile(
                                            CounterStream.uniform(3, hash.longValue(), 9, 0)));
                });
    }
}
