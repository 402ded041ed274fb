package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.List;
import liftwright.learning.fit.Compared;
import liftwright.learning.fit.Scatter;

/**
 * None of these, as something that comes and goes: a few stretches of a channel that are off all
 * along, wherever they lie. What is told is a lower bound: the best of them one after the other,
 * each paid for by all places at which it could have been.
 */
final class Stretches {

    /** How many blocks long; a single one is a glitch. */
    private static final int[] LENGTHS = {2, 3, 5, 8};

    private static final int MOST = 6;

    private final List<Compared> channels;
    private final Scatter usual;
    private final double[] widths;

    Stretches(List<Compared> channels, Scatter usual, double[] widths) {
        this.channels = List.copyOf(channels);
        this.usual = usual;
        this.widths = widths.clone();
    }

    /** One stretch as it is told from what is left. */
    @SuppressWarnings("ArrayRecordComponent") // changed in place as stretches are taken away
    private record Stretch(Reduced.Vector vector, double square, double[] along) {}

    /** ln of the density of the readings with stretches over that without. */
    double logFactor(Reduced reduced, Reduced.Vector left) {
        List<Stretch> all = all(reduced, left);
        if (all.isEmpty()) {
            return 0;
        }
        double price = Math.log(all.size()) + Math.log(widths.length);
        double sum = 0;
        double best = Double.NEGATIVE_INFINITY;
        for (int round = 0; round < MOST; round++) {
            Stretch found = all.getFirst();
            double gain = Double.NEGATIVE_INFINITY;
            double width = 1;
            for (Stretch one : all) {
                for (double of : widths) {
                    double told = gain(one, of);
                    if (told > gain) {
                        gain = told;
                        found = one;
                        width = of;
                    }
                }
            }
            sum += gain - price;
            best = Math.max(best, sum);
            if (gain < price) {
                break;
            }
            take(reduced, all, found, width);
        }
        return best;
    }

    private static double gain(Stretch one, double width) {
        double square = width * width;
        double scale = 1 + square * one.square;
        return 0.5 * (square * one.along[0] * one.along[0] / scale - Math.log(scale));
    }

    /** Takes the most probable size of one out of what is left. */
    private static void take(Reduced reduced, List<Stretch> all, Stretch found, double width) {
        double size = width * width * found.along[0] / (1 + width * width * found.square);
        for (Stretch one : all) {
            one.along[0] -= size * reduced.product(one.vector, found.vector);
        }
    }

    private List<Stretch> all(Reduced reduced, Reduced.Vector left) {
        List<Stretch> all = new ArrayList<>();
        for (int c = 0; c < channels.size(); c++) {
            Compared channel = channels.get(c);
            if (FreePatterns.isThermometer(channel)) {
                continue;
            }
            double most = 0;
            for (int k = 0; k < channel.size(); k++) {
                most = Math.max(most, unit(channel, c, k));
            }
            for (int length : LENGTHS) {
                for (int from = 0;
                        from + length <= channel.size();
                        from += Math.max(1, length / 3)) {
                    double[] column = new double[usual.size()];
                    for (int k = from; k < from + length; k++) {
                        column[usual.at(c) + k] = Math.max(unit(channel, c, k), 0.1 * most);
                    }
                    Reduced.Vector vector = reduced.ofChannel(column, c, channel.size());
                    all.add(
                            new Stretch(
                                    vector,
                                    reduced.product(vector, vector),
                                    new double[] {reduced.product(vector, left)}));
                }
            }
        }
        return all;
    }

    private double unit(Compared channel, int c, int k) {
        double error =
                Math.hypot(channel.errorSi(), channel.errorShare() * channel.measuredSi()[k]);
        return Math.max(Math.hypot(usual.leftOutSi(c, k), error / 2), 1e-9);
    }
}
