package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.learning.fit.Compared;
import liftwright.learning.fit.ComparedChannels;
import liftwright.learning.replay.Driven;
import liftwright.plant.fault.Effect;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Pack;
import liftwright.rig.Rig;

/**
 * One recording on a rig as declared and on the same rig with something wrong. Where no channel
 * tells the thrust of all fans, it is predicted all the same.
 */
final class Bench {

    private static final CellDraw EXPECTED = new CellDraw.Expected();

    /** A prediction that is off by this part of its greatest value has tripped. */
    private static final double TRIPPED = 0.02;

    /** Parts of a block's time that are looked at by themselves. */
    private static final int STEPS = 10;

    /** No less of a recording is explained. */
    private static final double LEAST_PART = 0.15;

    private final Rig rig;
    private final List<String> notes = new ArrayList<>();
    private final Rig opened;
    private final Recording recording;
    private final boolean holds;
    private final Driven plain;
    private final Driven open;
    private final int lift;
    private final boolean liftMeasured;
    private final double[] declared;
    private final List<Compared> channels;
    private final Run openBase;
    private final double[][] base;
    private final double[] baseLift;
    private final double[] full;

    /**
     * What a run would show.
     *
     * @param channels block means of each channel that is compared
     * @param lift total thrust at the blocks of its channel, N
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Run(double[][] channels, double[] lift) {}

    Bench(Rig declaredRig, Recording recording) {
        rig = declaredRig;
        opened = Opened.of(declaredRig);
        liftMeasured = recording.track(Signal.THRUST, Track.ALL).isPresent();
        Recording whole = liftMeasured ? recording : withLift(recording);
        Driven trips = Driven.of(declaredRig, whole);
        lift = lift(trips);
        double[][] tripped = predicted(trips);
        double[][] held = predicted(trips.holding());
        holds = !fitsBetter(trips, tripped, held);
        OptionalDouble untilS = holds ? tripS(trips, tripped, held) : OptionalDouble.empty();
        this.recording = untilS.isPresent() ? until(whole, untilS.getAsDouble()) : whole;
        plain = untilS.isPresent() ? held(Driven.of(declaredRig, this.recording)) : held(trips);
        untilS.ifPresent(
                at ->
                        notes.add(
                                String.format(
                                        Locale.ROOT,
                                        "as declared, a controller would cut off or a fuse open at"
                                                + " %.0f s, which was not seen: only what was"
                                                + " measured before is explained",
                                        at)));
        open = held(Driven.of(opened, this.recording));
        declared = withCharges(open.parameters(), open.parameters().nominal());
        openBase = runs(open, declared);
        Run run = runs(plain, plainVector());
        base = run.channels;
        baseLift = run.lift;
        channels = compared(run);
        full = full(liftTimesS(), baseLift);
    }

    private Driven held(Driven driven) {
        return holds ? driven.holding() : driven;
    }

    /**
     * Whether a run in which controllers cut off and fuses open is nearer to what was measured.
     * Where it is not, they are kept from it in all runs: whether they act is a matter of the last
     * tenth of a volt, and a fan that was seen to turn did not stop. Thermometers are not asked:
     * how hot a joint gets is off by multiples, and says nothing of what turned.
     */
    private boolean fitsBetter(Driven trips, double[][] with, double[][] without) {
        double better = 0;
        for (int c = 0; c < with.length; c++) {
            if (trips.watched().get(c).track().signal() == Signal.TEMPERATURE) {
                continue;
            }
            double[] measured = trips.watched().get(c).blocks().meansSi();
            double most = 1e-9;
            for (double one : measured) {
                most = Math.max(most, Math.abs(one));
            }
            for (int k = 0; (c != lift || liftMeasured) && k < measured.length; k++) {
                double a = (with[c][k] - measured[k]) / most;
                double b = (without[c][k] - measured[k]) / most;
                better += b * b - a * a;
            }
        }
        return better > 0;
    }

