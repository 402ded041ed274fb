package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * For each line the fans it may belong to. First the moment at which the most lines are heard:
 * there each belongs to the fewest fans that are together as likely as {@value #SURE}. Then the
 * other lines, which are held against what the fans that are known by then turned in this very run.
 *
 * @param of for each line, numbers of fans; empty where it is nobody's in particular
 * @param shift of all ratios against those one by one
 */
record Owners(List<List<Integer>> of, double shift) {

    /** Least probability of what is claimed. */
    static final double SURE = 0.98;

    /** Standard deviation of a fan's ratio within a run. */
    private static final double WITHIN = 0.0015;

    /** A fan without a line may be in one that is this many standard deviations off. */
    private static final double HIDDEN = 3.5;

    /** A line this many standard deviations from every fan is nobody's. */
    private static final double STRAY = 3.5;

    Owners {
        of = List.copyOf(of);
    }

    /**
     * @param fans how many there are
     * @param alone their ratios one by one; empty where that is not known
     * @param sd of the ratios
     * @param centre mean ratio of all lines
     */
    static Owners of(int fans, double[] alone, double[] sd, double centre, List<Trace> lines) {
        if (fans == 1) {
            return new Owners(lines.stream().map(line -> List.of(0)).toList(), 0);
        }
        if (alone.length == 0 || lines.isEmpty()) {
            return new Owners(lines.stream().map(line -> List.<Integer>of()).toList(), 0);
        }
        return new Finding(alone.clone(), sd.clone(), lines).owners(centre);
    }

    private static final class Finding {
        private final double[] ratio;
        private final double[] sd;
        private final List<Trace> lines;
        private final List<List<Integer>> of = new ArrayList<>();
        private double shift;

        Finding(double[] ratio, double[] sd, List<Trace> lines) {
            this.ratio = ratio;
            this.sd = sd;
            this.lines = lines;
            lines.forEach(line -> of.add(List.of()));
        }

        Owners owners(double centre) {
            List<Integer> first = fullest();
            double[] heard = first.stream().mapToDouble(k -> lines.get(k).medianRatio()).toArray();
            var pairing = new Pairing(heard, ratio, sd, centre);
            shift = pairing.shift();
            for (int i = 0; i < ratio.length; i++) {
                ratio[i] += shift;
            }
            for (int j = 0; j < first.size(); j++) {
                double[] chance = new double[ratio.length];
                for (int i = 0; i < chance.length; i++) {
                    chance[i] = pairing.chance(j, i);
                }
                of.set(first.get(j), withUnseen(likeliest(chance), heard[j], first.size()));
            }
            know(first);
            IntStream.range(0, lines.size())
                    .filter(k -> !first.contains(k))
                    .boxed()
                    .sorted(Comparator.comparingInt(k -> -lines.get(k).size()))
                    .forEach(this::later);
            return new Owners(of, shift);
        }

        /** Where a fan has no line, it may hide in any line near the place where it should be. */
        private List<Integer> withUnseen(List<Integer> fans, double heard, int seen) {
            if (fans.isEmpty()) {
                return fans;
            }
            // As many lines as fans need not be one each: a line may be an echo of another.
            double reach = seen < ratio.length ? HIDDEN : HIDDEN / 2;
            var all = new ArrayList<>(fans);
            for (int i = 0; i < ratio.length; i++) {
                boolean near = Math.abs(heard - ratio[i]) < reach * sd[i];
                if (near && !all.contains(i)) {
                    all.add(i);
                }
            }
            return all;
        }

        /** Lines at the moment that has the most. */
        private List<Integer> fullest() {
            List<Integer> most = List.of();
            for (Trace line : lines) {
                double t = (line.firstS() + line.lastS()) / 2;
                List<Integer> now =
                        IntStream.range(0, lines.size())
                                .filter(
                                        k ->
                                                lines.get(k).firstS() <= t
                                                        && t <= lines.get(k).lastS())
                                .boxed()
                                .toList();
                most = now.size() > most.size() ? now : most;
            }
            return most;
        }

        /** A fan with a line of its own is known better from now on. */
        private void know(List<Integer> claimed) {
            for (int k : claimed) {
                if (of.get(k).size() == 1) {
                    int fan = of.get(k).getFirst();
                    ratio[fan] = lines.get(k).medianRatio();
                    sd[fan] = WITHIN;
                }
            }
        }

        private void later(int number) {
            Trace line = lines.get(number);
            double heard = line.medianRatio();
            double[] chance = new double[ratio.length];
            double sum = 0;
            boolean near = false;
            for (int i = 0; i < ratio.length; i++) {
                double z = (heard - ratio[i]) / sd[i];
                chance[i] = Math.exp(-z * z / 2) / sd[i];
                near |= Math.abs(z) < STRAY;
                sum += chance[i];
            }
            if (!near) {
                return;
            }
            for (int i = 0; i < chance.length; i++) {
                chance[i] /= sum;
            }
            List<Integer> fans = likeliest(chance);
            // A short line that could be of many would make one group of all.
            boolean own =
                    fans.size() == 1
                            && sd[fans.getFirst()] == WITHIN
                            && !taken(fans.getFirst(), line);
            boolean shared =
                    fans.size() > 1 && of.stream().anyMatch(known -> known.containsAll(fans));
            if (own || shared) {
                of.set(number, fans);
            }
        }

        private boolean taken(int fan, Trace line) {
            for (int k = 0; k < lines.size(); k++) {
                Trace other = lines.get(k);
                double both =
                        Math.min(other.lastS(), line.lastS())
                                - Math.max(other.firstS(), line.firstS());
                if (both > 0 && of.get(k).equals(List.of(fan))) {
                    return true;
                }
            }
            return false;
        }
    }

    /** Fewest that are together sure; empty where even all are not. */
    private static List<Integer> likeliest(double[] chance) {
        List<Integer> order =
                IntStream.range(0, chance.length)
                        .boxed()
                        .sorted(Comparator.comparingDouble(i -> -chance[i]))
                        .toList();
        var fans = new ArrayList<Integer>();
        double sum = 0;
        for (int fan : order) {
            fans.add(fan);
            sum += chance[fan];
            if (sum >= SURE) {
                return fans;
            }
        }
        return List.of();
    }
}
