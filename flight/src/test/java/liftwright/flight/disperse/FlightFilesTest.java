package liftwright.flight.disperse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import liftwright.flight.run.FlightOutcome;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FlightFilesTest {

    @Test
    void whatIsReadIsWhatWasWritten() {
        Seeded.check(
                300,
                random -> {
                    FlightSet set = RandomFlights.set(random, 40);
                    String text = FlightText.of(set);
                    assertThat(read(text)).isEqualTo(new FlightReading.Read(set));
                    assertThat(FlightText.of(read(text).found().orElseThrow())).isEqualTo(text);
                });
    }

    /** Parts in any number and any order, some twice, some overlapping: the same bytes. */
    @Test
    void anyPartsInAnyOrderAreTheWhole() {
        Seeded.check(
                200,
                random -> {
                    FlightSet whole = RandomFlights.set(random, 60);
                    List<FlightSet> parts = parts(whole, random);
                    assertThat(FlightSet.merge(parts)).isEqualTo(new FlightSet.Merged.Whole(whole));
                    Collections.shuffle(parts, new Random(random.nextLong()));
                    FlightSet one = parts.getFirst();
                    for (FlightSet part : parts) {
                        one = merged(List.of(part, one));
                    }
                    assertThat(FlightText.of(one)).isEqualTo(FlightText.of(whole));
                });
    }

    private static List<FlightSet> parts(FlightSet whole, RandomGenerator random) {
        int count = 1 + random.nextInt(6);
        List<List<Flown>> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            parts.add(new ArrayList<>());
        }
        for (Flown each : whole.flights()) {
            int own = random.nextInt(count);
            for (int i = 0; i < count; i++) {
                if (i == own || random.nextInt(5) == 0) {
                    parts.get(i).add(each);
                }
            }
        }
        List<FlightSet> sets = new ArrayList<>();
        parts.forEach(part -> sets.add(new FlightSet(whole.of(), part)));
        return sets;
    }

    private static FlightSet merged(List<FlightSet> parts) {
        return switch (FlightSet.merge(parts)) {
            case FlightSet.Merged.Whole(FlightSet set) -> set;
            case FlightSet.Merged.Refused refused -> throw new AssertionError(refused.reason());
        };
    }

    @Test
    void overlapsThatDifferAreRefusedByTheirNumber() {
        Seeded.check(
                100,
                random -> {
                    var flights = new ArrayList<Flown>();
                    for (int number = 0; number < 20; number++) {
                        flights.add(RandomFlights.flown(random, number));
                    }
                    int spoilt = random.nextInt(20);
                    var other = new ArrayList<>(flights);
                    other.set(spoilt, new Flown.NotMade(spoilt, "something else"));
                    FlightSet.Merged merged =
                            FlightSet.merge(
                                    List.of(
                                            new FlightSet(RandomFlights.OF, flights),
                                            new FlightSet(RandomFlights.OF, other)));
                    assertThat(merged).isInstanceOf(FlightSet.Merged.Refused.class);
                    var refused = (FlightSet.Merged.Refused) merged;
                    assertThat(refused.flight()).isEqualTo(OptionalInt.of(spoilt));
                    assertThat(refused.part()).isEqualTo(1);
                });
    }

    /** Each of the five that decide a flight keeps flights apart. */
    @Test
    void flightsOfAnotherKindAreRefused() {
        FlightsOf of = RandomFlights.OF;
        List<FlightsOf> others =
                List.of(
                        new FlightsOf("0.2.0", of.rig(), of.corrections(), of.profile(), 7),
                        new FlightsOf("0.1.0", "sha256:ff", of.corrections(), of.profile(), 7),
                        new FlightsOf("0.1.0", of.rig(), "sha256:ff", of.profile(), 7),
                        new FlightsOf("0.1.0", of.rig(), of.corrections(), "sha256:ff", 7),
                        new FlightsOf("0.1.0", of.rig(), of.corrections(), of.profile(), 8));
        for (FlightsOf other : others) {
            assertThat(FlightSet.merge(List.of(FlightSet.none(of), FlightSet.none(other))))
                    .isInstanceOfSatisfying(
                            FlightSet.Merged.Refused.class,
                            refused -> {
                                assertThat(refused.flight()).isEmpty();
                                assertThat(refused.part()).isEqualTo(1);
                            });
        }
    }

    @Test
    void runsAreAsFewAsCanBe() {
        var random = new Random(4);
        List<Flown> flights = new ArrayList<>();
        for (int number : new int[] {0, 1, 2, 5, 7, 8}) {
            flights.add(RandomFlights.flown(random, number));
        }
        assertThat(FlightText.numbers(new FlightSet(RandomFlights.OF, flights)))
                .isEqualTo("0-2 5 7-8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FlightSet(RandomFlights.OF, flights.reversed()));
        assertThatIllegalArgumentException().isThrownBy(() -> new FlightsOf("a b", "", "", "", 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FlightRange(RandomFlights.OF, 3, 2));
    }

    /** However it was cut short, it is told, and where. */
    @Test
    void everyCutIsFound() {
        String text = good();
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        for (int length = 0; length < bytes.length; length++) {
            FlightReading reading = FlightReading.of(Arrays.copyOf(bytes, length));
            assertThat(reading).as("cut at " + length).isInstanceOf(FlightReading.Broken.class);
            var broken = (FlightReading.Broken) reading;
            long lines = text.substring(0, Math.min(length, text.length())).lines().count();
            assertThat(broken.line()).isBetween(1, (int) lines + 1);
        }
    }

    /** Whatever byte is changed, it is told. */
    @Test
    void everyChangedByteIsFound() {
        byte[] bytes = good().getBytes(StandardCharsets.UTF_8);
        var random = new Random(11);
        for (int at = 0; at < bytes.length; at++) {
            byte[] changed = bytes.clone();
            changed[at] = (byte) (changed[at] ^ (1 << random.nextInt(8)));
            assertThat(FlightReading.of(changed)).isInstanceOf(FlightReading.Broken.class);
        }
    }

    static String good() {
        return FlightText.of(
                new FlightSet(
                        RandomFlights.OF,
                        List.of(
                                Flown.of(new StandIn(7).fly(1), StandIn.LIMITS),
                                new Flown.Made(
                                        2,
                                        FlightOutcome.End.LOST,
                                        false,
                                        true,
                                        21.5,
                                        new StandIn(7).fly(2).figures(),
                                        "tilt: make dead"),
                                new Flown.NotMade(4, "a \"drawn\" number"))));
    }

    static Stream<Arguments> malformed() {
        return Stream.of(
                Arguments.of("head", 1, 1, "# liftwright flights: 1", "liftwright flights: 1"),
                Arguments.of("another format", 1, 23, "flights: 1\n", "flights: 2\n"),
                Arguments.of("a letter as format", 1, 23, "flights: 1\n", "flights: one\n"),
                Arguments.of("no program", 2, 1, "# program: 0.1.0\n", ""),
                Arguments.of("empty program", 2, 12, "program: 0.1.0", "program: "),
                Arguments.of("no rig", 3, 1, "# rig: ", "# ring: "),
                Arguments.of("rig with a blank", 3, 8, "rig: sha", "rig: s ha"),
                Arguments.of("no corrections", 4, 1, "# corrections: none\n", ""),
                Arguments.of("no profile", 5, 1, "# profile: sha256:01\n", ""),
                Arguments.of("profile with a blank", 5, 12, "sha256:01", "sha256 01"),
                Arguments.of("no seed", 6, 1, "# seed: 7\n", ""),
                Arguments.of("seed in words", 6, 9, "# seed: 7", "# seed: seven"),
                Arguments.of("seed too large", 6, 9, "seed: 7", "seed: 9223372036854775808"),
                Arguments.of("no numbers", 7, 1, "# numbers: 1-2 4\n", ""),
                Arguments.of("other numbers", 7, 12, "numbers: 1-2 4", "numbers: 1-4"),
                Arguments.of("no columns", 8, 1, "number,end", "number;end"),
                Arguments.of("a column more", 8, 1, ",words\n", ",words,more\n"),
                Arguments.of("a flight without number", 9, 1, "\n1,landed", "\n,landed"),
                Arguments.of("a negative number", 9, 1, "\n1,landed", "\n-1,landed"),
                Arguments.of("a number too large", 9, 1, "\n1,landed", "\n1000000,landed"),
                Arguments.of("a padded number", 9, 1, "\n1,landed", "\n01,landed"),
                Arguments.of("an unknown end", 9, 3, "1,landed", "1,vanished"),
                Arguments.of("well in doubt", 9, 10, "1,landed,", "1,landed,perhaps "),
                Arguments.of("no well", 9, 10, "\n1,landed,no,yes", "\n1,landed,,yes"),
                Arguments.of("computed in doubt", 9, 14, "\n1,landed,no,yes", "\n1,landed,yes,1"),
                Arguments.of("no number", 9, 17, "\n1,landed,no,yes,", "\n1,landed,no,yes,NaN,"),
                Arguments.of(
                        "infinite", 9, 17, "\n1,landed,no,yes,", "\n1,landed,no,yes,Infinity,"),
                Arguments.of(
                        "digits in another way",
                        9,
                        17,
                        "\n1,landed,no,yes,",
                        "\n1,landed,no,yes,+"),
                Arguments.of(
                        "a hexadecimal number",
                        9,
                        17,
                        "\n1,landed,no,yes,",
                        "\n1,landed,no,yes,0x1p3,"),
                Arguments.of(
                        "words without quotes", 10, -1, "\"tilt: make dead\"", "tilt: make dead"),
                Arguments.of(
                        "a quote alone", 10, -1, "\"tilt: make dead\"", "\"tilt: \"make dead\""),
                Arguments.of("the same flight twice", 10, 1, "\n2,", "\n1,"),
                Arguments.of("in another order", 11, 1, "\n4,", "\n0,"),
                Arguments.of(
                        "numbers where nothing flew", 11, 13, "4,not flown,,", "4,not flown,yes,"),
                Arguments.of("no count", 12, 1, "# counted: 3\n", ""),
                Arguments.of("another count", 12, 12, "counted: 3", "counted: 4"),
                Arguments.of("no digest", 13, 1, "# sha256: ", "# sha: "),
                Arguments.of("another digest", 13, 11, "# sha256: ", "# sha256: 0"),
                Arguments.of(
                        "a changed figure", 13, 11, ",0.3,18.0,0.0,\"\"", ",0.4,18.0,0.0,\"\""),
                Arguments.of("lines of another system", 2, 17, "0.1.0\n", "0.1.0\r\n"),
                Arguments.of("a control character", 2, 14, "0.1.0", "0.\u00011.0"),
                Arguments.of("a byte order mark", 1, 1, "# liftwright", "\uFEFF# liftwright"),
                Arguments.of("an empty line", 9, 1, "\n1,landed", "\n\n1,landed"),
                Arguments.of("a line cut short", 9, -1, ",18.0,0.0,\"\"\n2,", ",18.0,0.0\n2,"),
                Arguments.of("something behind", 14, 1, "", ""));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("malformed")
    void everyMistakeIsToldWithItsPlace(
            String name, int line, int column, String before, String after) {
        String text = good();
        String spoilt = name.equals("something behind") ? text + "more\n" : text;
        if (!name.equals("something behind")) {
            assertThat(text).contains(before);
            int at = text.indexOf(before);
            spoilt = text.substring(0, at) + after + text.substring(at + before.length());
        }
        FlightReading reading = read(spoilt);
        assertThat(reading).isInstanceOf(FlightReading.Broken.class);
        var broken = (FlightReading.Broken) reading;
        assertThat(broken.line()).as(broken.sentence()).isEqualTo(line);
        if (column > 0) {
            assertThat(broken.column()).as(broken.sentence()).isEqualTo(column);
        }
        assertThat(broken.sentence()).hasSizeGreaterThan(15).doesNotContain("Exception");
    }

    private static FlightReading read(String text) {
        return FlightReading.of(text.getBytes(StandardCharsets.UTF_8));
    }
}
