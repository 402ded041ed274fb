package liftwright.review;

import java.util.List;
import java.util.Optional;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;
import liftwright.rig.Rig;

/** Judges the time in the air against its demand ({@link Pursuit}). */
record EnduranceJudge(Task task, Settings settings)
        implements Judging<EnduranceJudgement, EnduranceSample> {

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
        run.load(plant.parameters().nominal(), plant.cells());
        run.stopAtFirst(stopsAtFirst);
        run.start();
        return run;
    }

    @Override
    public EnduranceJudgement judgement(Pursuit<EnduranceSample> pursued) {
        Plant plant = pursued.sample().plant;
        Discharge run = declared(plant, true);
        double nominal = run(plant, run);
        List<String> downgrades = pursued.downgrades(!run.failed());
        return new EnduranceJudgement(
                pursued.outcome(),
                pursued.outcome(!run.failed(), downgrades),
                nominal,
                pursued.band(nominal),
                pursued.draws(),
                pursued.failed(),
                downgrades,
                pursued.sample());
    }

    @Override
    public String field() {
        return "time-in-the-air";
    }
}
