package liftwright.report.html;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import liftwright.answer.Answer;
import liftwright.answer.Cautions;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.quantity.UnitSystem;
import liftwright.report.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;

/** The sheet of HTML, read back by a parser that forgives nothing. */
class HtmlReportTest {

    private static String sheet(Answer... answers) {
        return HtmlReport.write(List.of(answers), "Heron", "heron.yaml", UnitSystem.SI, "0.0.0");
    }

    /** A sample with a picture of each kind. */
    static Sample drawn(String part) {
        Sample sample = Sample.of(Outcome.DOES_NOT_HOLD, part);
        List<Section> sections = new ArrayList<>(sample.sections());
        sections.add(
                new Section.Table(
                        "yaw-ledger",
                        "Why it turns",
                        List.of("turning-cause", "yaw-moment"),
                        List.of(
                                List.of(
                                        Value.words("turning-cause", part),
                                        Value.of("yaw-moment", -12)),
                                List.of(
                                        Value.words("turning-cause", "all of them"),
                                        Value.of("yaw-moment", -12)))));
        sections.add(
                new Section.Plot(
                        "charge-over-time",
                        "Charge of " + part,
                        "time",
                        "charge-left",
                        List.of(
                                new Section.Plot.Series(
                                        part,
                                        Section.Plot.Mark.LINE,
                                        List.of(
                                                new Section.Plot.Point(0, 1),
                                                new Section.Plot.Point(60, 0.5))))));
        sections.add(Scenes.drawing(part));
        return new Sample(sample.verdict(), sample.findings(), sections, sample.evidence());
    }

    @Test
    void verdictsComeFirstAndCautionsLast() {
        Page page = Page.of(sheet(drawn("left.3")));
        List<String> heads = new ArrayList<>();
        for (Element element : page.all("*")) {
            if (element.getTagName().matches("h[1-6]")) {
                heads.add(element.getTagName() + " " + Page.text(element));
            }
        }
        assertThat(heads)
                .containsExactly(
                        "h1 Heron",
                        "h2 Will it lift?",
                        "h3 Findings",
                        "h3 Pictures",
                        "h3 Numbers",
                        "h3 What this rests on",
                        "h2 Before power is applied");
        assertThat(page.text())
                .containsSubsequence(
                        "not a certificate",
                        "not met",
                        "Will it lift?",
                        "not met: usable lift of left.3 is 900 N (887 to 917 N)",
                        "What would tell: weigh it (fan types/left.3)",
                        "In doubt: draw 7 of left.3",
                        "STOPS something about left.3",
                        "Limit 950 N, common practice",
                        "In the file at fans/left.3",
                        "Why: because of left.3",
                        "carry less: clears it with 1.2",
                        "add a fan: helps and does not suffice",
                        "WARNS",
                        "add a cell: refused, too fast",
                        "NOTE",
                        "Where the lift goes",
                        "charge of left.3",
                        "1024 draws from seed 7",
                        "sha256:0",
                        "site/left.3: left.3 (from memory)",
                        "motor of left.3",
                        "power closes: passed")
                .contains(Cautions.ALL);
    }

    @ParameterizedTest
    @EnumSource(Outcome.class)
    void everyVerdictIsAWordAndNotOnlyAColour(Outcome outcome) {
        Page page = Page.of(sheet(Sample.of(outcome, "left.3")));
        assertThat(Page.text(page.all("nav").getFirst())).contains(outcome.label());
    }

    @Test
    void everyTableHasCaptionAndHeads() {
        Page page = Page.of(sheet(drawn("left.3")));
        assertThat(page.all("table")).hasSizeGreaterThan(5);
        for (Element table : page.all("table")) {
            assertThat(Page.text(Page.all(table, "caption").getFirst())).isNotBlank();
            List<Element> heads = Page.all(Page.all(table, "thead").getFirst(), "th");
            assertThat(heads).isNotEmpty();
            assertThat(heads).allMatch(head -> head.getAttribute("scope").equals("col"));
            for (Element row : Page.all(Page.all(table, "tbody").getFirst(), "tr")) {
                int cells = Page.all(row, "td").size() + Page.all(row, "th").size();
                assertThat(cells).as(Page.text(row)).isEqualTo(heads.size());
                assertThat(Page.all(row, "th"))
                        .allMatch(head -> head.getAttribute("scope").equals("row"));
            }
        }
    }

    @Test
    void everyPictureSaysWhatItShowsAndIsDrawnWithinItself() {
        Page page = Page.of(sheet(drawn("left.3")));
        List<Element> pictures =
                page.all("svg").stream().filter(svg -> svg.hasAttribute("role")).toList();
        assertThat(pictures)
                .hasSize(10); // side view, timeline, two of sums, ledger, two curves, rig from 3
        // sides
        for (Element picture : pictures) {
            assertThat(Page.text(Page.all(picture, "title").getFirst())).isNotBlank();
            assertThat(Page.text(Page.all(picture, "desc").getFirst())).isNotBlank();
            assertThat(picture.getAttribute("viewBox"))
                    .isEqualTo(
                            "0 0 "
                                    + picture.getAttribute("width")
                                    + " "
                                    + picture.getAttribute("height"));
            assertThat(picture.getAttribute("width")).matches("[1-9][0-9]*");
        }
    }

