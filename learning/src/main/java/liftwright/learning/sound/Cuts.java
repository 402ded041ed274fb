package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Cuts lines where they meet. */
final class Cuts {

    /** Whether two ratios at one window are too near to be told apart. */
    interface Near {
        boolean at(int frame, double a, double b);
    }

    private Cuts() {}

    /** The same lines without the windows in which any two are too near. */
    static List<Line> of(List<Line> lines, Near near) {
        List<Set<Integer>> met = new ArrayList<>();
        List<Map<Integer, Double>> ratios = new ArrayList<>();
        for (Line line : lines) {
            met.add(new HashSet<>());
            Map<Integer, Double> byFrame = new HashMap<>();
            for (int k = 0; k < line.frames().size(); k++) {
                byFrame.put(line.frames().get(k), line.peaks().get(k).ratio());
            }
            ratios.add(byFrame);
        }
        for (int a = 0; a < lines.size(); a++) {
            for (int b = a + 1; b < lines.size(); b++) {
                for (var entry : ratios.get(a).entrySet()) {
                    Double other = ratios.get(b).get(entry.getKey());
                    if (other != null && near.at(entry.getKey(), entry.getValue(), other)) {
                        met.get(a).add(entry.getKey());
                        met.get(b).add(entry.getKey());
                    }
                }
            }
        }
        var pieces = new ArrayList<Line>();
        for (int a = 0; a < lines.size(); a++) {
            pieces(lines.get(a), met.get(a), pieces);
        }
        return pieces;
    }

    /**
     * The same lines cut where the ratio steps to another level: a fan keeps its own, and a line
     * that has it no longer went on along another fan's.
     *
     * @param reach windows to each side whose medians are held against each other
     * @param most difference that is still one fan's
     */
    static List<Line> atSteps(List<Line> lines, int reach, double most) {
        var pieces = new ArrayList<Line>();
        for (Line line : lines) {
            Set<Integer> steps = new HashSet<>();
            for (int k = reach; k <= line.frames().size() - reach; k++) {
                if (step(line, k, reach) > most) {
                    steps.add(line.frames().get(k));
                }
            }
            pieces(line, steps, pieces);
        }
        return pieces;
    }

    private static double step(Line line, int at, int reach) {
        List<Peak> before = line.peaks().subList(at - reach, at);
        List<Peak> after = line.peaks().subList(at, at + reach);
        return Math.abs(median(after) - median(before));
    }

    private static double median(List<Peak> peaks) {
        return Line.median(peaks.stream().mapToDouble(Peak::ratio).toArray());
    }

    private static void pieces(Line line, Set<Integer> met, List<Line> to) {
        var frames = new ArrayList<Integer>();
        var peaks = new ArrayList<Peak>();
        for (int k = 0; k < line.frames().size(); k++) {
            if (met.contains(line.frames().get(k))) {
                if (!frames.isEmpty()) {
                    to.add(new Line(frames, peaks));
                    frames.clear();
                    peaks.clear();
                }
            } else {
                frames.add(line.frames().get(k));
                peaks.add(line.peaks().get(k));
            }
        }
        if (!frames.isEmpty()) {
            to.add(new Line(frames, peaks));
        }
    }
}