    /**
     * When something tripped that was not seen to; empty where nothing did or it was so early that
     * little would be left. What follows hangs on the last tenth of a volt and of a degree.
     */
    private static OptionalDouble tripS(Driven trips, double[][] with, double[][] without) {
        double first = Double.POSITIVE_INFINITY;
        for (int c = 0; c < with.length; c++) {
            double most = 1e-9;
            for (double one : without[c]) {
                most = Math.max(most, Math.abs(one));
            }
            double[] times = trips.watched().get(c).blocks().timesS();
            for (int k = 0; k < times.length; k++) {
                if (Math.abs(with[c][k] - without[c][k]) > TRIPPED * most) {
                    first = Math.min(first, times[Math.max(0, k - 1)]);
                }
            }
        }
        double least = trips.fromS() + LEAST_PART * (trips.toS() - trips.fromS());
        return first >= least && first < trips.toS()
                ? OptionalDouble.of(first)
                : OptionalDouble.empty();
    }

    private static Recording until(Recording recording, double untilS) {
        List<Track> tracks = new ArrayList<>();
        for (Track track : recording.tracks()) {
            int count = track.samples().upTo(untilS) + 1;
            if (count > 0) {
                double[] times = new double[count];
                double[] values = new double[count];
                for (int k = 0; k < count; k++) {
                    times[k] = track.samples().timeS(k);
                    values[k] = track.samples().si(k);
                }
                tracks.add(
                        new Track(
                                track.signal(),
                                track.of(),
                                track.errorSi(),
                                track.errorShare(),
                                new Samples(times, values)));
            }
        }
        return new Recording(tracks);
    }

    private double[][] predicted(Driven driven) {
        double[][] out = driven.blocks();
        driven.predict(
                withCharges(driven.parameters(), driven.parameters().nominal()), EXPECTED, out);
        return out;
    }

    /** Puts a channel in that nobody measured, to have it predicted. */
    private static Recording withLift(Recording recording) {
        Track longest = recording.tracks().getFirst();
        for (Track track : recording.tracks()) {
            if (track.samples().size() > longest.samples().size()) {
                longest = track;
            }
        }
        double[] times = new double[longest.samples().size()];
        for (int k = 0; k < times.length; k++) {
            times[k] = longest.samples().timeS(k);
        }
        List<Track> tracks = new ArrayList<>(recording.tracks());
        tracks.add(
                new Track(
                        Signal.THRUST,
                        Track.ALL,
                        0,
                        0,
                        new Samples(times, new double[times.length])));
        return new Recording(tracks);
    }

    private static int lift(Driven driven) {
        for (int k = 0; k < driven.watched().size(); k++) {
            Track track = driven.watched().get(k).track();
            if (track.signal() == Signal.THRUST && track.of().equals(Track.ALL)) {
                return k;
            }
        }
        throw new IllegalStateException("thrust of all fans is always predicted");
    }

    /**
     * For each block the part of its time at which a thrust, straight between middles of blocks, is
     * nearly its greatest.
     */
    static double[] full(double[] timesS, double[] newtons) {
        double least = Attribution.FULL * Arrays.stream(newtons).max().orElse(0);
        double[] full = new double[newtons.length];
        for (int k = 0; k < full.length; k++) {
            for (int step = 0; step < STEPS; step++) {
                double part = (step + 0.5) / STEPS - 0.5;
                int beside = Math.clamp(part < 0 ? k - 1 : k + 1, 0, full.length - 1);
                double newton = newtons[k] + Math.abs(part) * (newtons[beside] - newtons[k]);
                full[k] += newton >= least ? 1.0 / STEPS : 0;
            }
        }
        return full;
    }

