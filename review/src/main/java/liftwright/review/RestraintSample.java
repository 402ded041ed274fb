package liftwright.review;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import liftwright.plant.Holding;
import liftwright.plant.Plant;
import liftwright.plant.hold.Ask;
import liftwright.plant.hold.Footprint;
import liftwright.plant.hold.Held;
import liftwright.plant.hold.HoldMemory;
import liftwright.plant.parameters.ImpossibleValueException;

/** The least margin of what holds a rig over the draws of its declared doubt. */
final class RestraintSample extends Sample<RestraintSample.Scratch> {

    /** Margins of single lines are kept for so many draws. */
    static final int TOLD_DRAWS = 256;

    private final Map<Line, double[]> lines = new TreeMap<>();
    private final HoldMemory memory;
    private final boolean tells;
    private double[] margin = new double[0];

    /** A line of the tables. */
    private record Line(Ask.What what, int edge) implements Comparable<Line> {

        static Line of(Ask ask) {
            return new Line(
                    ask.what(),
                    ask.what() == Ask.What.TIPS
                            ? ask.over().map(Footprint.Edge::ordinal).orElse(-1)
                            : -1);
        }

        @Override
        public int compareTo(Line other) {
            int byWhat = what.compareTo(other.what);
            return byWhat != 0 ? byWhat : Integer.compare(edge, other.edge);
        }
    }

    /**
     * @param memory what is known of the rig already
     * @param told lines whose margins are kept, as found at the declared values; empty where none
     *     are
     */
    RestraintSample(
            Plant plant,
            double[] widthScale,
            Settings settings,
            HoldMemory memory,
            List<Ask> told) {
        super(plant, widthScale, settings);
        this.memory = memory;
        tells = !told.isEmpty();
        for (Ask ask : told) {
            double[] none = new double[TOLD_DRAWS];
            Arrays.fill(none, Double.POSITIVE_INFINITY);
            lines.put(Line.of(ask), none);
        }
    }

    /** Something to be held. */
    static final class Scratch {
        final Holding holding;
        final double[] p;

        Scratch(Plant plant, HoldMemory memory) {
            holding = plant.holding(memory);
            p = new double[plant.parameters().size()];
        }
    }

    @Override
    Scratch scratch() {
        return new Scratch(plant, memory);
    }

    @Override
    void reserve(int target) {
        margin = Arrays.copyOf(margin, target);
    }

    @Override
    boolean solve(Scratch scratch, int draw) {
        margin[draw] = -1;
        try {
            plant.parameters().draw(settings.seed(), draw, widthScale, scratch.p);
        } catch (ImpossibleValueException beyond) {
            return false;
        }
        Optional<Held> held = scratch.holding.at(scratch.p, false);
        OptionalDouble least = held.map(Held::margin).orElseGet(OptionalDouble::empty);
        if (least.isEmpty()) {
            return false;
        }
        margin[draw] = least.getAsDouble();
        if (tells && draw < TOLD_DRAWS) {
            for (Ask ask : held.get().asks()) {
                double[] kept = lines.get(Line.of(ask));
                if (kept != null && ask.margin().isPresent()) {
                    kept[draw] = Math.min(kept[draw], ask.margin().getAsDouble());
                }
            }
        }
        return true;
    }

    @Override
    double[] values(int draws) {
        return Arrays.copyOf(margin, draws);
    }

    /** Margins of one line over the draws it was asked in; finite ones alone. */
    double[] margins(Ask ask, int draws) {
        double[] kept = lines.get(Line.of(ask));
        return kept == null
                ? new double[0]
                : Arrays.stream(kept, 0, Math.min(draws, TOLD_DRAWS))
                        .filter(Double::isFinite)
                        .toArray();
    }
}
