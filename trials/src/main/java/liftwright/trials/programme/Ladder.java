package liftwright.trials.programme;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.physics.Gravity;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.trials.Run;

/**
 * The steps of runs. Levels are common practice, but those that a limit or a demand of the rig
 * sets.
 */
final class Ladder {

    /** Thrust over weight of a rig that hangs with dead mass in it: below 1 with all its doubt. */
    static final double HANGING_DUMMY = 0.9;

    /** The same with somebody in it. */
    static final double HANGING_WORN = 0.8;

    /** Of the dwell limit that is used on a scale, so that the reading stays below it. */
    static final double BELOW_DWELL = 0.9;

    /** Thrust over weight that starts a hop, and what is left to come down. */
    static final double HOP_UP = 1.03;

    static final double HOP_DOWN = 0.97;

    /** Least height of a hop, m: enough to be seen. */
    private static final double HOP_M = 0.10;

    /**
     * Slowly enough for whoever reads: a value that is passed on the way up is seen, and there is
     * time to stop before the limit behind it, 1/s.
     */
    private static final double RISE_PER_S = 0.1;

    /** Least time for a rise to more than half, s. */
    private static final double UPPER_RISE_S = 6;

    /**
     * Fastest rise where thrust passes the weight, 1/s; worn, 50 % of full a second is the most.
     */
    private static final double HOP_RISE_PER_S = 0.2;

    private Ladder() {}

    /** The first turns of a fan. */
    static List<Run.Step> first() {
        return throttle(10, 0.1, 0.25, 0.4);
    }

    /** Enough to see thrust go, and no more. */
    static List<Run.Step> kill() {
        return throttle(10, 0.3);
    }

    /** Rows for a table of thrust. */
    static List<Run.Step> rows() {
        return throttle(8, 0.2, 0.4, 0.6, 0.8, 1);
    }

    /** Up and down in jumps. */
    static List<Run.Step> jumps() {
        List<Run.Step> steps = new ArrayList<>(throttle(5, 0.3));
        for (double level : new double[] {0.6, 0.3, 0.6, 0.3}) {
            steps.add(new Run.Step(new Run.Level.Throttle(level), JUMP_S, 4));
        }
        return steps;
    }

    private static final double JUMP_S = 0.02;

    /** Many fans for the first time together. */
    static List<Run.Step> together() {
        return throttle(5, 0.1, 0.25, 0.5, 0.75, 1);
    }

    /**
     * As long as is asked for, at the throttle at which a rig that just meets its demand would
     * hover: thrust goes about with its square.
     */
    static List<Run.Step> warm(Rig rig) {
        double demand = Math.max(1, rig.demands().thrustToWeight().si());
        double share = Math.round(100 * Math.sqrt(1 / demand)) / 100.0;
        double longS = Math.max(10, rig.demands().hover().si());
        return List.of(
                new Run.Step(new Run.Level.Throttle(0.5), 0.5 / RISE_PER_S, 5),
                new Run.Step(
                        new Run.Level.Throttle(share),
                        Math.max(UPPER_RISE_S, (share - 0.5) / RISE_PER_S),
                        longS));
    }

    /** Up to a share of weight, in quarters. */
    static List<Run.Step> hanging(Rig rig, double most) {
        return ofWeight(
                rig, 5, percent(0.4 * most), percent(0.6 * most), percent(0.8 * most), most);
    }

    /** On a scale, always below the share of weight at which a standing wearer may dwell. */
    static List<Run.Step> scale(Rig rig, boolean worn) {
        double most =
                worn
                        ? BELOW_DWELL * Math.min(1, rig.limits().si(LimitName.DWELL_SHARE))
                        : HANGING_DUMMY;
        return ofWeight(rig, 5, percent(most / 3), percent(2 * most / 3), most);
    }

    /** Off the ground, or off the line, by {@value #HOP_M} m or a fifth of the asked height. */
    static List<Run.Step> hop(Rig rig) {
        double heightM = Math.min(HOP_M, 0.2 * rig.demands().height().si());
        double upS = upS(heightM);
        return stepped(
                rig,
                new double[] {0.6, 0.9, HOP_UP, HOP_DOWN, 0.6},
                new double[] {3, 3, upS, upS, 3});
    }

    /** A stay in the air at half the asked height. */
    static List<Run.Step> hover(Rig rig, double staysS) {
        double upS = upS(0.5 * rig.demands().height().si());
        return stepped(
                rig,
                new double[] {0.6, 0.9, HOP_UP, HOP_DOWN, 1, HOP_DOWN, 0.6},
                new double[] {3, 3, upS, upS, staysS, upS, 3});
    }

    /** Whole per cents, which can be called; never more than is given, and one at least. */
    private static double percent(double share) {
        return Math.max(1, Math.floor(100 * share + 1e-9)) / 100;
    }

    /** Half the way speeding up, half slowing down. */
    private static double upS(double heightM) {
        double longS = Math.sqrt(heightM / ((HOP_UP - 1) * Gravity.STANDARD_MPS2));
        return Math.max(0.2, Math.round(10 * longS) / 10.0);
    }

    private static double riseS(double from, double to) {
        double longS = Math.round(10 * Math.abs(to - from) / RISE_PER_S) / 10.0;
        return to > 0.5 && to > from ? Math.max(UPPER_RISE_S, longS) : Math.max(0.1, longS);
    }

    private static List<Run.Step> throttle(double holdS, double... shares) {
        List<Run.Step> steps = new ArrayList<>();
        double before = 0;
        for (double share : shares) {
            double riseS = riseS(before, share);
            steps.add(new Run.Step(new Run.Level.Throttle(share), riseS, holdS));
            before = share;
        }
        return steps;
    }

    private static List<Run.Step> ofWeight(Rig rig, double holdS, double... levels) {
        double[] holds = new double[levels.length];
        Arrays.fill(holds, holdS);
        return stepped(rig, levels, holds);
    }

    private static List<Run.Step> stepped(Rig rig, double[] levels, double[] holdS) {
        double hopPerS =
                rig.control()
                        .rise()
                        .map(rise -> Math.min(rise.si(), HOP_RISE_PER_S))
                        .filter(rise -> rise > 0)
                        .orElse(HOP_RISE_PER_S);
        List<Run.Step> steps = new ArrayList<>();
        double before = 0;
        for (int k = 0; k < levels.length; k++) {
            double riseS =
                    levels[k] < HOP_DOWN && before < levels[k]
                            ? riseS(before, levels[k])
                            : Math.max(0.1, Math.abs(levels[k] - before) / hopPerS);
            steps.add(new Run.Step(new Run.Level.OfWeight(levels[k]), riseS, holdS[k]));
            before = levels[k];
        }
        return steps;
    }
}
