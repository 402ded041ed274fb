package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.learning.explain.Suspect.Lost;
import liftwright.learning.explain.Suspect.Numbers;
import liftwright.learning.explain.Suspect.Shown;
import liftwright.learning.explain.Suspect.Stops;
import liftwright.learning.fit.Compared;
import liftwright.learning.fit.Scatter;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.fault.Effect;

/** Suspects computed: what each would do to the readings, by full runs of the plant. */
final class Computed {

    /** A cause whose greatest size moves the readings by less than this is not told at all. */
    private static final double SEEN = 1.0;

    private static final double GRAVITY = 9.80665;

    /** Moments between two blocks at which a fan may stop. */
    private static final int MOMENTS = 12;

    private final Bench bench;
    private final Scatter scatter;
    private final int threads;

    Computed(Bench bench, Scatter scatter, int threads) {
        this.bench = bench;
        this.scatter = scatter;
        this.threads = threads;
    }

    private record Job(int suspect, int size) {}

    /**
     * What can be told, and what not.
     *
     * @param suspects of the hypotheses, one each
     */
    record Result(List<Hypothesis> hypotheses, List<Suspect> suspects, List<Suspect> unseen) {}

    Result of(List<Suspect> suspects, Work work) {
        List<Optional<Hypothesis>> all = made(suspects, work);
        List<Hypothesis> seen = new ArrayList<>();
        List<Suspect> kept = new ArrayList<>();
        List<Suspect> unseen = new ArrayList<>();
        for (int k = 0; k < all.size(); k++) {
            Optional<Hypothesis> made = all.get(k);
            if (made.isPresent() && isSeen(made.get()) && !isTold(made.get(), seen)) {
                seen.add(made.get());
                kept.add(suspects.get(k));
            } else {
                unseen.add(suspects.get(k));
            }
        }
        return new Result(seen, kept, unseen);
    }

    /** Each of them computed; empty where it does not run to the end at its least size. */
    List<Optional<Hypothesis>> made(List<Suspect> suspects, Work work) {
        List<Job> jobs = new ArrayList<>();
        for (int s = 0; s < suspects.size(); s++) {
            for (int k = 0; k < suspects.get(s).sizes().length; k++) {
                jobs.add(new Job(s, k));
            }
        }
        List<Optional<Bench.Run>> runs = new ArrayList<>(jobs.size());
        for (int k = 0; k < jobs.size(); k++) {
            runs.add(Optional.empty());
        }
        work.stage("causes", Math.max(1, jobs.size()));
        Draws.forEachKept(
                work,
                threads,
                0,
                jobs.size(),
                bench::worker,
                (worker, k) -> {
                    Suspect suspect = suspects.get(jobs.get(k).suspect);
                    runs.set(k, run(worker, suspect, suspect.sizes()[jobs.get(k).size]));
                },
                new KeptRuns(runs));
        List<Optional<Hypothesis>> all = new ArrayList<>();
        int next = 0;
        for (Suspect suspect : suspects) {
            int n = suspect.sizes().length;
            all.add(made(suspect, runs.subList(next, next + n)));
            next += n;
        }
        return all;
    }

    /**
     * What two causes do together; empty where one is a fan that stops in mid-run or both are of
     * instruments, which are added up as they are, or where both do not run to the end.
     */
    Optional<Together> together(Result of, int a, double sizeA, int b, double sizeB) {
        Suspect one = of.suspects().get(a);
        Suspect two = of.suspects().get(b);
        double[] alone = of.hypotheses().get(a).effect(sizeA);
        double[] other = of.hypotheses().get(b).effect(sizeB);
        if (one.change() instanceof Suspect.Shown || two.change() instanceof Suspect.Shown) {
            return shown(one, sizeA, other)
                    .map(effect -> new Together(a, b, effect, ofShown(one, effect), 0))
                    .or(
                            () ->
                                    shown(two, sizeB, alone)
                                            .map(
                                                    effect ->
                                                            new Together(
                                                                    a,
                                                                    b,
                                                                    effect,
                                                                    0,
                                                                    ofShown(two, effect))));
        }
        double[] p = bench.openVector();
        Optional<Effect> lost =
                lost(one, sizeA, p).flatMap(first -> lost(two, sizeB, p).map(first::and));
        if (lost.isEmpty()) {
            return Optional.empty();
        }
        Bench.Worker worker = bench.worker();
        Optional<Bench.Run> run =
                lost.get().isNone() ? worker.opened(p) : worker.lost(lost.get(), p);
        return run.map(
                both -> {
                    double[] effect = effect(both);
                    for (int k = 0; k < effect.length; k++) {
                        effect[k] -= alone[k] + other[k];
                    }
                    double more =
                            bench.lostN(both.lift())
                                    - of.hypotheses().get(a).newtons(sizeA)
                                    - of.hypotheses().get(b).newtons(sizeB);
                    return new Together(a, b, effect, more, more);
                });
    }

