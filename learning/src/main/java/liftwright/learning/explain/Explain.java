package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.learning.explain.Explained.Weighed;
import liftwright.learning.fit.Compared;
import liftwright.learning.fit.Scatter;
import liftwright.numerics.Work;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.rig.Rig;

/** Explains one recording of one rig. */
public final class Explain {

    private Explain() {}

    /**
     * @param rig as declared
     * @param recording what was measured; its throttle drives the plant
     * @param threads ≥ 1
     * @throws liftwright.learning.replay.NotDrivenException where no throttle was recorded
     * @throws IllegalArgumentException where the rig as declared would not have run to its end, or
     *     no channel can be compared
     */
    public static Explained of(Rig rig, Recording recording, int threads, Work work) {
        Bench bench = new Bench(rig, recording);
        if (bench.channels().isEmpty()) {
            throw new IllegalArgumentException("no channel can be compared with the plant");
        }
        Scatter usual =
                Scatter.of(
                        bench.channels(),
                        bench.base().channels(),
                        Scatter.Assumed.usual(bench.channels()));
        Computed computing = new Computed(bench, usual, threads);
        Doubts doubting = new Doubts(bench, usual, threads);
        List<Doubts.Doubt> doubts = new ArrayList<>(doubting.of(work));
        Computed.Result first = computing.of(Suspects.of(bench), work);
        doubts.addAll(doubting.unsaid(first));
        List<double[]> columns = doubts.stream().map(Doubts.Doubt::column).toList();
        Looked looked = looked(bench, new Closer(computing, work), first, columns);
        Computed.Result computed = looked.computed;
        Judged judged = looked.judged;
        Lifted lift = new Lifted(bench.liftN(), measuredN(bench).orElse(0.0));
        List<Weighed> ranked =
                judged.ranked(
                        new Interplay(bench, computed, doubts, lift, threads)
                                .of(
                                        judged,
                                        closer ->
                                                judged(
                                                        bench,
                                                        looked.likely,
                                                        closer,
                                                        computed,
                                                        looked.together,
                                                        false),
                                        work));
        List<String> notes = new ArrayList<>(bench.notes());
        Optional<Double> measured = measuredN(bench);
        Attribution attribution =
                measured.map(
                                newton ->
                                        new Attributing(
                                                        bench,
                                                        judged.weigher(),
                                                        judged,
                                                        computed,
                                                        doubts)
                                                .made(newton))
                        .orElse(Attribution.NONE);
        return new Explained(
                judged.finding(),
                judged.named(ranked),
                ranked,
                attribution.predictedN() - attribution.measuredN(),
                attribution,
                NextTests.of(ranked),
                notes);
    }

    /**
     * @param together what pairs do beyond what each of them does alone
     * @param likely the readings with the likeliest causes
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Looked(
            Computed.Result computed, List<Together> together, double[][] likely, Judged judged) {}

    /** A first look at all causes, then a closer one at the likeliest. */
    static Looked looked(Bench bench, Closer closer, Computed.Result first, List<double[]> doubts) {
        double[][] base = bench.base().channels();
        Judged one = judged(bench, base, doubts, first, List.of(), false);
        Computed.Result sized = closer.sized(first, one);
        Judged two = judged(bench, likely(base, one, first), doubts, sized, List.of(), false);
        List<Together> together = closer.together(sized, two);
        double[][] likely = likely(base, two, sized);
        return new Looked(
                sized, together, likely, judged(bench, likely, doubts, sized, together, true));
    }

    /** The readings with the likeliest of what may be wrong. */
    static double[][] likely(double[][] base, Judged judged, Computed.Result computed) {
        double[][] likely = new double[base.length][];
        double[] effect = judged.likeliestEffect(computed.hypotheses());
        int next = 0;
        for (int c = 0; c < base.length; c++) {
            likely[c] = base[c].clone();
            for (int k = 0; k < likely[c].length && effect.length > 0; k++) {
                likely[c][k] += effect[next++];
            }
        }
        return likely;
    }

    private static Judged judged(
            Bench bench,
            double[][] likely,
            List<double[]> doubts,
            Computed.Result computed,
            List<Together> together,
            boolean last) {
        return Weighing.of(
                new Weighing.Readings(
                        bench.channels(),
                        bench.base().channels(),
                        likely,
                        new Lifted(bench.liftN(), measuredN(bench).orElse(0.0)),
                        last),
                doubts,
                computed.hypotheses(),
                together);
    }

    /**
     * Thrust measured over the blocks that count, N: of all fans, or the sum of what mounts carry
     * where every fan is on one; empty where no channel tells it.
     */
    static Optional<Double> measuredN(Bench bench) {
        double sum = 0;
        Set<String> mounts = new HashSet<>();
        for (Compared channel : bench.channels()) {
            if (channel.signal() != Signal.THRUST) {
                continue;
            }
            if (channel.of().equals(Track.ALL)) {
                return Optional.of(bench.mean(channel.timesS(), channel.measuredSi()));
            }
            if (mounts.add(channel.of())) {
                sum += bench.mean(channel.timesS(), channel.measuredSi());
            }
        }
        boolean all =
                bench.rig().fans().stream()
                        .allMatch(
                                fan ->
                                        mounts.contains(fan.mount().name())
                                                || mounts.contains(fan.id().text()));
        return all ? Optional.of(sum) : Optional.empty();
    }
}
