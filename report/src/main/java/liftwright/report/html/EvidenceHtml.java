package liftwright.report.html;

import java.util.List;
import java.util.function.Consumer;
import liftwright.answer.Evidence;
import liftwright.report.AlikeLines;
import liftwright.report.EvidenceWords;
import liftwright.report.Figures;

/** What an answer rests on. */
final class EvidenceHtml {

    private final Markup page;
    private final Figures figures;

    EvidenceHtml(Markup page, Figures figures) {
        this.page = page;
        this.figures = figures;
    }

    void write(Evidence evidence) {
        page.element("h3", "What this rests on");
        page.element(
                "dl",
                () -> {
                    said("State", figures.sentence(evidence.state()));
                    said("Bands", EvidenceWords.bands(evidence));
                    said("File", evidence.rigDigest());
                    said("Corrections", EvidenceWords.corrections(evidence));
                    if (!evidence.measured().isEmpty()) {
                        listed(
                                "Measured",
                                evidence.measured(),
                                told ->
                                        page.text(
                                                told.part()
                                                        + ": "
                                                        + figures.sentence(told.sentence())));
                    }
                    listed("Assumed", AlikeLines.of(evidence.assumptions()), page::text);
                    listed("Laws", evidence.laws(), law -> page.text(EvidenceWords.law(law)));
                    listed(
                            "Checks",
                            evidence.checks(),
                            check -> page.text(EvidenceWords.check(check)));
                },
                "class",
                "evidence");
    }

    private void said(String word, String text) {
        page.element("dt", word);
        page.element("dd", text);
    }

    private <T> void listed(String word, List<T> items, Consumer<T> each) {
        page.element("dt", word);
        page.element(
                "dd",
                () -> {
                    if (items.isEmpty()) {
                        page.text("none");
                    } else {
                        page.element(
                                "ul",
                                () ->
                                        items.forEach(
                                                item ->
                                                        page.element(
                                                                "li", () -> each.accept(item))));
                    }
                });
    }
}
