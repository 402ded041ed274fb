package liftwright.review;

import java.util.HashMap;
import java.util.Map;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.rig.Control;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.table.ThrottleTrace;

/** What the packs are asked to carry. */
public sealed interface Task {

    /** Longest hover that is computed, s. */
    double HORIZON_S = 6 * 3600;

    /** Hover until something ends it. */
    record Hover() implements Task {}

    /**
     * Hops of the hover time that is asked for, with pauses at no throttle between.
     *
     * @param count how many, ≥ 1
     * @param pauseS between two, ≥ 0, s
     */
    record Hops(int count, double pauseS) implements Task {}

    /** A throttle trace from its first row to its last. */
    record Trace(ThrottleTrace trace) implements Task {}

    /** Full throttle, asked for as long as the hover, and on until something ends it. */
    record FullThrottle() implements Task {}

    /** Least time in the air that is asked for, s. */
    default double demandS(Rig rig) {
        return switch (this) {
            case Hover(), FullThrottle() -> rig.demands().hover().si();
            case Hops hops -> hops.count * rig.demands().hover().si();
            case Trace(var trace) -> trace.rows().getLast().timeS();
        };
    }

    /**
     * Runs it on a run that was started.
     *
     * @param weightN weight to hover with, N
     * @param watcher told of every step
     * @return time in the air until the first limit, or until the task or the horizon ends, s
     */
    default double run(Rig rig, Discharge run, double weightN, Discharge.Watcher watcher) {
        return switch (this) {
            case Hover() -> {
                run.follow(new Order.Lift(weightN), HORIZON_S - run.timeS(), watcher);
                yield Math.min(run.firstS(), HORIZON_S);
            }
            case Hops hops -> hops(rig, hops, run, weightN, watcher);
            case Trace(var trace) -> {
                double endS = trace.rows().getLast().timeS();
                follow(rig, trace, run, endS, watcher);
                yield Math.min(run.firstS(), endS);
            }
            case FullThrottle() -> {
                run.follow(new Order.Throttle(1), HORIZON_S - run.timeS(), watcher);
                yield Math.min(run.firstS(), HORIZON_S);
            }
        };
    }

    private static double hops(
            Rig rig, Hops hops, Discharge run, double weightN, Discharge.Watcher watcher) {
        double hoverS = rig.demands().hover().si();
        double airS = 0;
        for (int hop = 0; hop < hops.count; hop++) {
            double startS = run.timeS();
            boolean whole = run.follow(new Order.Lift(weightN), hoverS, watcher);
            if (run.firstS() < Double.POSITIVE_INFINITY) {
                return airS + Math.max(0, Math.min(run.firstS() - startS, hoverS));
            }
            airS += run.timeS() - startS;
            boolean last = hop == hops.count - 1;
            if (!whole || (!last && !run.follow(new Order.Throttle(0), hops.pauseS, watcher))) {
                return airS;
            }
        }
        return airS;
    }

    /**
     * Follows a trace as far as a time of it.
     *
     * @return whether the run went so far
     */
    static boolean follow(
            Rig rig, ThrottleTrace trace, Discharge run, double untilS, Discharge.Watcher watcher) {
        var rows = trace.rows();
        Map<PartId, Integer> column = new HashMap<>();
        for (Control.Group group : rig.control().groups()) {
            int at = Math.max(0, trace.groups().indexOf(group.name()));
            group.fans().forEach(fan -> column.put(fan, at));
        }
        for (int i = 1; i < rows.size() && rows.get(i - 1).timeS() < untilS; i++) {
            var from = rows.get(i - 1);
            var to = rows.get(i);
            double forS = Math.min(to.timeS(), untilS) - Math.max(run.timeS(), from.timeS());
            Order order =
                    switch (trace.command()) {
                        case THROTTLE ->
                                new Order.Ramp(
                                        from.timeS(),
                                        to.timeS(),
                                        perFan(rig, column, from),
                                        perFan(rig, column, to));
                        case LIFT ->
                                new Order.LiftRamp(
                                        from.timeS(),
                                        to.timeS(),
                                        from.values().getFirst(),
                                        to.values().getFirst());
                    };
            if (!run.follow(order, forS, watcher)) {
                return false;
            }
        }
        return true;
    }

    private static double[] perFan(Rig rig, Map<PartId, Integer> column, ThrottleTrace.Row row) {
        return rig.fans().stream()
                .mapToDouble(fan -> row.values().get(column.getOrDefault(fan.id(), 0)))
                .toArray();
    }

    /** In words, as the start of a sentence. */
    default String words() {
        return switch (this) {
            case Hover() -> "hover";
            case Hops(int count, double _) -> count + " hops";
            case Trace(var trace) -> "the trace " + trace.file();
            case FullThrottle() -> "full throttle";
        };
    }
}
