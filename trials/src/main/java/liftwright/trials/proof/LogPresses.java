package liftwright.trials.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.rig.table.KillLog;
import liftwright.rig.table.KillLog.Row;
import liftwright.rig.table.KillLog.Signal;
import liftwright.trials.proof.PressTimes.Outcome;

/** Cuts a log into presses, each with the steady time before it and the fall after it. */
final class LogPresses {

    /** How long before a press thrust is read as full, s. */
    private static final double BEFORE_S = 1;

    /** After a fall it is watched so long for thrust that comes back, s; common practice. */
    private static final double WATCH_S = 1;

    /** A press of which no more is logged cannot be told; nor is one that takes longer, s. */
    private static final double LONGEST_S = 10;

    private static final int LEAST_BEFORE = 4;

    /** Thrust before a press is at least this share of the most in the log. */
    private static final double LEAST_LEVEL = 0.1;

    /** Scatter before a press that is too much to call steady, of the mean. */
    private static final double STEADY = 0.15;

    /** Rows farther apart than so many usual intervals leave a gap. */
    private static final double GAP = 2.5;

    private final KillLog log;
    private final List<Row> rows;
    private final double usualS;
    private final double most;

    LogPresses(KillLog log) {
        this.log = log;
        rows = log.rows();
        double[] steps = new double[rows.size() - 1];
        for (int k = 0; k < steps.length; k++) {
            steps[k] = rows.get(k + 1).timeS() - rows.get(k).timeS();
        }
        Arrays.sort(steps);
        usualS = steps[steps.length / 2];
        most = rows.stream().mapToDouble(row -> row.value().orElse(0)).max().orElse(0);
    }

    List<PressTimes> all() {
        List<PressTimes> presses = new ArrayList<>();
        int freeFrom = 0;
        for (int k = 0; k < rows.size(); k++) {
            Optional<String> pressed = rows.get(k).pressed();
            if (pressed.isPresent() && (k == 0 || !rows.get(k - 1).pressed().equals(pressed))) {
                int release = k;
                while (release < rows.size() && rows.get(release).pressed().equals(pressed)) {
                    release++;
                }
                presses.add(press(pressed.get(), k, freeFrom, release));
                freeFrom = release;
            }
        }
        return presses;
    }

    /**
     * @param at first row that is pressed
     * @param freeFrom first row that belongs to no press before
     * @param release first row that is no longer pressed
     */
    private PressTimes press(String path, int at, int freeFrom, int release) {
        List<String> notes = new ArrayList<>();
        Outcome outcome =
                at == 0
                        ? new Outcome.Untold("the log begins with the press")
                        : outcome(at, freeFrom, release, notes);
        return new PressTimes(path, rows.get(at).line(), outcome, notes);
    }

    private Outcome outcome(int at, int freeFrom, int release, List<String> notes) {
        double earliestS = rows.get(at - 1).timeS();
        int from = at - 1;
        while (from > freeFrom && rows.get(from - 1).timeS() >= earliestS - BEFORE_S) {
            from--;
        }
        int to = next(at, release);
        Samples before = Samples.of(rows, from, at);
        if (before.size() < LEAST_BEFORE) {
            return new Outcome.Untold(
                    "fewer than "
                            + LEAST_BEFORE
                            + " readings in the second before the press: how full thrust was is not"
                            + " known");
        }
        Level level = Level.of(before);
        if (level.mean() < LEAST_LEVEL * most || level.mean() <= 5 * level.scatter()) {
            return new Outcome.Untold("pressed without thrust before");
        }
        if (level.scatter() > STEADY * level.mean()) {
            return new Outcome.Untold(
                    "the reading was not steady before the press: it scatters by "
                            + percent(level.scatter() / level.mean()));
        }
        Samples after = Samples.of(rows, from, to);
        Fall fall = new Fall(after, level, smoothing(notes), rows.get(at).timeS());
        notes.addAll(fall.notes());
        return times(fall, level, at, release, to, notes);
    }

