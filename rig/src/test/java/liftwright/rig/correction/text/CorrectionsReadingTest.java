package liftwright.rig.correction.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.Found;
import liftwright.rig.correction.Grounds;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The file of corrections: what is written is read back, and what is wrong is told at its place.
 */
class CorrectionsReadingTest {

    private static final String DIGEST = "sha256:" + "0123456789abcdef".repeat(4);

    /** Sealed by the test below where a case leaves the seal alone. */
    private static final String GOOD =
            """
            # by hand
            liftwright corrections: 1
            rig: "%s"
            revision: 3
            corrections:
              - name: "fans of the left"
                tests:
                  - {test: "2026-03-14-1", digest: "%s"}
                held-out residual: 1.1
                distance: 2.5
                serials:
                  left.3: "F-17"
                found:
                  - parameter: "left.3: fan types/F140/scatter"
                    label: "scatter of left.3"
                    declared: "1.0 ± 0.04 each"
                    value: "0.93"
                    drawn: in logarithms
                    deviation: 0.01
                  - parameter: "packs/p/interconnect"
                    label: "links of p"
                    declared: "0.0015 Ω +2.0E-4/−1.0E-4 bound"
                    value: "0.0017 Ω"
                    drawn: as it is
                    deviation: 2.0E-5
                    correlations: [-0.25]
            seal: "sha256:%s"
            """
                    .formatted(DIGEST, DIGEST, "5".repeat(64));

    private static final String ADVICE = " " + CorrectionsReading.ADVICE;