    /** What an instrument that is off makes of what another cause does. */
    private Optional<double[]> shown(Suspect suspect, double size, double[] effect) {
        if (!(suspect.change() instanceof Shown shown)) {
            return Optional.empty();
        }
        double[] more = new double[effect.length];
        int from = scatter.at(shown.channel());
        for (int k = from; k < from + bench.channels().get(shown.channel()).size(); k++) {
            more[k] = size * shown.gain() * effect[k];
        }
        return Optional.of(more);
    }

    private double ofShown(Suspect suspect, double[] effect) {
        int channel = ((Shown) suspect.change()).channel();
        Compared of = bench.channels().get(channel);
        double[] own =
                java.util.Arrays.copyOfRange(
                        effect, scatter.at(channel), scatter.at(channel) + of.size());
        boolean mass = of.signal() == liftwright.plant.recording.Signal.SCALE;
        return (mass ? GRAVITY : -1) * bench.mean(of.timesS(), own);
    }

    /** Puts a cause into numbers or tells what is lost; empty where it begins in mid-run. */
    private static Optional<Effect> lost(Suspect suspect, double size, double[] p) {
        return switch (suspect.change()) {
            case Numbers(var of) -> {
                of.at(size, p);
                yield Optional.of(Effect.NONE);
            }
            case Lost(var of) -> Optional.of(of.apply(size));
            case Stops _, Shown _ -> Optional.empty();
        };
    }

    /** A fan that stopped before it turned stood still from the start: it is told once. */
    private boolean isTold(Hypothesis made, List<Hypothesis> before) {
        return !made.isSized()
                && before.stream()
                        .anyMatch(
                                one ->
                                        !one.isSized()
                                                && one.cause().equals(made.cause())
                                                && apart(one.effects()[0], made.effects()[0])
                                                        < SEEN);
    }

    /** How far two effects are from each other, in deviations. */
    private double apart(double[] one, double[] other) {
        double[] off = one.clone();
        for (int k = 0; k < off.length; k++) {
            off[k] -= other[k];
        }
        scatter.whiten(off);
        return Math.sqrt(Reduced.dot(off, off));
    }

    private Optional<Bench.Run> run(Bench.Worker worker, Suspect suspect, double size) {
        return switch (suspect.change()) {
            case Numbers(var of) -> {
                double[] p = bench.openVector();
                of.at(size, p);
                yield worker.opened(p);
            }
            case Lost(var of) -> worker.lost(of.apply(size));
            case Stops(int fan) -> worker.lost(Effect.dead(fan));
            case Shown _ -> Optional.of(bench.openBase());
        };
    }

    private Optional<Hypothesis> made(Suspect suspect, List<Optional<Bench.Run>> runs) {
        List<Double> sizes = new ArrayList<>();
        List<double[]> effects = new ArrayList<>();
        List<Double> newtons = new ArrayList<>();
        double unsureN = 0;
        for (int k = 0; k < runs.size(); k++) {
            double size = suspect.sizes()[k];
            if (runs.get(k).isEmpty()) {
                break; // larger ones do not run to the end either
            }
            Bench.Run run = runs.get(k).get();
            sizes.add(size);
            switch (suspect.change()) {
                case Shown shown -> {
                    effects.add(shown(shown, size));
                    newtons.add(shownN(shown, size));
                }
                case Stops _ -> {
                    double[] whole = effect(run);
                    Stopped stopped = stopped(whole, run);
                    effects.add(from(whole, stopped.fromS));
                    newtons.add(stopped.newtons);
                    unsureN = stopped.unsureN;
                }
                case Numbers _, Lost _ -> {
                    effects.add(effect(run));
                    newtons.add(bench.lostN(run.lift()));
                }
            }
        }
        if (sizes.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Hypothesis(
                        suspect.cause(),
                        suspect.prior(),
                        sizes.stream().mapToDouble(Double::doubleValue).toArray(),
                        effects.toArray(double[][]::new),
                        newtons.stream().mapToDouble(Double::doubleValue).toArray(),
                        Math.min(suspect.least(), Math.abs(sizes.getLast()) / 2),
                        suspect.words(),
                        unsureN));
    }

    private double[] effect(Bench.Run run) {
        double[] effect = scatter.stack(run.channels());
        double[] base = scatter.stack(bench.openBase().channels());
        for (int i = 0; i < effect.length; i++) {
            effect[i] -= base[i];
        }
        return effect;
    }

    private double[] shown(Shown shown, double size) {
        double[] effect = new double[scatter.size()];
        int at = scatter.at(shown.channel());
        double[] base = bench.base().channels()[shown.channel()];
        for (int k = 0; k < base.length; k++) {
            effect[at + k] = size * (shown.gain() * base[k] + shown.zeroSi());
        }
        return effect;
    }

