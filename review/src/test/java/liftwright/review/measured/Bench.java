package liftwright.review.measured;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import liftwright.numerics.Quantiles;
import liftwright.numerics.Roots;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.plant.Workspace;

/**
 * The example rig on a bench: nobody logged the duty, so it is turned until something has its
 * measured value, and then another thing is read.
 */
final class Bench {

    private static final int DRAWS = 399;
    private static final long SEED = 20260101L;

    /** Of the stand where the parts were measured: nothing round the rotor. */
    private static final Effects ON_THE_STAND = Effects.ALL.withInstallation(false);

    /** Least duty tried. */
    private static final double IDLE = 0.02;

    private final Plant plant;
    private final Workspace workspace;
    private final SteadyState state;
    private final int duty;
    private final double[] widths;

    /**
     * @param group the control group whose duty is turned
     */
    Bench(Plant plant, String group) {
        this.plant = plant;
        workspace = plant.workspace();
        state = plant.state();
        duty = plant.parameters().indexOf("control/groups/" + group + "/share");
        // The one unit that gave the coefficients also gave the points: no scatter between units.
        widths =
                plant.parameters().inputs().stream()
                        .mapToDouble(input -> input.at().toString().endsWith("scatter") ? 0 : 1)
                        .toArray();
    }

    int fan(String id) {
        return place(plant.rig().fans().stream().map(fan -> fan.id().text()).toList(), id);
    }

    int pack(String id) {
        return place(plant.rig().packs().stream().map(pack -> pack.id().text()).toList(), id);
    }

    private static int place(List<String> ids, String id) {
        int place = ids.indexOf(id);
        if (place < 0) {
            throw new IllegalArgumentException(id + " is not among " + ids);
        }
        return place;
    }

    /** The number called {@code name} set to a value, for {@link #read}. */
    Consumer<double[]> with(String name, double value) {
        int index = plant.parameters().indexOf(name);
        return p -> p[index] = value;
    }

    /**
     * Turns the duty until {@code gauge} shows {@code wanted}, and reads {@code answer}: with the
     * declared values and over draws of their tolerances.
     */
    Comparison.Point read(
            String name,
            Consumer<double[]> setting,
            ToDoubleFunction<SteadyState> gauge,
            double wanted,
            ToDoubleFunction<SteadyState> answer,
            double measured,
            double byHand) {
        double[] p = plant.parameters().nominal();
        setting.accept(p);
        if (missing(p, 1, gauge, wanted) < 0) {
            throw new AssertionError(name + ": full duty does not take it there");
        }
        double computed = turned(p, gauge, wanted, answer);
        double[] drawn = new double[DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            plant.parameters().draw(SEED, draw, widths, p);
            setting.accept(p);
            drawn[draw] = turned(p, gauge, wanted, answer);
        }
        Arrays.sort(drawn);
        return new Comparison.Point(
                name,
                measured,
                Quantiles.ofSorted(drawn, 0.025),
                computed,
                Quantiles.ofSorted(drawn, 0.975),
                byHand);
    }

    private double turned(
            double[] p,
            ToDoubleFunction<SteadyState> gauge,
            double wanted,
            ToDoubleFunction<SteadyState> answer) {
        if (missing(p, 1, gauge, wanted) < 0) {
            return answer.applyAsDouble(state); // a draw that full duty does not take there
        }
        double root = Roots.bracketed(d -> missing(p, d, gauge, wanted), IDLE, 1, 1e-10);
        missing(p, root, gauge, wanted);
        return answer.applyAsDouble(state);
    }

    private double missing(
            double[] p, double d, ToDoubleFunction<SteadyState> gauge, double wanted) {
        p[duty] = d;
        plant.solve(p, ON_THE_STAND, workspace, state);
        if (!state.converged()) {
            throw new AssertionError("did not settle at duty " + d);
        }
        return gauge.applyAsDouble(state) - wanted;
    }
}