    @Test
    void everyReferenceWithinTheSheetFindsItsOneTarget() {
        Page page = Page.of(sheet(drawn("left.3")));
        Set<String> ids = new HashSet<>();
        for (Element element : page.all("*")) {
            if (element.hasAttribute("id")) {
                assertThat(ids.add(element.getAttribute("id")))
                        .as(element.getAttribute("id"))
                        .isTrue();
            }
        }
        int seen = 0;
        for (Element element : page.all("*")) {
            for (String name : List.of("aria-labelledby", "aria-describedby")) {
                if (element.hasAttribute(name)) {
                    assertThat(ids).contains(element.getAttribute(name));
                    seen++;
                }
            }
            if (element.hasAttribute("href")) {
                assertThat(element.getAttribute("href")).startsWith("#");
                assertThat(ids).contains(element.getAttribute("href").substring(1));
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(10);
    }

    @Test
    void nothingComesFromOutsideAndNothingActs() {
        String sheet = sheet(drawn("left.3"));
        assertThat(sheet)
                .contains("default-src &#39;none&#39;")
                .doesNotContain("<script", "<iframe", "<object", "<link", "@import", "javascript:")
                .doesNotContainPattern("url\\((?!#)")
                .doesNotContainPattern("\\s(?:src|srcset|style|on[a-z]+)=");
        // The one address is the name of a name space; nothing is fetched from it.
        assertThat(sheet.replace("xmlns=\"http://www.w3.org/2000/svg\"", ""))
                .doesNotContainPattern("https?://");
    }

    static Stream<String> names() {
        return Stream.of(
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "' onmouseover='alert(1)",
                "&lt;b&gt; &amp; &#60;",
                "]]><!-- --><svg onload=alert(1)>",
                "-->",
                "</style><style>*{display:none}",
                "</title>",
                "\u001b[31m\u0000\u0007",
                "\u202egnp.gir",
                "two\nlines\r\u2028\u2029",
                "\ufffe\uffff",
                "a".repeat(3000));
    }

    @ParameterizedTest
    @MethodSource("names")
    void aNameFromAFileIsWordsAndNothingElse(String name) {
        List<String> expected = tags(Page.of(sheet(drawn("left.3"))));
        Page page =
                Page.of(HtmlReport.write(List.of(drawn(name)), name, name, UnitSystem.SI, "0.0.0"));
        assertThat(tags(page)).isEqualTo(expected);
        assertThat(page.text().codePoints())
                .allMatch(
                        c ->
                                c == '\n'
                                        || (Character.getType(c) != Character.CONTROL
                                                && Character.getType(c) != Character.FORMAT
                                                && Character.getType(c)
                                                        != Character.LINE_SEPARATOR));
    }

    /** Every element with the names of its attributes; drawing and breaks go with the words. */
    private static List<String> tags(Page page) {
        List<String> tags = new ArrayList<>();
        for (Element element : page.all("*")) {
            if (Set.of("text", "circle", "path", "line", "rect", "wbr")
                    .contains(element.getTagName())) {
                continue;
            }
            List<String> names = new ArrayList<>();
            for (int k = 0; k < element.getAttributes().getLength(); k++) {
                if (element.getAttributes().item(k) instanceof Attr attribute) {
                    names.add(attribute.getName());
                }
            }
            tags.add(element.getTagName() + names);
        }
        return tags;
    }

    @Test
    void equalAnswersGiveEqualBytesAndOtherUnitsOther() {
        assertThat(sheet(drawn("left.3"))).isEqualTo(sheet(drawn("left.3")));
        String us =
                HtmlReport.write(
                        List.of(drawn("left.3")), "Heron", "heron.yaml", UnitSystem.US, "0.0.0");
        assertThat(us).contains("lbf").isNotEqualTo(sheet(drawn("left.3")));
    }

    @Test
    void knowsItsOwnSheetAgainAndNoOther() {
        byte[] own = sheet(drawn("left.3")).getBytes(UTF_8);
        assertThat(HtmlReport.isUnchanged(own)).isTrue();
        for (int at : new int[] {200, own.length / 2, own.length - 20}) {
            byte[] edited = own.clone();
            edited[at] ^= 1;
            assertThat(HtmlReport.isUnchanged(edited)).as("byte %d", at).isFalse();
        }
        assertThat(HtmlReport.isUnchanged(new byte[0])).isFalse();
        assertThat(HtmlReport.isUnchanged("<!doctype html>".getBytes(UTF_8))).isFalse();
        assertThat(HtmlReport.isUnchanged(Seal.blank().getBytes(UTF_8))).isFalse();
    }

    @Test
    void aReportNeedsAnAnswer() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> HtmlReport.write(List.of(), "", "heron.yaml", UnitSystem.SI, "0"));
    }
}
