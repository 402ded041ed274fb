package liftwright.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Section.Matrix;
import liftwright.answer.Section.Matrix.Standing;
import liftwright.answer.Value;
import liftwright.quantity.UnitSystem;
import liftwright.report.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** What a sheet keeps for the screen: lines of long tables that hold and tell nothing more. */
class OffPaperTest {

    private static Page sheet(Section section) {
        Sample sample = Sample.of(Outcome.DOES_NOT_HOLD, "left.3");
        var answer =
                new Sample(
                        sample.verdict(), sample.findings(), List.of(section), sample.evidence());
        return Page.of(
                HtmlReport.write(List.of(answer), "Heron", "heron.yaml", UnitSystem.SI, "0.0.0"));
    }

    private static Matrix matrix(Standing... standings) {
        List<Matrix.Line> lines = new ArrayList<>();
        for (int k = 0; k < standings.length; k++) {
            lines.add(
                    new Matrix.Line(
                            "left." + (k + 1),
                            "the fan stops",
                            List.of(),
                            List.of(
                                    new Matrix.Cell(Value.of("fault-margin", k), Standing.TOLD),
                                    new Matrix.Cell(Value.of("fault-lift", k), standings[k]))));
        }
        return new Matrix("failures", "What fails", List.of("fault-margin", "fault-lift"), lines);
    }

    private static List<String> offPaper(Page page) {
        return page.all("tr").stream()
                .filter(row -> row.getAttribute("class").equals("offpaper"))
                .map(row -> Page.text(Page.all(row, "th").getFirst()))
                .toList();
    }

    private static List<String> notes(Page page) {
        return page.all("p").stream()
                .filter(line -> line.getAttribute("class").contains("onpaper"))
                .map(Page::text)
                .toList();
    }

    @Test
    void ofALongMatrixWhatHoldsStaysInTheSheetAndOffPaper() {
        Standing[] standings = new Standing[15];
        Arrays.fill(standings, Standing.HOLDS);
        standings[0] = Standing.SHORT;
        standings[1] = Standing.UNTOLD;

        Page page = sheet(matrix(standings));

        assertThat(page.all("tbody").getFirst().getElementsByTagName("tr").getLength())
                .isEqualTo(15);
        assertThat(offPaper(page))
                .hasSize(13)
                .doesNotContain("left.1, the fan stops", "left.2, the fan stops")
                .contains("left.3, the fan stops", "left.15, the fan stops");
        assertThat(notes(page)).hasSize(1);
        assertThat(notes(page).getFirst())
                .startsWith("Not printed: 13 of 15 lines")
                .contains("--json");
    }

    @Test
    void aShortMatrixIsPrintedWhole() {
        Page page = sheet(matrix(Standing.HOLDS, Standing.HOLDS, Standing.SHORT));

        assertThat(offPaper(page)).isEmpty();
        assertThat(notes(page)).isEmpty();
    }

    private static List<Value> risk(int number, String severity, Value risk) {
        return List.of(
                Value.words("fails", "left." + number),
                Value.words("fault-severity", severity),
                risk);
    }

    @ParameterizedTest
    @CsvSource({
        "IV negligible, low, true",
        "IV negligible, medium, false",
        "III marginal, low, false",
        "IV negligible, , true",
        "II critical, , false"
    })
    void aRiskIsPrintedUnlessItIsLow(String severity, String risk, boolean off) {
        Value found =
                risk == null
                        ? new Value("fault-risk", new Value.Figure.NotComputed("no rate"))
                        : Value.words("fault-risk", risk);
        List<List<Value>> rows =
                IntStream.rangeClosed(1, 13).mapToObj(k -> risk(k, severity, found)).toList();

        Page page =
                sheet(
                        new Section.Table(
                                "failure-risks",
                                "Risks",
                                List.of("fails", "fault-severity", "fault-risk"),
                                rows));

        assertThat(offPaper(page)).hasSize(off ? 13 : 0);
    }

    @Test
    void whatGoesNextIsPrintedWhereSomethingDoes() {
        List<List<Value>> rows = new ArrayList<>();
        for (int k = 1; k <= 13; k++) {
            rows.add(
                    List.of(
                            Value.words("fails", "left." + k),
                            k == 5
                                    ? Value.of("goes-next-after", 12)
                                    : new Value("goes-next-after", new Value.Figure.Never())));
        }

        Page page =
                sheet(
                        new Section.Table(
                                "goes-next",
                                "What goes next",
                                List.of("fails", "goes-next-after"),
                                rows));

        assertThat(offPaper(page)).hasSize(12).doesNotContain("left.5");
    }

    /** Nothing of another table is left out, whatever it says. */
    @Test
    void otherTablesArePrintedWhole() {
        List<List<Value>> rows = new ArrayList<>();
        for (int k = 1; k <= 20; k++) {
            rows.add(risk(k, "IV negligible", Value.words("fault-risk", "low")));
        }

        Page page =
                sheet(
                        new Section.Table(
                                "single-points",
                                "Single points",
                                List.of("fails", "fault-severity", "fault-risk"),
                                rows));

        assertThat(page.all("tbody").getFirst().getElementsByTagName("tr").getLength())
                .isEqualTo(20);
        assertThat(offPaper(page)).isEmpty();
    }

    @Test
    void elementsAreHiddenByTheStyleOnOneOfTheTwoAlone() {
        String style =
                sheet(matrix(Standing.SHORT)).all("style").stream()
                        .map(Element::getTextContent)
                        .reduce("", String::concat);
        int print = style.indexOf("@media print");
        assertThat(style.substring(print)).contains(".offpaper { display: none; }");
        assertThat(style.substring(0, print))
                .contains("@media screen { .onpaper { display: none; } }")
                .doesNotContain(".offpaper");
    }
}
