package liftwright.report.html;

import java.util.List;
import liftwright.answer.Answer;
import liftwright.answer.Cautions;
import liftwright.answer.Checks;
import liftwright.quantity.UnitSystem;
import liftwright.report.Figures;
import liftwright.report.Look;

/**
 * Answers about one rig as one sheet of HTML: verdicts first, then a chapter for each question with
 * findings, pictures, tables and what it rests on. Without script, without anything from outside;
 * equal answers give equal bytes.
 */
public final class HtmlReport {

    private static final String STYLE = Styles.read("sheet.css") + Styles.read("pictures.css");

    private final Markup page = new Markup();
    private final Figures figures;
    private final UnitSystem units;

    private HtmlReport(UnitSystem units) {
        this.units = units;
        figures = new Figures(new Look(Look.WIDEST, false, false, units));
    }

    /**
     * @param answers about one rig, in the order to show; at least one
     * @param rigName as declared, or empty
     * @param file as the user named it
     * @param units of every number
     * @param version of the program
     * @return the sheet, to be written as UTF-8
     * @throws IllegalStateException if an answer claims more than its own checks allow
     */
    public static String write(
            List<? extends Answer> answers,
            String rigName,
            String file,
            UnitSystem units,
            String version) {
        if (answers.isEmpty()) {
            throw new IllegalArgumentException("a report without an answer");
        }
        answers.forEach(Checks::requireHonest);
        var report = new HtmlReport(units);
        report.sheet(answers, rigName.isBlank() ? file : rigName, file, version);
        return Seal.sealed(report.page.toString());
    }

    /** Whether a file holds a report as it was written here, so that a new one may replace it. */
    public static boolean isUnchanged(byte[] file) {
        return Seal.isWhole(file);
    }

    private void sheet(List<? extends Answer> answers, String rig, String file, String version) {
        page.own("<!doctype html>\n").own(Seal.blank()).own("\n");
        page.element(
                "html",
                () -> {
                    page.element("head", () -> head(rig));
                    page.element("body", () -> body(answers, rig, file, version));
                },
                "lang",
                "en");
    }

    private void head(String rig) {
        page.empty("meta", "charset", "utf-8");
        page.empty(
                "meta", "http-equiv", "Content-Security-Policy", "content", Styles.policy(STYLE));
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        page.empty("meta", "name", "color-scheme", "content", "light dark");
        page.element("title", rig + ": review by Liftwright");
        page.element("style", () -> page.own(STYLE));
    }

    private void body(List<? extends Answer> answers, String rig, String file, String version) {
        page.element("a", "To the answers", "class", "skip", "href", "#answers");
        Hatches.define(page);
        page.element(
                "header",
                () -> {
                    page.element("p", "Liftwright " + version + ", review", "class", "maker");
                    page.element("h1", rig);
                    page.element(
                            "p",
                            () -> page.text("Computed from ").element("code", file).text("."),
                            "class",
                            "from");
                    page.element(
                            "p", Cautions.FIRST + " " + Cautions.LAST, "class", "caution-line");
                    page.element(
                            "nav",
                            () -> page.element("ol", () -> answers.forEach(this::entry)),
                            "aria-label",
                            "Verdicts");
                });
        page.element(
                "main",
                () -> answers.forEach(answer -> new Chapter(page, figures, units).write(answer)),
                "id",
                "answers");
        page.element("footer", this::cautions);
    }

    private void entry(Answer answer) {
        page.element(
                "li",
                () -> {
                    page.element(
                            "a",
                            Chapter.question(answer.question()),
                            "href",
                            "#" + answer.question());
                    page.text(" ");
                    Chapter.outcome(page, answer.verdict().outcome());
                });
    }

    private void cautions() {
        page.element("h2", "Before power is applied");
        page.element("ul", () -> Cautions.ALL.forEach(caution -> page.element("li", caution)));
    }
}
