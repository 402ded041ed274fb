package liftwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.quantity.UnitSystem;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class TimelineTextTest {

    private static List<String> lines(Section section, int columns, boolean ascii) {
        Look look = new Look(columns, ascii, false, UnitSystem.SI);
        return TextReport.sections(List.of(section), look).lines().toList();
    }

    @Test
    void aBarIsAsLongAsItsTime() {
        List<String> lines = lines(Sample.timeline("left.3"), 100, false);
        int start = lines.get(1).indexOf('█');
        long solid = lines.get(1).chars().filter(c -> c == '█').count();
        int room = lines.get(3).indexOf('>') + 1 - start;
        assertThat(lines.get(1)).startsWith("  left.3, insulation").contains("50 s");
        assertThat(solid).isEqualTo(Math.round(room * 50 / 200.0));
        assertThat(lines.get(2)).contains("not within 200 s").endsWith("▒>");
        assertThat(lines).contains("  still warming: back.1, left.3");
        assertThat(lines.get(3)).contains("not within 200 s").endsWith("▒>");
        assertThat(lines.get(4)).containsPattern("0 s +200 s$");
        assertThat(lines.getLast()).isEqualTo("  A bar that ends in > comes to no limit.");
    }

    @Test
    void withoutUtf8ItSaysTheSame() {
        String text = String.join("\n", lines(Sample.timeline("left.3"), 100, true));
        assertThat(text.chars()).allMatch(c -> c < 0x7f);
        assertThat(text).contains("####").contains("--->").contains("not within 200 s");
    }

    @Test
    void whereBarsHaveNoRoomBesideOnlyThoseThatEndAreDrawn() {
        for (boolean ascii : new boolean[] {false, true}) {
            List<String> lines = lines(Sample.timeline("left.3"), 48, ascii);
            assertThat(lines).noneMatch(line -> line.contains("▒") || line.endsWith(">"));
            assertThat(lines.stream().filter(line -> line.strip().matches("[█#]+"))).hasSize(1);
            assertThat(lines.stream().filter(line -> line.contains("not within 200 s"))).hasSize(2);
            assertThat(lines.getLast()).isEqualTo("  A row without a bar comes to no limit.");
        }
    }

    @Test
    void noLineIsWiderThanTheTerminalAndNothingIsLost() {
        Seeded.check(
                200,
                random -> {
                    int columns = 40 + random.nextInt(61);
                    var bars = new ArrayList<Section.Timeline.Bar>();
                    for (int k = 0; k < 1 + random.nextInt(8); k++) {
                        bars.add(
                                new Section.Timeline.Bar(
                                        "p".repeat(1 + random.nextInt(30)) + k,
                                        "w".repeat(1 + random.nextInt(30)),
                                        Value.of("time-to-limit", 300 * random.nextDouble()),
                                        Value.of("temperature", 300 + 100 * random.nextDouble()),
                                        Value.of("temperature", 363.15),
                                        ""));
                    }
                    List<String> lines =
                            lines(
                                    new Section.Timeline("t", "T", bars, 200),
                                    columns,
                                    random.nextBoolean());
                    assertThat(lines).allMatch(line -> line.length() <= columns);
                    assertThat(lines.stream().filter(line -> line.matches(".*[█#].*")))
                            .hasSize(bars.size());
                    String all = String.join(" ", lines).replaceAll(" +", " ");
                    for (Section.Timeline.Bar bar : bars) {
                        assertThat(all).contains(bar.part().substring(0, 1));
                    }
                });
    }

    @Test
    void sharesAreATableWithPerCent() {
        List<String> lines = lines(Sample.shares("fans"), 80, true);
        assertThat(lines.get(2)).containsPattern("fans +3 kW +75 %");
        assertThat(lines.get(4)).containsPattern("together +4 kW +100 %");
    }

    @Test
    void whatMovesPrintsNothing() {
        assertThat(lines(Sample.playback("left.3"), 80, true)).isEmpty();
    }

    @Test
    void severalLinesOfAPlotHaveALetterEach() {
        List<Section.Plot.Series> series = new ArrayList<>();
        for (int k = 0; k < 2; k++) {
            series.add(
                    new Section.Plot.Series(
                            "wire " + k,
                            Section.Plot.Mark.LINE,
                            List.of(
                                    new Section.Plot.Point(0, 273.15),
                                    new Section.Plot.Point(60, 373.15 - 50 * k))));
        }
        List<String> lines =
                lines(new Section.Plot("t", "Warm", "time", "temperature", series), 80, false);
        assertThat(lines.getLast()).contains("a wire 0, b wire 1");
        assertThat(lines.get(1)).contains("temperature [°C] over time [s]");
        assertThat(lines.get(2)).as("the top of the axis, in degrees").contains("105 │");
    }
}
