package liftwright.review;

import java.util.List;
import java.util.Optional;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.Plant;
import liftwright.rig.Rig;

/** Judges what steering has left at lift-off against its demand ({@link Pursuit}). */
record BalanceJudge(Steering steering, Settings settings)
        implements Judging<BalanceJudgement, BalanceSample> {

    @Override
    public double demand(Rig rig) {
        return steering.demand(rig.limits());
    }

    /** Nothing in the file asks for it yet. */
    @Override
    public Optional<String> demandAt() {
        return Optional.empty();
    }

    @Override
    public double nominal(Plant plant) {
        return nominal(plant.balancing());
    }

    static double nominal(Balancing balancing) {
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        Steering steering = Steering.of(balancing);
        return steering.left(
                worker,
                p,
                worker.liftOff(p),
                steering.reaches(balancing),
                balancing.rig().limits());
    }

    @Override
    public BalanceSample sample(Plant plant, double[] widthScale) {
        return new BalanceSample(plant, widthScale, settings);
    }

    /** One that also tells what turns the rig and what the arms hold. */
    BalanceSample telling(Plant plant) {
        return new BalanceSample(plant, Sample.asDeclared(plant), settings, true);
    }

    @Override
    public BalanceJudgement judgement(Pursuit<BalanceSample> pursued) {
        BalanceSample sample = pursued.sample();
        Balancing.Worker worker = sample.balancing().worker();
        double[] p = sample.balancing().parameters().nominal();
        HoverPoint point = worker.liftOff(p);
        double nominal = sample.left(worker, p, point);
        List<String> downgrades = pursued.downgrades(point.converged());
        downgrades.addAll(BalanceEvidence.beyondBeams(point));
        return new BalanceJudgement(
                pursued.outcome(),
                pursued.outcome(point.converged(), downgrades),
                nominal,
                pursued.band(nominal),
                point,
                steering,
                pursued.draws(),
                pursued.failed(),
                downgrades,
                sample);
    }

    @Override
    public String field() {
        return steering.field();
    }
}
