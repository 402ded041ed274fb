package liftwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.answer.Section.Timeline;
import liftwright.answer.Section.Timeline.Bar;
import liftwright.answer.Value;

/**
 * A timeline as ordered rows of words, time and bar. A bar that ends at its limit is solid; one
 * that goes on to the end of the calculation is hatched and open, and its words say the same. Where
 * bars have no room beside the words, they stand below them, and the open ones are left out.
 */
final class TimelineText {

    private static final int INDENT = 2;
    private static final int GAP = 2;
    private static final int WIDEST_LABEL = 34;
    private static final int LEAST_BAR = 16;
    private static final char REACHED = '█';
    private static final char OPEN = '▒';
    private static final char GOES_ON = '>';

    private final Paper paper;
    private final Figures figures;

    TimelineText(Paper paper, Figures figures) {
        this.paper = paper;
        this.figures = figures;
    }

    private record Row(String label, String when, String band, String worst, Bar bar) {}

    void write(Timeline timeline) {
        paper.heading(timeline.title());
        if (timeline.bars().isEmpty()) {
            paper.text(INDENT, "Nothing has a limit.");
            return;
        }
        OpenBars shown = OpenBars.of(timeline);
        List<Row> rows = shown.bars().stream().map(bar -> row(timeline, bar)).toList();
        int[] widths = {
            0,
            widest(rows.stream().map(Row::when).toList()),
            widest(rows.stream().map(Row::band).toList()),
            widest(rows.stream().map(Row::worst).toList())
        };
        int words = INDENT;
        for (int width : widths) { // of the names nothing yet
            words += width > 0 ? width + GAP : 0;
        }
        // names may take what the least bar leaves them, or all there is where no bar has room
        int left = paper.columns() - words - GAP;
        int most = left - LEAST_BAR < WIDEST_LABEL ? left + GAP : left - LEAST_BAR;
        int label = widest(rows.stream().map(Row::label).toList());
        widths[0] = Math.min(Math.max(WIDEST_LABEL, most), label);
        words += widths[0] + GAP;
        int beside = paper.columns() - words;
        boolean one = beside >= LEAST_BAR;
        int[] ownLine = words - GAP <= paper.columns() ? widths : new int[widths.length];
        int columns = one ? beside : paper.columns() - 2 * INDENT;
        double endS = shown.endS();
        for (Row row : rows) {
            if (one) {
                paper.set(line(row, widths) + bar(row.bar().at(), endS, columns));
                continue;
            }
            if (ownLine[0] > 0) {
                paper.set(line(row, ownLine).stripTrailing());
            } else {
                paper.text(INDENT, line(row, ownLine).strip());
            }
            if (OpenBars.isReached(row.bar())) {
                paper.set(" ".repeat(2 * INDENT) + bar(row.bar().at(), endS, columns));
            }
        }
        if (one || rows.stream().anyMatch(row -> OpenBars.isReached(row.bar()))) {
            axis(endS, one ? words : 2 * INDENT, columns);
        }
        notes(shown, one ? "A bar that ends in " + GOES_ON : "A row without a bar");
    }

    private Row row(Timeline timeline, Bar bar) {
        return new Row(
                paper.plain(bar.part() + ", " + bar.what()),
                paper.plain(figures.when(timeline, bar.at())),
                paper.plain(figures.band(bar.at())),
                paper.plain(figures.against(bar.hottest(), bar.limit())),
                bar);
    }

    /** What has no width stands as it is. */
    private static String line(Row row, int[] widths) {
        var line = new StringBuilder(" ".repeat(INDENT));
        String label = widths[0] > 0 ? Columns.cut(row.label(), widths[0]) : row.label();
        line.append(Columns.padded(label, widths[0])).append(" ".repeat(GAP));
        line.append(Columns.rightAligned(row.when(), widths[1])).append(" ".repeat(GAP));
        if (!row.band().isEmpty() || widths[2] > 0) {
            line.append(Columns.padded(row.band(), widths[2])).append(" ".repeat(GAP));
        }
        line.append(Columns.padded(row.worst(), widths[3])).append(" ".repeat(GAP));
        return line.toString();
    }

    private static String bar(Value at, double endS, int columns) {
        if (!(at.figure() instanceof Value.Figure.Amount(double atS, var _))) {
            return String.valueOf(OPEN).repeat(columns - 1) + GOES_ON;
        }
        int length = (int) Math.round(atS / endS * columns);
        return String.valueOf(REACHED).repeat(Math.clamp(length, 1, columns));
    }

    private void axis(double endS, int indent, int columns) {
        String from = paper.plain(figures.bare(Value.of(Timeline.TIME, 0)));
        String to = paper.plain(figures.bare(Value.of(Timeline.TIME, endS)));
        int room = columns - Columns.of(from) - Columns.of(to);
        paper.set(" ".repeat(indent) + from + " ".repeat(Math.max(1, room)) + to);
    }

    private void notes(OpenBars shown, String open) {
        for (Bar bar : shown.bars()) {
            if (OpenBars.isReached(bar) && !bar.where().isBlank()) {
                paper.block(
                        INDENT,
                        INDENT + 2,
                        Paper.Ink.PLAIN,
                        bar.part() + ", " + bar.what() + ": " + bar.where());
            }
        }
        Map<String, List<String>> unsettled = new LinkedHashMap<>();
        for (Bar bar : shown.bars()) {
            String why = Figures.unsettled(bar.at());
            if (!why.isEmpty()) {
                unsettled
                        .computeIfAbsent(why, _ -> new ArrayList<>())
                        .add(bar.part() + ", " + bar.what());
            }
        }
        unsettled.forEach(
                (why, bars) ->
                        paper.block(
                                INDENT,
                                INDENT + 2,
                                Paper.Ink.PLAIN,
                                why + ": " + String.join("; ", bars)));
        if (!shown.bars().stream().allMatch(OpenBars::isReached)) {
            paper.text(INDENT, open + " comes to no limit." + shown.leftOut());
        }
    }

    private static int widest(List<String> texts) {
        return texts.stream().mapToInt(Columns::of).max().orElse(0);
    }
}
