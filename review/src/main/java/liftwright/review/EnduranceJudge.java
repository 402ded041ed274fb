package liftwright.review;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Outcome;
import liftwright.numerics.Work;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;

/** Judges the time in the air against its demand ({@link Pursuit}). */
record EnduranceJudge(Task task, Settings settings) implements Judging<EnduranceJudgement> {

    @Override
    public double demand(Rig rig) {
        return task.demandS(rig);
    }

    @Override
    public Optional<String> demandAt() {
        return task instanceof Task.Trace ? Optional.empty() : Optional.of("demands/hover");
    }

    @Override
    public EnduranceSample sample(Plant plant, double[] widthScale) {
        return new EnduranceSample(plant, task, widthScale, settings);
    }

    @Override
    public double nominal(Plant plant) {
        return run(plant, declared(plant, true));
    }

    private double run(Plant plant, Discharge run) {
        return task.run(
                plant.rig(), run, plant.weightN(plant.parameters().nominal()), moment -> {});
    }

    /** A run at the declared values, ready to go. */
    static Discharge declared(Plant plant, boolean stopsAtFirst) {
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        run.stopAtFirst(stopsAtFirst);
        run.start();
        return run;
    }

    @Override
    public Optional<EnduranceJudgement> judge(Plant plant, Work work) {
        return judge(sample(plant, Sample.asDeclared(plant)), Stage.WHOLE, work);
    }

    /** As far as a stage goes, on draws that may be there already. */
    Optional<EnduranceJudgement> judge(EnduranceSample sample, Stage stage, Work work) {
        Plant plant = sample.plant;
        Optional<Pursuit> pursued = Pursuit.of(stage, sample, demand(plant.rig()), settings, work);
        if (pursued.isEmpty()) {
            return Optional.empty();
        }
        int draws = pursued.get().draws();
        Outcome byNumbers = pursued.get().outcome();
        int failed = sample.failed(draws);
        Discharge run = declared(plant, true);
        double nominal = run(plant, run);
        List<String> downgrades = Downgrades.of(plant.rig(), !run.failed(), failed, draws);
        return Optional.of(
                new EnduranceJudgement(
                        byNumbers,
                        Downgrades.applied(byNumbers, run.failed() || failed > 0, downgrades),
                        nominal,
                        Bands.about(nominal, sample.values(draws)),
                        draws,
                        failed,
                        downgrades,
                        sample));
    }

    @Override
    public String field() {
        return "time-in-the-air";
    }
}
