package liftwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import liftwright.answer.Evidence;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.UnitSystem;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TextReportTest {

    @ParameterizedTest
    @EnumSource
    void theFirstLineIsTheVerdict(Outcome outcome) {
        assertThat(write(outcome, "left.3", Sample.look(100)))
                .startsWith(outcome.label() + ": usable lift of left.3 is 900 N (887 to 917 N)\n");
    }

    @Test
    void thenFindingsWorstFirstThenPicturesThenWhatItRestsOnThenCautions() {
        String oneLine =
                write(Outcome.DOES_NOT_HOLD, "left.3", Sample.look(100)).replaceAll("\\s+", " ");
        assertThat(oneLine)
                .containsSubsequence(
                        "not met",
                        "What would tell: weigh it (fan types/left.3)",
                        "draw 7 of left.3",
                        "Findings",
                        "STOPS",
                        "WARNS",
                        "NOTE",
                        "Where the lift goes",
                        "Fans",
                        "What this rests on",
                        "charge of left.3",
                        "1024 draws from seed 7",
                        "site/left.3: left.3 (from memory)",
                        "motor of left.3 (book), valid for any speed",
                        "power closes: passed",
                        "not a certificate",
                        "restrained",
                        "two independent kills",
                        "plane of the fans",
                        "Hearing and eye",
                        "fire plan",
                        "licensed practice decide");
    }

    @Test
    void aFindingSaysValueLimitItsOriginPlaceAndCause() {
        assertThat(write(Outcome.DOES_NOT_HOLD, "left.3", Sample.look(100)))
                .containsSubsequence(
                        "something about left.3",
                        "900 N (887 to 917 N)",
                        "limit 950 N",
                        "common practice",
                        "fans/left.3",
                        "because of left.3");
    }

    @Test
    void remediesCountThroughTheAnswerAndSayWhatTheyDo() {
        String text = write(Outcome.DOES_NOT_HOLD, "left.3", Sample.look(100));
        assertThat(text)
                .containsSubsequence("[1]", "carry less: clears", "1.2", "+0.16", "less does not")
                .containsSubsequence("[2]", "add a fan: helps and does not suffice", "1.1")
                .containsSubsequence("[3]", "add a cell: refused", "too fast");
    }

    @Test
    void absenceHasWords() {
        assertThat(write(Outcome.HOLDS, "left.3", Sample.look(100)))
                .containsPattern("left\\.3 +48(\\.0+)? V +never +not computed: left\\.3");
    }

    @Test
    void anAnswerThatHoldsSaysThatAFindingStopsAllTheSame() {
        assertThat(write(Outcome.HOLDS, "left.3", Sample.look(100)).lines().limit(5))
                .anyMatch(line -> line.contains("a finding stops"));
    }

    @Test
    void unitsAreTheReaders() {
        var us = new Look(100, false, false, UnitSystem.US);
        // 900 N / 4.448222 N/lbf (NIST SP 811) = 202.3 lbf
        assertThat(write(Outcome.HOLDS, "left.3", us)).contains("202 lbf").doesNotContain("900 N");
    }

    @Test
    void noAnswerIsCalledFreeOfDanger() {
        for (Outcome outcome : Outcome.values()) {
            assertThat(write(outcome, "left.3", Sample.look(100)).toLowerCase(Locale.ROOT))
                    .doesNotContainPattern("\\bsafe\\b")
                    .doesNotContain("certified");
        }
    }

    /** Everything an answer can carry, about parts of any name, on terminals of any kind. */
    @Test
    void noNameLeavesItsPlace() {
        Seeded.check(
                150,
                random -> {
                    var look =
                            new Look(
                                    40 + random.nextInt(61),
                                    random.nextBoolean(),
                                    false,
                                    UnitSystem.SI);
                    String text = write(Outcome.DOES_NOT_HOLD, DoorTest.text(random), look);
                    assertThat(text.lines())
                            .allMatch(line -> Columns.of(line) <= look.columns())
                            .filteredOn(line -> line.startsWith("met:"))
                            .isEmpty();
                    assertThat(text.codePoints().filter(c -> c < ' ' && c != '\n')).isEmpty();
                    if (look.ascii()) {
                        assertThat(text.codePoints()).allMatch(c -> c < 0x7f);
                    }
                });
    }

    @Test
    void aFailedCheckAndALawOutsideItsRangeShout() {
        var sample = Sample.of(Outcome.CANNOT_BE_TOLD, "left.3");
        var evidence =
                new Evidence(
                        "sha256:0",
                        "none",
                        7,
                        1024,
                        Sentence.start(),
                        List.of(new Evidence.Law("intake", "book", "K up to 0.3", false)),
                        List.of(),
                        List.of(new Evidence.Check("power closes", Double.NaN, 1e-9)));
        var undecided =
                new Sample(sample.verdict(), sample.findings(), sample.sections(), evidence);
        assertThat(TextReport.write(undecided, "", "rig.yaml", Sample.look(100)))
                .contains("OUTSIDE ITS RANGE: intake")
                .contains("power closes: FAILED");
        var holding =
                new Sample(
                        Sample.of(Outcome.HOLDS, "left.3").verdict(),
                        List.of(),
                        List.of(),
                        evidence);
        assertThatThrownBy(() -> TextReport.write(holding, "", "rig.yaml", Sample.look(100)))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void aRowTooWideForColumnsHasLinesOfItsOwn() {
        var table =
                new Section.Table(
                        "fans",
                        "Fans",
                        List.of("part", "fan-voltage", "where", "what"),
                        List.of(
                                List.of(
                                        Value.words("part", "p".repeat(50)),
                                        Value.of("fan-voltage", 48),
                                        Value.words("where", "–"),
                                        Value.words("what", "fan"))));
        assertThat(TextReport.sections(List.of(table), Sample.look(100)))
                .containsPattern("p{50} +48");
        assertThat(TextReport.sections(List.of(table), Sample.look(60)))
                .endsWith(
                        "\n  " + "p".repeat(50) + "\n    fan voltage: 48 V            what: fan\n");
    }

    @Test
    void wordsOfATableTooWideWrapWithinTheirColumn() {
        var table =
                new Section.Table(
                        "fans",
                        "Fans",
                        List.of("part", "what", "fan-voltage"),
                        List.of(
                                List.of(
                                        Value.words("part", "left.1"),
                                        Value.words("what", "one two three four five six"),
                                        Value.of("fan-voltage", 48)),
                                List.of(
                                        Value.words("part", "left.2"),
                                        Value.words("what", "one"),
                                        Value.of("fan-voltage", 49))));
        assertThat(TextReport.sections(List.of(table), Sample.look(40)).lines().skip(1))
                .containsExactly(
                        "  part    what               fan voltage",
                        "  left.1  one two three             48 V",
                        "          four five six",
                        "  left.2  one                       49 V");
    }

    private static String write(Outcome outcome, String part, Look look) {
        return TextReport.write(Sample.of(outcome, part), "Mudlark", "mudlark/rig.yaml", look);
    }
}
