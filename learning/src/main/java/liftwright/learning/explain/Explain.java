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
        List<Doubts.Doubt> doubts = new Doubts(bench, usual, threads).of(work);
        Computed.Result computed = new Computed(bench, usual, threads).of(Suspects.of(bench), work);
        Judged judged =
                Weighing.of(
                        bench.channels(),
                        bench.base().channels(),
                        doubts.stream().map(Doubts.Doubt::column).toList(),
                        computed.hypotheses());
        List<Weighed> ranked = judged.ranked();
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
