package liftwright.report;

import java.util.List;
import java.util.Locale;
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
        paper.beside(
                INDENT,
                "Bands",
                TEXT,
                evidence.draws() == 0
                        ? "none was drawn: ± and intervals hold 95 %, by the laws below"
                        : "in brackets, hold 95 % of the doubt: "
                                + evidence.draws()
                                + " draws from seed "
                                + evidence.seed());
        paper.beside(INDENT, "File", TEXT, evidence.rigDigest());
        paper.beside(INDENT, "Corrections", TEXT, evidence.correctionsDigest());
        if (!evidence.measured().isEmpty()) {
            listed("Measured", evidence.measured().stream().map(this::told).toList());
        }
        listed("Assumed", AlikeLines.of(evidence.assumptions()));
        listed("Laws", evidence.laws().stream().map(EvidenceText::law).toList());
        listed("Checks", evidence.checks().stream().map(EvidenceText::check).toList());
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

    private static String law(Evidence.Law law) {
        return (law.within() ? "" : "OUTSIDE ITS RANGE: ")
                + law.name()
                + " ("
                + law.source()
                + "), valid for "
                + law.validity();
    }

    private static String check(Evidence.Check check) {
        return check.name()
                + ": "
                + (check.passed() ? "passed, " : "FAILED, ")
                + number(check.residual())
                + ", at most "
                + number(check.allowed())
                + " allowed";
    }

    /** Two digits: a residual is of interest by its size alone. */
    private static String number(double residual) {
        if (residual == Math.rint(residual) && Math.abs(residual) < 1e6) {
            return String.format(Locale.ROOT, "%.0f", residual);
        }
        return String.format(Locale.ROOT, "%.1e", residual)
                .replace(".0e", "e")
                .replace("e-0", "e-");
    }
}
