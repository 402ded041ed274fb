package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import liftwright.learning.explain.Explained.Weighed;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.fault.Effect;

/**
 * Sizes and newtons of the causes that are named, with doubt as it is on the rig with them. The
 * same doubt does more to a rig with something wrong: a motor that draws a third more current is
 * hot, and what a watt more does to its thrust is another thing than on a cool one. So the rig is
 * run with what is named and every number in doubt moved by a standard deviation; what that does to
 * the readings takes the place of what it does to the rig as declared, and what it does to the
 * newtons is told.
 */
final class Interplay {

    /** A smaller share is none. */
    private static final double LEAST = 1e-9;

    private static final Put NOTHING = new Put(List.of(), List.of(), Effect.NONE);

    private final Bench bench;
    private final Computed.Result computed;
    private final List<Doubts.Doubt> doubts;
    private final Lifted lift;
    private final int threads;

    Interplay(
            Bench bench,
            Computed.Result computed,
            List<Doubts.Doubt> doubts,
            Lifted lift,
            int threads) {
        this.bench = bench;
        this.computed = computed;
        this.doubts = doubts;
        this.lift = lift;
        this.threads = threads;
    }

    /** What is put into a run: numbers that are changed and what is lost. */
    private record Put(List<Suspect.Numbers> changes, List<Double> sizes, Effect lost) {

        /** The same and a cause besides; those of instruments and those in mid-run stay out. */
        Put and(Suspect suspect, double size) {
            return switch (suspect.change()) {
                case Suspect.Numbers numbers ->
                        new Put(
                                Stream.concat(changes.stream(), Stream.of(numbers)).toList(),
                                Stream.concat(sizes.stream(), Stream.of(size)).toList(),
                                lost);
                case Suspect.Lost(var of) -> new Put(changes, sizes, lost.and(of.apply(size)));
                case Suspect.Stops _, Suspect.Shown _ -> this;
            };
        }

        boolean isNothing() {
            return changes.isEmpty() && lost.isNone();
        }
    }

    /**
     * The causes that are named, by their numbers.
     *
     * @param judged with doubt as it is on the rig as declared
     * @param again judges with other effects of the doubts
     */
    Map<Integer, Weighed> of(Judged judged, Function<List<double[]>, Judged> again, Work work) {
        Map<Integer, Weighed> all = new HashMap<>();
        Map<Weigher.Weight, Optional<Judged>> closer = new HashMap<>();
        for (int h : judged.told()) {
            Weigher.Weight weight = judged.likeliest(h);
            Named named = named(judged, weight, h);
            Put own = named.own;
            Put beside = named.beside;
            Put both = named.both();
            if (both.isNothing()) {
                continue;
            }
            List<Optional<Bench.Run>> with = runs(both, work);
            // Where it is no longer among the likely, its sizes stay as they were told before.
            closer.computeIfAbsent(weight, _ -> columns(with).map(again))
                    .filter(by -> by.shareOf(h) > LEAST)
                    .ifPresent(
                            by -> {
                                double[] more =
                                        own.isNothing()
                                                ? new double[doubts.size()]
                                                : more(runs(beside, work), with);
                                double shiftN = own.isNothing() ? 0 : shiftN(by, h);
                                all.put(h, by.weighed(h, judged.shareOf(h), more, shiftN));
                            });
        }
        return all;
    }

    /**
     * What a cause took with the likeliest numbers over what it takes with the declared ones, N.
     */
    private double shiftN(Judged by, int h) {
        Weigher.Weight weight = by.likeliest(h);
        Named named = named(by, weight, h);
        Put beside = named.beside;
        Put both = named.both();
        Bench.Worker worker = bench.worker();
        double[] z = by.deviates(weight);
        Optional<Double> to = taken(run(worker, z, beside), run(worker, z, both));
        double[] none = new double[z.length];
        Optional<Double> from = taken(run(worker, none, beside), run(worker, none, both));
        return to.isPresent() && from.isPresent() ? to.get() - from.get() : 0;
    }