    private static CorrectionsReading read(String text) {
        return CorrectionsReading.read(
                "rig.corrections.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    /** As the terminal would put it: place, what was found, what is expected, what to do. */
    private static String told(Problem problem) {
        return String.format(
                        Locale.ROOT,
                        "%s %d:%d %s | found %s, expected %s. %s",
                        problem.code(),
                        problem.at().line(),
                        problem.at().column(),
                        problem.at().path(),
                        problem.found(),
                        problem.expected(),
                        problem.advice())
                .strip();
    }

    /** One mistake and all that is said of it, word for word. */
    record Mistake(String from, String to, List<String> told) {

        @Override
        public String toString() {
            return to;
        }
    }

    /** {@code §} stands for what all of them advise. */
    private static Mistake of(String from, String to, String... told) {
        return new Mistake(
                from, to, Stream.of(told).map(each -> each.replace("§", ADVICE)).toList());
    }

    static Stream<Mistake> mistakes() {
        return Stream.of(
                of(
                        "liftwright corrections: 1",
                        "liftwright corrections: 2",
                        "UNSUPPORTED_VERSION 2:25 liftwright corrections | found "
                                + "format 2, expected format 1. A newer Liftwright wrote this "
                                + "file: use that one."),
                of(
                        "liftwright corrections: 1",
                        "liftwright corrections: one",
                        "WRONG_KIND 2:25 liftwright corrections | found “one”, "
                                + "expected the format, a whole number from 1 to 1. Write "
                                + "digits only, without a unit."),
                of(
                        "liftwright corrections: 1\n",
                        "\n",
                        "MISSING_KEY 3:1 liftwright corrections | found no "
                                + "“liftwright corrections”, expected liftwright corrections: "
                                + "the format, a whole number from 1 to 1. Add for instance "
                                + "“liftwright corrections: 1”."),
                of(
                        "rig: \"sha256",
                        "rig: \"sha1",
                        "NOT_A_QUANTITY 3:6 rig | found "
                                + "“sha1:0123456789abcdef0123456789abcdef0123456789abcdef0123456…”, "
                                + "expected sha256: and 64 digits from 0 to f.§"),
                of(
                        "rig: \"",
                        "rigs: \"",
                        "MISSING_KEY 2:1 rig | found no “rig”, expected rig: the "
                                + "digest of a rig file. Add for instance “rig: \"sha256:…\"”.",
                        "UNKNOWN_KEY 3:1 rigs | found the key “rigs”, expected one "
                                + "of the keys of corrections. Perhaps “rig” is meant."),
                of(
                        "revision: 3\n",
                        "\n",
                        "MISSING_KEY 2:1 revision | found no “revision”, expected "
                                + "revision: the number of the revision, a whole number from 0 "
                                + "to 1000000. Add for instance “revision: 3”."),
                of(
                        "revision: 3",
                        "revision: -1",
                        "OUT_OF_RANGE 4:11 revision | found -1, expected the number "
                                + "of the revision, a whole number from 0 to 1000000."),
                of(
                        "revision: 3",
                        "revision: three",
                        "WRONG_KIND 4:11 revision | found “three”, expected the "
                                + "number of the revision, a whole number from 0 to 1000000. "
                                + "Write digits only, without a unit."),
                of(
                        "name: \"fans of the left\"",
                        "name: \"\"",
                        "WRONG_KIND 6:11 corrections/1/name | found nothing, "
                                + "expected a name.§"),
                of(
                        "name: \"fans of the left\"\n    tests",
                        "name: [left]\n    tests",
                        "WRONG_KIND 6:11 corrections/1/name | found a list, expected " + "a name."),
                of(
                        "{test: \"2026-03-14-1\", digest",
                        "{test: \"\", digest",
                        "WRONG_KIND 8:16 corrections/1/tests/1/test | found nothing, "
                                + "expected the name of a test.§"),
                of(
                        "{test: \"2026-03-14-1\", digest",
                        "{digest",
                        "MISSING_KEY 8:9 corrections/1/tests/1/test | found no "
                                + "“test”, expected test: the name of a test. Add for instance "
                                + "“test: \"2026-03-14-1\"”."),
                of(
                        "digest: \"sha256:0",
                        "digest: \"SHA256:0",
                        "NOT_A_QUANTITY 8:40 corrections/1/tests/1/digest | found "
                                + "“SHA256:0123456789abcdef0123456789abcdef0123456789abcdef01234…”, "
                                + "expected sha256: and 64 digits from 0 to f.§"),
                of(
                        "held-out residual: 1.1",
                        "held-out residual: -1.1",
                        "OUT_OF_RANGE 9:24 corrections/1/held-out residual | found "
                                + "-1.1, expected a number no less than 0.§"),
                of(
                        "held-out residual: 1.1",
                        "held-out residual: none",
                        "NOT_A_QUANTITY 9:24 corrections/1/held-out residual | found "
                                + "“none”, expected a number without a unit.§"),
                of(
                        "distance: 2.5",
                        "distance: NaN",
                        "NOT_A_QUANTITY 10:15 corrections/1/distance | found “NaN”, "
                                + "expected a number without a unit.§"),
                of(
                        "distance: 2.5",
                        "distance: 1e400",
                        "NOT_A_QUANTITY 10:15 corrections/1/distance | found "
                                + "“1e400”, expected a number without a unit.§"),
                of(
                        "distance: 2.5",
                        "distance: 2.5 s",
                        "NOT_A_QUANTITY 10:15 corrections/1/distance | found “2.5 "
                                + "s”, expected a number without a unit.§"),
                of(
                        "distance: 2.5\n",
                        "\n",
                        "MISSING_KEY 6:5 corrections/1/distance | found no "
                                + "“distance”, expected distance: a number no less than 0. Add "
                                + "for instance “distance: 2.3”."),
                of(
                        "serials:\n      left.3: \"F-17\"\n",
                        "\n",
                        "CONTRADICTION 13:20 corrections/1/found/1/parameter | found "
                                + "no serial number of “left.3”, expected each part of a "
                                + "correction among its “serials”, empty if it had none.§"),
                of(
                        "left.3: \"F-17\"",
                        "left.4: \"F-17\"",
                        "CONTRADICTION 14:20 corrections/1/found/1/parameter | found "
                                + "no serial number of “left.3”, expected each part of a "
                                + "correction among its “serials”, empty if it had none.§"),
                of(
                        "left.3: \"F-17\"",
                        "left.3: [F-17]",
                        "WRONG_KIND 12:15 corrections/1/serials/left.3 | found a "
                                + "list, expected a serial number.",
                        "CONTRADICTION 14:20 corrections/1/found/1/parameter | found "
                                + "no serial number of “left.3”, expected each part of a "
                                + "correction among its “serials”, empty if it had none.§"),
                of(
                        "parameter: \"packs/p/interconnect\"",
                        "parameter: \"interconnect\"",
                        "UNKNOWN_WORD 20:20 corrections/1/found/2/parameter | found "
                                + "“interconnect”, expected a path of the rig file, such as "
                                + "“fan types/F140/installation”, behind the id of a part and "
                                + "a colon where the part has its own.§"),
                of(
                        "parameter: \"packs/p/interconnect\"",
                        "parameter: \"left.3: fan types/F140/scatter\"",
                        "DUPLICATE_KEY 20:20 corrections/1/found/2/parameter | found "
                                + "“left.3: fan types/F140/scatter” again, expected every "
                                + "parameter once in the file.§"),
                of(
                        "parameter: \"packs/p/interconnect\"",
                        "parameter: \"packs/p/\"",
                        "UNKNOWN_WORD 20:20 corrections/1/found/2/parameter | found "
                                + "“packs/p/”, expected a path of the rig file, such as “fan "
                                + "types/F140/installation”, behind the id of a part and a "
                                + "colon where the part has its own.§"),
                of(
                        "declared: \"1.0 ± 0.04 each\"",
                        "declared: \"1.0 ± 4 % each\"",
                        "NOT_A_QUANTITY 16:19 corrections/1/found/1/declared | found "
                                + "“1.0 ± 4 % each”, expected an SI value with its unit, such "
                                + "as “0.74 kg ± 0.0148 each”.§"),
                of(
                        "declared: \"1.0 ± 0.04 each\"",
                        "declared: \"1.0 +0.04/-0.02\"",
                        "NOT_A_QUANTITY 16:19 corrections/1/found/1/declared | found "
                                + "“1.0 +0.04/-0.02”, expected an SI value with its unit, such "
                                + "as “0.74 kg ± 0.0148 each”.§"),
                of(
                        "declared: \"0.0015 Ω",
                        "declared: \"1.5 mΩ",
                        "NOT_A_QUANTITY 22:19 corrections/1/found/2/declared | found "
                                + "“1.5 mΩ +2.0E-4/−1.0E-4 bound”, expected an SI value with "
                                + "its unit, such as “0.74 kg ± 0.0148 each”.§"),
                of(
                        "value: \"0.0017 Ω\"",
                        "value: \"0.0017 V\"",
                        "WRONG_UNIT 23:16 corrections/1/found/2/value | found the "
                                + "unit V, expected the unit Ω, as what was declared.§"),
                of(
                        "value: \"0.0017 Ω\"",
                        "value: \"0.0017\"",
                        "WRONG_UNIT 23:16 corrections/1/found/2/value | found no "
                                + "unit, expected the unit Ω, as what was declared.§"),
                of(
                        "value: \"0.0017 Ω\"",
                        "value: \"0,0017 Ω\"",
                        "NOT_A_QUANTITY 23:16 corrections/1/found/2/value | found "
                                + "“0,0017 Ω”, expected an SI value with its unit, such as "
                                + "“0.74 kg ± 0.0148 each”.§"),
                of(
                        "value: \"0.0017 Ω\"",
                        "value: \"0.0017 Ω ± 0.0001\"",
                        "CONTRADICTION 23:16 corrections/1/found/2/value | found a "
                                + "value with a doubt of its own, expected a value alone: its "
                                + "doubt is “deviation” and “correlations”.§"),
                of(
                        "value: \"0.93\"",
                        "value: \"-0.93\"",
                        "CONTRADICTION 17:16 corrections/1/found/1/value | found a "
                                + "value of -0.93 that is drawn in logarithms, expected a "
                                + "value above 0, or one drawn as it is.§"),
                of(
                        "value: \"0.93\"",
                        "value: \"1e999\"",
                        "NOT_A_QUANTITY 17:16 corrections/1/found/1/value | found "
                                + "“1e999”, expected an SI value with its unit, such as “0.74 "
                                + "kg ± 0.0148 each”.§"),
                of(
                        "value: \"0.93\"\n",
                        "\n",
                        "MISSING_KEY 14:9 corrections/1/found/1/value | found no "
                                + "“value”, expected value: a value with its unit. Add for "
                                + "instance “value: \"0.93\"”."),
                of(
                        "drawn: in logarithms",
                        "drawn: logarithms",
                        "UNKNOWN_WORD 18:16 corrections/1/found/1/drawn | found "
                                + "“logarithms”, expected one of in logarithms, as it is. "
                                + "Perhaps “in logarithms” is meant."),
                of(
                        "drawn: as it is",
                        "drawn: yes",
                        "UNKNOWN_WORD 24:16 corrections/1/found/2/drawn | found "
                                + "“yes”, expected one of in logarithms, as it is."),
                of(
                        "deviation: 0.01",
                        "deviation: -0.01",
                        "OUT_OF_RANGE 19:20 corrections/1/found/1/deviation | found "
                                + "-0.01, expected a number no less than 0.§"),
                of(
                        "deviation: 0.01",
                        "deviation: \"1 %\"",
                        "NOT_A_QUANTITY 19:20 corrections/1/found/1/deviation | "
                                + "found “1 %”, expected a number without a unit.§"),
                of(
                        "correlations: [-0.25]",
                        "correlations: []",
                        "OUT_OF_RANGE 26:23 corrections/1/found/2/correlations | "
                                + "found 0 numbers, expected 1 number, one for each value "
                                + "before it.§"),
                of(
                        "correlations: [-0.25]",
                        "correlations: [-0.25, 0.1]",
                        "OUT_OF_RANGE 26:23 corrections/1/found/2/correlations | "
                                + "found 2 numbers, expected 1 number, one for each value "
                                + "before it.§"),
                of(
                        "correlations: [-0.25]",
                        "correlations: [-1.25]",
                        "OUT_OF_RANGE 26:24 corrections/1/found/2/correlations/1 | "
                                + "found -1.25, expected a correlation from −1 to 1.§"),
                of(
                        "correlations: [-0.25]",
                        "correlations: [much]",
                        "NOT_A_QUANTITY 26:24 corrections/1/found/2/correlations/1 | "
                                + "found “much”, expected a number without a unit.§"),
                of(
                        "correlations: [-0.25]",
                        "correlations: -0.25",
                        "WRONG_KIND 26:23 corrections/1/found/2/correlations | found "
                                + "“-0.25”, expected a list of numbers from −1 to 1."),
                of(
                        "correlations: [-0.25]",
                        "correlation: [-0.25]",
                        "OUT_OF_RANGE 20:9 corrections/1/found/2/correlations | "
                                + "found 0 numbers, expected 1 number, one for each value "
                                + "before it.§",
                        "UNKNOWN_KEY 26:9 corrections/1/found/2/correlation | found "
                                + "the key “correlation”, expected one of the keys of found. "
                                + "Perhaps “correlations” is meant."),
                of(
                        "seal: \"sha256:5",
                        "seal: \"sha256:6",
                        "CONTRADICTION 27:7 seal | found a seal of other values, "
                                + "expected the values that were sealed: somebody edited the "
                                + "file.§"),
                of(
                        "seal: \"sha256:5",
                        "seal: \"sha256:g",
                        "NOT_A_QUANTITY 27:7 seal | found "
                                + "“sha256:g5555555555555555555555555555555555555555555555555555…”, "
                                + "expected sha256: and 64 digits from 0 to f.§"),
                of(
                        "seal: ",
                        "sealed: ",
                        "MISSING_KEY 2:1 seal | found no “seal”, expected seal: the "
                                + "digest of what is said above. Add for instance “seal: "
                                + "\"sha256:…\"”.",
                        "UNKNOWN_KEY 27:1 sealed | found the key “sealed”, expected "
                                + "one of the keys of corrections. Its keys are: liftwright "
                                + "corrections, rig, revision, corrections, seal."));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void whatIsWrongIsToldAtItsPlace(Mistake mistake) {
        assertThat(GOOD).contains(mistake.from());
        CorrectionsReading reading = read(GOOD.replace(mistake.from(), mistake.to()));
        assertThat(reading.corrections()).isEmpty();
        assertThat(reading.problems().stream().map(CorrectionsReadingTest::told))
                .as(mistake.to())
                .containsExactlyElementsOf(mistake.told());
    }

    @Test
    void anEditedValueBreaksTheSeal() {
        Corrections good = good();
        String text = CorrectionsText.of(good);
        assertThat(read(text).corrections()).contains(good);
        String edited = text.replace("value: \"0.93\"", "value: \"0.94\"");
        assertThat(edited).isNotEqualTo(text);
        assertThat(read(edited).problems())
                .singleElement()
                .satisfies(
                        problem -> {
                            assertThat(problem.code()).isEqualTo(Code.CONTRADICTION);
                            assertThat(problem.at().path()).isEqualTo("seal");
                        });
    }

    @Test
    void commentsAndLayoutAreNotSealed() {
        String text = CorrectionsText.of(good());
        String laid = text.replaceAll(" +#.*", "").replaceAll("(?m)^#.*\n", "");
        assertThat(laid).isNotEqualTo(text).doesNotContain("#");
        assertThat(read(laid).corrections()).contains(good());
    }

    private static Corrections good() {
        String unsealed = GOOD.substring(0, GOOD.indexOf("seal:"));
        Corrections content =
                new Corrections(
                        DIGEST,
                        3,
                        List.of(
                                new Correction(
                                        "fans of the left",
                                        List.of(
                                                new Found(
                                                        "left.3: fan types/F140/scatter",
                                                        "scatter of left.3",
                                                        new Quantity(
                                                                1,
                                                                Dimension.NONE,
                                                                new Tolerance(
                                                                        0.04,
                                                                        0.04,
                                                                        Tolerance.Form.NORMAL,
                                                                        Tolerance.Scope.EACH)),
                                                        0.93,
                                                        0.01,
                                                        true),
                                                new Found(
                                                        "packs/p/interconnect",
                                                        "links of p",
                                                        new Quantity(
                                                                0.0015,
                                                                new Dimension(2, 1, -3, -2, 0, 0),
                                                                new Tolerance(
                                                                        2e-4,
                                                                        1e-4,
                                                                        Tolerance.Form.BOUND,
                                                                        Tolerance.Scope.SHARED)),
                                                        0.0017,
                                                        2e-5,
                                                        false)),
                                        List.of(-0.25),
                                        new Grounds(
                                                List.of(new Grounds.Test("2026-03-14-1", DIGEST)),
                                                OptionalDouble.of(1.1),
                                                2.5),
                                        new TreeMap<>(java.util.Map.of("left.3", "F-17")))));
        // The one by hand says the same.
        assertThat(
                        read(unsealed + "seal: \"" + CorrectionsText.seal(content) + "\"\n")
                                .corrections())
                .contains(content);
        return content;
    }

    @Test
    void whatIsWrittenIsReadBack() {
        Seeded.check(
                300,
                random -> {
                    Corrections drawn = corrections(random);
                    String text = CorrectionsText.of(drawn);
                    CorrectionsReading reading = read(text);
                    assertThat(reading.problems()).as(text).isEmpty();
                    assertThat(reading.corrections()).contains(drawn);
                    assertThat(CorrectionsText.of(reading.corrections().get())).isEqualTo(text);
                });
    }

    private static Corrections corrections(RandomGenerator random) {
        var groups = new ArrayList<Correction>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            groups.add(group(random, i));
        }
        return new Corrections(DIGEST, random.nextInt(50), groups);
    }

    private static Correction group(RandomGenerator random, int number) {
        int n = 1 + random.nextInt(6);
        var found = new ArrayList<Found>();
        var serials = new TreeMap<String, String>();
        for (int i = 0; i < n; i++) {
            boolean each = random.nextBoolean();
            String path = "fan types/T" + text(random, 6) + "/x" + number + "-" + i;
            if (each) {
                serials.put("left." + i, text(random, 9));
            }
            found.add(
                    new Found(
                            (each ? "left." + i + ": " : "") + path,
                            text(random, 20),
                            new Quantity(
                                    random.nextGaussian(),
                                    dimension(random),
                                    new Tolerance(
                                            random.nextInt(2) * random.nextDouble(),
                                            random.nextDouble() * 1e-7,
                                            random.nextBoolean()
                                                    ? Tolerance.Form.NORMAL
                                                    : Tolerance.Form.BOUND,
                                            random.nextBoolean()
                                                    ? Tolerance.Scope.SHARED
                                                    : Tolerance.Scope.EACH)),
                            Math.exp(8 * random.nextGaussian()),
                            random.nextDouble() * Math.pow(10, -random.nextInt(9)),
                            random.nextBoolean()));
        }
        var below = new ArrayList<Double>();
        for (int i = 0; i < n * (n - 1) / 2; i++) {
            below.add((2 * random.nextDouble() - 1) / n); // weak enough for any
        }
        return new Correction(
                number + text(random, 12),
                found,
                below,
                new Grounds(
                        List.of(new Grounds.Test("t" + text(random, 9), DIGEST)),
                        random.nextBoolean()
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(random.nextDouble()),
                        9 * random.nextDouble()),
                serials);
    }

    private static Dimension dimension(RandomGenerator random) {
        return new Dimension(
                random.nextInt(-2, 3),
                random.nextInt(-1, 2),
                random.nextInt(-3, 3),
                random.nextInt(-1, 2),
                random.nextInt(-1, 2),
                random.nextInt(-2, 3),
                random.nextInt(2));
    }

    private static String text(RandomGenerator random, int most) {
        String odd = "\"\\'#-{}[],&*!|>%@`é√\ud83d\ude00x";
        var text = new StringBuilder();
        for (int i = random.nextInt(most); i > 0; i--) {
            if (random.nextInt(3) == 0) {
                int at = random.nextInt(odd.codePointCount(0, odd.length()));
                text.appendCodePoint(odd.codePointAt(odd.offsetByCodePoints(0, at)));
            } else {
                text.append((char) ('a' + random.nextInt(26)));
            }
        }
        return text.toString();
    }

    @Test
    void noBrokenFileThrows() {
        String text = CorrectionsText.of(good());
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Seeded.check(
                1500,
                random -> {
                    byte[] broken = bytes.clone();
                    for (int i = 0; i <= random.nextInt(4); i++) {
                        broken[random.nextInt(broken.length)] = (byte) random.nextInt(256);
                    }
                    var reading = CorrectionsReading.read("rig.corrections.yaml", broken);
                    // Either it says what was sealed, or what is wrong with it.
                    assertThat(reading.corrections().isPresent())
                            .isEqualTo(reading.problems().isEmpty());
                    reading.corrections().ifPresent(read -> assertThat(read).isEqualTo(good()));
                });
    }
}
