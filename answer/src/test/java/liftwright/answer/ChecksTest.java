package liftwright.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every way in which an answer's own evidence makes its verdict lesser. */
class ChecksTest {

    /** The whole list; a new doubt is added here. */
    static Stream<Evidence> everyDoubt() {
        return Stream.of(
                checks(new Evidence.Check("power closes", 2e-9, 1e-9)),
                checks(new Evidence.Check("ledger sums", Double.NaN, 1e-12)),
                checks(new Evidence.Check("draws that failed", Double.POSITIVE_INFINITY, 0)),
                laws(new Evidence.Law("intake", "handbook", "K up to 0.3", false)));
    }

    @ParameterizedTest
    @MethodSource("everyDoubt")
    void holdsBecomesCannotBeToldAndSaysWhy(Evidence evidence) {
        Verdict verdict = Checks.downgrade(verdict(Outcome.HOLDS), evidence);
        assertThat(verdict.outcome()).isEqualTo(Outcome.CANNOT_BE_TOLD);
        assertThat(verdict.downgrades()).hasSize(1);
        assertThat(verdict.sentence().toString())
                .contains(verdict.downgrades().getFirst())
                .contains("it lifts");
    }

    /** A law left takes only "holds"; a check that failed leaves nothing to rely on. */
    @ParameterizedTest
    @MethodSource("everyDoubt")
    void nothingEverBecomesBetter(Evidence evidence) {
        boolean lawOnly = evidence.checks().isEmpty();
        Verdict missed = Checks.downgrade(verdict(Outcome.DOES_NOT_HOLD), evidence);
        assertThat(missed.outcome())
                .isEqualTo(lawOnly ? Outcome.DOES_NOT_HOLD : Outcome.CANNOT_BE_TOLD);
        assertThat(missed.downgrades()).hasSize(1);
        Verdict open = Checks.downgrade(verdict(Outcome.CANNOT_BE_TOLD), evidence);
        assertThat(open.outcome()).isEqualTo(Outcome.CANNOT_BE_TOLD);
        assertThat(open.downgrades()).hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("everyDoubt")
    void aDoubtIsSaidOnce(Evidence evidence) {
        Verdict once = Checks.downgrade(verdict(Outcome.HOLDS), evidence);
        assertThat(Checks.downgrade(once, evidence)).isEqualTo(once);
    }

    @Test
    void withoutDoubtTheVerdictStays() {
        Verdict verdict = verdict(Outcome.HOLDS);
        assertThat(Checks.downgrade(verdict, checks(SampleAnswer.PASSED))).isSameAs(verdict);
        assertThat(Checks.downgrade(verdict, checks(new Evidence.Check("at", 1e-9, 1e-9))))
                .isSameAs(verdict);
    }

    @Test
    void noAnswerLeavesThatClaimsMoreThanItsEvidence() {
        var failed = new Evidence.Check("power closes", 1, 1e-9);
        for (Outcome tooMuch : List.of(Outcome.HOLDS, Outcome.DOES_NOT_HOLD)) {
            var answer = SampleAnswer.of(tooMuch, "left.3", failed);
            assertThatThrownBy(() -> AnswerJson.write(answer, "", "0"))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("power closes");
        }
        var honest = SampleAnswer.of(Outcome.CANNOT_BE_TOLD, "left.3", failed);
        assertThat(AnswerJson.write(honest, "", "0")).contains("cannot be told");
    }

    private static Verdict verdict(Outcome outcome) {
        return new Verdict(outcome, Sentence.words("it lifts"), Optional.empty(), List.of());
    }

    private static Evidence checks(Evidence.Check... checks) {
        return new Evidence(
                "d", "none", 0, 0, Sentence.start(), List.of(), List.of(), List.of(checks));
    }

    private static Evidence laws(Evidence.Law... laws) {
        return new Evidence(
                "d", "none", 0, 0, Sentence.start(), List.of(laws), List.of(), List.of());
    }
}