    private Run runs(Driven driven, double[] p) {
        return run(driven, p)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "as declared, the rig would not have run to the end of"
                                                + " this recording"));
    }

    /** Packs as full as declared: that they were not is a cause, told by their rest voltage. */
    private double[] withCharges(ParameterTable table, double[] p) {
        for (Pack pack : rig.packs()) {
            String path = pack.declaredAt().child("charge").toString();
            row(table, pack.id().text(), path)
                    .or(() -> row(table, path))
                    .ifPresent(row -> p[row] = pack.charge().si());
        }
        return p;
    }

    /** Row of one part; empty where all of its kind share one, or there is none. */
    static Optional<Integer> row(ParameterTable table, String part, String path) {
        return row(table, part + ": " + path);
    }

    static Optional<Integer> row(ParameterTable table, String name) {
        for (int k = 0; k < table.size(); k++) {
            if (table.rows().get(k).name().equals(name)) {
                return Optional.of(k);
            }
        }
        return Optional.empty();
    }

    private List<Compared> compared(Run run) {
        List<Compared> all = new ArrayList<>();
        int next = 0;
        for (int k = 0; k < open.watched().size(); k++) {
            if (k != lift || liftMeasured) {
                all.add(
                        ComparedChannels.of(
                                plain.watched().get(k), run.channels[next++], plain.atStart(k)));
            }
        }
        return List.copyOf(all);
    }

    private Optional<Run> run(Driven driven, double[] p) {
        double[][] out = driven.blocks();
        double went = driven.predict(p, EXPECTED, out);
        if (went < driven.fromS() + 0.98 * (driven.toS() - driven.fromS())) {
            return Optional.empty();
        }
        List<double[]> kept = new ArrayList<>();
        for (int k = 0; k < out.length; k++) {
            if (k != lift || liftMeasured) {
                kept.add(out[k]);
            }
        }
        return Optional.of(new Run(kept.toArray(double[][]::new), out[lift]));
    }

    /** Runs of one thread. */
    final class Worker {
        private final Driven ownPlain = plain.another();
        private final Driven ownOpen = open.another();

        /** With other numbers of the opened rig; empty where it does not run to the end. */
        Optional<Run> opened(double[] p) {
            return run(ownOpen, p);
        }

        /** With other numbers of the rig as declared. */
        Optional<Run> plain(double[] p) {
            return run(ownPlain, p);
        }

        /** With something lost from the start on. */
        Optional<Run> lost(Effect effect) {
            return lost(effect, declared);
        }

        /** The same with other numbers of the opened rig. */
        Optional<Run> lost(Effect effect, double[] p) {
            return run(held(Driven.of(opened, recording, effect)), p);
        }
    }

    Worker worker() {
        return new Worker();
    }

    Rig rig() {
        return rig;
    }

    List<Compared> channels() {
        return channels;
    }

    /** As declared. */
    Run base() {
        return new Run(base, baseLift);
    }

    ParameterTable plainTable() {
        return plain.parameters();
    }

    ParameterTable openTable() {
        return open.parameters();
    }

    /** The opened rig with nothing wrong; but for corrections the same as {@link #base}. */
    Run openBase() {
        return openBase;
    }

    /** Numbers of the rig as declared, packs as full as declared, a new array. */
    double[] plainVector() {
        return withCharges(plain.parameters(), plain.parameters().nominal());
    }

    /** Numbers of the opened rig as declared, a new array. */
    double[] openVector() {
        return declared.clone();
    }

    List<String> notes() {
        List<String> all = new ArrayList<>(plain.notes());
        all.addAll(notes);
        return all;
    }

    /** Most throttle of all that any fan is told. */
    double topThrottle() {
        double most = 0;
        for (int fan = 0; fan < rig.fans().size(); fan++) {
            for (int k = 0; k <= 400; k++) {
                double timeS = open.fromS() + (open.toS() - open.fromS()) * k / 400.0;
                most = Math.max(most, open.throttle(fan, timeS));
            }
        }
        return most;
    }

    boolean turns(int fan) {
        return open.turns(fan);
    }

    /** Times of the blocks of total thrust, s. */
    double[] liftTimesS() {
        return open.watched().get(lift).blocks().timesS();
    }

    /** Mean over the time of nearly full thrust as declared, N. */
    double mean(double[] newtons) {
        double sum = 0;
        double time = 0;
        for (int k = 0; k < newtons.length; k++) {
            sum += full[k] * newtons[k];
            time += full[k];
        }
        return time > 0 ? sum / time : 0;
    }

    /** The same of a channel with times of its own. */
    double mean(double[] timesS, double[] values) {
        double sum = 0;
        double time = 0;
        for (int k = 0; k < values.length; k++) {
            double share = full[Computed.nearest(liftTimesS(), timesS[k])];
            sum += share * values[k];
            time += share;
        }
        return time > 0 ? sum / time : 0;
    }

    /** What a run of the opened rig lacks of the lift as declared, N. */
    double lostN(double[] newtons) {
        return mean(openBase.lift) - mean(newtons);
    }

    /** Lift as declared, N. */
    double liftN() {
        return mean(baseLift);
    }
}
