package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
    public double nominal(Plant plant) {
        return task.run(
                plant.rig(),
                declared(plant, true),
                plant.weightN(plant.parameters().nominal()),
                run -> {});
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
        EnduranceSample sample = EnduranceSample.of(plant, task, settings);
        Optional<Pursuit> pursued = Pursuit.of(sample, demand(plant.rig()), settings, work);
        if (pursued.isEmpty()) {
            return Optional.empty();
        }
        int draws = pursued.get().draws();
        Outcome byNumbers = pursued.get().outcome();
        int failed = sample.failed(draws);
        Discharge run = declared(plant, true);
        double nominal =
                task.run(
                        plant.rig(),
                        run,
                        plant.weightN(plant.parameters().nominal()),
                        moment -> {});
        List<String> downgrades = new ArrayList<>(FanClaims.impossible(plant.rig()));
        if (run.failed()) {
            downgrades.add("no operating point was found for the declared values");
        }
        if (failed > 0) {
            downgrades.add(
                    String.format(
                            Locale.ROOT,
                            "no operating point was found in %d of %d draws",
                            failed,
                            draws));
        }
        return Optional.of(
                new EnduranceJudgement(
                        byNumbers,
                        run.failed() || failed > 0
                                ? Outcome.CANNOT_BE_TOLD
                                : downgrades.isEmpty()
                                        ? byNumbers
                                        : byNumbers.downgradedTo(Outcome.CANNOT_BE_TOLD),
                        nominal,
                        Bands.of(sample.values(draws)),
                        draws,
                        failed,
                        downgrades,
                        sample));
    }

    @Override
    public String field() {
        return "time-in-the-air";
    }

    @Override
    public String gainField() {
        return "time-in-the-air-gain";
    }
}
