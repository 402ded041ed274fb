package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import liftwright.answer.Checks;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;

/** Whole answers about stand and tether of the invented rig Mudlark. */
class RestraintQuestionTest {

    private static final Settings QUICK = new Settings(20260101L, 256, 256, 1, true);

    static Rig mudlark(String restraint) {
        try {
            String text =
                    Files.readString(Path.of("..", "examples", "mudlark", "rig.yaml"))
                            .replaceAll("(?s)\nrestraint:.*?(?=\n\\S|\\z)", "");
            return RigReading.read("rig.yaml", (text + restraint).getBytes(StandardCharsets.UTF_8))
                    .rig()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RestraintAnswer ask(String restraint, boolean remedies) {
        return RestraintQuestion.ask(
                        mudlark(restraint),
                        "digest",
                        remedies ? QUICK : QUICK.withoutRemedies(),
                        Work.quiet())
                .orElseThrow();
    }

    private static final String STAND =
            "\nrestraint:\n  stand: {height: 1.2 m, mass: 80 kg ± 2 kg, feet apart: 1.4 m}\n";

    private static final String TETHER =
            """

            restraint:
              tether: {anchor height: 4 m, length: 2 m, anchor strength: 25 kN, line strength: 22 kN}
              room: {ceiling: 5 m, beam: 4.2 m}
            """;

    @Test
    void theAnswerAgreesWithItself() {
        RestraintAnswer answer = ask(STAND, false);
        Checks.requireHonest(answer);
        assertThat(answer.question()).isEqualTo("restraint");
        Section.Table table = standLoads(answer);
        double least = Double.POSITIVE_INFINITY;
        for (List<Value> row : table.rows()) {
            double load = si(row.get(2));
            double margin = si(row.get(5));
            assertThat(margin).isCloseTo(si(row.get(3)) / load / si(row.get(4)) - 1, within(1e-9));
            assertThat(row.get(5).band().orElseThrow().low()).isLessThanOrEqualTo(margin + 0.05);
            least = Math.min(least, margin);
        }
        Finding verdict =
                answer.findings().stream()
                        .filter(one -> one.code().startsWith("restraint-"))
                        .findFirst()
                        .orElseThrow();
        assertThat(si(verdict.value().orElseThrow())).isCloseTo(least, within(1e-12));
        assertThat(answer.sections()).extracting(Section::id).contains("restraint-elevation");
    }

    private static Section.Table standLoads(RestraintAnswer answer) {
        return answer.sections().stream()
                .filter(Section.Table.class::isInstance)
                .map(Section.Table.class::cast)
                .filter(one -> one.id().equals("stand-loads"))
                .findFirst()
                .orElseThrow();
    }

    /** What is hardly loaded has a margin of millions of percent, which tells a builder nothing. */
    @Test
    void aMarginFarBeyondUseIsToldInWords() {
        RestraintAnswer answer = ask(STAND.replace("80 kg ± 2 kg", "90000 kg ± 2 kg"), false);
        List<List<Value>> rows = standLoads(answer).rows();
        assertThat(rows).isNotEmpty();
        for (List<Value> row : rows) {
            assertThat(si(row.get(3)) / si(row.get(2)) / si(row.get(4)) - 1).isGreaterThan(10);
            assertThat(row.get(5)).isEqualTo(Value.words("restraint-margin", "more than 10 times"));
        }
    }

    private static double si(Value value) {
        return value.figure() instanceof Value.Figure.Amount(double si, var _) ? si : -9;
    }

    @Test
    void aRemedyThatClearsHoldsWhenItIsAskedAnew() {
        RestraintAnswer answer = ask(STAND, true);
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        List<Remedy> clears =
                answer.remedies().stream()
                        .filter(one -> one.effect() instanceof Remedy.Effect.Clears)
                        .toList();
        assertThat(clears).isNotEmpty();
        for (Remedy remedy : clears) {
            Rig mended = Revised.with(mudlark(STAND), remedy.changes()).orElseThrow();
            assertThat(
                            RestraintQuestion.ask(
                                            mended, "d", QUICK.withoutRemedies(), Work.quiet())
                                    .orElseThrow()
                                    .verdict()
                                    .outcome())
                    .isEqualTo(Outcome.HOLDS);
        }
    }

    @Test
    void anUpwardRunawayUnderAnOverheadTetherReportsTheStrike() {
        RestraintAnswer answer = ask(TETHER, false);
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        Finding strike = finding(answer, "upward-strike");
        // 0.65 m of hang, 1.68 m tall: less than 2 m to go at T/W of 1.7, so 4 to 6 m/s.
        assertThat(si(strike.value().orElseThrow())).isBetween(3.0, 7.0);
        assertThat(answer.findings()).extracting(Finding::code).contains("no-down-lines");
        RestraintAnswer held =
                ask(
                        TETHER.replace(
                                "line strength: 22 kN}",
                                "line strength: 22 kN, down-lines: 4, down-line length: 2.1 m,"
                                        + " down-line strength: 9 kN}"),
                        false);
        assertThat(held.findings())
                .extracting(Finding::code)
                .doesNotContain("upward-strike", "no-down-lines");
    }

    private static Finding finding(RestraintAnswer answer, String code) {
        return answer.findings().stream()
                .filter(one -> one.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void nothingDeclaredCannotBeToldAndSaysWhatToDeclare() {
        RestraintAnswer answer = ask("", false);
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.CANNOT_BE_TOLD);
        assertThat(answer.verdict().wouldTell().orElseThrow().path()).isEqualTo("restraint");
        Checks.requireHonest(answer);
    }

    @Test
    void aStrengthThatIsNotDeclaredIsAskedFor() {
        RestraintAnswer answer =
                ask(
                        TETHER.replace(", anchor strength: 25 kN", "")
                                .replace("line strength: 22 kN", "harness point: 1.4 m"),
                        false);
        assertThat(answer.findings())
                .filteredOn(one -> one.code().equals("not-declared"))
                .extracting(one -> one.path().orElse(""))
                .containsExactlyInAnyOrder(
                        "restraint/tether/anchor strength", "restraint/tether/line strength");
        assertThat(answer.verdict().outcome()).isNotEqualTo(Outcome.HOLDS);
    }
}
