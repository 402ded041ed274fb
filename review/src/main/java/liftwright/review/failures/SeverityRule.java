package liftwright.review.failures;

import java.util.List;
import java.util.Optional;
import liftwright.physics.Gravity;
import liftwright.rig.RiskMatrix.Severity;

/**
 * How an outcome is graded, by the categories of [MIL882E] Table I: I death or lasting total
 * disability, II lasting partial disability or three people in hospital, III a lost day of work, IV
 * less. Its limits in money are left out, since this is about people.
 *
 * @param outcome what happens
 * @param worn whether a person is in the rig rather than beside it
 * @param category what follows; empty where the speed of the landing decides
 * @param reason why
 */
public record SeverityRule(
        FaultOutcome outcome, boolean worn, Optional<Severity> category, String reason) {

    /** Six feet, from where [CFR1926] asks a builder to be held: a fall from there kills, m. */
    static final double GREAT_FALL_M = 1.8288;

    /** A kerb: common practice, m. */
    static final double KERB_M = 0.13;

    private static SeverityRule row(
            FaultOutcome outcome, boolean worn, Severity category, String reason) {
        return new SeverityRule(outcome, worn, Optional.of(category), reason);
    }

    private static SeverityRule bySpeed(FaultOutcome outcome, boolean worn, String reason) {
        return new SeverityRule(outcome, worn, Optional.empty(), reason);
    }

    private static final List<SeverityRule> ROWS =
            List.of(
                    row(
                            FaultOutcome.NO_EFFECT,
                            true,
                            Severity.NEGLIGIBLE,
                            "nobody notices before the next fault"),
                    row(
                            FaultOutcome.NO_EFFECT,
                            false,
                            Severity.NEGLIGIBLE,
                            "nobody notices before the next fault"),
                    row(
                            FaultOutcome.FLIES_ON,
                            true,
                            Severity.NEGLIGIBLE,
                            "it is held and can be landed"),
                    row(
                            FaultOutcome.FLIES_ON,
                            false,
                            Severity.NEGLIGIBLE,
                            "it is held and can be landed"),
                    row(
                            FaultOutcome.TURNS,
                            true,
                            Severity.MARGINAL,
                            "upright and held, but it lands turning: ankles and knees"),
                    row(
                            FaultOutcome.TURNS,
                            false,
                            Severity.MARGINAL,
                            "upright and held, but not where it should be"),
                    bySpeed(FaultOutcome.SINKS, true, "it lands on its feet as fast as it sinks"),
                    bySpeed(
                            FaultOutcome.SINKS,
                            false,
                            "it comes down in its own place as fast as it sinks"),
                    bySpeed(FaultOutcome.FALLS, true, "it lands on its feet as fast as it falls"),
                    bySpeed(
                            FaultOutcome.FALLS,
                            false,
                            "it comes down in its own place as fast as it falls"),
                    row(
                            FaultOutcome.STARTS_BY_ITSELF,
                            true,
                            Severity.CRITICAL,
                            "hands are at the fans when packs are connected"),
                    row(
                            FaultOutcome.STARTS_BY_ITSELF,
                            false,
                            Severity.CRITICAL,
                            "hands are at the fans when packs are connected"),
                    row(
                            FaultOutcome.UNSTEERED,
                            true,
                            Severity.CATASTROPHIC,
                            "a person in fans under power that nobody steers"),
                    row(
                            FaultOutcome.UNSTEERED,
                            false,
                            Severity.CRITICAL,
                            "it goes where it will; people stand outside the keep-out"),
                    row(
                            FaultOutcome.TIPS,
                            true,
                            Severity.CATASTROPHIC,
                            "head down under power, and packs on top: no height is low enough"),
                    row(
                            FaultOutcome.TIPS,
                            false,
                            Severity.CRITICAL,
                            "it comes down somewhere with fans turning; people stand outside the keep-out"),
                    row(
                            FaultOutcome.CLIMBS,
                            true,
                            Severity.CATASTROPHIC,
                            "up past every height that a fall forgives, until something cuts it"),
                    row(
                            FaultOutcome.CLIMBS,
                            false,
                            Severity.CRITICAL,
                            "up and away until something cuts it, then down somewhere"));

    /** The whole mapping, to be printed. */
    public static List<SeverityRule> rows() {
        return ROWS;
    }

    /**
     * Category of an outcome.
     *
     * @param impactMps speed at the ground, m/s, ≥ 0; asked where the rig comes down
     * @param limitMps speed that the limits allow, m/s
     */
    public static Severity of(
            FaultOutcome outcome, boolean worn, double impactMps, double limitMps) {
        for (SeverityRule row : ROWS) {
            if (row.outcome == outcome && row.worn == worn) {
                return row.category.orElseGet(() -> bySpeed(impactMps, limitMps));
            }
        }
        throw new IllegalStateException("every outcome has a row: " + outcome);
    }

    /**
     * Category of a landing: up to a kerb's step negligible, up to the speed that the limits allow
     * marginal, up to a fall of six feet critical.
     */
    static Severity bySpeed(double impactMps, double limitMps) {
        if (impactMps > fallMps(GREAT_FALL_M)) {
            return Severity.CATASTROPHIC;
        }
        if (impactMps > limitMps) {
            return Severity.CRITICAL;
        }
        return impactMps > fallMps(KERB_M) ? Severity.MARGINAL : Severity.NEGLIGIBLE;
    }

    /** Speed of a fall from rest without drag, m/s. */
    static double fallMps(double heightM) {
        return Math.sqrt(2 * Gravity.STANDARD_MPS2 * heightM);
    }
}
