package liftwright.report;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Remedy;

/** Findings, worst first, each with what would clear it. */
final class FindingsText {

    private static final int MARGIN = 8;
    private static final int REMEDY = MARGIN + 5;

    private final Paper paper;
    private final Figures figures;
    private int lastRemedy;

    FindingsText(Paper paper, Figures figures) {
        this.paper = paper;
        this.figures = figures;
    }

    void write(List<Finding> findings) {
        paper.heading("Findings");
        if (findings.isEmpty()) {
            paper.text(0, "None.");
        }
        for (Finding finding : findings) {
            paper.blank();
            write(finding);
        }
    }

    private void write(Finding finding) {
        paper.beside(
                0,
                ink(finding.severity()),
                FindingWords.word(finding.severity()),
                MARGIN,
                figures.sentence(finding.sentence()));
        var judged = new ArrayList<String>();
        finding.value()
                .filter(value -> !Figures.says(finding.sentence(), value))
                .ifPresent(value -> judged.add(Figures.label(value) + " " + figures.value(value)));
        finding.limit()
                .ifPresent(
                        limit ->
                                judged.add(
                                        "limit "
                                                + (Figures.says(finding.sentence(), limit.value())
                                                        ? ""
                                                        : figures.value(limit.value()) + ", ")
                                                + limit.origin()));
        finding.path().ifPresent(path -> judged.add("in the file at " + path));
        if (!judged.isEmpty()) {
            paper.text(MARGIN, String.join("; ", judged));
        }
        if (!finding.cause().isBlank()) {
            paper.text(MARGIN, "Why: " + finding.cause());
        }
        for (Remedy remedy : finding.remedies()) {
            write(remedy, finding.severity());
        }
    }

    private void write(Remedy remedy, Finding.Severity severity) {
        lastRemedy++;
        String name = figures.sentence(remedy.name());
        String effect = FindingWords.effect(remedy, severity, figures);
        paper.beside(MARGIN, "[" + lastRemedy + "]", REMEDY, name + effect);
    }

    private static Paper.Ink ink(Finding.Severity severity) {
        return switch (severity) {
            case STOPS -> Paper.Ink.STOPS;
            case WARNS -> Paper.Ink.WARNS;
            case NOTES -> Paper.Ink.PLAIN;
        };
    }
}
