package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import liftwright.learning.explain.Attribution.Share;
import liftwright.plant.fault.Effect;

/**
 * Shares missing lift out: between the lift as declared and the lift with all that was found, by
 * Shapley's shares over full runs with each set of groups; what is then left is not explained.
 * Bands come from draws of what is still in doubt: which causes, how large, and every declared
 * number, each draw by its slopes.
 */
final class Attributing {

    private static final int DRAWS = 400;

    private final Bench bench;
    private final Weigher weigher;
    private final Judged judged;
    private final Computed.Result computed;
    private final List<Doubts.Doubt> doubts;

    Attributing(
            Bench bench,
            Weigher weigher,
            Judged judged,
            Computed.Result computed,
            List<Doubts.Doubt> doubts) {
        this.bench = bench;
        this.weigher = weigher;
        this.judged = judged;
        this.computed = computed;
        this.doubts = doubts;
    }

    /** What is most probable: causes with sizes, and deviates of what was declared. */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    private record Point(List<Integer> causes, double[] sizes, double[] deviates) {}

    /** The group that a declared number belongs to. */
    static CauseGroup group(String row) {
        String path = row.substring(row.indexOf(": ") < 0 ? 0 : row.indexOf(": ") + 2);
        if (path.startsWith("site/")) {
            return CauseGroup.AIR;
        }
        if (path.startsWith("cells/") || path.startsWith("packs/")) {
            return path.endsWith("mass") ? CauseGroup.WEIGHED : CauseGroup.PACKS;
        }
        if (path.startsWith("wiring/") || path.startsWith("parts book/")) {
            return CauseGroup.WIRING;
        }
        if (path.contains("/installation")
                || path.contains("/intake")
                || path.endsWith("/free area")
                || path.endsWith("/exit area")) {
            return CauseGroup.INTAKE;
        }
        if (path.contains("/controller/")
                || path.contains("heat capacity")
                || path.endsWith("winding to case")
                || path.endsWith("case to air")) {
            return CauseGroup.CONTROL;
        }
        return path.startsWith("fan types/") || path.startsWith("fans/")
                ? CauseGroup.FANS
                : CauseGroup.WEIGHED;
    }

    Attribution made(double measuredN) {
        Point point = point();
        double predictedN = bench.liftN();
        double missing = predictedN - measuredN;
        Map<CauseGroup, Double> shares = shares(point);
        Map<CauseGroup, double[]> bands = bands(missing);
        List<Share> all = new ArrayList<>();
        double told = 0;
        for (CauseGroup group : CauseGroup.values()) {
            double[] band = bands.getOrDefault(group, new double[] {0, 0});
            if (group == CauseGroup.NOT_EXPLAINED) {
                double left = missing - told;
                all.add(new Share(group, left, Math.min(band[0], left), Math.max(band[1], left)));
            } else if (shares.containsKey(group) || band[1] > band[0]) {
                double share = shares.getOrDefault(group, 0.0);
                told += share;
                all.add(
                        new Share(
                                group, share, Math.min(band[0], share), Math.max(band[1], share)));
            }
        }
        return new Attribution(predictedN, measuredN, all);
    }

    private Point point() {
        List<Weigher.Weight> weights = judged.weights();
        boolean accused =
                !weights.isEmpty()
                        && judged.finding() != Explained.Finding.NOTHING_BEYOND_DECLARED
                        && judged.finding() != Explained.Finding.NONE_OF_THESE;
        Weigher.Weight best = accused ? weights.getFirst() : new Weigher.Weight(-1, -1, 0);
        double[] settings = weigher.settingShares(best);
        int s = 0;
        for (int k = 1; k < settings.length; k++) {
            s = settings[k] > settings[s] ? k : s;
        }
        double[] sizes = weigher.likeliest(s, best);
        Reduced.Vector left = weigher.left(s, best, sizes[0], sizes[1]);
        List<Integer> causes = new ArrayList<>();
        if (best.first() >= 0) {
            causes.add(best.first());
        }
        if (best.isPair()) {
            causes.add(best.second());
        }
        return new Point(causes, sizes, weigher.settings().get(s).reduced().deviates(left));
    }

    /** Groups that do anything at the point, with Shapley's shares of full runs. */
    private Map<CauseGroup, Double> shares(Point point) {
        Map<CauseGroup, Double> shares = new EnumMap<>(CauseGroup.class);
        Set<CauseGroup> active = new LinkedHashSet<>();
        for (int d = 0; d < doubts.size(); d++) {
            CauseGroup group = doubts.get(d).group();
            if (Math.abs(point.deviates[d] * doubts.get(d).newtons()) > 1e-6) {
                if (group == CauseGroup.WEIGHED) {
                    shares.merge(group, point.deviates[d] * doubts.get(d).newtons(), Double::sum);
                } else {
                    active.add(group);
                }
            }
        }
        for (int k = 0; k < point.causes.size(); k++) {
            Hypothesis cause = computed.hypotheses().get(point.causes.get(k));
            Suspect suspect = computed.suspects().get(point.causes.get(k));
            if (suspect.change() instanceof Suspect.Shown) {
                shares.merge(CauseGroup.WEIGHED, cause.newtons(point.sizes[k]), Double::sum);
            } else {
                active.add(cause.cause().kind().group());
            }
        }
        List<CauseGroup> players = List.copyOf(active);
        if (players.isEmpty()) {
            return shares;
        }
        Bench.Worker worker = bench.worker();
        double none = bench.mean(bench.openBase().lift());
        double[] of =
                Shapley.of(
                        players.size(),
                        set -> set == 0 ? 0 : none - lift(worker, point, players, set));
        for (int k = 0; k < players.size(); k++) {
            shares.merge(players.get(k), of[k], Double::sum);
        }
        return shares;
    }

