package liftwright.flight.loops;

import java.util.List;

/**
 * Answer of a {@link Cascade} to a step of its outermost command, stepped in time with the delays
 * as such: lags exactly, integrals to first order in a step that is short against the innermost
 * loop.
 */
final class StepAnswer {

    private static final int STEPS = 24_000;

    /** Crossovers that an answer is followed for; integrals settle within it. */
    private static final double FOLLOWED = 30;

    private final Actuation act;
    private final List<Cascade.Stage> stages;
    private final double lags;
    private final double stepS;
    private final double[] answer = new double[STEPS + 1];

    /** Command given to the actuators, what moves first, and what each outer stage makes of it. */
    private final double[] given = new double[STEPS + 1];

    private final double[][] moved;
    private final double[] wound;
    private double spool;
    private double slowed;
    private double filtered;
    private double angle;

    /**
     * @param crossoverRadps of the outermost stage
     */
    StepAnswer(Cascade cascade, double crossoverRadps, double inertia, double lags) {
        act = cascade.actuation();
        stages = cascade.stages();
        this.lags = lags;
        stepS = FOLLOWED / crossoverRadps / STEPS;
        moved = new double[stages.size()][STEPS + 1];
        wound = new double[stages.size()];
        run(inertia);
    }

    private void run(double inertia) {
        int outer = stages.size() - 1;
        for (int k = 0; k < STEPS; k++) {
            given[k] = command(k);
            double late = before(given, k, lags * act.forwardS());
            double was = slowed;
            slowed = lag(slowed, late, act.slowedS());
            double rise = act.slowedS() > 0 ? (slowed - was) / stepS : 0;
            double wasSpool = spool;
            spool =
                    lag(
                            spool,
                            slowed + (act.slowedS() > 0 ? act.leadS() * rise : 0),
                            lags * act.spoolS());
            double force =
                    spool + (act.slowedS() > 0 ? 0 : act.leadS() * (spool - wasSpool) / stepS);
            moved[0][k + 1] = moved[0][k] + stepS * force / inertia;
            for (int n = 1; n < stages.size(); n++) {
                moved[n][k + 1] =
                        moved[n][k] + stepS * 0.5 * (moved[n - 1][k] + moved[n - 1][k + 1]);
            }
            filtered =
                    lag(
                            filtered,
                            before(moved[0], k + 1, lags * act.sensorS()),
                            lags * act.filterS());
            angle += stepS * filtered;
            answer[k + 1] = moved[outer][k + 1];
        }
    }

    /** What the innermost stage gives, from the outermost in. */
    private double command(int k) {
        double wanted = 1;
        for (int n = stages.size() - 1; n >= 0; n--) {
            Cascade.Stage stage = stages.get(n);
            double miss = wanted - told(n, k);
            wound[n] += stepS * miss * stage.cornerRadps();
            wanted = stage.gainPerS() * (miss + wound[n]);
        }
        return wanted;
    }

    private double told(int n, int k) {
        if (n == 0) {
            return filtered;
        }
        return stages.get(n).asInner() ? angle : before(moved[n], k, lags * stages.get(n).lateS());
    }

    private double lag(double state, double to, double seconds) {
        return seconds > 0 ? to + (state - to) * Math.exp(-stepS / seconds) : to;
    }

    private double before(double[] track, int k, double seconds) {
        double at = k - seconds / stepS;
        if (at < 0) {
            return 0;
        }
        int whole = (int) at;
        double part = at - whole;
        return part == 0 ? track[whole] : track[whole] + part * (track[whole + 1] - track[whole]);
    }

    Loop.Step figures() {
        double most = 0;
        double tenth = -1;
        double nine = -1;
        int left = 0;
        for (int k = 0; k <= STEPS; k++) {
            most = Math.max(most, answer[k]);
            if (tenth < 0 && answer[k] >= 0.1) {
                tenth = k * stepS;
            }
            if (nine < 0 && answer[k] >= 0.9) {
                nine = k * stepS;
            }
            if (Math.abs(answer[k] - 1) > 0.05) {
                left = k;
            }
        }
        return new Loop.Step(Math.max(0, most - 1), nine < 0 ? 0 : nine - tenth, left * stepS);
    }
}
