package liftwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import liftwright.answer.Answer;
import liftwright.answer.AnswerJson;
import liftwright.answer.Fields;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ReaderTextsTest {

    private static final String HOSTILE = "x\u202e\u001b[31m\u200b<script>\"'&";

    @ParameterizedTest
    @EnumSource
    void saysWhatTheReportSays(UnitSystem units) {
        Sample answer = Sample.of(Outcome.CANNOT_BE_TOLD, "left.3");
        String report =
                flat(
                        TextReport.write(
                                answer, "Rig", "rig.yaml", new Look(100, false, false, units)));
        ReaderTexts texts = new ReaderTexts(units);
        List<String> said = new ArrayList<>();
        said.add("cannot be told: " + texts.sentence(answer.verdict().sentence()));
        int number = 0;
        for (Finding finding : answer.findings()) {
            said.add(texts.sentence(finding.sentence()));
            Value judged = finding.value().orElseThrow();
            said.add(texts.value(judged) + " (" + texts.band(judged) + ")");
            said.add(texts.value(finding.limit().orElseThrow().value()) + ", common practice");
            for (Remedy remedy : finding.remedies()) {
                number++;
                said.add(
                        "[%d] %s: %s"
                                .formatted(
                                        number,
                                        texts.sentence(remedy.name()),
                                        texts.effect(remedy, finding.severity())));
            }
        }
        cells(answer).map(texts::value).forEach(said::add);
        assertThat(said).hasSizeGreaterThan(15);
        assertThat(said).allSatisfy(text -> assertThat(report).contains(flat(text)));
    }

    /** Of the tables; a waterfall rounds each step beside the largest. */
    private static Stream<Value> cells(Answer answer) {
        return answer.sections().stream()
                .filter(Section.Table.class::isInstance)
                .map(Section.Table.class::cast)
                .flatMap(table -> table.rows().stream())
                .flatMap(List::stream);
    }

    private static String flat(String text) {
        return text.replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }

    @Test
    void aNameFromAFileActsOnNothing() {
        Answer answer = Sample.of(Outcome.HOLDS, HOSTILE);
        String json = AnswerJson.write(answer, HOSTILE, "0", new ReaderTexts(UnitSystem.SI));
        assertThat(json.chars()).allMatch(c -> c >= ' ' && c != 0x202e && c != 0x200b);
        ReaderTexts texts = new ReaderTexts(UnitSystem.SI);
        List<String> shown = new ArrayList<>();
        shown.add(texts.sentence(answer.verdict().sentence()));
        for (Finding finding : answer.findings()) {
            shown.add(texts.sentence(finding.sentence()));
        }
        cells(answer).map(texts::value).filter(text -> text.contains("x<U+")).forEach(shown::add);
        assertThat(shown).hasSize(6);
        assertThat(shown)
                .allSatisfy(text -> assertThat(text).contains("x<U+202E><U+1B>[31m<U+200B>"))
                .allSatisfy(text -> assertThat(text).doesNotContain("\u202e", "\u001b", "\u200b"));
    }

    @Test
    void anAxisIsShownInTheReadersUnits() {
        var us = new ReaderTexts(UnitSystem.US);
        var lift = us.scale(Fields.of("lift-usable"), 900);
        assertThat(lift.unit()).isEqualTo("lbf");
        assertThat(lift.per()).isCloseTo(1 / 4.4482216152605, within(1e-12));
        assertThat(lift.plus()).isZero();
        var si = new ReaderTexts(UnitSystem.SI);
        assertThat(si.scale(Fields.of("charge-left"), 1).per()).isCloseTo(100, within(1e-12));
        assertThat(si.scale(Fields.of("charge-left"), 1).unit()).isEqualTo("%");
    }
}
