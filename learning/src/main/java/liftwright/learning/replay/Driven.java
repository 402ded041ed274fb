package liftwright.learning.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;
import liftwright.plant.fault.Effect;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Track;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;
import liftwright.rig.table.StartState;

/**
 * The plant driven by a recording: by its throttle, in its air, from what its first samples tell of
 * charge and temperatures. No other measured value drives it. For one thread; {@link #another}
 * gives one for another thread that shares what stays.
 *
 * <p>Of a recording the blocks are the same whatever rig is driven by it. Air, charge and
 * temperature of packs stand in the table of {@link #plant} as they were measured, with the error
 * of their instruments: all other rows are those of the rig as it is given.
 *
 * <pre>{@code
 * Driven driven = Driven.of(rig, recording);
 * double[][] out = driven.blocks();
 * driven.predict(driven.plant().parameters().nominal(), new CellDraw.Expected(), out);
 * double offN = driven.watched().get(0).blocks().meansSi()[7] - out[0][7];
 * }</pre>
 */
public final class Driven {

    /** Blocks of a channel unless asked otherwise. */
    public static final int BLOCKS = 60;

    /** Moments closer together than this are one, s. */
    private static final double ONE_S = 1e-9;

    /** Errors of temperatures in a run's steps over the usual ones, as for cards. */
    private static final double COARSE = 0.5;

    /** What stays. */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    private record Setup(
            Plant plant,
            Recording recording,
            Throttles throttles,
            List<Watched> watched,
            List<Probe> probes,
            List<Unread> unread,
            StartState start,
            Effect atStart,
            double[] stopsS,
            boolean moments,
            List<String> notes) {}

    private final Setup setup;
    private final Discharge run;
    private final OfVector vector;
    private final double[] lagsS;
    private final boolean holds;
    private final double[] now;
    private double[] momentsS = new double[1024];
    private double[][] seen;
    private int count;

    private Driven(Setup setup, double[] lagsS, boolean holds) {
        this.setup = setup;
        this.lagsS = lagsS;
        this.holds = holds;
        run = setup.plant.discharge();
        vector = new OfVector(setup.plant, setup.moments);
        now = new double[setup.probes.size()];
        seen = new double[now.length][momentsS.length];
    }

    /**
     * @throws NotDrivenException where no throttle was recorded
     */
    public static Driven of(Rig rig, Recording recording) {
        return of(rig, recording, Effect.NONE);
    }

    /**
     * The same with something lost from the start on.
     *
     * @param atStart fans, chains and packs count as in the rig's lists
     */
    public static Driven of(Rig rig, Recording recording, Effect atStart) {
        return of(rig, recording, atStart, BLOCKS);
    }

    /**
     * The same with so many blocks a channel.
     *
     * @param blocks most of them, ≥ 1
     */
    public static Driven of(Rig rig, Recording asRecorded, Effect atStart, int blocks) {
        List<String> notes = new ArrayList<>();
        Recording recording = Spikes.without(UsualErrors.in(asRecorded, notes));
        Throttles throttles = Throttles.of(rig, recording);
        Start start = Start.of(rig, recording, throttles);
        Plant plant = Plant.assembleHeated(start.rig());
        notes.addAll(throttles.notes());
        notes.addAll(start.notes());
        Channels channels = new Channels(plant, new Held(plant, recording, throttles, notes));
        double[] edges =
                Blocks.edges(recording.tracks(), throttles.fromS(), throttles.toS(), blocks);
        List<Watched> watched = new ArrayList<>();
        List<Probe> probes = new ArrayList<>();
        List<Unread> unread = new ArrayList<>();
        boolean moments = false;
        for (Track track : recording.tracks()) {
            switch (channels.of(track)) {
                case Channels.Sought.Nothing(String why) -> unread.add(new Unread(track, why));
                case Channels.Sought.Measures(Channels.Found found) -> {
                    Blocks own = Blocks.of(track.samples(), edges, throttles);
                    if (own.size() == 0) {
                        unread.add(
                                new Unread(track, "it has no sample while the throttle is known"));
                        continue;
                    }
                    watched.add(
                            new Watched(
                                    track,
                                    own,
                                    found.gauge().missing(),
                                    found.missingSi(),
                                    found.gauge().missingOrigin()));
                    probes.add(found.probe());
                    moments |= Channels.turns(track.signal());
                }
            }
        }
        return new Driven(
                new Setup(
                        plant,
                        recording,
                        throttles,
                        List.copyOf(watched),
                        List.copyOf(probes),
                        List.copyOf(unread),
                        Start.warm(plant, recording, throttles),
                        standing(throttles).and(atStart),
                        stops(throttles, edges, recording.tracks(), blocks),
                        moments,
                        List.copyOf(notes)),
                new double[watched.size()],
                false);
    }

