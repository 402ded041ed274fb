package liftwright.review.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Fields;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.rig.stand.Stand;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class StandAnswerTest {

    @Test
    void theAnswerAgreesWithItself() {
        Seeded.check(
                40,
                random -> {
                    Stand stand = RandomStands.next(random);
                    StandAnswer answer = StandQuestion.ask(stand, "digest");
                    Section.Table budget = table(answer, "budget");
                    double shares = 0;
                    double squares = 0;
                    double before = 0;
                    for (List<Value> row : budget.rows()) {
                        shares += amount(row.get(3));
                        squares += amount(row.get(2)) * amount(row.get(2));
                        assertThat(amount(row.get(4))).isGreaterThanOrEqualTo(before);
                        before = amount(row.get(4));
                    }
                    assertThat(shares).isCloseTo(1, within(1e-9));
                    List<Value> full = table(answer, "over-thrust").rows().getFirst();
                    double doubtN = amount(full.get(2));
                    // A sum is at most as wide as twice the root of the squares, a fifth less if
                    // one rectangle rules.
                    assertThat(doubtN / (2 * Math.sqrt(squares))).isBetween(0.8, 1.01);
                    assertThat(amount(full.get(3)))
                            .isCloseTo(doubtN / stand.thrustN(), within(1e-12));
                    assertThat(answer.verdict().outcome() == Outcome.HOLDS)
                            .isEqualTo(amount(full.get(3)) <= stand.wantedShare());
                    for (Section section : answer.sections()) {
                        Section.Table one = (Section.Table) section;
                        assertThat(one.columns())
                                .allSatisfy(id -> assertThat(Fields.find(id)).isPresent());
                    }
                });
    }

    @Test
    void moreThanTheCellBearsStops() {
        StandAnswer answer = StandQuestion.ask(rated(StandBudgetTest.byHand(), 199), "digest");
        Finding first = answer.findings().getFirst();
        assertThat(first.severity()).isEqualTo(Severity.STOPS);
        assertThat(first.code()).isEqualTo("cell-overloaded");
        assertThat(StandQuestion.ask(rated(StandBudgetTest.byHand(), 201), "digest").findings())
                .noneMatch(finding -> finding.severity() == Severity.STOPS);
    }

    /** Beyond what the jet's law is good for no verdict may rest on it. */
    @Test
    void aStandThatBlocksTheJetCannotBeTold() {
        assertThat(blocked(0.19).verdict().outcome()).isEqualTo(Outcome.HOLDS);
        StandAnswer answer = blocked(0.21);
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.CANNOT_BE_TOLD);
        assertThat(answer.verdict().downgrades()).isNotEmpty();
    }

    private static StandAnswer blocked(double share) {
        Stand old = StandBudgetTest.byHand();
        return StandQuestion.ask(
                new Stand(
                        old.name(),
                        old.thrustN(),
                        0.9,
                        old.cell(),
                        old.lever(),
                        old.alignment(),
                        Optional.of(new Stand.Jet.Placed(0.01 * share, 0.1, 0.01)),
                        old.clearance(),
                        old.air(),
                        old.repeats(),
                        old.defaults()),
                "digest");
    }

    private static Stand rated(Stand old, double ratingN) {
        Stand.Cell cell = old.cell();
        return new Stand(
                old.name(),
                old.thrustN(),
                old.wantedShare(),
                new Stand.Cell(
                        ratingN,
                        cell.classShare(),
                        cell.creepShare(),
                        cell.perKelvin(),
                        cell.warmingK(),
                        cell.zeroDriftN(),
                        cell.stepN(),
                        cell.calibration()),
                old.lever(),
                old.alignment(),
                old.jet(),
                old.clearance(),
                old.air(),
                old.repeats(),
                old.defaults());
    }

    private static Section.Table table(StandAnswer answer, String id) {
        return answer.sections().stream()
                .filter(section -> section.id().equals(id))
                .map(Section.Table.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static double amount(Value value) {
        return value.figure() instanceof Value.Figure.Amount(var si, var _) ? si : Double.NaN;
    }
}
