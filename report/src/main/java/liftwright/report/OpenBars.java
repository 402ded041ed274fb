package liftwright.report;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section.Timeline;
import liftwright.answer.Section.Timeline.Bar;
import liftwright.answer.Value;

/**
 * What of a timeline is drawn: every bar that comes to its limit, and of those that do not only the
 * first, since a large rig has a hundred of them. All stand in the table.
 *
 * @param bars in order
 * @param left how many are left out
 * @param endS end of the axis, s
 */
public record OpenBars(List<Bar> bars, int left, double endS) {

    private static final int MOST_OPEN = 10;
    private static final int MOST_REACHED = 40;

    /** Of a timeline. */
    public static OpenBars of(Timeline timeline) {
        List<Bar> reached = timeline.bars().stream().filter(OpenBars::isReached).toList();
        List<Bar> open = timeline.bars().stream().filter(bar -> !isReached(bar)).toList();
        List<Bar> bars = new ArrayList<>();
        bars.addAll(reached.subList(0, Math.min(MOST_REACHED, reached.size())));
        bars.addAll(open.subList(0, Math.min(MOST_OPEN, open.size())));
        double endS = timeline.horizonS();
        for (Bar bar : reached) {
            endS = Math.max(endS, atS(bar));
        }
        return new OpenBars(List.copyOf(bars), timeline.bars().size() - bars.size(), endS);
    }

    static boolean isReached(Bar bar) {
        return bar.at().figure() instanceof Value.Figure.Amount;
    }

    private static double atS(Bar bar) {
        return bar.at().figure() instanceof Value.Figure.Amount(double si, var _) ? si : 0;
    }

    /** In words; empty where all are drawn. */
    public String leftOut() {
        return left == 0 ? "" : " " + left + " more stand in the table.";
    }
}