    private static Effect standing(Throttles throttles) {
        boolean[] turns = throttles.turns();
        return Effect.dead(IntStream.range(0, turns.length).filter(k -> !turns[k]).toArray());
    }

    /** Where a run is stopped: at corners of the throttle and where it is compared, from 0, s. */
    private static double[] stops(
            Throttles throttles, double[] edges, List<Track> tracks, int blocks) {
        TreeSet<Double> times = new TreeSet<>();
        for (Track track : tracks) {
            for (int k = 0; k < track.samples().size() && times.size() <= blocks; k++) {
                double timeS = track.samples().timeS(k);
                if (timeS >= throttles.fromS() && timeS <= throttles.toS()) {
                    times.add(timeS - throttles.fromS());
                }
            }
        }
        if (times.size() > blocks) {
            times.clear();
            for (double edge : edges) {
                times.add(edge - throttles.fromS());
            }
        }
        for (double corner : throttles.course().timesS()) {
            times.add(corner);
        }
        List<Double> apart = new ArrayList<>();
        for (double timeS : times) {
            if (timeS > (apart.isEmpty() ? 0 : apart.getLast()) + ONE_S) {
                apart.add(timeS);
            }
        }
        return apart.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** One for another thread. */
    public Driven another() {
        return new Driven(setup, lagsS, holds);
    }

    /** The same where controllers do not cut off and fuses do not open, whatever flows. */
    public Driven holding() {
        return new Driven(setup, lagsS, true);
    }

    /** The same with channels that show so much later what they measure, s. */
    Driven later(double[] channelLagsS) {
        return new Driven(setup, channelLagsS.clone(), holds);
    }

    /** The plant of that day: heated, in the recorded air, with packs as they were found. */
    public Plant plant() {
        return setup.plant;
    }

    /** What drives it. */
    public Recording recording() {
        return setup.recording;
    }

    /** Its table. */
    public ParameterTable parameters() {
        return setup.plant.parameters();
    }

    /** The channels that the plant predicts, with what was measured. */
    public List<Watched> watched() {
        return setup.watched;
    }

    /** The channels that it does not predict, with the reason. */
    public List<Unread> unread() {
        return setup.unread;
    }

    /** What was taken for granted, in words. */
    public List<String> notes() {
        return setup.notes;
    }

    /** When the recorded throttle begins, on the clock of the recording, s. */
    public double fromS() {
        return setup.throttles.fromS();
    }

    /** When it ends, s. */
    public double toS() {
        return setup.throttles.toS();
    }

    /** Whether a fan is told to turn at any time. */
    public boolean turns(int fan) {
        return setup.throttles.turns()[fan];
    }

    /** Throttle of a fan at a moment on the clock of the recording, as it drives the plant. */
    public double throttle(int fan, double timeS) {
        double[] at = setup.throttles.course().timesS();
        double[][] shares = setup.throttles.course().shares();
        double sinceS = Math.clamp(timeS - fromS(), 0, at[at.length - 1]);
        int found = Arrays.binarySearch(at, sinceS);
        int stretch = Math.clamp(found >= 0 ? found : -found - 2, 0, at.length - 2);
        double share = (sinceS - at[stretch]) / (at[stretch + 1] - at[stretch]);
        return shares[stretch][fan] + share * (shares[stretch + 1][fan] - shares[stretch][fan]);
    }

    /** Room for a prediction: of each channel so many numbers as it has blocks. */
    public double[][] blocks() {
        return setup.watched.stream()
                .map(watched -> new double[watched.blocks().size()])
                .toArray(double[][]::new);
    }

    /**
     * Predicts the mean of every block of every channel.
     *
     * @param p a vector of the table of {@link #plant}
     * @param cells how single cells differ
     * @param out takes them, as {@link #blocks} made it; from the moment that the run could not go
     *     on (a cell empty, no operating point) what it had come to
     * @return how far it went, on the clock of the recording, s
     */
    public double predict(double[] p, CellDraw cells, double[][] out) {
        double wentS = go(p, cells);
        for (int k = 0; k < out.length; k++) {
            double[][] asked = setup.watched.get(k).blocks().askedS();
            int hint = 0;
            for (int block = 0; block < asked.length; block++) {
                double sum = 0;
                for (double timeS : asked[block]) {
                    double sinceS = timeS - fromS() - lagsS[k];
                    hint = upTo(sinceS, hint);
                    sum += between(seen[k], sinceS, hint);
                }
                out[k][block] = sum / asked[block].length;
            }
        }
        return wentS;
    }

    /**
     * Follows the throttle and keeps every moment, for {@link #at}.
     *
     * @return how far it went, on the clock of the recording, s
     */
    public double go(double[] p, CellDraw cells) {
        count = 0;
        run.load(p, cells);
        vector.load(p);
        run.stopAtFirst(false);
        run.allowError(COARSE);
        run.hold(holds);
        run.start(setup.start);
        run.fail(setup.atStart);
        for (double untilS : setup.stopsS) {
            if (!run.follow(setup.throttles.course(), untilS - run.timeS(), this::note)) {
                break;
            }
        }
        if (count == 0) {
            note(run);
        }
        return fromS() + momentsS[count - 1];
    }

    /**
     * A channel at a moment of the run that {@link #go} or {@link #predict} followed last.
     *
     * @param channel number in {@link #watched}
     * @param timeS on the clock of the recording
     */
    public double at(int channel, double timeS) {
        double sinceS = timeS - fromS() - lagsS[channel];
        int found = Arrays.binarySearch(momentsS, 0, count, sinceS);
        return between(seen[channel], sinceS, Math.max(0, found >= 0 ? found : -found - 2));
    }

    /** A channel at the start of the run that was followed last. */
    public double atStart(int channel) {
        return seen[channel][0];
    }

    /** The run that was followed last, at its end. */
    Discharge run() {
        return run;
    }

    private void note(Discharge at) {
        if (count > 0 && at.timeS() <= momentsS[count - 1]) {
            count--;
        }
        if (count == momentsS.length) {
            momentsS = Arrays.copyOf(momentsS, 2 * count);
            for (int k = 0; k < seen.length; k++) {
                seen[k] = Arrays.copyOf(seen[k], 2 * count);
            }
        }
        momentsS[count] = at.timeS();
        for (int k = 0; k < now.length; k++) {
            seen[k][count] = setup.probes.get(k).read(at, vector);
        }
        count++;
    }

    /** Number of the last moment that is not later, at or after a hint. */
    private int upTo(double sinceS, int hint) {
        int at = momentsS[hint] <= sinceS ? hint : 0;
        while (at + 1 < count && momentsS[at + 1] <= sinceS) {
            at++;
        }
        return at;
    }

    private double between(double[] values, double sinceS, int at) {
        if (at + 1 >= count || sinceS <= momentsS[at]) {
            return values[Math.min(at, count - 1)];
        }
        double share = (sinceS - momentsS[at]) / (momentsS[at + 1] - momentsS[at]);
        return values[at] + share * (values[at + 1] - values[at]);
    }
}
