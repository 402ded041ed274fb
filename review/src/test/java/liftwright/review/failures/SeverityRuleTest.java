package liftwright.review.failures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Rates;
import liftwright.rig.Rates.PartKind;
import liftwright.rig.RiskMatrix;
import liftwright.rig.RiskMatrix.Likelihood;
import liftwright.rig.RiskMatrix.Severity;
import org.junit.jupiter.api.Test;

/**
 * Categories, levels and the default matrix against MIL-STD-882E (2012), Table I, appendix A and
 * Table III as read second-hand; copies of Table III disagree, and E–III is medium in the one
 * followed.
 */
class SeverityRuleTest {

    @Test
    void everyOutcomeHasOneRowWornAndUnworn() {
        Set<List<Object>> met = new HashSet<>();
        SeverityRule.rows().forEach(row -> met.add(List.of(row.outcome(), row.worn())));
        assertThat(met).hasSize(2 * FaultOutcome.values().length);
        assertThat(SeverityRule.rows()).hasSize(met.size());
    }

    /** Nobody who is not in the rig is hurt worse than who is. */
    @Test
    void wearersAreHurtNoLessThanThoseBeside() {
        for (FaultOutcome outcome : FaultOutcome.values()) {
            for (double mps : new double[] {0, 1, 2, 3, 4, 7, 20}) {
                assertThat(SeverityRule.of(outcome, true, mps, 3.2))
                        .isLessThanOrEqualTo(SeverityRule.of(outcome, false, mps, 3.2));
            }
        }
    }

    /** A kerb is 1.60 m/s, half a metre 3.13, six feet 5.99. */
    @Test
    void landingsAreGradedBySpeed() {
        assertThat(SeverityRule.of(FaultOutcome.SINKS, true, 1.55, 3.2))
                .isEqualTo(Severity.NEGLIGIBLE);
        assertThat(SeverityRule.of(FaultOutcome.FALLS, true, 1.65, 3.2))
                .isEqualTo(Severity.MARGINAL);
        assertThat(SeverityRule.of(FaultOutcome.FALLS, true, 3.3, 3.2))
                .isEqualTo(Severity.CRITICAL);
        assertThat(SeverityRule.of(FaultOutcome.FALLS, true, 5.95, 3.2))
                .isEqualTo(Severity.CRITICAL);
        assertThat(SeverityRule.of(FaultOutcome.FALLS, true, 6.03, 3.2))
                .isEqualTo(Severity.CATASTROPHIC);
        // A limit beyond six feet moves no border of the standard.
        assertThat(SeverityRule.of(FaultOutcome.FALLS, true, 6.03, 9))
                .isEqualTo(Severity.CATASTROPHIC);
    }

    @Test
    void theUsualMatrixIsThatOfTheStandard() {
        Map<Likelihood, String> rows = new EnumMap<>(Likelihood.class);
        rows.put(Likelihood.FREQUENT, "high high serious medium");
        rows.put(Likelihood.PROBABLE, "high high serious medium");
        rows.put(Likelihood.OCCASIONAL, "high serious medium low");
        rows.put(Likelihood.REMOTE, "serious medium medium low");
        rows.put(Likelihood.IMPROBABLE, "medium medium medium low");
        rows.forEach(
                (level, words) -> {
                    String[] word = words.split(" ", -1);
                    Severity[] worstFirst = Severity.values();
                    for (int k = 0; k < worstFirst.length; k++) {
                        assertThat(RiskMatrix.USUAL.risk(worstFirst[k], level)).isEqualTo(word[k]);
                    }
                });
    }

    /** Appendix A: A from 1e-1, B from 1e-2, C from 1e-3, D from 1e-6, E below. */
    @Test
    void chancesHaveTheLevelsOfTheAppendix() {
        assertThat(level(2.0)).isEqualTo(Likelihood.FREQUENT);
        assertThat(level(0.05)).isEqualTo(Likelihood.PROBABLE);
        assertThat(level(5e-3)).isEqualTo(Likelihood.OCCASIONAL);
        assertThat(level(5e-5)).isEqualTo(Likelihood.REMOTE);
        assertThat(level(5e-8)).isEqualTo(Likelihood.IMPROBABLE);
    }

    private static Likelihood level(double perHour) {
        return exposure(perHour).likelihood(List.of(PartKind.FAN)).orElseThrow();
    }

    private static Exposure exposure(double perHour) {
        return new Exposure(
                new Rates(
                        Map.of(
                                PartKind.FAN,
                                Quantity.exact(perHour / 3600, new Dimension(0, 0, -1, 0, 0, 0))),
                        Quantity.exact(3600, new Dimension(0, 0, 1, 0, 0, 0))),
                RiskMatrix.USUAL);
    }

    @Test
    void ratesAddUpAndAnUndeclaredOneTellsNothing() {
        Exposure exposure = exposure(1e-3);
        assertThat(exposure.chance(List.of(PartKind.FAN, PartKind.FAN)).orElseThrow())
                .isCloseTo(1 - Math.exp(-2e-3), within(1e-15));
        assertThat(exposure.chance(List.of(PartKind.FAN, PartKind.FUSE))).isEmpty();
        assertThat(exposure.risk(Severity.CATASTROPHIC, List.of())).isEmpty();
        assertThat(exposure.risk(Severity.CATASTROPHIC, List.of(PartKind.FAN))).contains("serious");
    }
}
