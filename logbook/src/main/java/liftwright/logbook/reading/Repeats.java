package liftwright.logbook.reading;

import java.util.ArrayList;
import java.util.List;
import liftwright.plant.recording.Signal;

/**
 * Finds channels that come slower than the rows of their log: each value stands in several rows
 * until the next one is there. Taken for samples of their own they would make a fit too sure of
 * itself.
 */
final class Repeats {

    /** Fewer changes than this tell nothing. */
    private static final int FEWEST = 12;

    private static final int LONGEST = 2000;

    /** Single rows among the runs: a sensor that is read in every row has many. */
    private static final double SINGLE = 0.05;

    /** A run as long as the usual one, or a whole number of times it, within this share. */
    private static final double NEAR = 0.35;

    private static final double REGULAR = 0.8;

    /** Changes by more than one step of the display: a slow reading moves one at a time. */
    private static final double MOVES = 0.3;

    private Repeats() {}

    /**
     * How many rows a value stands in; 1 where each row has its own.
     *
     * @param values in stretches of neighbouring rows
     */
    static int rows(Signal signal, List<double[]> values) {
        if (signal == Signal.THROTTLE) {
            return 1; // a command holds, and that is no repetition
        }
        var runs = new ArrayList<Integer>();
        var changes = new ArrayList<Double>();
        for (double[] stretch : values) {
            runs(stretch, runs, changes);
        }
        if (runs.size() < FEWEST) {
            return 1;
        }
        var sorted = runs.stream().sorted().toList();
        int usual = sorted.get(sorted.size() / 2);
        if (usual < 2 || usual > LONGEST) {
            return 1;
        }
        long single = runs.stream().filter(run -> run == 1).count();
        long regular = runs.stream().filter(run -> isNear(run, usual)).count();
        return single <= SINGLE * runs.size() && regular >= REGULAR * runs.size() && moves(changes)
                ? usual
                : 1;
    }

    private static boolean isNear(int run, int usual) {
        double times = Math.max(1, Math.rint((double) run / usual));
        return Math.abs(run - times * usual) <= Math.max(1, NEAR * usual);
    }

    private static boolean moves(List<Double> changes) {
        double least = Double.POSITIVE_INFINITY;
        for (double change : changes) {
            least = Math.min(least, change);
        }
        int more = 0;
        for (double change : changes) {
            more += change > 1.5 * least ? 1 : 0;
        }
        return more >= MOVES * changes.size();
    }

    /** Whole runs of equal values, without the first and the last of the stretch. */
    private static void runs(double[] stretch, List<Integer> runs, List<Double> changes) {
        int began = -1;
        for (int k = 1; k < stretch.length; k++) {
            if (Double.isNaN(stretch[k]) || Double.isNaN(stretch[k - 1])) {
                began = -1;
                continue;
            }
            if (stretch[k] != stretch[k - 1]) {
                if (began >= 0) {
                    runs.add(k - began);
                    changes.add(Math.abs(stretch[k] - stretch[k - 1]));
                }
                began = k;
            }
        }
    }
}
