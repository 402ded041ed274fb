package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Peaks linked into lines: again and again the path of greatest evidence through the peaks that are
 * left (dynamic programming [VITERBI67]), where a window costs, a leap costs, and a path may begin
 * and end anywhere. So a line is born and dies where the evidence turns, and a window or two
 * without it does not cut it.
 */
final class Linker {

    private static final int FARTHEST = 4;
    private static final double MOST_SCORE = 8;

    private final List<List<Peak>> peaks;
    private final double[] gate;
    private final double least;
    private final double cost;

    /**
     * @param peaks of each window
     * @param gate leap of ratio from one window to the next that costs one unit, for each window
     * @param cost of a window, in units of score
     * @param least score of a line
     */
    Linker(List<List<Peak>> peaks, double[] gate, double cost, double least) {
        this.peaks = new ArrayList<>();
        peaks.forEach(window -> this.peaks.add(new ArrayList<>(window)));
        this.gate = gate;
        this.cost = cost;
        this.least = least;
    }

    /** The best lines, at most {@code many}, best first. */
    List<Line> lines(int many) {
        var lines = new ArrayList<Line>();
        while (lines.size() < many) {
            Line line = best();
            if (line.frames().isEmpty()) {
                break;
            }
            for (int k = 0; k < line.frames().size(); k++) {
                peaks.get(line.frames().get(k)).remove(line.peaks().get(k));
            }
            lines.add(line);
        }
        return lines;
    }

    private Line best() {
        double[][] value = new double[peaks.size()][];
        int[][] from = new int[peaks.size()][];
        double most = least;
        int mostFrame = -1;
        int mostPeak = -1;
        for (int k = 0; k < peaks.size(); k++) {
            value[k] = new double[peaks.get(k).size()];
            from[k] = new int[value[k].length];
            for (int p = 0; p < value[k].length; p++) {
                reach(k, p, value, from);
                if (value[k][p] > most) {
                    most = value[k][p];
                    mostFrame = k;
                    mostPeak = p;
                }
            }
        }
        return walk(mostFrame, mostPeak, from);
    }

    private void reach(int frame, int peak, double[][] value, int[][] from) {
        Peak here = peaks.get(frame).get(peak);
        double best = 0;
        from[frame][peak] = -1;
        for (int back = 1; back <= FARTHEST && back <= frame; back++) {
            List<Peak> before = peaks.get(frame - back);
            double allowed = gate[frame] * Math.sqrt(back);
            for (int q = 0; q < before.size(); q++) {
                double leap = (here.ratio() - before.get(q).ratio()) / allowed;
                double worth = value[frame - back][q] - leap * leap - (back - 1) * cost;
                if (Math.abs(leap) < 3 && worth > best) {
                    best = worth;
                    from[frame][peak] = (frame - back) << 12 | q;
                }
            }
        }
        value[frame][peak] = best + Math.min(here.score(), MOST_SCORE) - cost;
    }

    private Line walk(int frame, int peak, int[][] from) {
        var frames = new ArrayList<Integer>();
        var found = new ArrayList<Peak>();
        int k = frame;
        int p = peak;
        while (k >= 0) {
            frames.add(k);
            found.add(peaks.get(k).get(p));
            int code = from[k][p];
            k = code < 0 ? -1 : code >> 12;
            p = code & 0xFFF;
        }
        Collections.reverse(frames);
        Collections.reverse(found);
        return new Line(frames, found);
    }
}
