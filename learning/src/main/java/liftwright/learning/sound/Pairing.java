package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import liftwright.numerics.CounterStream;

/**
 * Which line is which fan's, of lines that are heard at one moment: no two belong to one fan. The
 * unknown shift of all ratios and the pairing are drawn together from their likelihood (Metropolis
 * steps that exchange two fans [METROPOLIS53]), begun at every in-order pairing that is likely for
 * some shift, so that a row of fans at equal distances is not taken for the same row one place on.
 */
final class Pairing {

    private static final int STRAY = -1;

    /** Cost of a line that is nobody's: as far off as 3.5 standard deviations. */
    private static final double STRAY_COST = 6;

    private static final double FARTHEST = 0.05;
    private static final int SHIFTS = 101;

    /** Standard deviation of the fans' mean against that of the lines that are seen. */
    private static final double CENTRE = 0.004;

    private static final int SWEEPS = 1500;
    private static final int WARM = 100;

    private final double[] ratio;
    private final double[] alone;
    private final double[] sd;
    private final double[][] chance;
    private final double centre;
    private double shift;
    private int step;

    /**
     * @param ratio of each line
     * @param alone ratio of each fan one by one
     * @param sd of the difference of the two, for each fan
     * @param centre mean ratio of all lines, those that meet too: near the mean of the fans
     */
    Pairing(double[] ratio, double[] alone, double[] sd, double centre) {
        this.centre = centre - 1;
        this.ratio = ratio.clone();
        this.alone = alone.clone();
        this.sd = sd.clone();
        chance = new double[ratio.length][alone.length];
        List<Start> starts = starts();
        double best = starts.getFirst().cost();
        double weights = 0;
        for (Start start : starts) {
            double weight = Math.exp(best - start.cost());
            weights += weight;
            walk(start, weight);
        }
        shift /= weights;
        for (double[] row : chance) {
            for (int i = 0; i < row.length; i++) {
                row[i] /= weights;
            }
        }
    }

    /** Probability that a line is a fan's; what is left to one is that it is nobody's. */
    double chance(int line, int fan) {
        return chance[line][fan];
    }

    /** Expected shift of all ratios against those one by one. */
    double shift() {
        return shift;
    }

    @SuppressWarnings("ArrayRecordComponent") // never compared, never shown
    private record Start(int[] of, double shift, double cost) {}

    /** In-order pairings at their best shifts, likeliest first; those without a chance left out. */
    private List<Start> starts() {
        Integer[] lines = order(ratio);
        Integer[] fans = order(alone);
        List<Start> all = new ArrayList<>();
        for (int s = 0; s < SHIFTS; s++) {
            int[] of = inOrder(lines, fans, FARTHEST * (2.0 * s / (SHIFTS - 1) - 1));
            double best = bestShift(of);
            all.add(new Start(of, best, cost(of, best)));
        }
        all.sort(Comparator.comparingDouble(Start::cost));
        List<Start> kept = new ArrayList<>();
        for (Start start : all) {
            boolean known = kept.stream().anyMatch(k -> Arrays.equals(k.of(), start.of()));
            if (!known && kept.size() < 6 && start.cost() < all.getFirst().cost() + 6) {
                kept.add(start);
            }
        }
        return kept;
    }

    private static Integer[] order(double[] values) {
        return IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> values[k]))
                .toArray(Integer[]::new);
    }

    /** Cheapest pairing that keeps the order, by dynamic programming. */
    private int[] inOrder(Integer[] lines, Integer[] fans, double shifted) {
        int n = lines.length;
        int m = fans.length;
        double[][] best = new double[n + 1][m + 1];
        for (int j = 1; j <= n; j++) {
            best[j][0] = j * STRAY_COST;
            for (int i = 1; i <= m; i++) {
                double paired = best[j - 1][i - 1] + cost(lines[j - 1], fans[i - 1], shifted);
                double stray = best[j - 1][i] + STRAY_COST;
                best[j][i] = Math.min(best[j][i - 1], Math.min(paired, stray));
            }
        }
        int[] of = new int[n];
        int i = m;
        int j = n;
        while (j > 0) {
            if (i > 0 && best[j][i] == best[j][i - 1]) {
                i--;
            } else if (best[j][i] == best[j - 1][i] + STRAY_COST) {
                of[lines[--j]] = STRAY;
            } else {
                of[lines[--j]] = fans[--i];
            }
        }
        return of;
    }

    private double cost(int line, int fan, double shifted) {
        if (fan == STRAY) {
            return STRAY_COST;
        }
        double z = (ratio[line] - shifted - alone[fan]) / sd[fan];
        return z * z / 2;
    }

    private double cost(int[] of, double shifted) {
        double off = (shifted - centre) / CENTRE;
        double sum = off * off / 2;
        for (int j = 0; j < of.length; j++) {
            sum += cost(j, of[j], shifted);
        }
        return sum;
    }

    private double bestShift(int[] of) {
        double weights = 1 / (CENTRE * CENTRE);
        double sum = weights * centre;
        for (int j = 0; j < of.length; j++) {
            if (of[j] != STRAY) {
                double weight = 1 / (sd[of[j]] * sd[of[j]]);
                sum += weight * (ratio[j] - alone[of[j]]);
                weights += weight;
            }
        }
        return sum / weights;
    }

    private void walk(Start start, double weight) {
        int[] of = start.of().clone();
        int[] owner = new int[alone.length];
        Arrays.fill(owner, STRAY);
        for (int j = 0; j < of.length; j++) {
            if (of[j] != STRAY) {
                owner[of[j]] = j;
            }
        }
        double share = weight / (SWEEPS - WARM);
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            double now = drawnShift(of);
            for (int j = 0; j < of.length; j++) {
                exchange(of, owner, j, now);
            }
            if (sweep >= WARM) {
                shift += share * now;
                for (int j = 0; j < of.length; j++) {
                    if (of[j] != STRAY) {
                        chance[j][of[j]] += share;
                    }
                }
            }
        }
    }

    private double drawnShift(int[] of) {
        double weights = 1 / (CENTRE * CENTRE);
        for (int fan : of) {
            weights += fan == STRAY ? 0 : 1 / (sd[fan] * sd[fan]);
        }
        return bestShift(of) + CounterStream.normal(1, 1, 0, step++) / Math.sqrt(weights);
    }

    private void exchange(int[] of, int[] owner, int line, double now) {
        int wanted = (int) (CounterStream.uniform(1, 2, 0, step++) * (alone.length + 1)) - 1;
        int had = of[line];
        if (wanted == had) {
            return;
        }
        int other = wanted == STRAY ? STRAY : owner[wanted];
        double before = cost(line, had, now) + (other < 0 ? 0 : cost(other, wanted, now));
        double after = cost(line, wanted, now) + (other < 0 ? 0 : cost(other, had, now));
        if (Math.log(CounterStream.uniform(1, 3, 0, step++)) >= before - after) {
            return;
        }
        of[line] = wanted;
        if (other >= 0) {
            of[other] = had;
        }
        if (had != STRAY) {
            owner[had] = other;
        }
        if (wanted != STRAY) {
            owner[wanted] = line;
        }
    }
}