    private Optional<Bench.Run> run(Bench.Worker worker, double[] z, Put put) {
        double[] p = Deviates.at(bench, doubts, z);
        for (int c = 0; c < put.changes.size(); c++) {
            put.changes.get(c).of().at(put.sizes.get(c), p);
        }
        return put.lost.isNone() ? worker.opened(p) : worker.lost(put.lost, p);
    }

    /** A cause that is named, and the other of its hypothesis where there is one. */
    private record Named(Put own, Put beside) {

        Put both() {
            return new Put(
                    Stream.concat(beside.changes.stream(), own.changes.stream()).toList(),
                    Stream.concat(beside.sizes.stream(), own.sizes.stream()).toList(),
                    beside.lost.and(own.lost));
        }
    }

    private Named named(Judged by, Weigher.Weight weight, int h) {
        double[] sizes = by.sizes(weight);
        boolean first = weight.first() == h;
        int other = first ? weight.second() : weight.first();
        Put own = NOTHING.and(suspect(h), first ? sizes[0] : sizes[1]);
        Put beside = other < 0 ? NOTHING : NOTHING.and(suspect(other), first ? sizes[1] : sizes[0]);
        return new Named(own, beside);
    }

    private Suspect suspect(int h) {
        return computed.suspects().get(h);
    }

    /** With nothing in doubt, then with a standard deviation of each. */
    private List<Optional<Bench.Run>> runs(Put put, Work work) {
        List<Optional<Bench.Run>> runs = new ArrayList<>();
        for (int k = 0; k <= doubts.size(); k++) {
            runs.add(Optional.empty());
        }
        work.stage("doubt", runs.size());
        Draws.forEachKept(
                work,
                threads,
                0,
                runs.size(),
                bench::worker,
                (worker, k) -> {
                    double[] z = new double[doubts.size()];
                    if (k > 0) {
                        z[k - 1] = 1;
                    }
                    runs.set(k, run(worker, z, put));
                },
                new KeptRuns(runs));
        return runs;
    }

    /** What each doubt does to the readings; empty where nothing runs to its end. */
    private Optional<List<double[]>> columns(List<Optional<Bench.Run>> runs) {
        return runs.getFirst()
                .map(
                        base -> {
                            List<double[]> columns = new ArrayList<>();
                            double[] from = stacked(base);
                            for (int d = 0; d < doubts.size(); d++) {
                                columns.add(
                                        runs.get(d + 1)
                                                .map(run -> less(stacked(run), from))
                                                .orElse(doubts.get(d).column()));
                            }
                            return columns;
                        });
    }

    private static double[] stacked(Bench.Run run) {
        return Arrays.stream(run.channels()).flatMapToDouble(Arrays::stream).toArray();
    }

    private static double[] less(double[] of, double[] from) {
        for (int i = 0; i < of.length; i++) {
            of[i] -= from[i];
        }
        return of;
    }

    /** What a standard deviation of each doubt adds to what a cause took, N. */
    private double[] more(List<Optional<Bench.Run>> without, List<Optional<Bench.Run>> with) {
        double[] more = new double[doubts.size()];
        Optional<Double> from = taken(without.getFirst(), with.getFirst());
        for (int d = 0; d < more.length; d++) {
            Optional<Double> to = taken(without.get(d + 1), with.get(d + 1));
            more[d] = from.isPresent() && to.isPresent() ? to.get() - from.get() : 0;
        }
        return more;
    }

    private Optional<Double> taken(Optional<Bench.Run> without, Optional<Bench.Run> with) {
        return without.flatMap(
                before ->
                        with.map(
                                after -> {
                                    double left = bench.mean(after.lift());
                                    return lift.taken(bench.mean(before.lift()) - left, left);
                                }));
    }
}
