package liftwright.report;

import java.util.List;
import liftwright.answer.Evidence;

/** What an answer rests on. */
final class EvidenceText {

    private static final int INDENT = 2;
    private static final int TEXT = 14;

    private final Paper paper;
    private final Figures figures;

    EvidenceText(Paper paper, Figures figures) {
        this.paper = paper;
        this.figures = figures;
    }

    void write(Evidence evidence) {
        paper.heading("What this rests on");
        paper.beside(INDENT, "State", TEXT, figures.sentence(evidence.state()));
        paper.beside(INDENT, "Bands", TEXT, EvidenceWords.bands(evidence));
        paper.beside(INDENT, "File", TEXT, evidence.rigDigest());
        paper.beside(INDENT, "Corrections", TEXT, EvidenceWords.corrections(evidence));
        if (!evidence.measured().isEmpty()) {
            listed("Measured", evidence.measured().stream().map(this::told).toList());
        }
        listed("Assumed", AlikeLines.of(evidence.assumptions()));
        listed("Laws", evidence.laws().stream().map(EvidenceWords::law).toList());
        listed("Checks", evidence.checks().stream().map(EvidenceWords::check).toList());
    }

    private void listed(String word, List<String> items) {
        String margin = word;
        for (String item : items) {
            paper.beside(INDENT, margin, TEXT, item);
            margin = "";
        }
        if (items.isEmpty()) {
            paper.beside(INDENT, word, TEXT, "none");
        }
    }

    private String told(Evidence.Told told) {
        return told.part() + ": " + figures.sentence(told.sentence());
    }
}
