package liftwright.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.quantity.Band;
import liftwright.quantity.UnitSystem;
import liftwright.report.Sample;
import liftwright.report.html.RigScene.Point;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** Pictures measured on the page: bars as long as their numbers, things where they are. */
class PicturesTest {

    private static final Pattern POINT = Pattern.compile("(-?[0-9.]+) (-?[0-9.]+)");

    private static Page page(Section... sections) {
        Sample sample = Sample.of(Outcome.HOLDS, "left.3");
        Sample drawn =
                new Sample(
                        sample.verdict(), sample.findings(), List.of(sections), sample.evidence());
        return Page.of(
                HtmlReport.write(List.of(drawn), "Heron", "heron.yaml", UnitSystem.SI, "0.0.0"));
    }

    private static List<Element> of(Page page, String tag, String... styles) {
        return page.all(tag).stream()
                .filter(element -> List.of(styles).contains(element.getAttribute("class")))
                .toList();
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** Sample: 1000, +100, −600, −1, what is left 499, held against 400. */
    @Test
    void barsOfAWaterfallAreAsLongAsTheirNumbersAndHangWhereTheSumStands() {
        Page page = page(Sample.waterfall("rated", "air", "usable", "weight"));
        List<Element> bars = of(page, "rect", "sum", "taken", "added", "against");
        assertThat(bars).hasSize(6);
        double perN = number(bars.getFirst(), "width") / 1000;
        double[] lengths = {1000, 100, 600, 1, 499, 400};
        double[] starts = {0, 1000, 500, 499, 0, 0};
        double zero = number(bars.getFirst(), "x");
        for (int k = 0; k < bars.size(); k++) {
            double least = 1.5; // a bar too small to see is drawn all the same
            assertThat(number(bars.get(k), "width"))
                    .isCloseTo(Math.max(least, lengths[k] * perN), within(0.11));
            assertThat(number(bars.get(k), "x")).isCloseTo(zero + starts[k] * perN, within(0.11));
        }
        assertThat(bars.stream().map(bar -> bar.getAttribute("class")))
                .containsExactly("sum", "added", "taken", "taken", "sum", "against");
    }

    @Test
    void barsOfALedgerGoToTheirSideOfNothingAndCarryTheirBand() {
        Band band = new Band(-14, -6, 0.95, "sampled", 1024, 0.1);
        Page page =
                page(
                        ledger(
                                List.of("swirl", "cant", "place of the fans", "all of them"),
                                Value.of("yaw-moment", -10, band),
                                Value.of("yaw-moment", 20),
                                Value.of("yaw-moment", 0),
                                Value.of("yaw-moment", 10)));
        List<Element> bars = of(page, "rect", "sum", "taken", "added");
        assertThat(bars).hasSize(3); // what adds nothing is left out
        double zero = 180;
        double perNm = number(bars.get(1), "width") / 20;
        assertThat(number(bars.get(0), "x")).isCloseTo(zero - 10 * perNm, within(0.11));
        assertThat(number(bars.get(1), "x")).isCloseTo(zero, within(0.01));
        assertThat(number(bars.get(2), "width")).isCloseTo(10 * perNm, within(0.11));
        Element whisker = of(page, "line", "whisker").getFirst();
        assertThat(number(whisker, "x1")).isCloseTo(zero - 14 * perNm, within(0.11));
        assertThat(number(whisker, "x2")).isCloseTo(zero - 6 * perNm, within(0.11));
        assertThat(page.text()).contains("turns left").contains("turns right");
    }

    private static Section ledger(List<String> causes, Value... moments) {
        List<List<Value>> rows = new ArrayList<>();
        for (int k = 0; k < moments.length; k++) {
            rows.add(List.of(Value.words("turning-cause", causes.get(k)), moments[k]));
        }
        return new Section.Table(
                "yaw-ledger", "Why it turns", List.of("turning-cause", "yaw-moment"), rows);
    }

    /** Sample: 50 s of 200 s, still warming, never. */
    @Test
    void barsOfATimelineEndWhenTheLimitIsReachedOrAreOpen() {
        Page page = page(Sample.timeline("left.3"));
        List<Element> solid = of(page, "rect", "sum");
        List<Element> open = of(page, "path", "taken");
        assertThat(solid).hasSize(1);
        assertThat(open).hasSize(2);
        assertThat(number(solid.getFirst(), "width")).isCloseTo(638 * 50 / 200.0, within(0.11));
        for (Element bar : open) {
            double most = points(bar).stream().mapToDouble(point -> point[0]).max().orElse(0);
            assertThat(most).as("to the end of what was computed").isCloseTo(639, within(0.11));
        }
        Element whisker = of(page, "line", "whisker").getFirst();
        assertThat(number(whisker, "x1")).isCloseTo(1 + 638 * 37 / 200.0, within(0.11));
        assertThat(number(whisker, "x2")).isCloseTo(1 + 638 * 67 / 200.0, within(0.11));
        assertThat(page.text())
                .contains("left.3, insulation")
                .contains("100 °C of 50 °C; at the lug of left.3")
                .contains("40 °C of 60 °C; still warming")
                .contains("not within 200 s")
                .contains("45 % of 20 %");
    }

    @Test
    void aLargeTimelineSaysWhatItLeavesOut() {
        List<Section.Timeline.Bar> open =
                Collections.nCopies(30, Sample.timeline("w").bars().getLast());
        Page page = page(new Section.Timeline("first-limits", "Firsts", open, 200));
        assertThat(of(page, "path", "taken")).hasSize(10);
        assertThat(page.text()).contains("20 more stand in the table");
        assertThat(page.all("table").getFirst().getElementsByTagName("tr").getLength())
                .isEqualTo(31);
    }

    /** Of any names none lies on another, whatever their length. */
    @Test
    void wordsOfATimelineAndOfSharesLieApart() {
        Seeded.check(
                60,
                random -> {
                    String part = "w".repeat(1 + random.nextInt(120));
                    String what = "m".repeat(1 + random.nextInt(120));
                    var bar = Sample.timeline(part).bars().get(random.nextInt(3));
                    Page page =
                            page(
                                    new Section.Timeline(
                                            "first-limits",
                                            "Firsts",
                                            List.of(
                                                    new Section.Timeline.Bar(
                                                            part,
                                                            what,
                                                            bar.at(),
                                                            bar.hottest(),
                                                            bar.limit(),
                                                            what),
                                                    bar),
                                            1 + 1000 * random.nextDouble()),
                                    Sample.shares(part));
                    for (Element svg : page.all("svg")) {
                        apart(svg);
                    }
                });
    }

    private static void apart(Element svg) {
        List<double[]> boxes = new ArrayList<>();
        var texts = svg.getElementsByTagName("text");
        for (int k = 0; k < texts.getLength(); k++) {
            Element text = (Element) texts.item(k);
            double wide = Canvas.widthOf(Page.text(text));
            double x = number(text, "x");
            double left =
                    switch (text.getAttribute("text-anchor")) {
                        case "start" -> x;
                        case "end" -> x - wide;
                        default -> x - wide / 2;
                    };
            double y = number(text, "y");
            boxes.add(new double[] {left, y - 9, left + wide, y + 2});
        }
        for (int i = 0; i < boxes.size(); i++) {
            double[] a = boxes.get(i);
            assertThat(a[0] > -0.5 && a[2] < number(svg, "width") + 0.5).isTrue();
            for (int j = 0; j < i; j++) {
                double[] b = boxes.get(j);
                assertThat(a[2] <= b[0] || b[2] <= a[0] || a[3] <= b[1] || b[3] <= a[1]).isTrue();
            }
        }
    }

    /** Sample: 3000 and 1000 of 4000, one after the other. */
    @Test
    void sharesLieEndToEndAlongTheWhole() {
        Page page = page(Sample.shares("fans"));
        List<Element> bars = of(page, "rect", "sum", "against");
        assertThat(bars).hasSize(3);
        assertThat(number(bars.get(0), "width")).isCloseTo(418 * 0.75, within(0.11));
        assertThat(number(bars.get(1), "x")).isCloseTo(1 + 418 * 0.75, within(0.11));
        assertThat(number(bars.get(1), "width")).isCloseTo(418 * 0.25, within(0.11));
        assertThat(number(bars.get(2), "width")).isCloseTo(418, within(0.11));
        assertThat(page.text()).contains("3 kW, 75 %").contains("4 kW, 100 %");
    }

    @Test
    void linesOfOnePlotDifferAndDegreesBeginElsewhere() {
        List<Section.Plot.Series> series = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            series.add(
                    new Section.Plot.Series(
                            "wire " + k,
                            Section.Plot.Mark.LINE,
                            List.of(
                                    new Section.Plot.Point(0, 273.15),
                                    new Section.Plot.Point(60, 373.15 - 10 * k))));
        }
        Page page = page(new Section.Plot("t", "Warm", "time", "temperature", series));
        assertThat(page.all("path").stream().map(path -> path.getAttribute("class")))
                .contains("curveline", "curveline line-1", "curveline line-2");
        List<Element> soft = of(page, "text", "soft");
        assertThat(soft.stream().map(Page::text)).contains("temperature [°C]", "0", "100", "60");
        double zero = tick(soft, "0", 46);
        double hundred = tick(soft, "100", 46);
        assertThat(zero - hundred).as("on the axis").isCloseTo(220 / 1.1, within(0.2));
    }

