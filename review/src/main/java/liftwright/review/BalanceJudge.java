package liftwright.review;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Outcome;
import liftwright.numerics.Work;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.Plant;
import liftwright.rig.Rig;

/** Judges what steering has left at lift-off against its demand ({@link Pursuit}). */
record BalanceJudge(Steering steering, Settings settings) implements Judging<BalanceJudgement> {

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
    public Optional<BalanceJudgement> judge(Plant plant, Work work) {
        return judge(sample(plant, Sample.asDeclared(plant)), Stage.WHOLE, work);
    }

    /** As far as a stage goes, on draws that may be there already. */
    Optional<BalanceJudgement> judge(BalanceSample sample, Stage stage, Work work) {
        Plant plant = sample.plant;
        Optional<Pursuit> pursued = Pursuit.of(stage, sample, demand(plant.rig()), settings, work);
        if (pursued.isEmpty()) {
            return Optional.empty();
        }
        int draws = pursued.get().draws();
        Outcome byNumbers = pursued.get().outcome();
        Balancing.Worker worker = sample.balancing().worker();
        double[] p = sample.balancing().parameters().nominal();
        HoverPoint point = worker.liftOff(p);
        int failed = sample.failed(draws);
        double nominal = sample.left(worker, p, point);
        List<String> downgrades = Downgrades.of(plant.rig(), point.converged(), failed, draws);
        downgrades.addAll(BalanceEvidence.beyondBeams(point));
        return Optional.of(
                new BalanceJudgement(
                        byNumbers,
                        Downgrades.applied(byNumbers, !point.converged() || failed > 0, downgrades),
                        nominal,
                        Bands.about(nominal, sample.values(draws)),
                        point,
                        steering,
                        draws,
                        failed,
                        downgrades,
                        sample));
    }

    @Override
    public String field() {
        return steering.field();
    }
}
