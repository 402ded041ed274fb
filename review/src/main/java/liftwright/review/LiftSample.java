package liftwright.review;

import java.util.Arrays;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.plant.Workspace;
import liftwright.plant.parameters.ImpossibleValueException;

/** Usable lift and weight of one plant over the draws of its declared doubt. */
final class LiftSample extends Sample<LiftSample.Scratch> {

    private final CutOffs cutOffs;
    private final double nominalWeightN;
    private double[] liftN = new double[0];
    private double[] weightN = new double[0];

    LiftSample(Plant plant, double[] widthScale, Settings settings) {
        super(plant, widthScale, settings);
        this.cutOffs = new CutOffs(plant.rig());
        this.nominalWeightN = plant.weightN(plant.parameters().nominal());
    }

    /** An operating point to be found. */
    static final class Scratch {
        final Workspace workspace;
        final SteadyState state;
        final double[] p;

        Scratch(Plant plant) {
            workspace = plant.workspace();
            state = plant.state();
            p = new double[plant.parameters().size()];
        }
    }

    @Override
    Scratch scratch() {
        return new Scratch(plant);
    }

    @Override
    void reserve(int target) {
        liftN = Arrays.copyOf(liftN, target);
        weightN = Arrays.copyOf(weightN, target);
    }

    @Override
    boolean solve(Scratch scratch, int draw) {
        try {
            plant.parameters().draw(settings.seed(), draw, widthScale, scratch.p);
        } catch (ImpossibleValueException beyond) {
            weightN[draw] = nominalWeightN;
            return false;
        }
        plant.solve(scratch.p, Effects.ALL, scratch.workspace, scratch.state);
        liftN[draw] = scratch.state.converged() ? cutOffs.usableLiftN(scratch.state) : 0;
        weightN[draw] = plant.weightN(scratch.p);
        return scratch.state.converged();
    }

    /** Lift over weight. */
    @Override
    double[] values(int draws) {
        double[] ratios = new double[draws];
        for (int i = 0; i < draws; i++) {
            ratios[i] = liftN[i] / weightN[i];
        }
        return ratios;
    }

    double[] lifts(int draws) {
        return Arrays.copyOf(liftN, draws);
    }

    double[] weights(int draws) {
        return Arrays.copyOf(weightN, draws);
    }
}
