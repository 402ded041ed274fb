package liftwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class WaterfallTextTest {

    @Test
    void barsHangWhereTheSumStands() {
        List<String> bars = rows(Sample.look(100), "rated").map(WaterfallTextTest::bar).toList();
        int full = end(bars.get(1));
        assertThat(bars.get(1)).matches(" +▓+");
        assertThat(start(bars.get(1)))
                .as("added from 1000 of 1100")
                .isCloseTo(at(full, 1000), one());
        assertThat(bars.get(0)).matches("█+");
        assertThat(end(bars.get(0))).isCloseTo(at(full, 1000), one());
        assertThat(bars.get(2)).matches(" +▒+");
        assertThat(start(bars.get(2))).isCloseTo(at(full, 500), one());
        assertThat(end(bars.get(2))).isEqualTo(full);
        assertThat(end(bars.get(4))).isCloseTo(at(full, 500), one());
        assertThat(end(bars.get(5))).isCloseTo(at(full, 400), one());
    }

    @Test
    void whatIsTooSmallToDrawIsDrawnAllTheSame() {
        assertThat(rows(Sample.look(100), "rated").map(WaterfallTextTest::bar).toList().get(3))
                .matches(" *▒");
    }

    /** What reads as nought takes nothing that a bar could show. */
    @Test
    void whatTakesNothingHasNoBar() {
        var whole = Value.of("thrust-rated", 1000);
        var nothing = Value.of("step-density", -3e-5);
        var picture =
                new Section.Waterfall(
                        "lift",
                        "Where the lift goes",
                        new Section.Waterfall.Step("rated", whole, ""),
                        List.of(new Section.Waterfall.Step("air", nothing, "")),
                        new Section.Waterfall.Step("usable", whole, ""),
                        new Section.Waterfall.Step("weight", whole, ""));
        String text = TextReport.sections(List.of(picture), Sample.look(100));
        assertThat(text).contains(" 0 N").doesNotContain("▒").doesNotContain("▓");
    }

    @Test
    void theSignSaysWhatTheBarSays() {
        List<String> rows = rows(Sample.look(100), "rated").toList();
        assertThat(rows.get(1)).contains("+100 N");
        assertThat(rows.get(2)).contains("−600 N");
    }

    @Test
    void asciiTellsTakenFromAdded() {
        List<String> rows = rows(new Look(100, true, false, UnitSystem.SI), "rated").toList();
        assertThat(rows.get(0)).matches(".* N +#+");
        assertThat(rows.get(1)).matches(".* N +\\++");
        assertThat(rows.get(2)).matches(".* N +-+");
    }

    /** Short labels leave room for bars wider than the longest word that is written whole. */
    @Test
    void theLongestBarIsWhole() {
        assertThat(rows(Sample.look(100), "r")).noneMatch(row -> row.contains("characters"));
    }

    @Test
    void withoutRoomForBarsTheNumbersStand() {
        String text =
                TextReport.sections(
                        List.of(Sample.waterfall("a label of some thirty columns", "s", "u", "w")),
                        Sample.look(40));
        assertThat(text)
                .contains("1000 N")
                .contains("+100 N")
                .doesNotContain("█")
                .doesNotContain("\n\n");
    }

    private static java.util.stream.Stream<String> rows(Look look, String start) {
        return TextReport.sections(
                        List.of(Sample.waterfall(start, "air", "usable", "weight")), look)
                .lines()
                .skip(1)
                .limit(6);
    }

    private static String bar(String row) {
        return row.substring(row.indexOf(" N") + 4);
    }

    private static int start(String bar) {
        return bar.length() - bar.stripLeading().length();
    }

    private static int end(String bar) {
        return bar.length();
    }

    private static int at(int full, double si) {
        return (int) Math.round(full * si / 1100);
    }

    private static org.assertj.core.data.Offset<Integer> one() {
        return org.assertj.core.api.Assertions.within(1);
    }
}
