package liftwright.plant.supply;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import liftwright.numerics.CounterStream;
import liftwright.numerics.Spread;
import liftwright.plant.parameters.ParameterTable;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Pack;
import liftwright.rig.RigPath;

/**
 * What is declared "each" of a value of single cells: how the cells of one pack lie about their
 * mean. Cells side by side count as one, whose error is that of their mean: 1/√(how many).
 *
 * <p>The mean itself is a row of the parameter table. Deviates of n independent normal cells less
 * their mean are independent of that mean, so row and deviates together are n independent cells
 * [JCGM 100, 4.2.3; the usual theorem on normal samples].
 */
final class CellScatter {

    private final double plus;
    private final double minus;
    private final boolean bound;

    /** Address of each group of cells side by side. */
    private final long[] channel;

    private CellScatter(double plus, double minus, boolean bound, long[] channel) {
        this.plus = plus;
        this.minus = minus;
        this.bound = bound;
        this.channel = channel;
    }

    /**
     * @param value empty where tests tell it: they do not tell how cells differ
     */
    static CellScatter of(Pack pack, RigPath at, Optional<Quantity> value) {
        Tolerance one = value.map(Quantity::tolerance).orElse(Tolerance.NONE);
        boolean each = one.scope() == Tolerance.Scope.EACH;
        double share = each ? 1 / Math.sqrt(pack.parallel()) : 0;
        long[] channel = new long[pack.series()];
        for (int cell = 0; cell < channel.length; cell++) {
            channel[cell] = CounterStream.channel(pack.id() + ": " + at + ": cell " + (cell + 1));
        }
        return new CellScatter(
                one.plus() * share,
                one.minus() * share,
                one.form() == Tolerance.Form.BOUND,
                channel);
    }

    private record Place(CellScatter pack, int cell, int at) {}

    /**
     * Deviations as they are expected over the whole rig: Blom's normal scores.
     *
     * @param packs of all packs
     * @param start where each pack's cells begin
     * @param deviation takes them, about the mean of each pack
     */
    static void spread(List<CellScatter> packs, int[] start, double[] deviation) {
        List<Place> places = new ArrayList<>();
        for (int k = 0; k < packs.size(); k++) {
            for (int cell = 0; cell < packs.get(k).channel.length; cell++) {
                places.add(new Place(packs.get(k), cell, start[k] + cell));
            }
        }
        places.sort(Comparator.comparingLong(place -> place.pack.channel[place.cell]));
        for (int rank = 0; rank < places.size(); rank++) {
            Place place = places.get(rank);
            double probability = (rank + 0.625) / (places.size() + 0.25);
            deviation[place.at] =
                    Spread.sample(place.pack.plus, place.pack.minus, place.pack.bound, probability);
        }
        for (int k = 0; k < packs.size(); k++) {
            packs.get(k).aboutMean(deviation, start[k]);
        }
    }

    /**
     * @param row of the mean in the parameter table
     * @param expected deviations of {@link #spread}
     * @param deviation takes those of this pack from {@code at}
     */
    void load(
            CellDraw draw,
            ParameterTable table,
            int row,
            double[] expected,
            double[] deviation,
            int at) {
        switch (draw) {
            case CellDraw.Expected() ->
                    System.arraycopy(expected, at, deviation, at, channel.length);
            case CellDraw.Drawn drawn -> {
                int input = table.inputOf(row);
                double scale = input < 0 ? 0 : drawn.widthScale()[input];
                for (int cell = 0; cell < channel.length; cell++) {
                    deviation[at + cell] =
                            plus == 0 && minus == 0
                                    ? 0
                                    : scale
                                            * Spread.sample(
                                                    plus,
                                                    minus,
                                                    bound,
                                                    CounterStream.uniform(
                                                            drawn.seed(),
                                                            channel[cell],
                                                            drawn.draw()));
                }
                aboutMean(deviation, at);
            }
        }
    }

    private void aboutMean(double[] deviation, int at) {
        double sum = 0;
        for (int cell = 0; cell < channel.length; cell++) {
            sum += deviation[at + cell];
        }
        double mean = sum / channel.length;
        for (int cell = 0; cell < channel.length; cell++) {
            deviation[at + cell] -= mean;
        }
    }
}
