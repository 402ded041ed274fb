package liftwright.report;

import java.util.List;
import liftwright.answer.Answer;
import liftwright.answer.Cautions;
import liftwright.answer.Checks;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Verdict;

/**
 * An answer for a terminal: the verdict first, then findings, worst first, then pictures and
 * tables, then what it rests on, and last what no calculation can do for the reader.
 */
public final class TextReport {

    private final Paper paper;
    private final Figures figures;
    private final Look look;

    private TextReport(Look look) {
        this.look = look;
        this.paper = new Paper(look);
        this.figures = new Figures(look);
    }

    /**
     * @param answer to write
     * @param rigName as declared, or empty
     * @param file as the user named it
     * @param look of the terminal
     * @return lines, the last one ended
     * @throws IllegalStateException if the answer claims more than its own checks allow
     */
    public static String write(Answer answer, String rigName, String file, Look look) {
        Checks.requireHonest(answer);
        var report = new TextReport(look);
        report.write(answer, rigName, file);
        return report.paper.toString();
    }

    private void write(Answer answer, String rigName, String file) {
        verdict(answer.verdict(), answer.findings());
        paper.blank();
        paper.text(
                0,
                answer.question()
                        + " of "
                        + (rigName.isBlank() ? file : rigName + " (" + file + ")"));
        new FindingsText(paper, figures).write(answer.findings());
        answer.sections().forEach(this::section);
        new EvidenceText(paper, figures).write(answer.evidence());
        cautions();
    }

    /** Pictures and tables that belong to no answer: the parts book. */
    public static String sections(List<Section> sections, Look look) {
        var report = new TextReport(look);
        sections.forEach(report::section);
        return report.paper.toString().stripLeading();
    }

    /**
     * Rows that belong to no answer, such as those of a query: heads and cells are untrusted.
     *
     * @param right which columns hold numbers
     */
    public static String rows(
            String title, List<String> heads, List<List<String>> rows, boolean[] right, Look look) {
        var report = new TextReport(look);
        report.paper.heading(title);
        new TableText(report.paper, report.figures)
                .write(
                        heads.stream().map(report.paper::plain).toList(),
                        rows.stream()
                                .map(row -> row.stream().map(report.paper::plain).toList())
                                .toList(),
                        right);
        return report.paper.toString().stripLeading();
    }

    /** The ends of a waterfall in one line, for a screen that waits for the bands. */
    public static String nominal(Section.Waterfall waterfall, Look look) {
        var figures = new Figures(look);
        return waterfall.end().label()
                + " "
                + figures.bare(waterfall.end().value())
                + ", "
                + waterfall.against().label()
                + " "
                + figures.bare(waterfall.against().value());
    }

    private void section(Section section) {
        switch (section) {
            case Section.Waterfall waterfall -> new WaterfallText(paper, figures).write(waterfall);
            case Section.Table table -> new TableText(paper, figures).write(table);
            case Section.Plot plot -> new PlotText(paper, look).write(plot);
            case Section.Timeline timeline -> new TimelineText(paper, figures).write(timeline);
            case Section.Shares shares -> new TableText(paper, figures).write(shares.table());
            case Section.Playback _ -> {} // moves, which paper does not
            case Section.Matrix matrix -> new MatrixText(paper, figures).write(matrix);
            case Section.Cases _ -> {} // are stepped through, which paper is not
            case Section.Elevation elevation -> new ElevationText(paper, figures).write(elevation);
            case Section.Card card -> new CardText(paper, figures, this::section).write(card);
            case Section.Strips strips -> new StripsText(paper, figures).write(strips);
            case Section.Drawing _ -> {} // a terminal has no room for it; its numbers are in JSON
        }
    }

    private void verdict(Verdict verdict, List<Finding> findings) {
        paper.block(
                0,
                2,
                ink(verdict.outcome()),
                verdict.outcome().label() + ": " + figures.sentence(verdict.sentence()));
        verdict.wouldTell()
                .ifPresent(
                        tell ->
                                paper.block(
                                        2,
                                        4,
                                        Paper.Ink.PLAIN,
                                        "What would tell: "
                                                + figures.sentence(tell.sentence())
                                                + " ("
                                                + tell.path()
                                                + ")"));
        verdict.downgrades()
                .forEach(reason -> paper.block(2, 4, Paper.Ink.PLAIN, "In doubt: " + reason));
        long stops = findings.stream().filter(f -> f.severity() == Finding.Severity.STOPS).count();
        if (verdict.outcome() == Outcome.HOLDS && stops > 0) {
            paper.block(
                    2,
                    4,
                    Paper.Ink.STOPS,
                    "But "
                            + (stops == 1 ? "a finding stops" : stops + " findings stop")
                            + " this rig: see below.");
        }
    }

    private static Paper.Ink ink(Outcome outcome) {
        return switch (outcome) {
            case HOLDS -> Paper.Ink.STRONG;
            case DOES_NOT_HOLD -> Paper.Ink.STOPS;
            case CANNOT_BE_TOLD, NOT_JUDGED -> Paper.Ink.WARNS;
        };
    }

    private void cautions() {
        paper.heading("Before power is applied");
        paper.text(0, String.join(" ", Cautions.ALL));
    }
}
