package liftwright.learning.sound;

import java.util.List;

/**
 * A line followed over windows.
 *
 * @param frames numbers of the windows in which it was seen, rising
 * @param peaks one for each
 */
record Line(List<Integer> frames, List<Peak> peaks) {

    Line {
        frames = List.copyOf(frames);
        peaks = List.copyOf(peaks);
    }

    int first() {
        return frames.getFirst();
    }

    int last() {
        return frames.getLast();
    }

    /** Share of its windows in which it was seen. */
    double seen() {
        return frames.size() / (double) (last() - first() + 1);
    }

    double medianRatio() {
        return median(peaks.stream().mapToDouble(Peak::ratio).toArray());
    }

    double medianLevel() {
        return median(peaks.stream().mapToDouble(Peak::level).toArray());
    }

    static double median(double[] values) {
        double[] sorted = values.clone();
        java.util.Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
