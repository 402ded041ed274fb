package liftwright.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import liftwright.answer.Section;
import liftwright.answer.Section.Plot;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class PlotTest {

    private static final Look LOOK = new Look(100, false, false, UnitSystem.SI);

    private static Plot plot() {
        return new Plot(
                "thrust-over-speed",
                "Thrust over speed",
                "bench-speed",
                "bench-thrust",
                List.of(
                        new Plot.Series(
                                "fit",
                                Plot.Mark.LINE,
                                List.of(new Plot.Point(1000, 10), new Plot.Point(2000, 40))),
                        new Plot.Series(
                                "measured",
                                Plot.Mark.DOT,
                                List.of(
                                        new Plot.Point(1000, 10.5),
                                        new Plot.Point(1500, 22),
                                        new Plot.Point(2000, 39.5))),
                        new Plot.Series(
                                "set aside", Plot.Mark.CROSS, List.of(new Plot.Point(1700, 12)))));
    }

    private static Document parsed(String svg) throws Exception {
        var factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(UTF_8)));
    }

    private static List<String> texts(Document svg) {
        List<String> found = new ArrayList<>();
        NodeList all = svg.getElementsByTagName("text");
        for (int i = 0; i < all.getLength(); i++) {
            found.add(all.item(i).getTextContent());
        }
        return found;
    }

    @Test
    void thePictureNamesItsAxesWithTheirUnits() throws Exception {
        Document svg = parsed(PlotSvg.write("bench.csv", List.of(plot()), UnitSystem.SI));
        assertThat(texts(svg))
                .contains("bench.csv", "speed [rpm]", "thrust [N]", "measured", "set aside");
        assertThat(texts(parsed(PlotSvg.write("bench.csv", List.of(plot()), UnitSystem.US))))
                .contains("thrust [lbf]");
    }

    /** Needs nothing else, and is read in grey: no link, no script, no colour. */
    @Test
    void thePictureIsGreyAndStandsAlone() {
        String svg = PlotSvg.write("bench.csv", List.of(plot(), plot()), UnitSystem.SI);
        assertThat(svg).doesNotContain("href", "<script", "<style", "url(", "@import");
        var colours = Pattern.compile("#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})").matcher(svg);
        int count = 0;
        while (colours.find()) {
            count++;
            assertThat(colours.group(1)).isEqualTo(colours.group(2)).isEqualTo(colours.group(3));
        }
        assertThat(count).isPositive();
    }

    /** A name from a folder acts on nothing. */
    @Test
    void hostileNamesStayWords() throws Exception {
        String name = "<script>alert(1)</script>&\"'\u0007\u202e.csv";
        String svg = PlotSvg.write(name, List.of(plot()), UnitSystem.SI);
        assertThat(svg).doesNotContain("<script", "\u0007", "\u202e");
        assertThat(texts(parsed(svg)).getFirst())
                .isEqualTo("<script>alert(1)</script>&\"'\uFFFD\uFFFD.csv");
    }

    /** Every mark lies inside the frame, and higher thrust stands higher. */
    @Test
    void marksStandWhereTheirNumbersAre() throws Exception {
        Document svg = parsed(PlotSvg.write("t", List.of(plot()), UnitSystem.SI));
        NodeList dots = svg.getElementsByTagName("circle");
        assertThat(dots.getLength()).as("three rows and the legend").isEqualTo(4);
        double[] x = new double[3];
        double[] y = new double[3];
        for (int i = 0; i < 3; i++) {
            Element dot = (Element) dots.item(i + 1);
            x[i] = Double.parseDouble(dot.getAttribute("cx"));
            y[i] = Double.parseDouble(dot.getAttribute("cy"));
            assertThat(x[i]).isBetween(84.0, 696.0);
        }
        assertThat(x[1] - x[0]).isCloseTo(x[2] - x[1], within(0.2));
        assertThat(y[0]).isGreaterThan(y[1]);
        assertThat((y[0] - y[1]) / (y[1] - y[2])).isCloseTo(11.5 / 17.5, within(0.01));
    }

    /** 1000 rad/s is 9549.3 rpm: by hand. Ticks are round in the shown unit. */
    @Test
    void ticksAreRoundInTheShownUnit() {
        PlotFrame frame = PlotFrame.of(plot(), new QuantityFormat(UnitSystem.SI, false));
        assertThat(frame.x().perSi()).isCloseTo(9.5493, within(1e-4));
        List<Double> ticks = frame.x().ticks();
        assertThat(ticks).hasSizeBetween(3, 8);
        for (double tick : ticks) {
            double rpm = tick * 9.549296586;
            assertThat(rpm / 1000).isCloseTo(Math.rint(rpm / 1000), within(1e-6));
            assertThat(tick).isBetween(frame.x().low(), frame.x().high());
        }
    }

    @Test
    void onATerminalRowsStandOnAGrid() {
        String text = TextReport.sections(List.<Section>of(plot()), LOOK);
        assertThat(text.lines()).allMatch(line -> line.length() <= 100);
        assertThat(text.lines().limit(17).mapToInt(l -> count(l, 'o')).sum())
                .as("three rows, and those of the words above")
                .isGreaterThanOrEqualTo(3);
        assertThat(text).contains("thrust [N] over speed [rpm]", "o measured", "x set aside");
        String ascii =
                TextReport.sections(
                        List.<Section>of(plot()), new Look(60, true, false, UnitSystem.SI));
        assertThat(ascii).matches(Pattern.compile("[\\x00-\\x7f]*", Pattern.DOTALL));
        assertThat(ascii.lines()).allMatch(line -> line.length() <= 60);
        assertThat(ascii).doesNotContain("<U+");
    }

    private static int count(String line, char mark) {
        return (int) line.chars().filter(c -> c == mark).count();
    }
}
