package liftwright.report;

import java.util.List;
import java.util.stream.IntStream;
import liftwright.answer.Section;
import liftwright.answer.Section.Strips;
import liftwright.answer.Section.Strips.Strip;
import liftwright.answer.Value;

/**
 * Strips as rows of marks over time: within its band, above it, below it. What happened stands
 * below.
 */
final class StripsText {

    private static final int INDENT = 2;
    private static final int WIDEST = 30;
    private static final int LEAST_MARKS = 24;
    private static final int MOST_MARKS = 72;
    private static final char INSIDE = '·';
    private static final char ABOVE = '+';
    private static final char BELOW = '−';
    private static final char NONE = ' ';

    private final Paper paper;
    private final Figures figures;

    StripsText(Paper paper, Figures figures) {
        this.paper = paper;
        this.figures = figures;
    }

    void write(Strips strips) {
        paper.heading(strips.title());
        if (strips.strips().isEmpty()) {
            paper.text(INDENT, "No channel was recorded that is predicted.");
            return;
        }
        double fromS = Double.POSITIVE_INFINITY;
        double toS = Double.NEGATIVE_INFINITY;
        int label = 0;
        for (Strip strip : strips.strips()) {
            fromS = Math.min(fromS, strip.timesS().getFirst());
            toS = Math.max(toS, strip.timesS().getLast());
            label = Math.max(label, Columns.of(paper.plain(strip.label())));
        }
        label = Math.min(WIDEST, label);
        int marks = Math.min(MOST_MARKS, paper.columns() - 2 * INDENT - label);
        if (marks < LEAST_MARKS) {
            strips.strips().forEach(this::inWords);
        } else {
            for (Strip strip : strips.strips()) {
                String name = Columns.cut(paper.plain(strip.label()), label);
                paper.set(
                        " ".repeat(INDENT)
                                + Columns.padded(name, label)
                                + " ".repeat(INDENT)
                                + marks(strip, fromS, toS, marks));
            }
            String from = paper.plain(figures.bare(Value.of(Section.Timeline.TIME, fromS)));
            String to = paper.plain(figures.bare(Value.of(Section.Timeline.TIME, toS)));
            int room = marks - Columns.of(from) - Columns.of(to);
            paper.set(" ".repeat(2 * INDENT + label) + from + " ".repeat(Math.max(1, room)) + to);
            paper.text(
                    INDENT,
                    INSIDE
                            + " within the 95 % band of what was predicted, "
                            + ABOVE
                            + " above, "
                            + BELOW
                            + " below.");
        }
        for (Strips.Event event : strips.events()) {
            String when = figures.bare(Value.of(Section.Timeline.TIME, event.timeS()));
            paper.block(INDENT, 2 * INDENT, Paper.Ink.PLAIN, when + ": " + words(event));
        }
    }

    private static String words(Strips.Event event) {
        return event.part().isEmpty() ? event.label() : event.part() + " " + event.label();
    }

    private void inWords(Strip strip) {
        long inside = inside(strip);
        paper.text(
                INDENT, strip.label() + ": " + inside + " of " + strip.timesS().size() + " within");
    }

    private static long inside(Strip strip) {
        return IntStream.range(0, strip.timesS().size()).filter(strip::isInside).count();
    }

    /** Each mark is the worst of its stretch. */
    private static String marks(Strip strip, double fromS, double toS, int count) {
        char[] marks = " ".repeat(count).toCharArray();
        List<Double> times = strip.timesS();
        for (int k = 0; k < times.size(); k++) {
            double share = toS > fromS ? (times.get(k) - fromS) / (toS - fromS) : 0;
            int at = Math.min(count - 1, (int) (share * count));
            char mark =
                    strip.isInside(k)
                            ? INSIDE
                            : strip.measured().get(k) > strip.high().get(k) ? ABOVE : BELOW;
            if (marks[at] == NONE || mark != INSIDE) {
                marks[at] = mark;
            }
        }
        return new String(marks);
    }
}