    private static double tick(List<Element> texts, String words, double x) {
        return texts.stream()
                .filter(text -> Page.text(text).equals(words) && number(text, "x") == x)
                .mapToDouble(text -> number(text, "y"))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Sample: one short, one that cannot be told, one that holds, three of which nothing is asked.
     */
    @Test
    void aMatrixMarksEachNumberAndSaysItInAWord() {
        Page page = page(Sample.matrix("left.3"));
        Element table = page.all("table").getFirst();
        assertThat(Page.all(table, "td").stream().map(cell -> cell.getAttribute("class")))
                .containsExactly(
                        "cell-short number",
                        "cell-untold",
                        "cell-told number",
                        "cell-holds number",
                        "cell-told number",
                        "cell-told number");
        assertThat(
                        Page.all(table, "td").stream()
                                .map(cell -> Page.text(cell).replaceAll("\\s+", " ").strip()))
                .containsExactly(
                        "◆ 0.93short",
                        "◐ not computed: it fallscannot be told",
                        "900 N (887 to 917 N)",
                        "✓ 1.08holds",
                        "40 s",
                        "1012 N");
        assertThat(page.text())
                .contains("the same: fuse of left.3, controller of left.3")
                .contains("short of what is asked");
        assertThat(page.all("table")).as("written once").hasSize(1);
    }

    /** Sample: a stand of 1 m by 2 m, 4 m to keep out of, 900 N up and 225 N across. */
    @Test
    void aSideViewIsDrawnToScaleOnTheGround() {
        Page page = page(Sample.elevation("left.3"));
        List<double[]> stand = points(of(page, "path", "made").getFirst());
        double wide = stand.get(1)[0] - stand.get(0)[0];
        double high = stand.get(1)[1] - stand.get(2)[1];
        assertThat(high / wide).isCloseTo(2, within(0.01));
        List<double[]> rope = points(of(page, "path", "dashes").getFirst());
        assertThat(rope.get(1)[0] - rope.get(0)[0]).isCloseTo(wide, within(0.2));
        assertThat(rope.get(1)[1]).as("on the ground").isEqualTo(stand.get(0)[1]);
        List<Element> arrows = of(page, "line", "thrust");
        assertThat(arrows).hasSize(2);
        assertThat(number(arrows.get(0), "x1")).isEqualTo(number(arrows.get(0), "x2"));
        assertThat(number(arrows.get(0), "y2")).isLessThan(number(arrows.get(0), "y1"));
        assertThat(number(arrows.get(1), "x2")).isGreaterThan(number(arrows.get(1), "x1"));
        List<double[]> strip = points(of(page, "path", "taken").getFirst());
        assertThat(strip).as("torn at both ends").hasSize(6);
        assertThat(strip).allMatch(spot -> spot[1] > stand.get(0)[1]);
        assertThat(page.text())
                .contains("lift of left.3: 900 N (887 to 917 N)")
                .contains("torn where it goes on: 4 m from left.3");
        assertThat(page.all("table")).as("loads and places").hasSize(2);
    }

    /**
     * An upright line keeps out of what lies beyond, and what presses down ends where it presses.
     */
    @Test
    void whereNobodyMayStandGoesOnBeyondAnUprightLine() {
        var stand = Sample.elevation("left.3");
        var wall =
                new Section.Elevation.Shape(
                        Section.Elevation.Kind.KEEP_OUT,
                        "nobody beyond",
                        List.of(
                                new Section.Elevation.Spot2(3, 0),
                                new Section.Elevation.Spot2(3, 1)),
                        false);
        var weight =
                new Section.Elevation.Load(
                        "weight",
                        new Section.Elevation.Spot2(0, 0),
                        0,
                        -100,
                        Value.of("lift-usable", 100));
        Page page =
                page(
                        new Section.Elevation(
                                "e", "E", List.of(stand.shapes().get(1), wall), List.of(weight)));
        double wallX = number(of(page, "line", "reach").getFirst(), "x1");
        List<double[]> strip = points(of(page, "path", "taken").getFirst());
        assertThat(strip.stream().mapToDouble(spot -> spot[0]).min().orElse(0))
                .isCloseTo(wallX, within(0.11));
        assertThat(strip.stream().mapToDouble(spot -> spot[0]).max().orElse(0))
                .isCloseTo(640 - 10, within(0.11));
        double ground = number(of(page, "line", "axis").getLast(), "y1");
        double tip = points(of(page, "path", "tip").getFirst()).getFirst()[1];
        assertThat(tip).isCloseTo(ground, within(0.11));
    }

    /** Sample: 2 to 6 m, on an axis from −0.5 to 10.5 m. */
    @Test
    void aZoneIsHatchedBehindTheCurvesAndTold() {
        Page page = page(Sample.heights("left.3"));
        List<Element> zones = of(page, "rect", "zone");
        assertThat(zones).hasSize(2);
        Element drawn = zones.getLast();
        double perM = (420 - 52 - 12) / 11.0;
        assertThat(number(drawn, "x")).isCloseTo(52 + 2.5 * perM, within(0.11));
        assertThat(number(drawn, "width")).isCloseTo(4 * perM, within(0.11));
        assertThat(page.text()).contains("nothing helps left.3, 2.0 to 6.0 m");
    }

    /** Of any names and sizes no two words of a side view lie on each other. */
    @Test
    void wordsOfASideViewLieApart() {
        Seeded.check(
                60,
                random -> {
                    List<Section.Elevation.Shape> shapes = new ArrayList<>();
                    List<Section.Elevation.Load> loads = new ArrayList<>();
                    for (int k = 0; k < 1 + random.nextInt(6); k++) {
                        var from =
                                new Section.Elevation.Spot2(
                                        4 * random.nextDouble() - 2, 3 * random.nextDouble());
                        var to =
                                new Section.Elevation.Spot2(
                                        4 * random.nextDouble() - 2, 3 * random.nextDouble());
                        var kinds = Section.Elevation.Kind.values();
                        shapes.add(
                                new Section.Elevation.Shape(
                                        kinds[random.nextInt(kinds.length)],
                                        "w".repeat(random.nextInt(30)),
                                        List.of(from, to),
                                        false));
                        loads.add(
                                new Section.Elevation.Load(
                                        "pull",
                                        from,
                                        100 * random.nextGaussian(),
                                        100 * random.nextGaussian(),
                                        Value.of("lift-usable", 100)));
                    }
                    Page page = page(new Section.Elevation("e", "A stand", shapes, loads));
                    for (Element svg : page.all("svg")) {
                        if (!svg.getAttribute("class").equals("hatches")) {
                            apart(svg);
                        }
                    }
                });
    }

    /** A list for the workshop is printed across the sheet, and its boxes are drawn. */
    @Test
    void listsHaveBoxesToTick() {
        List<List<Value>> rows =
                Collections.nCopies(
                        3, List.of(Value.words("part", "left.3"), Value.words("done", "[ ]")));
        Page page = page(new Section.Table("soldering", "List", List.of("part", "done"), rows));
        assertThat(of(page, "div", "scroll list")).hasSize(1);
        assertThat(of(page, "td", "tick")).hasSize(3);
        assertThat(of(page, "span", "box")).hasSize(3);
        assertThat(page.text()).doesNotContain("[ ]");
    }

    /** Who stands behind sees right at the right; who stands at the right side, forward there. */
    @ParameterizedTest
    @CsvSource({"BEHIND, 2, 3, -1", "SIDE, 1, 3, 2", "ABOVE, 2, 1, 3"})
    void aViewShowsEachAxisOnItsSide(RigView view, double across, double upward, double near) {
        Point point = new Point(1, 2, 3);
        assertThat(view.across(point)).isEqualTo(across);
        assertThat(view.upward(point)).isEqualTo(upward);
        assertThat(view.near(point)).isEqualTo(near);
    }

    /**
     * A right-hand fan that pushes up turns anticlockwise seen from above, as a right-hand screw
     * that comes towards the eye; its teeth lean that way.
     */
    @ParameterizedTest
    @CsvSource({"right-hand, 1", "left-hand, -1"})
    void theRimIsHatchedTheWayTheFanTurns(String spin, int anticlockwise) {
        Section.Drawing drawing =
                new Section.Drawing(
                        "rig-drawn",
                        "The rig",
                        List.of(
                                Scenes.fans(
                                        List.of(Scenes.fan("a.1", spin, 0, 0, 0, 50, 0, 0, 1)))));
        Page page = page(drawing);
        List<Element> rims = of(page, "path", "righthand", "lefthand");
        assertThat(rims).hasSize(3);
        Element above = rims.get(RigView.values().length - 1);
        List<Element> disks = of(page, "path", "disk");
        double[] middle = middle(points(disks.getLast()));
        List<double[]> teeth = points(above);
        assertThat(teeth).hasSize(40);
        for (int k = 0; k < teeth.size(); k += 2) {
            double[] in = teeth.get(k);
            double[] out = teeth.get(k + 1);
            // Pages count down: the cross product of pages is turned about.
            double turn =
                    (in[0] - middle[0]) * (out[1] - middle[1])
                            - (in[1] - middle[1]) * (out[0] - middle[0]);
            assertThat(Math.signum(-turn)).isEqualTo(anticlockwise);
        }
        String letter = spin.equals("right-hand") ? "1R" : "1L";
        assertThat(page.text()).contains(letter);
    }

    private static List<double[]> points(Element path) {
        List<double[]> points = new ArrayList<>();
        for (MatchResult found : POINT.matcher(path.getAttribute("d")).results().toList()) {
            points.add(
                    new double[] {
                        Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))
                    });
        }
        return points;
    }

    private static double[] middle(List<double[]> points) {
        double x = points.stream().mapToDouble(point -> point[0]).average().orElse(0);
        double y = points.stream().mapToDouble(point -> point[1]).average().orElse(0);
        return new double[] {x, y};
    }

    /** Of any words at any places those that are written lie apart and within the picture. */
    @Test
    void noLabelLiesOnAnother() {
        Seeded.check(
                200,
                random -> {
                    Markup markup = new Markup();
                    markup.own("<!doctype html>\n");
                    markup.element(
                            "body",
                            () -> {
                                Labels labels = new Labels(new Canvas(markup), 360, 300);
                                for (int k = 0; k < 30; k++) {
                                    String words = "w".repeat(1 + random.nextInt(12));
                                    double x = 360 * random.nextDouble();
                                    double y = 300 * random.nextDouble();
                                    if (random.nextBoolean()) {
                                        labels.centred(x, y, words, "name");
                                    } else {
                                        labels.beside(x, y, 8, 8, words);
                                    }
                                }
                            });
                    List<double[]> boxes = new ArrayList<>();
                    for (Element text : Page.of(markup.toString()).all("text")) {
                        double half = Canvas.widthOf(Page.text(text)) / 2;
                        double x = number(text, "x");
                        double y = number(text, "y");
                        boxes.add(new double[] {x - half, y - 11, x + half, y + 3});
                    }
                    assertThat(boxes).isNotEmpty();
                    for (int i = 0; i < boxes.size(); i++) {
                        double[] a = boxes.get(i);
                        assertThat(a[0] >= -0.1 && a[1] >= -0.1 && a[2] <= 360.1 && a[3] <= 300.1)
                                .isTrue();
                        for (int j = 0; j < i; j++) {
                            double[] b = boxes.get(j);
                            boolean apart =
                                    a[2] <= b[0] + 0.1
                                            || b[2] <= a[0] + 0.1
                                            || a[3] <= b[1] + 0.1
                                            || b[3] <= a[1] + 0.1;
                            assertThat(apart).isTrue();
                        }
                    }
                });
    }
}