    /** What is there less what is shown, over blocks of nearly full thrust, N. */
    private double shownN(Shown shown, double size) {
        Compared channel = bench.channels().get(shown.channel());
        boolean mass = channel.signal() == liftwright.plant.recording.Signal.SCALE;
        double unit = mass ? GRAVITY : 1;
        double[] base = bench.base().channels()[shown.channel()];
        double[] more = new double[base.length];
        for (int k = 0; k < base.length; k++) {
            more[k] = size * (shown.gain() * base[k] + shown.zeroSi());
        }
        return (mass ? 1 : -1) * unit * bench.mean(channel.timesS(), more);
    }

    static int nearest(double[] times, double timeS) {
        int best = 0;
        for (int k = 1; k < times.length; k++) {
            if (Math.abs(times[k] - timeS) < Math.abs(times[best] - timeS)) {
                best = k;
            }
        }
        return best;
    }

    /** How much of a block lies behind a moment, 0 to 1; blocks reach half way to the next. */
    private static double behind(double[] timesS, int k, double fromS) {
        int n = timesS.length;
        double before = k > 0 ? (timesS[k] - timesS[k - 1]) / 2 : 0;
        double after = k < n - 1 ? (timesS[k + 1] - timesS[k]) / 2 : before;
        double low = timesS[k] - (k > 0 ? before : after);
        double high = timesS[k] + after;
        return high <= low
                ? (fromS < high ? 1 : 0)
                : Math.clamp((high - fromS) / (high - low), 0, 1);
    }

    private double[] from(double[] whole, double fromS) {
        double[] part = whole.clone();
        for (int c = 0; c < bench.channels().size(); c++) {
            double[] times = bench.channels().get(c).timesS();
            for (int k = 0; k < times.length; k++) {
                part[scatter.at(c) + k] *= behind(times, k, fromS);
            }
        }
        return part;
    }

    private double fromN(Bench.Run run, double fromS) {
        double[] times = bench.liftTimesS();
        double[] lift = bench.openBase().lift().clone();
        for (int k = 0; k < times.length; k++) {
            lift[k] += behind(times, k, fromS) * (run.lift()[k] - lift[k]);
        }
        return bench.lostN(lift);
    }

    /**
     * When a fan stopped.
     *
     * @param fromS when it explains most that it did
     * @param newtons that it took, on average over the moments at which it may have stopped
     * @param unsureN their standard deviation
     */
    private record Stopped(double fromS, double newtons, double unsureN) {}

    /** Each block by itself, as scattered as it is. */
    private Stopped stopped(double[] whole, Bench.Run run) {
        double[] times = bench.liftTimesS();
        double[] moments = new double[Math.max(1, MOMENTS * (times.length - 1))];
        double[] logs = new double[moments.length];
        int best = 0;
        for (int m = 0; m < moments.length; m++) {
            int at = m / MOMENTS;
            moments[m] =
                    times.length < 2
                            ? times[0]
                            : times[at] + (times[at + 1] - times[at]) * (m % MOMENTS) / MOMENTS;
            logs[m] = gain(whole, moments[m]) / 2;
            best = logs[m] > logs[best] ? m : best;
        }
        double[] shares = Weigher.shares(logs);
        double mean = 0;
        double square = 0;
        for (int m = 0; m < moments.length; m++) {
            if (shares[m] > 1e-6) {
                double newtons = fromN(run, moments[m]);
                mean += shares[m] * newtons;
                square += shares[m] * newtons * newtons;
            }
        }
        // Clocks are a little apart.
        double late = fromN(run, moments[best] + Scatter.LATE_S) - fromN(run, moments[best]);
        return new Stopped(
                moments[best],
                mean,
                Math.hypot(Math.sqrt(Math.max(0, square - mean * mean)), late));
    }

    /** Twice the logarithm by which it is likelier that a fan stopped then than that it did not. */
    private double gain(double[] whole, double fromS) {
        double gain = 0;
        for (int c = 0; c < bench.channels().size(); c++) {
            Compared channel = bench.channels().get(c);
            for (int k = 0; k < channel.size(); k++) {
                double e = whole[scatter.at(c) + k] * behind(channel.timesS(), k, fromS);
                if (e != 0) {
                    double left = channel.measuredSi()[k] - bench.base().channels()[c][k];
                    gain += (2 * left * e - e * e) / scatter.varianceSi(c, k);
                }
            }
        }
        return gain;
    }

    private boolean isSeen(Hypothesis hypothesis) {
        double[] white =
                scatter.whiten(hypothesis.effects()[hypothesis.effects().length - 1].clone());
        return Reduced.dot(white, white) > SEEN * SEEN;
    }
}
