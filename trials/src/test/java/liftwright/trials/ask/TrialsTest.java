package liftwright.trials.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.review.Settings;
import liftwright.rig.Change;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.file.RigReading;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.TrialExamples;
import liftwright.trials.TrialsAnswer;
import liftwright.trials.evidence.Inputs;
import liftwright.trials.evidence.Pass;
import liftwright.trials.programme.Programme;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TrialsTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);
    private static final Settings SETTINGS = Settings.standard().withoutRemedies();

    private static Trials untested(Rig rig) {
        return new Trials(TrialsCase.untested(rig, "sha256:0", TODAY), SETTINGS, NotAsked::new);
    }

    /** Passes of these cards, made today on the rig as it is, with all runs that they ask for. */
    private static TrialsCase passed(Rig now, Rig then, List<Planned> cards) {
        List<Pass> passes = new ArrayList<>();
        Inputs inputs = Inputs.of(then);
        for (Planned card : cards) {
            passes.add(
                    new Pass(
                            passes.size() + 1,
                            card.id(),
                            TODAY,
                            Pass.Outcome.PASSED,
                            List.of("A. Builder"),
                            card.repeats(),
                            "sha256:0",
                            then.revision(),
                            Optional.empty(),
                            "",
                            inputs.restingOn(card.basis())));
        }
        return new TrialsCase(
                now,
                "sha256:1",
                passes,
                List.of(),
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                TODAY);
    }

    private static Section.Table table(TrialsAnswer answer, String id) {
        return answer.sections().stream()
                .filter(Section.Table.class::isInstance)
                .map(Section.Table.class::cast)
                .filter(table -> table.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> column(Section.Table table, String field) {
        int at = table.columns().indexOf(field);
        return table.rows().stream().map(row -> words(row.get(at))).toList();
    }

    private static String words(Value value) {
        return value.figure() instanceof Value.Figure.Words(String text) ? text : "";
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void everyCardOfTheProgrammeIsARow(String name) {
        Rig rig = TrialExamples.rig(name);
        Section.Table rows = table(untested(rig).programme(Optional.empty()), "programme");
        assertThat(column(rows, "card"))
                .containsExactlyElementsOf(
                        Programme.of(rig).cards().stream().map(card -> card.id().text()).toList());
        // Nothing is passed, so just those that rest on nothing and lack nothing are open.
        assertThat(column(rows, "card-state")).containsOnly("open", "closed");
        for (Planned card : Programme.of(rig).cards()) {
            int at = column(rows, "card").indexOf(card.id().text());
            if (!card.needs().isEmpty() || card.killProof()) {
                assertThat(column(rows, "card-state").get(at))
                        .as(card.id().text())
                        .isEqualTo("closed");
                assertThat(column(rows, "card-why").get(at)).isNotEmpty();
            }
        }
    }

    @Test
    void whatChangedIsToldFromAndTo() {
        RigReading before = TrialExamples.reading("curlew");
        Rig then = before.rig().orElseThrow();
        var change = new Change.Set(RigPath.parse("packs/p/at/up"), "90 mm");
        Rig now =
                before.with(List.of(change)) instanceof RigReading.Edit.Changed(var reading, var _)
                        ? reading.rig().orElseThrow()
                        : then;
        Set<CardKind> measured = Set.of(CardKind.MASS, CardKind.CENTRE, CardKind.CELLS);
        List<Planned> cards =
                Programme.of(then).cards().stream()
                        .filter(card -> measured.contains(card.id().kind()))
                        .toList();
        TrialsAnswer answer =
                new Trials(passed(now, then, cards), SETTINGS, NotAsked::new)
                        .programme(Optional.empty());
        Section.Table programme = table(answer, "programme");
        Map<String, String> states =
                cards.stream()
                        .map(card -> card.id().text())
                        .collect(
                                Collectors.toMap(
                                        id -> id,
                                        id ->
                                                column(programme, "card-state")
                                                        .get(
                                                                column(programme, "card")
                                                                        .indexOf(id))));
        assertThat(states)
                .containsEntry("mass", "passed")
                .containsEntry("cells.C80", "passed")
                .containsEntry("centre", "voided");
        Section.Table voided = table(answer, "voided");
        assertThat(column(voided, "card")).containsOnly("centre");
        assertThat(column(voided, "input")).isNotEmpty().allMatch(path -> path.contains("p."));
        assertThat(column(voided, "input-was")).anyMatch(text -> text.contains("0.06"));
        assertThat(column(voided, "input-is")).anyMatch(text -> text.contains("0.09"));
    }

    @Test
    void theWayToACardIsAllThatItRestsOnWhereNothingIsProved() {
        Rig rig = TrialExamples.rig("mudlark");
        CardId goal = new CardId(CardKind.FIRST_SPIN, "F140");
        TrialsAnswer answer = untested(rig).programme(Optional.of(goal));
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        assertThat(column(table(answer, "reproof"), "card"))
                .contains("throttle", "kill", "cells.C80")
                .doesNotContain("first-spin.F140", "hop");
    }

    /** With every card passed and every kill aside, what asks the review stays shut without it. */
    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void nothingOpensOverAQuestionThatWasNotAsked(String name) {
        Rig rig = TrialExamples.rig(name);
        List<Planned> cards = Programme.of(rig).cards();
        Trials trials = new Trials(passed(rig, rig, cards), SETTINGS, NotAsked::new);
        for (Planned card : cards) {
            if (!card.questions().isEmpty() || card.killProof()) {
                assertThat(trials.gate(card))
                        .as(card.id().text())
                        .isInstanceOf(liftwright.trials.evidence.Gate.Closed.class);
            }
        }
    }

    @Test
    void aPassThatCannotBeReadShutsEveryCardAndLeavesTheVerdictOpen() {
        Rig rig = TrialExamples.rig("curlew");
        var about =
                new TrialsCase(
                        rig,
                        "sha256:0",
                        List.of(),
                        List.of("0001.yaml:3: no date"),
                        Map.of(),
                        Optional.empty(),
                        Optional.empty(),
                        TODAY);
        TrialsAnswer answer =
                new Trials(about, SETTINGS, NotAsked::new).programme(Optional.empty());
        assertThat(column(table(answer, "programme"), "card-state")).containsOnly("closed");
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.CANNOT_BE_TOLD);
        assertThat(answer.findings()).extracting(f -> f.code()).contains("pass-unread");
    }

    @Test
    void aCardIsPrintedWithTheReasonsThatKeepItClosed() {
        Rig rig = TrialExamples.rig("curlew");
        TrialsAnswer answer =
                untested(rig)
                        .cards(
                                List.of(CardId.of(CardKind.MASS), CardId.of(CardKind.CENTRE)),
                                Work.quiet())
                        .orElseThrow();
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        assertThat(answer.sections()).extracting(Section::id).containsExactly("mass", "centre");
        assertThat(answer.sections().getFirst())
                .isInstanceOfSatisfying(
                        Section.Card.class, card -> assertThat(card.state()).isEqualTo("open"));
        assertThat(answer.findings())
                .singleElement()
                .satisfies(
                        finding -> assertThat(finding.part()).hasValue("centre"),
                        finding -> assertThat(finding.code()).isEqualTo("card-closed"));
    }
}
