package liftwright.report.html;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Remedy;
import liftwright.answer.Value;
import liftwright.report.Figures;
import liftwright.report.FindingWords;

/** Findings, worst first, each with where it is in the file and what would clear it. */
final class FindingsHtml {

    private final Markup page;
    private final Figures figures;
    private int lastRemedy;

    FindingsHtml(Markup page, Figures figures) {
        this.page = page;
        this.figures = figures;
    }

    void write(List<Finding> findings) {
        if (findings.isEmpty()) {
            page.element("p", "None.");
            return;
        }
        page.element("ul", () -> findings.forEach(this::write), "class", "findings");
    }

    private void write(Finding finding) {
        page.element(
                "li",
                () -> {
                    page.element(
                            "p",
                            () -> {
                                page.element(
                                        "strong",
                                        FindingWords.word(finding.severity()),
                                        "class",
                                        "severity");
                                page.text(" " + figures.sentence(finding.sentence()));
                            },
                            "class",
                            "says");
                    judged(finding);
                    if (!finding.cause().isBlank()) {
                        page.element("p", "Why: " + finding.cause());
                    }
                    if (!finding.remedies().isEmpty()) {
                        page.element("p", "Recomputed, each on the same draws:");
                        page.element(
                                "ol",
                                () ->
                                        finding.remedies()
                                                .forEach(
                                                        remedy ->
                                                                remedy(remedy, finding.severity())),
                                "class",
                                "remedies",
                                "start",
                                Integer.toString(lastRemedy + 1));
                    }
                },
                "class",
                "finding " + style(finding.severity()));
    }

    private void judged(Finding finding) {
        Optional<Value> unsaid =
                finding.value().filter(value -> !Figures.says(finding.sentence(), value));
        if (unsaid.isEmpty() && finding.limit().isEmpty() && finding.path().isEmpty()) {
            return;
        }
        page.element(
                "p",
                () -> {
                    unsaid.ifPresent(
                            value ->
                                    page.text(
                                            capital(Figures.label(value))
                                                    + " "
                                                    + figures.value(value)
                                                    + ". "));
                    finding.limit()
                            .ifPresent(
                                    limit ->
                                            page.text(
                                                    "Limit "
                                                            + figures.value(limit.value())
                                                            + ", "
                                                            + limit.origin()
                                                            + ". "));
                    finding.path()
                            .ifPresent(
                                    path ->
                                            page.text("In the file at ")
                                                    .element("code", path)
                                                    .text("."));
                });
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private void remedy(Remedy remedy, Finding.Severity severity) {
        lastRemedy++;
        page.element(
                "li",
                () -> {
                    page.element("strong", figures.sentence(remedy.name()));
                    page.text(FindingWords.effect(remedy, severity, figures));
                });
    }

    private static String style(Finding.Severity severity) {
        return switch (severity) {
            case STOPS -> "stops";
            case WARNS -> "warns";
            case NOTES -> "notes";
        };
    }
}
