package liftwright.trials.predict;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import liftwright.physics.Gravity;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.fault.Effect;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.table.StartState;
import liftwright.trials.Run;

/** The steps of a card as orders to a run on the packs. Fans that are not in it are dead. */
final class CardRun {

    /** Told of every moment of a step. */
    @FunctionalInterface
    interface Listener {
        void at(Discharge run, int step);
    }

    private final Plant plant;
    private final Run run;
    private final boolean[] runs;
    private final Effect others;
    private final int wearerRow;

    CardRun(Plant plant, Run run) {
        this.plant = plant;
        this.run = run;
        Rig rig = plant.rig();
        runs = new boolean[rig.fans().size()];
        List<PartId> ids = rig.fans().stream().map(fan -> fan.id()).toList();
        for (PartId fan : run.fans()) {
            int number = ids.indexOf(fan);
            if (number < 0) {
                throw new IllegalArgumentException("the rig has no fan " + fan);
            }
            runs[number] = true;
        }
        others = Effect.dead(IntStream.range(0, runs.length).filter(k -> !runs[k]).toArray());
        wearerRow =
                rig.wearer().isPresent() && !run.worn()
                        ? plant.parameters().indexOf(RigPath.of("wearer", "mass").toString())
                        : -1;
    }

    Run run() {
        return run;
    }

    /** Whether a fan turns. */
    boolean turns(int fan) {
        return runs[fan];
    }

    /** Weight of what is lifted, N: without the wearer where nobody is in the rig. */
    double weightN(double[] p) {
        double without = wearerRow < 0 ? 0 : p[wearerRow] * Gravity.STANDARD_MPS2;
        return plant.weightN(p) - without;
    }

    void begin(Discharge of, StartState from) {
        of.start(from);
        of.fail(others);
    }

    /**
     * Follows a step: the rise, then the hold.
     *
     * @param pieceS longest time between two moments that are told, s
     * @return whether it was followed to its end
     */
    boolean follow(Discharge of, int step, double weightN, double pieceS, Listener listener) {
        Run.Step at = run.steps().get(step);
        Order rise = rise(of, at, step, weightN);
        return pieces(of, rise, at.riseS(), pieceS, step, listener)
                && pieces(of, held(at.level(), weightN), at.holdS(), pieceS, step, listener);
    }

    /** Holds the level of a step for longer. */
    boolean hold(Discharge of, int step, double weightN, double forS) {
        return of.follow(held(run.steps().get(step).level(), weightN), forS, moment -> {});
    }

    private static boolean pieces(
            Discharge of, Order order, double forS, double pieceS, int step, Listener listener) {
        int count = Math.max(1, (int) Math.ceil(forS / pieceS - 1e-9));
        for (int k = 0; k < count; k++) {
            if (!of.follow(order, forS / count, moment -> listener.at(moment, step))) {
                return false;
            }
        }
        return true;
    }

    private static Order held(Run.Level level, double weightN) {
        return switch (level) {
            case Run.Level.Throttle(double share) -> new Order.Throttle(share);
            case Run.Level.OfWeight(double ofWeight) -> new Order.Lift(ofWeight * weightN);
        };
    }

    private Order rise(Discharge of, Run.Step at, int step, double weightN) {
        double now = of.timeS();
        double then = now + at.riseS();
        return switch (at.level()) {
            case Run.Level.Throttle(double share) ->
                    new Order.Ramp(
                            now, then, all(step == 0 ? 0 : of.fans().throttle()), all(share));
            case Run.Level.OfWeight(double ofWeight) ->
                    new Order.LiftRamp(
                            now, then, step == 0 ? 0 : of.fans().liftN(), ofWeight * weightN);
        };
    }

    private double[] all(double share) {
        double[] throttles = new double[runs.length];
        Arrays.setAll(throttles, fan -> runs[fan] ? share : 0);
        return throttles;
    }
}
