package liftwright.review;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Outcome;
import liftwright.numerics.Work;
import liftwright.plant.Effects;
import liftwright.plant.OperatingLimit;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.rig.Rig;

/** Judges lift over weight against its demand ({@link Pursuit}), laws and solver included. */
record LiftJudge(Settings settings) implements Judging<LiftJudgement> {

    @Override
    public double demand(Rig rig) {
        return rig.demands().thrustToWeight().si();
    }

    @Override
    public Optional<String> demandAt() {
        return Optional.of("demands/thrust to weight");
    }

    @Override
    public double nominal(Plant plant) {
        return new CutOffs(plant.rig()).usableLiftN(atDeclared(plant))
                / plant.weightN(plant.parameters().nominal());
    }

    private static SteadyState atDeclared(Plant plant) {
        SteadyState state = plant.state();
        plant.solve(plant.parameters().nominal(), Effects.ALL, plant.workspace(), state);
        return state;
    }

    @Override
    public LiftSample sample(Plant plant, double[] widthScale) {
        return new LiftSample(plant, widthScale, settings);
    }

    @Override
    public Optional<LiftJudgement> judge(Plant plant, Work work) {
        return judge(sample(plant, Sample.asDeclared(plant)), Stage.WHOLE, work);
    }

    /** As far as a stage goes, on draws that may be there already. */
    Optional<LiftJudgement> judge(LiftSample sample, Stage stage, Work work) {
        Plant plant = sample.plant;
        SteadyState nominal = atDeclared(plant);
        double[] p = plant.parameters().nominal();
        double weightN = plant.weightN(p);
        double liftN = new CutOffs(plant.rig()).usableLiftN(nominal);

        Optional<Pursuit> pursued = Pursuit.of(stage, sample, demand(plant.rig()), settings, work);
        if (pursued.isEmpty()) {
            return Optional.empty();
        }
        Outcome byNumbers = pursued.get().outcome();
        int draws = pursued.get().draws();
        int failed = sample.failed(draws);
        List<String> downgrades = downgrades(plant, p, nominal, failed, draws);
        boolean unsolved = failed > 0 || !nominal.converged() || !closes(nominal);
        return Optional.of(
                new LiftJudgement(
                        byNumbers,
                        Downgrades.applied(byNumbers, unsolved, downgrades),
                        liftN / weightN,
                        liftN,
                        weightN,
                        Bands.about(liftN / weightN, sample.values(draws)),
                        Bands.about(liftN, sample.lifts(draws)),
                        Bands.about(weightN, sample.weights(draws)),
                        draws,
                        failed,
                        downgrades,
                        sample));
    }

    @Override
    public String field() {
        return "thrust-to-weight";
    }

    private static boolean closes(SteadyState state) {
        return state.closure() <= LiftChecks.POWER_CLOSURE;
    }

    private static List<String> downgrades(
            Plant plant, double[] p, SteadyState nominal, int failed, int draws) {
        List<String> reasons = Downgrades.of(plant.rig(), nominal.converged(), failed, draws);
        if (!closes(nominal)) {
            reasons.add("the power of the network does not close");
        }
        Set<OperatingLimit.Kind> seen = EnumSet.noneOf(OperatingLimit.Kind.class);
        for (OperatingLimit limit : plant.limits(p, nominal)) {
            if (limit.exceeded() && seen.add(limit.kind())) {
                beyondItsLaw(limit).ifPresent(reasons::add);
            }
        }
        return reasons;
    }

    /** Said once for each law, at the first part that leaves it. */
    private static Optional<String> beyondItsLaw(OperatingLimit limit) {
        return switch (limit.kind()) {
            case INTAKE_LOSS ->
                    Optional.of(
                            "the intake of "
                                    + limit.part()
                                    + " loses more than the law covers: a measured pressure–flow"
                                    + " curve would tell");
            case TIP_MACH ->
                    Optional.of(
                            "the blade tips of "
                                    + limit.part()
                                    + " are faster than the law covers: thrust measured at that"
                                    + " speed would tell");
            case ROTOR_SPEED,
                    ELECTRICAL_SPEED,
                    CONTROLLER_VOLTAGE,
                    CAPACITOR_VOLTAGE,
                    CONTROLLER_CURRENT,
                    CUT_OFF,
                    JOINT_CURRENT,
                    FUSE_CURRENT,
                    FUSE_BREAKING,
                    FUSE_VOLTAGE,
                    CONTACTOR_CURRENT,
                    CONTACTOR_BREAKING,
                    CONTACTOR_VOLTAGE,
                    CELL_UNDER_LOAD,
                    CELL_CONTINUOUS_CURRENT,
                    CELL_PEAK_CURRENT,
                    REVERSE_CURRENT,
                    HAZARDOUS_VOLTAGE ->
                    Optional.empty();
        };
    }
}
