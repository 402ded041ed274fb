package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.rig.table.StartState;

/**
 * "How long must I wait?": the least pause at no throttle after which another flight like the last
 * stays within every limit, its own rest included. Found by halving; every pause tried is run. On
 * the same packs, and on fresh ones put in at once.
 */
final class HeatWaits {

    /** Longer than this nobody waits, s. */
    static final double LONGEST_S = 4 * 3600.0;

    /** A wait is found to this share of itself, and no closer than {@link #CLOSE_S}. */
    private static final double CLOSE_SHARE = 0.01;

    private static final double CLOSE_S = 1;

    private static final List<Double> PAUSES_S = List.of(10.0, 30.0, 60.0, 120.0, 300.0, 900.0);

    private final Plant plant;
    private final HeatFlight next;
    private final HeatParts parts;
    private final boolean lastWasWithin;

    private HeatWaits(Plant plant, HeatFlight next, HeatParts parts, boolean lastWasWithin) {
        this.plant = plant;
        this.next = next;
        this.parts = parts;
        this.lastWasWithin = lastWasWithin;
    }

    /** Of hops the next flight is one more of them. */
    static Section table(Plant plant, HeatParts parts, HeatFlight flight, HeatRun run, Work work) {
        Task task = flight.task() instanceof Task.Hops ? new Task.Hover() : flight.task();
        var next = new HeatFlight(flight.rig(), task, Optional.empty(), flight.weightN());
        var waits = new HeatWaits(plant, next, parts, run.askedFirst().isEmpty());
        List<List<Value>> rows = new ArrayList<>();
        rows.add(waits.row("the same packs", run.left(), work));
        rows.add(waits.row("fresh packs, put in at once", fresh(plant, run.left()), work));
        return new Section.Table(
                "waits",
                "How long to wait before another flight like the last",
                List.of("with", "wait", "next-flight", "ended-by"),
                rows);
    }

    /**
     * The next flight after each of some pauses, on fresh packs, when the last one ended at its
     * first limit or as asked.
     */
    static Section pauses(Plant plant, HeatParts parts, HeatFlight flight) {
        Task task = flight.task() instanceof Task.Hops ? new Task.Hover() : flight.task();
        var next = new HeatFlight(flight.rig(), task, Optional.empty(), flight.weightN());
        var waits = new HeatWaits(plant, next, parts, true);
        Discharge last = HeatJudge.declared(plant, true);
        flight.begin(last);
        flight.asked(last, moment -> {});
        StartState left = fresh(plant, last.stateNow());
        List<List<Value>> rows = new ArrayList<>();
        for (double pauseS : PAUSES_S) {
            Trial after = waits.trial(waits.rested(left, pauseS), 0);
            rows.add(
                    List.of(
                            Value.of("pause", pauseS),
                            Value.of("next-flight", after.flownS()),
                            Value.words("ended-by", after.end())));
        }
        return new Section.Table(
                "pauses",
                "The next flight after a pause, fresh packs, when the last ended at its first limit or as"
                        + " asked",
                List.of("pause", "next-flight", "ended-by"),
                rows);
    }

    /** What a state becomes in a pause; a limit that it still stands at is the last flight's. */
    private StartState rested(StartState left, double pauseS) {
        Discharge run = HeatJudge.declared(plant, false);
        run.start(left);
        run.follow(new Order.Throttle(0), pauseS, moment -> {});
        return fresh(plant, run.stateNow());
    }

    /** The same, with packs as they are declared. */
    private static StartState fresh(Plant plant, StartState left) {
        List<String> packs = plant.rig().packs().stream().map(pack -> pack.id().text()).toList();
        return new StartState(
                left.file(),
                left.rows().stream().filter(row -> !packs.contains(row.part())).toList());
    }

    private List<Value> row(String with, StartState left, Work work) {
        Trial now = trial(left, 0);
        return List.of(
                Value.words("with", with),
                wait(left, now, work),
                Value.of("next-flight", now.flownS()),
                Value.words("ended-by", now.end()));
    }

    private Value wait(StartState left, Trial now, Work work) {
        if (!lastWasWithin) {
            return new Value(
                    "wait", new Value.Figure.NotComputed("the last flight passed a limit itself"));
        }
        if (now.within()) {
            return Value.of("wait", 0);
        }
        Trial late = trial(left, LONGEST_S);
        if (!late.within()) {
            return new Value(
                    "wait", new Value.Figure.NotComputed("no wait is enough: " + late.end()));
        }
        double shortS = 0;
        double enoughS = LONGEST_S;
        while (enoughS - shortS > Math.max(CLOSE_S, CLOSE_SHARE * enoughS) && !work.stopped()) {
            // Waits differ by their size: the first halvings go down from hours to minutes.
            double middle = shortS == 0 ? Math.max(CLOSE_S, enoughS / 4) : (shortS + enoughS) / 2;
            if (trial(left, middle).within()) {
                enoughS = middle;
            } else {
                shortS = middle;
            }
        }
        return Value.of("wait", enoughS);
    }

    /**
     * A flight after a pause.
     *
     * @param flownS time in the air until its first limit, at most as asked
     * @param end what ended it, in words
     */
    private record Trial(boolean within, double flownS, String end) {}

    private Trial trial(StartState left, double pauseS) {
        Discharge run = HeatJudge.declared(plant, true);
        run.start(left);
        boolean rested = pauseS == 0 || run.follow(new Order.Throttle(0), pauseS, moment -> {});
        double restedS = run.timeS();
        boolean whole = rested && next.asked(run, moment -> {});
        double flownS = Math.min(run.timeS() - restedS, run.firstS() - restedS);
        if (whole) {
            next.soak(run, moment -> {});
        }
        String end =
                run.ended()
                        .map(at -> CauseWords.told(plant.rig(), parts, at))
                        .orElse("nothing: as long as asked");
        return new Trial(
                run.ended().isEmpty() && !run.failed(),
                Math.max(0, Math.min(flownS, next.askedS())),
                end);
    }
}
