package liftwright.review;

import java.util.Arrays;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.plant.Workspace;
import liftwright.plant.parameters.ImpossibleValueException;

/** Usable lift and weight of one plant over the draws of its declared doubt. */
final class LiftSample implements Sample {

    private final Plant plant;
    private final double[] widthScale;
    private final Settings settings;
    private final CutOffs cutOffs;
    private final double nominalWeightN;
    private double[] liftN = new double[0];
    private double[] weightN = new double[0];
    private boolean[] solved = new boolean[0];
    private int count;

    /**
     * @param widthScale factor on the doubt of each declared input, in the order of the parameter
     *     table's inputs
     */
    LiftSample(Plant plant, double[] widthScale, Settings settings) {
        this.plant = plant;
        this.widthScale = widthScale.clone();
        this.settings = settings;
        this.cutOffs = new CutOffs(plant.rig());
        this.nominalWeightN = plant.weightN(plant.parameters().nominal());
    }

    static LiftSample of(Plant plant, Settings settings) {
        double[] asDeclared = new double[plant.parameters().inputs().size()];
        Arrays.fill(asDeclared, 1);
        return new LiftSample(plant, asDeclared, settings);
    }

    private static final class Scratch {
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
    public boolean extendTo(int target, Work work) {
        if (target <= count) {
            return true;
        }
        liftN = Arrays.copyOf(liftN, target);
        weightN = Arrays.copyOf(weightN, target);
        solved = Arrays.copyOf(solved, target);
        count =
                Draws.forEach(
                        work,
                        settings.threads(),
                        count,
                        target,
                        () -> new Scratch(plant),
                        (scratch, draw) -> {
                            solved[draw] = solve(scratch, draw);
                        });
        return count >= target;
    }

    /**
     * Whether the draw has an operating point; one that has none counts as no lift, and is counted.
     */
    private boolean solve(Scratch scratch, int draw) {
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

    int count() {
        return count;
    }

    @Override
    public int failed(int draws) {
        int failed = 0;
        for (int i = 0; i < draws; i++) {
            failed += solved[i] ? 0 : 1;
        }
        return failed;
    }

    /** Lift over weight. */
    @Override
    public double[] values(int draws) {
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
