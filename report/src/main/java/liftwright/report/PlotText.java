package liftwright.report;

import java.util.Arrays;
import liftwright.answer.Section.Plot;
import liftwright.quantity.QuantityFormat;

/** A plot in characters: rows and curves on a grid between two axes. */
final class PlotText {

    private static final int LINES = 15;
    private static final int WIDEST = 66;
    private static final int LABEL = 9;

    /** Of a zone. */
    private static final String HATCH = "/";

    private final Paper paper;
    private final QuantityFormat format;

    PlotText(Paper paper, Look look) {
        this.paper = paper;
        this.format = new QuantityFormat(look.units(), look.ascii());
    }

    void write(Plot plot) {
        PlotFrame frame = PlotFrame.of(plot, format);
        int columns = Math.min(WIDEST, paper.columns() - LABEL - 3);
        char[][] grid = grid(plot, frame, columns);
        paper.heading(plot.title());
        paper.text(2, frame.y().title() + " over " + frame.x().title());
        double step = (frame.y().high() - frame.y().low()) * frame.y().perSi() / 100;
        for (int i = 0; i < LINES; i++) {
            String label =
                    i % 7 == 0 ? frame.y().number(frame.y().at(1 - i / (LINES - 1.0)), step) : "";
            paper.set(
                    Columns.rightAligned(paper.plain(label), LABEL)
                            + " │"
                            + new String(grid[i]).stripTrailing());
        }
        double xStep = frame.x().step();
        String from = paper.plain(frame.x().number(frame.x().low(), xStep));
        String to = paper.plain(frame.x().number(frame.x().high(), xStep));
        paper.set(" ".repeat(LABEL + 1) + "│" + "─".repeat(columns));
        paper.set(
                " ".repeat(LABEL + 2)
                        + from
                        + " ".repeat(Math.max(1, columns - from.length() - to.length()))
                        + to);
        zones(plot, frame, columns);
        paper.text(2, legend(plot));
    }

    /** A hatched stretch below the axis for each, and its words. */
    private void zones(Plot plot, PlotFrame frame, int columns) {
        for (Plot.Zone zone : plot.zones()) {
            int from = (int) Math.round(frame.x().share(zone.from()) * (columns - 1));
            int to = (int) Math.round(frame.x().share(zone.to()) * (columns - 1));
            paper.set(" ".repeat(LABEL + 2 + from) + HATCH.repeat(to - from + 1));
            paper.text(2, HATCH + " " + frame.words(zone));
        }
    }

    private static char[][] grid(Plot plot, PlotFrame frame, int columns) {
        char[][] grid = new char[LINES][columns];
        for (char[] line : grid) {
            Arrays.fill(line, ' ');
        }
        for (int k = 0; k < plot.series().size(); k++) {
            Plot.Series series = plot.series().get(k);
            char mark = mark(plot, k);
            for (Plot.Point point : series.points()) {
                int column = (int) Math.round(frame.x().share(point.x()) * (columns - 1));
                int line = (int) Math.round((1 - frame.y().share(point.y())) * (LINES - 1));
                if (rank(grid[line][column]) < rank(mark)) {
                    grid[line][column] = mark;
                }
            }
        }
        return grid;
    }

    private static String legend(Plot plot) {
        StringBuilder words = new StringBuilder();
        for (int k = 0; k < plot.series().size(); k++) {
            Plot.Series series = plot.series().get(k);
            if (!PlotFrame.isExplained(plot, k)) {
                continue;
            }
            words.append(words.isEmpty() ? "" : ", ")
                    .append(mark(plot, k))
                    .append(' ')
                    .append(series.label());
        }
        return words.toString();
    }

    /** Of several lines each has its letter. */
    private static char mark(Plot plot, int at) {
        Plot.Mark mark = plot.series().get(at).mark();
        boolean several = PlotFrame.lineOf(plot, plot.series().size() - 1) > 0;
        return mark == Plot.Mark.LINE && several
                ? (char) ('a' + Math.clamp(PlotFrame.lineOf(plot, at), 0, 'n' - 'a'))
                : mark(mark);
    }

    private static char mark(Plot.Mark mark) {
        return switch (mark) {
            case DOT -> 'o';
            case CROSS -> 'x';
            case LINE -> '·';
            case DASHES -> '-';
        };
    }

    /** What hides what: rows stand before curves, and a row set aside before all. */
    private static int rank(char mark) {
        return " -·abcdefghijklmnox".indexOf(mark);
    }
}