    private double smoothing(List<String> notes) {
        if (log.filterS().isEmpty()) {
            notes.add("the smoothing of the instrument is not told: the true times may be shorter");
        }
        return log.filterS().orElse(0);
    }

    /** End of what may be looked at: the next press, or what is long enough. */
    private int next(int at, int release) {
        int to = release;
        while (to < rows.size()
                && rows.get(to).pressed().isEmpty()
                && rows.get(to).timeS() <= rows.get(at).timeS() + LONGEST_S) {
            to++;
        }
        return Math.max(to, release);
    }

    private Outcome times(Fall fall, Level level, int at, int release, int to, List<String> notes) {
        double earliestS = rows.get(at - 1).timeS();
        double pressS = rows.get(at).timeS();
        Fall.Crossing half = fall.below(share(0.5));
        Fall.Crossing tenth = fall.below(share(0.1));
        if (tenth.byS().isEmpty() || half.byS().isEmpty()) {
            return notGone(fall, at, release, to);
        }
        double goneS = tenth.byS().getAsDouble();
        double releasedS = releasedS(release);
        double watchedS = Math.max(releasedS, Math.min(goneS, releasedS) + WATCH_S);
        // Thrust that is let up again after the release is the next run, not a failure.
        Optional<Double> again =
                fall.above(share(0.5), half.byS().getAsDouble(), watchedS)
                        .or(() -> fall.above(share(0.1), goneS, watchedS));
        if (again.isPresent()) {
            return new Outcome.Failed(
                    "thrust rose again " + seconds(again.get() - pressS) + " after the press");
        }
        gaps(at - 1, goneS, notes);
        double jumpS = jumped(at - 1, goneS);
        return new Outcome.Timed(
                level.mean(),
                span(half, earliestS, pressS, jumpS),
                span(tenth, earliestS, pressS, jumpS));
    }

    /** A gap may be a clock that jumped: time that is told, and did not pass. */
    private static Span span(Fall.Crossing at, double earliestS, double pressS, double jumpS) {
        double high = at.byS().orElseThrow() - earliestS;
        return new Span(Math.clamp(at.afterS() - pressS - jumpS, 0, high), high);
    }

    private double releasedS(int release) {
        return rows.get(Math.min(release, rows.size() - 1)).timeS();
    }

    /** Still there is one thing, and hidden in the noise another. */
    private Outcome notGone(Fall fall, int at, int release, int to) {
        double pressS = rows.get(at).timeS();
        double overS = rows.get(to - 1).timeS() - pressS;
        if (overS < WATCH_S) {
            return new Outcome.Untold(
                    "the log ends " + seconds(overS) + " after the press, before thrust is gone");
        }
        double heldS = Math.max(releasedS(release), pressS + 2 * WATCH_S);
        return fall.above(share(0.1), pressS + WATCH_S, heldS).isPresent()
                ? new Outcome.Failed(
                        "thrust was still above a tenth more than "
                                + seconds(WATCH_S)
                                + " after the press")
                : new Outcome.Untold("too few or too noisy readings to tell when a tenth was left");
    }

    private double jumped(int from, double toS) {
        double sum = 0;
        for (int k = from; k + 1 < rows.size() && rows.get(k).timeS() < toS; k++) {
            double step = rows.get(k + 1).timeS() - rows.get(k).timeS();
            sum += step > GAP * usualS ? step - usualS : 0;
        }
        return sum;
    }

    private void gaps(int from, double toS, List<String> notes) {
        for (int k = from; k + 1 < rows.size() && rows.get(k).timeS() < toS; k++) {
            double step = rows.get(k + 1).timeS() - rows.get(k).timeS();
            if (step > GAP * usualS) {
                notes.add(
                        "no row for "
                                + seconds(step)
                                + " after line "
                                + rows.get(k).line()
                                + ": a gap, or a clock that jumped");
            }
        }
    }

    /** What is read at a share of the thrust: it goes with the square of speed. */
    private double share(double ofThrust) {
        return log.signal() == Signal.SPEED ? Math.sqrt(ofThrust) : ofThrust;
    }

    private static String seconds(double s) {
        return String.format(Locale.ROOT, "%.2f s", s);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}