    /** Lift with what was found in some groups, N. */
    private double lift(Bench.Worker worker, Point point, List<CauseGroup> players, int set) {
        double[] p = moved(point.deviates, players, set);
        Effect effect = Effect.NONE;
        double stops = 0;
        for (int k = 0; k < point.causes.size(); k++) {
            Suspect suspect = computed.suspects().get(point.causes.get(k));
            int player = players.indexOf(suspect.cause().kind().group());
            if (player < 0 || (set & 1 << player) == 0) {
                continue;
            }
            switch (suspect.change()) {
                case Suspect.Numbers(var of) -> of.at(point.sizes[k], p);
                case Suspect.Lost(var of) -> effect = effect.and(of.apply(point.sizes[k]));
                case Suspect.Stops _ ->
                        // In mid-run: what it took of the lift, besides the rest.
                        stops +=
                                computed.hypotheses()
                                        .get(point.causes.get(k))
                                        .newtons(point.sizes[k]);
                case Suspect.Shown _ -> {}
            }
        }
        Optional<Bench.Run> run = effect.isNone() ? worker.opened(p) : worker.lost(effect, p);
        return run.map(of -> bench.mean(of.lift())).orElse(bench.liftN()) - stops;
    }

    /** Numbers of the opened rig with the deviates of some groups. */
    private double[] moved(double[] deviates, List<CauseGroup> players, int set) {
        double[] z = deviates.clone();
        for (int d = 0; d < z.length; d++) {
            int player = players.indexOf(doubts.get(d).group());
            z[d] = player >= 0 && (set & 1 << player) != 0 ? z[d] : 0;
        }
        return Deviates.at(bench, doubts, z);
    }

    /** For each group the ends of 95 % of the draws, N. */
    private Map<CauseGroup, double[]> bands(double missing) {
        SplittableRandom random = new SplittableRandom(20_260);
        Map<CauseGroup, double[]> draws = new EnumMap<>(CauseGroup.class);
        for (int draw = 0; draw < DRAWS; draw++) {
            Map<CauseGroup, Double> of = draw(random);
            double told = 0;
            for (CauseGroup group : CauseGroup.values()) {
                double share =
                        group == CauseGroup.NOT_EXPLAINED
                                ? missing - told
                                : of.getOrDefault(group, 0.0);
                told += share;
                draws.computeIfAbsent(group, _ -> new double[DRAWS])[draw] = share;
            }
        }
        Map<CauseGroup, double[]> bands = new EnumMap<>(CauseGroup.class);
        draws.forEach(
                (group, all) -> {
                    double[] sorted = all.clone();
                    Arrays.sort(sorted);
                    bands.put(
                            group,
                            new double[] {
                                sorted[(int) (0.025 * DRAWS)], sorted[(int) (0.975 * DRAWS)]
                            });
                });
        return bands;
    }

    private Map<CauseGroup, Double> draw(SplittableRandom random) {
        Map<CauseGroup, Double> of = new EnumMap<>(CauseGroup.class);
        Weigher.Weight weight = judged.drawn(random.nextDouble());
        int s = drawn(weigher.settingShares(weight), random.nextDouble());
        double[] sizes = {0, 0};
        if (weight.isPair()) {
            Weigher.Joint joint = weigher.joint(s, weight.first(), weight.second(), 24);
            int at = drawn(Weigher.shares(joint.logs()), random.nextDouble());
            sizes[0] = joint.first()[at];
            sizes[1] = joint.second()[at];
        } else if (weight.first() >= 0) {
            Grid grid = weigher.grid(weight.first());
            sizes[0] =
                    grid.at(
                            drawn(
                                    Weigher.shares(weigher.sizeLogs(s, weight.first(), grid)),
                                    random.nextDouble()));
        }
        add(of, weight.first(), sizes[0]);
        add(of, weight.second(), sizes[1]);
        Reduced reduced = weigher.settings().get(s).reduced();
        double[] normal = new double[reduced.columns()];
        for (int k = 0; k < normal.length; k++) {
            normal[k] = random.nextGaussian();
        }
        double[] z = reduced.draw(weigher.left(s, weight, sizes[0], sizes[1]), normal);
        for (int d = 0; d < z.length; d++) {
            of.merge(doubts.get(d).group(), z[d] * doubts.get(d).newtons(), Double::sum);
        }
        return of;
    }

    private void add(Map<CauseGroup, Double> of, int h, double size) {
        if (h >= 0) {
            Hypothesis hypothesis = computed.hypotheses().get(h);
            boolean shown = computed.suspects().get(h).change() instanceof Suspect.Shown;
            of.merge(
                    shown ? CauseGroup.WEIGHED : hypothesis.cause().kind().group(),
                    hypothesis.newtons(size),
                    Double::sum);
        }
    }

    private static int drawn(double[] shares, double uniform) {
        double sum = 0;
        for (int k = 0; k < shares.length; k++) {
            sum += shares[k];
            if (uniform < sum) {
                return k;
            }
        }
        return shares.length - 1;
    }
}
