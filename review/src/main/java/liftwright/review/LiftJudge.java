package liftwright.review;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.plant.Effects;
import liftwright.plant.OperatingLimit;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.rig.Rig;

/** Judges lift over weight against its demand ({@link Pursuit}), laws and solver included. */
record LiftJudge(Settings settings) implements Judging<LiftJudgement, LiftSample> {

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
    public LiftJudgement judgement(Pursuit<LiftSample> pursued) {
        LiftSample sample = pursued.sample();
        Plant plant = sample.plant;
        SteadyState nominal = atDeclared(plant);
        double weightN = plant.weightN(plant.parameters().nominal());
        double liftN = new CutOffs(plant.rig()).usableLiftN(nominal);
        int draws = pursued.draws();
        List<String> downgrades = downgrades(pursued, nominal);
        return new LiftJudgement(
                pursued.outcome(),
                pursued.outcome(nominal.converged() && closes(nominal), downgrades),
                liftN / weightN,
                liftN,
                weightN,
                pursued.band(liftN / weightN),
                Bands.about(liftN, sample.lifts(draws)),
                Bands.about(weightN, sample.weights(draws)),
                draws,
                pursued.failed(),
                downgrades,
                sample);
    }

    @Override
    public String field() {
        return "thrust-to-weight";
    }

    private static boolean closes(SteadyState state) {
        return state.closure() <= LiftChecks.POWER_CLOSURE;
    }

    private static List<String> downgrades(Pursuit<LiftSample> pursued, SteadyState nominal) {
        List<String> reasons = pursued.downgrades(nominal.converged());
        if (!closes(nominal)) {
            reasons.add("the power of the network does not close");
        }
        Set<OperatingLimit.Kind> seen = EnumSet.noneOf(OperatingLimit.Kind.class);
        Plant plant = pursued.sample().plant;
        for (OperatingLimit limit : plant.limits(plant.parameters().nominal(), nominal)) {
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
