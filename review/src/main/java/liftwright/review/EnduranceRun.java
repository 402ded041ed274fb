package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.Cause;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;

/**
 * The run at the declared values, as long as it can go, with what was seen on the way.
 *
 * @param run where it ended; asked when each pack reaches each limit
 * @param end the first limit
 * @param moments some moments from the start to the first limit (or to the end of the task)
 * @param curve every step of the run, as far as it can go
 * @param worstClosure greatest power unaccounted for at any step, over all power
 * @param ratioAtMark lift over weight at full throttle at the marks of a hover that are reached
 * @param byHandS the reckoning without sag: charge above the reserve over the first current, s
 */
record EnduranceRun(
        Discharge run,
        Optional<Discharge.End> end,
        List<Moment> moments,
        List<Step> curve,
        double worstClosure,
        List<OptionalDouble> ratioAtMark,
        double byHandS) {

    private static final int MOMENTS = 8;

    /** One moment; figures of the pack whose cell is lowest. */
    record Moment(
            double timeS,
            double throttle,
            int pack,
            double packA,
            double packV,
            double leastCellV,
            int weakestCell,
            double chargeLeft) {}

    /**
     * What the cells have at one step.
     *
     * @param leastCellV of all cells, V
     * @param leastChargeLeft in the emptiest cell of all, share
     */
    record Step(double timeS, double leastCellV, double leastChargeLeft) {}

    static EnduranceRun of(Plant plant, Task task) {
        double[] p = plant.parameters().nominal();
        double weightN = plant.weightN(p);
        Discharge run = EnduranceJudge.declared(plant, false);
        double[] worst = {0};
        List<Step> curve = new ArrayList<>();
        task.run(
                plant.rig(),
                run,
                weightN,
                at -> {
                    worst[0] = Math.max(worst[0], at.network().closure());
                    curve.add(step(plant, at));
                });
        Optional<Discharge.End> end = run.ended();
        double lastS = end.map(Discharge.End::timeS).orElse(run.timeS());
        return new EnduranceRun(
                run,
                end,
                moments(plant, task, weightN, lastS),
                curve,
                worst[0],
                marks(plant, task, weightN),
                byHand(plant, weightN));
    }

    /** The run once more, noting the steps that come first after even shares of its time. */
    private static List<Moment> moments(Plant plant, Task task, double weightN, double lastS) {
        List<Moment> seen = new ArrayList<>();
        Discharge again = EnduranceJudge.declared(plant, true);
        Moment[] last = new Moment[1];
        task.run(
                plant.rig(),
                again,
                weightN,
                at -> {
                    if (at.timeS() > lastS) {
                        return; // the step that the end lies in
                    }
                    last[0] = moment(plant, at);
                    if (at.timeS() >= seen.size() * lastS / MOMENTS) {
                        seen.add(last[0]);
                    }
                });
        if (last[0] != null && (seen.isEmpty() || seen.getLast().timeS() < last[0].timeS())) {
            seen.add(last[0]);
        }
        return seen;
    }

    private static Step step(Plant plant, Discharge at) {
        double volt = Double.POSITIVE_INFINITY;
        double charge = Double.POSITIVE_INFINITY;
        for (int pack = 0; pack < plant.rig().packs().size(); pack++) {
            volt = Math.min(volt, at.leastCellV(pack));
            charge = Math.min(charge, at.leastChargeLeft(pack));
        }
        return new Step(at.timeS(), volt, Math.max(0, charge));
    }

    private static Moment moment(Plant plant, Discharge at) {
        int lowest = 0;
        for (int pack = 1; pack < plant.rig().packs().size(); pack++) {
            if (at.leastCellV(pack) < at.leastCellV(lowest)) {
                lowest = pack;
            }
        }
        return new Moment(
                at.timeS(),
                at.fans().throttle(),
                lowest,
                at.packA(lowest),
                at.network().packTerminalV(lowest),
                at.leastCellV(lowest),
                at.weakestCell(lowest),
                at.leastChargeLeft(lowest));
    }

    private static List<OptionalDouble> marks(Plant plant, Task task, double weightN) {
        int marks = EnduranceSample.MARKS_S.length;
        double[][] ratio = new double[marks][1];
        boolean[][] reached = new boolean[marks][1];
        EnduranceSample.marks(
                plant.rig(),
                task,
                EnduranceJudge.declared(plant, true),
                weightN,
                0,
                ratio,
                reached);
        List<OptionalDouble> found = new ArrayList<>();
        for (int mark = 0; mark < marks; mark++) {
            found.add(
                    reached[mark][0] ? OptionalDouble.of(ratio[mark][0]) : OptionalDouble.empty());
        }
        return found;
    }

    /** Least over the packs; 0 where no current flows at the start. */
    private static double byHand(Plant plant, double weightN) {
        Discharge start = EnduranceJudge.declared(plant, true);
        start.follow(new liftwright.plant.Order.Lift(weightN), 0, run -> {});
        double reserve = plant.rig().demands().reserve().si();
        double least = Double.POSITIVE_INFINITY;
        for (int pack = 0; pack < plant.rig().packs().size(); pack++) {
            double ampere = start.packA(pack);
            double left =
                    start.packCapacityAs(pack)
                            * (plant.rig().packs().get(pack).charge().si() - reserve);
            if (ampere > 0) {
                least = Math.min(least, Math.max(0, left / ampere));
            }
        }
        return least < Double.POSITIVE_INFINITY ? least : 0;
    }

    /** Time of a cause in a pack, s. */
    OptionalDouble reached(Cause cause, int pack) {
        return run.reached(cause, pack);
    }
}
