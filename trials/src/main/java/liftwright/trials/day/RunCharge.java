package liftwright.trials.day;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.fault.Effect;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.trials.Planned;
import liftwright.trials.Run;

/**
 * What one run of a card takes out of each pack, at the declared values and from packs as the rig
 * file declares them. Each level counts from the start of its rise, and a share of weight is one of
 * the whole: rather too much.
 */
public final class RunCharge {

    private final Plant plant;

    /**
     * @param plant assembled in any way
     */
    public RunCharge(Plant plant) {
        this.plant = plant;
    }

    /** Share of full by the id of the pack; empty where nothing runs. */
    public Map<String, Double> of(Planned card) {
        return card.run().map(this::taken).orElse(Map.of());
    }

    private Map<String, Double> taken(Run run) {
        double[] p = plant.parameters().nominal();
        Discharge discharge = plant.discharge();
        discharge.load(p, new CellDraw.Expected());
        discharge.start();
        discharge.fail(others(run));
        List<Pack> packs = plant.rig().packs();
        double[] before = left(discharge, packs.size());
        boolean whole = true;
        for (Run.Step step : run.steps()) {
            Order order =
                    switch (step.level()) {
                        case Run.Level.Throttle(double share) -> new Order.Throttle(share);
                        case Run.Level.OfWeight(double ofWeight) ->
                                new Order.Lift(ofWeight * plant.weightN(p));
                    };
            whole = whole && discharge.follow(order, step.riseS() + step.holdS(), moment -> {});
        }
        double[] after = left(discharge, packs.size());
        Map<String, Double> taken = new HashMap<>();
        for (int k = 0; k < before.length; k++) {
            boolean used = before[k] - after[k] > 0;
            // A run that a full pack does not last for takes more than there is.
            taken.put(packs.get(k).id().text(), whole || !used ? before[k] - after[k] : 1);
        }
        return taken;
    }

    private static double[] left(Discharge discharge, int packs) {
        return IntStream.range(0, packs).mapToDouble(discharge::leastChargeLeft).toArray();
    }

    private Effect others(Run run) {
        List<PartId> ids = plant.rig().fans().stream().map(fan -> fan.id()).toList();
        return Effect.dead(
                IntStream.range(0, ids.size())
                        .filter(fan -> !run.fans().contains(ids.get(fan)))
                        .toArray());
    }
}
