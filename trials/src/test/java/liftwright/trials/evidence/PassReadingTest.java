package liftwright.trials.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import liftwright.rig.Problem.Code;
import liftwright.testkit.Seeded;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.TrialExamples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The file of a pass. */
class PassReadingTest {

    private static final String DIGEST = "sha256:" + "0123456789abcdef".repeat(4);

    private static final String GOOD =
            """
            # by hand
            liftwright pass: 1
            number: 17
            card: "pod.left pod"
            on: 2026-03-14
            outcome: passed
            by: ["A. Wader", "B. Marsh"]
            clean runs: 10
            rig: "%s"
            revision: 3
            kill proof: "kills of that day"
            note: "gusty at noon"
            inputs counted: 3
            inputs:
              - "packs/p.1/series = 14"
              - "packs/p.1/at/down = 0.04 m"
              - "site/elevation = 4.0 m"
            """
                    .formatted(DIGEST);

    private static PassReading read(String text) {
        return PassReading.read("0017.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    static Pass pass(RandomGenerator random) {
        var inputs = new TreeMap<String, String>();
        for (int i = random.nextInt(12); i > 0; i--) {
            inputs.put(path(random), text(random, 30));
        }
        var outcome = any(random, Pass.Outcome.values());
        return new Pass(
                1 + random.nextInt(Pass.MOST),
                new CardId(
                        any(random, CardKind.values()),
                        random.nextBoolean() ? "" : "x" + text(random, 8)),
                LocalDate.of(2026, 1, 1).plusDays(random.nextInt(4000)),
                outcome,
                List.of("a" + text(random, 10), "b" + text(random, 10)),
                1 + random.nextInt(40),
                DIGEST,
                random.nextInt(100),
                random.nextBoolean() ? Optional.empty() : Optional.of("k" + text(random, 10)),
                text(random, 40),
                new Inputs(inputs));
    }

    private static <E> E any(RandomGenerator random, E[] all) {
        return all[random.nextInt(all.length)];
    }

    private static String path(RandomGenerator random) {
        return switch (random.nextInt(4)) {
            case 0 -> "site";
            case 1 -> "site/x" + random.nextInt(9);
            case 2 -> "wiring/chains/c" + random.nextInt(5) + "/y" + random.nextInt(5);
            default -> "fans/f." + random.nextInt(5) + "/at/z" + random.nextInt(5);
        };
    }

    private static String text(RandomGenerator random, int most) {
        String odd = "\"\\'#:-{}[],&*!|>%@`\n\té√ \ud83d\ude00x";
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
    void whatIsWrittenIsReadBack() {
        Seeded.check(
                400,
                random -> {
                    Pass pass = pass(random);
                    PassReading reading = read(PassReading.text(pass));
                    assertThat(reading.problems()).as(PassReading.text(pass)).isEmpty();
                    assertThat(reading.pass()).contains(pass);
                });
    }

    @Test
    void aPassOfAWholeRigIsReadBackAndCanBeRead() {
        Inputs inputs = Inputs.of(TrialExamples.rig("mudlark"));
        Pass pass =
                new Pass(
                        1,
                        CardId.of(CardKind.HOP),
                        LocalDate.of(2026, 3, 14),
                        Pass.Outcome.PASSED,
                        List.of("A. Wader"),
                        10,
                        DIGEST,
                        3,
                        Optional.empty(),
                        "",
                        inputs);
        String text = PassReading.text(pass);
        assertThat(text).hasSizeLessThan(300_000);
        assertThat(text.lines()).contains("  - \"packs/p.4/series = 14\"");
        assertThat(read(text).pass()).contains(pass);
    }

    @Test
    void theOneWrittenByHandIsRead() {
        PassReading reading = read(GOOD);
        assertThat(reading.problems()).isEmpty();
        Pass pass = reading.pass().orElseThrow();
        assertThat(pass.card()).isEqualTo(new CardId(CardKind.POD, "left pod"));
        assertThat(pass.cleanRuns()).isEqualTo(10);
        assertThat(pass.by()).containsExactly("A. Wader", "B. Marsh");
        assertThat(pass.inputs().byPath())
                .containsEntry("packs/p.1/series", "14")
                .containsEntry("packs/p.1/at/down", "0.04 m")
                .containsEntry("site/elevation", "4.0 m")
                .hasSize(3);
    }

    /**
     * @param old text of the good file
     * @param bad what stands there instead
     * @param code of a problem
     * @param line where it is
     */
    record Row(String old, String bad, Code code, int line) {}

    static List<Row> rows() {
        var rows = new ArrayList<Row>();
        rows.add(new Row("liftwright pass: 1\n", "", Code.MISSING_KEY, 2));
        rows.add(new Row("liftwright pass: 1", "liftwright pass: 2", Code.UNSUPPORTED_VERSION, 2));
        rows.add(new Row("liftwright pass: 1", "liftwright pass: one", Code.WRONG_KIND, 2));
        rows.add(new Row("liftwright pass: 1", "liftwright: 1", Code.UNKNOWN_KEY, 2));
        rows.add(new Row("number: 17\n", "", Code.MISSING_KEY, 2));
        rows.add(new Row("number: 17", "number: 0", Code.OUT_OF_RANGE, 3));
        rows.add(new Row("number: 17", "number: 10000", Code.OUT_OF_RANGE, 3));
        rows.add(new Row("number: 17", "number: 1.5", Code.WRONG_KIND, 3));
        rows.add(new Row("number: 17", "number: -1", Code.OUT_OF_RANGE, 3));
        rows.add(new Row("number: 17", "number: [17]", Code.WRONG_KIND, 3));
        rows.add(new Row("number: 17", "number:", Code.WRONG_KIND, 3));
        rows.add(new Row("number: 17", "number: 17\nnumber: 18", Code.DUPLICATE_KEY, 4));
        rows.add(new Row("card: \"pod.left pod\"\n", "", Code.MISSING_KEY, 2));
        rows.add(new Row("\"pod.left pod\"", "\"dance\"", Code.UNKNOWN_WORD, 4));
        rows.add(new Row("\"pod.left pod\"", "\"POD.left pod\"", Code.UNKNOWN_WORD, 4));
        rows.add(new Row("\"pod.left pod\"", "\"hop.\"", Code.UNKNOWN_WORD, 4));
        rows.add(new Row("\"pod.left pod\"", "\"\"", Code.UNKNOWN_WORD, 4));
        rows.add(new Row("\"pod.left pod\"", "pod.left pod", Code.SYNTAX, 4));
        rows.add(new Row("\"pod.left pod\"", "{kind: pod}", Code.WRONG_KIND, 4));
        rows.add(new Row("on: 2026-03-14\n", "", Code.MISSING_KEY, 2));
        rows.add(new Row("2026-03-14", "2026-02-30", Code.NOT_A_QUANTITY, 5));
        rows.add(new Row("2026-03-14", "2026-13-01", Code.NOT_A_QUANTITY, 5));
        rows.add(new Row("2026-03-14", "14.3.2026", Code.NOT_A_QUANTITY, 5));
        rows.add(new Row("2026-03-14", "2026-3-14", Code.NOT_A_QUANTITY, 5));
        rows.add(new Row("2026-03-14", "yesterday", Code.NOT_A_QUANTITY, 5));
        rows.add(new Row("2026-03-14", "+12026-03-14", Code.NOT_A_QUANTITY, 5));
        rows.add(new Row("outcome: passed\n", "", Code.MISSING_KEY, 2));
        rows.add(new Row("outcome: passed", "outcome: fine", Code.UNKNOWN_WORD, 6));
        rows.add(new Row("outcome: passed", "outcome: Passed", Code.UNKNOWN_WORD, 6));
        rows.add(new Row("[\"A. Wader\", \"B. Marsh\"]", "[]", Code.OUT_OF_RANGE, 7));
        rows.add(new Row("[\"A. Wader\", \"B. Marsh\"]", "\"A. Wader\"", Code.WRONG_KIND, 7));
        rows.add(new Row("[\"A. Wader\", \"B. Marsh\"]", "[\" \"]", Code.WRONG_KIND, 7));
        rows.add(new Row("clean runs: 10\n", "", Code.MISSING_KEY, 2));
        rows.add(new Row("clean runs: 10", "clean runs: 0", Code.CONTRADICTION, 8));
        rows.add(new Row("clean runs: 10", "clean runs: ten", Code.WRONG_KIND, 8));
        rows.add(new Row("clean runs: 10", "clean runs: 99999999999", Code.OUT_OF_RANGE, 8));
        rows.add(new Row("rig: \"" + DIGEST + "\"\n", "", Code.MISSING_KEY, 2));
        rows.add(new Row(DIGEST, "sha256:12", Code.NOT_A_QUANTITY, 9));
        rows.add(new Row(DIGEST, DIGEST.replace("abcdef", "ABCDEF"), Code.NOT_A_QUANTITY, 9));
        rows.add(new Row("\"" + DIGEST + "\"", DIGEST, Code.SYNTAX, 9));
        rows.add(new Row("revision: 3", "revision: three", Code.WRONG_KIND, 10));
        rows.add(new Row("kill proof: \"kills of that day\"", "kill proof:", Code.WRONG_KIND, 11));
        rows.add(new Row("note: \"gusty at noon\"", "note: gusty", Code.SYNTAX, 12));
        rows.add(new Row("note: \"gusty at noon\"", "weather: \"gusty\"", Code.UNKNOWN_KEY, 12));
        rows.add(
                new Row(
                        "\"gusty at noon\"",
                        "\"" + "x".repeat(2001) + "\"",
                        Code.OUT_OF_RANGE,
                        12));
        rows.add(new Row(GOOD.substring(GOOD.indexOf("inputs:")), "", Code.MISSING_KEY, 2));
        rows.add(new Row("inputs counted: 3\n", "", Code.MISSING_KEY, 2));
        rows.add(new Row("inputs counted: 3", "inputs counted: 4", Code.CONTRADICTION, 13));
        rows.add(new Row("inputs counted: 3", "inputs counted: 20001", Code.OUT_OF_RANGE, 13));
        rows.add(new Row("inputs:\n", "inputs: {}\nmore:\n", Code.WRONG_KIND, 14));
        rows.add(new Row("inputs:\n", "inputs: none\nmore:\n", Code.WRONG_KIND, 14));
        rows.add(new Row("\"packs/p.1/series = 14\"", "packs/p.1/series = 14", Code.SYNTAX, 15));
        rows.add(
                new Row(
                        "\"packs/p.1/series = 14\"",
                        "\"packs/p.1/series: 14\"",
                        Code.WRONG_KIND,
                        15));
        rows.add(new Row("\"packs/p.1/series = 14\"", "\" = 14\"", Code.WRONG_KIND, 15));
        rows.add(new Row("\"packs/p.1/series = 14\"", "[a]", Code.WRONG_KIND, 15));
        rows.add(
                new Row(
                        "\"packs/p.1/series = 14\"",
                        "\"packs/p.1/at/down = 14\"",
                        Code.DUPLICATE_KEY,
                        16));
        rows.add(
                new Row(
                        "\"packs/p.1/series = 14\"",
                        "&a \"packs/p.1/series = 14\"",
                        Code.NOT_ALLOWED_IN_RIG_FILES,
                        15));
        rows.add(
                new Row(
                        "\"packs/p.1/at/down = 0.04 m\"",
                        "\"packs/p.1/at/down = 0.04 m",
                        Code.SYNTAX,
                        16));
        rows.add(new Row("  - \"site/elevation = 4.0 m\"\n", "", Code.CONTRADICTION, 13));
        rows.add(new Row("revision: 3", "revision: !!int 3", Code.NOT_ALLOWED_IN_RIG_FILES, 10));
        rows.add(
                new Row(
                        "revision: 3",
                        "revision: 3\n---\nrevision: 3",
                        Code.NOT_ALLOWED_IN_RIG_FILES,
                        11));
        return rows;
    }

    @Test
    void thereAreManyWaysToBeWrong() {
        assertThat(rows()).hasSizeGreaterThan(40);
        assertThat(rows()).allMatch(row -> GOOD.contains(row.old()));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void whatIsWrongIsToldAtItsPlaceAndIsNoPass(Row row) {
        PassReading reading = read(GOOD.replace(row.old(), row.bad()));
        assertThat(reading.pass()).isEmpty();
        assertThat(reading.problems())
                .as(row.toString())
                .anyMatch(p -> p.code() == row.code() && p.at().line() == row.line());
        assertThat(reading.problems()).allMatch(p -> p.at().file().equals("0017.yaml"));
    }

    @Test
    void whatIsNoTextIsNoPass() {
        byte[] good = GOOD.getBytes(StandardCharsets.UTF_8);
        byte[] huge = new byte[(1 << 20) + 2];
        Arrays.fill(huge, (byte) ' ');
        assertThat(PassReading.read("x", huge).problems().getFirst().code())
                .isEqualTo(Code.TOO_LARGE);
        assertThat(PassReading.read("x", new byte[0]).problems()).isNotEmpty();
        byte[] binary = good.clone();
        binary[40] = (byte) 0xff;
        assertThat(PassReading.read("x", binary).problems().getFirst().code())
                .isEqualTo(Code.NOT_TEXT);
        binary[40] = 0;
        assertThat(PassReading.read("x", binary).pass()).isEmpty();
        var deep = GOOD + "x: " + "[".repeat(200) + "]".repeat(200) + "\n";
        assertThat(read(deep).pass()).isEmpty();
    }

    @Test
    void aFileCutShortIsNoPass() {
        int end = GOOD.lastIndexOf('"') + 1;
        assertThat(read(GOOD.substring(0, end)).pass()).isPresent();
        for (int cut = 0; cut < end; cut++) {
            assertThat(read(GOOD.substring(0, cut)).pass()).as("cut at " + cut).isEmpty();
        }
    }

    @Test
    void nothingThatIsChangedByChanceIsTakenForAPassWithBothItsTextAndMore() {
        byte[] good = GOOD.getBytes(StandardCharsets.UTF_8);
        int[] refused = {0};
        Seeded.check(
                3000,
                random -> {
                    byte[] bytes = good.clone();
                    for (int i = 1 + random.nextInt(3); i > 0; i--) {
                        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
                    }
                    PassReading reading = PassReading.read("x", bytes);
                    assertThat(reading.pass().isPresent()).isEqualTo(reading.problems().isEmpty());
                    refused[0] += reading.pass().isEmpty() ? 1 : 0;
                });
        assertThat(refused[0]).isGreaterThan(1000);
    }
}
