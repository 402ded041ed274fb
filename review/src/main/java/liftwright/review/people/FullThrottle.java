package liftwright.review.people;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import liftwright.answer.Value;
import liftwright.numerics.Quantiles;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.plant.Workspace;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.quantity.Band;

/**
 * Every fan at full throttle on full packs, the worst for whoever stands near: at the declared
 * values, and over draws of their doubt.
 */
final class FullThrottle {

    private static final double TAIL = 0.025;

    /** With fewer draws that have an operating point no band is told. */
    private static final int LEAST_DRAWS = 128;

    private static final String METHOD = "sampled from the declared tolerances";

    /** One operating point and what was drawn with it. Arrays count as the rig's fans. */
    static final class Moment {
        /** A vector of {@link Numbers#table}. */
        final double[] own;

        final double[] speedRadps;
        final double[] thrustN;
        final double[] shaftW;
        final double densityKgpm3;
        final double massKg;

        /** Power that the cells give up. */
        final double sourceW;

        /** What each pack stores when it is full. */
        final double[] storedJ;

        private Moment(Plant plant, double[] p, double[] own, SteadyState state) {
            this.own = own;
            int fans = state.fans();
            speedRadps = new double[fans];
            thrustN = new double[fans];
            shaftW = new double[fans];
            for (int k = 0; k < fans; k++) {
                if (state.fanFed(k)) {
                    speedRadps[k] = state.fanSpeedRadps(k);
                    thrustN[k] = Math.max(0, state.fanThrustN(k));
                    shaftW[k] = state.fanShaftW(k);
                }
            }
            densityKgpm3 = plant.siteDensityKgpm3(p);
            massKg = plant.massKg(p);
            sourceW = state.sourceW();
            storedJ = new double[state.packs()];
            for (int k = 0; k < storedJ.length; k++) {
                storedJ[k] = plant.storedJ(p, k);
            }
        }
    }

    private final Moment declared;
    private final List<Moment> drawn;

    private FullThrottle(Moment declared, List<Moment> drawn) {
        this.declared = declared;
        this.drawn = drawn;
    }

    /**
     * Empty where the declared values have no operating point. A draw that has none, or a number
     * that cannot be, is left out.
     */
    static Optional<FullThrottle> of(Plant plant, Numbers numbers, long seed, int draws) {
        Workspace workspace = plant.workspace();
        SteadyState state = plant.state();
        Effects full = Effects.ALL.withCharge(false);
        double[] p = plant.parameters().nominal();
        plant.solve(p, full, workspace, state);
        if (!state.converged()) {
            return Optional.empty();
        }
        Moment declared = new Moment(plant, p, numbers.table().nominal(), state);
        List<Moment> drawn = new ArrayList<>();
        for (int draw = 0; draw < draws; draw++) {
            double[] own = new double[numbers.table().size()];
            try {
                plant.parameters().draw(seed, draw, p);
                numbers.table().draw(seed, draw, own);
            } catch (ImpossibleValueException beyond) {
                continue;
            }
            plant.solve(p, full, workspace, state);
            if (state.converged()) {
                drawn.add(new Moment(plant, p, own, state));
            }
        }
        return Optional.of(new FullThrottle(declared, drawn));
    }

    Moment declared() {
        return declared;
    }

    /** Band of a number over the draws; empty with too few, and where nothing of it is in doubt. */
    Optional<Band> band(ToDoubleFunction<Moment> number) {
        if (drawn.size() < LEAST_DRAWS) {
            return Optional.empty();
        }
        double[] sorted = drawn.stream().mapToDouble(number).toArray();
        Arrays.sort(sorted);
        if (sorted[0] == sorted[sorted.length - 1]) {
            return Optional.empty(); // known exactly, as declared
        }
        return Optional.of(
                new Band(
                        Quantiles.ofSorted(sorted, TAIL),
                        Quantiles.ofSorted(sorted, 1 - TAIL),
                        1 - 2 * TAIL,
                        METHOD,
                        sorted.length,
                        Math.max(
                                Quantiles.standardError(sorted, TAIL),
                                Quantiles.standardError(sorted, 1 - TAIL))));
    }

    /** A number with its band. */
    Value value(String field, ToDoubleFunction<Moment> number) {
        return Value.of(field, number.applyAsDouble(declared), band(number));
    }
}
