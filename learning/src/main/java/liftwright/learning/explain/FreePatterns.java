package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.learning.fit.Compared;
import liftwright.learning.fit.Scatter;
import liftwright.numerics.CholeskyFactor;
import liftwright.plant.recording.Signal;

/**
 * None of these: readings that go their own way. Each channel is free at a few moments, by octaves
 * of what is usually left out of it; one channel alone, all that read one kind of thing, or all of
 * them. Thermometers are not among them: how warm a part gets is off by multiples, and tells where
 * something is, not whether.
 */
final class FreePatterns {

    /** Moments at which a channel is free: to drift, or to jump about. */
    private static final int[] KNOTS = {8, 24};

    /** No more columns than these in all, so that many channels take no longer. */
    private static final int MOST = 300;

    /** Deviations over those usually left out or in error. */
    private static final double[] WIDTHS = {3, 6, 12, 24, 48};

    private final List<Compared> channels;

    /** What a channel is free by, slowly and fast: one column for each knot. */
    private final List<double[][][]> families = new ArrayList<>();

    private final List<int[]> sets;

    /** So many of the sets are of one channel. */
    private final int singles;

    private final Stretches stretches;

    FreePatterns(List<Compared> channels, Scatter usual) {
        this.channels = List.copyOf(channels);
        stretches = new Stretches(channels, usual, WIDTHS);
        Map<Signal, List<Integer>> bySignal = new LinkedHashMap<>();
        Map<String, List<Integer>> byPart = new LinkedHashMap<>();
        sets = new ArrayList<>();
        for (int c = 0; c < channels.size(); c++) {
            Compared channel = channels.get(c);
            if (isThermometer(channel)) {
                continue;
            }
            bySignal.computeIfAbsent(channel.signal(), _ -> new ArrayList<>()).add(c);
            byPart.computeIfAbsent(channel.of(), _ -> new ArrayList<>()).add(c);
            sets.add(new int[] {c});
        }
        singles = sets.size();
        for (int most : KNOTS) {
            families.add(hats(usual, Math.clamp(MOST / channels.size(), KNOTS[0], most)));
        }
        for (List<Integer> alike : bySignal.values()) {
            addSome(alike);
        }
        for (List<Integer> alike : byPart.values()) {
            addSome(alike);
        }
        if (singles > 1) {
            sets.add(sets.subList(0, singles).stream().mapToInt(one -> one[0]).toArray());
        }
    }

    static boolean isThermometer(Compared channel) {
        return channel.signal() == Signal.TEMPERATURE;
    }

    private double[][][] hats(Scatter usual, int most) {
        double[][][] hats = new double[channels.size()][][];
        for (int c = 0; c < hats.length; c++) {
            Compared channel = channels.get(c);
            int last = channel.size() - 1;
            int knots = Math.min(most, Math.max(2, channel.size() / 2));
            double mean = 0;
            for (int k = 0; k <= last; k++) {
                mean += unit(channel, usual, c, k) / (last + 1);
            }
            hats[c] = new double[knots][usual.size()];
            for (int knot = 0; knot < knots; knot++) {
                for (int k = 0; k <= last; k++) {
                    double hat =
                            Scatter.hat(
                                    channel.timesS()[k],
                                    channel.timesS()[0],
                                    channel.timesS()[last],
                                    knot,
                                    knots);
                    hats[c][knot][usual.at(c) + k] =
                            hat * Math.max(unit(channel, usual, c, k), 0.3 * mean);
                }
            }
        }
        return hats;
    }

    private void addSome(List<Integer> alike) {
        if (alike.size() > 1 && alike.size() < singles) {
            sets.add(alike.stream().mapToInt(Integer::intValue).toArray());
        }
    }

    private static double unit(Compared channel, Scatter usual, int c, int k) {
        double error =
                Math.hypot(channel.errorSi(), channel.errorShare() * channel.measuredSi()[k]);
        return Math.max(Math.hypot(usual.leftOutSi(c, k), error / 2), 1e-9);
    }

    /** ln of the density of the readings under these over that under nothing. */
    double logFactor(Reduced reduced, Reduced.Vector left) {
        double[] logs = new double[families.size() + 1];
        for (int k = 0; k < families.size(); k++) {
            logs[k] = logFactor(families.get(k), reduced, left);
        }
        logs[families.size()] = stretches.logFactor(reduced, left);
        return Weigher.logSum(logs) - Math.log(logs.length);
    }

    private double logFactor(double[][][] hats, Reduced reduced, Reduced.Vector left) {
        List<Reduced.Vector> vectors = new ArrayList<>();
        List<Integer> channelOf = new ArrayList<>();
        for (int c = 0; c < hats.length; c++) {
            for (double[] hat : hats[c]) {
                vectors.add(reduced.ofChannel(hat, c, channels.get(c).size()));
                channelOf.add(c);
            }
        }
        int n = vectors.size();
        double[][] inner = new double[n][n];
        double[] along = new double[n];
        for (int i = 0; i < n; i++) {
            along[i] = reduced.product(vectors.get(i), left);
            for (int j = 0; j <= i; j++) {
                boolean same = channelOf.get(i).equals(channelOf.get(j));
                inner[i][j] =
                        same
                                ? reduced.product(vectors.get(i), vectors.get(j))
                                : -Reduced.dot(vectors.get(i).along(), vectors.get(j).along());
                inner[j][i] = inner[i][j];
            }
        }
        // One channel, a kind or a part, and all are as likely.
        int kinds = 1 + (sets.size() > singles ? 1 : 0) + (sets.size() > singles + 1 ? 1 : 0);
        int middle = Math.max(1, sets.size() - singles - 1);
        double[] logs = new double[sets.size()];
        for (int k = 0; k < logs.length; k++) {
            double many = k < singles ? singles : k < sets.size() - 1 ? middle : 1;
            int[] columns = columns(sets.get(k), channelOf);
            logs[k] = logFactor(inner, along, columns) - Math.log(many) - Math.log(kinds);
        }
        return Weigher.logSum(logs);
    }

    private static int[] columns(int[] set, List<Integer> channelOf) {
        java.util.Set<Integer> of = new java.util.HashSet<>();
        for (int c : set) {
            of.add(c);
        }
        return java.util.stream.IntStream.range(0, channelOf.size())
                .filter(k -> of.contains(channelOf.get(k)))
                .toArray();
    }

    private static double logFactor(double[][] inner, double[] along, int[] columns) {
        int n = columns.length;
        double[] own = new double[n];
        double[][] wide = new double[n][n];
        double[] logs = new double[WIDTHS.length];
        for (int w = 0; w < WIDTHS.length; w++) {
            double square = WIDTHS[w] * WIDTHS[w];
            for (int i = 0; i < n; i++) {
                own[i] = along[columns[i]];
                for (int j = 0; j <= i; j++) {
                    wide[i][j] = square * inner[columns[i]][columns[j]] + (i == j ? 1 : 0);
                }
            }
            CholeskyFactor factor = CholeskyFactor.of(wide);
            double gained = Reduced.dot(own, factor.solve(own));
            logs[w] = 0.5 * (square * gained - factor.logDeterminant()) - Math.log(WIDTHS.length);
        }
        return Weigher.logSum(logs);
    }
}
