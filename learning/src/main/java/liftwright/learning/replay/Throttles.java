package liftwright.learning.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import liftwright.plant.Order;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.rig.Control;
import liftwright.rig.Fan;
import liftwright.rig.Rig;

/**
 * The recorded throttle of every fan: its own, else that of its control group, else that of all.
 * Straight between samples, and thinned where it is straight.
 *
 * @param fromS when the recorded throttle begins, on the clock of the recording, s
 * @param toS when it ends, s
 * @param course the same for a run that starts at {@code fromS}
 * @param tracks those that drive a fan
 * @param turns whether a fan is ever told to turn
 * @param gaps stretches in which the throttle changed unseen, on the clock of the recording, s
 * @param notes what was taken for granted
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
record Throttles(
        double fromS,
        double toS,
        Order.Course course,
        List<Track> tracks,
        boolean[] turns,
        List<double[]> gaps,
        List<String> notes) {

    /** Thinning moves no throttle further than this; a hundredth of what a hand can tell. */
    private static final double TOLERANCE = 5e-4;

    /** More corners than these are noise: the throttle is averaged over so many stretches then. */
    private static final int MOST_CORNERS = 600;

    /** More samples than these are averaged before they are looked at. */
    private static final int MOST_SAMPLES = 20_000;

    /** Below this throttle a fan is at rest. */
    static final double REST = 0.01;

    /** A gap is so many usual steps long, and longer than the seconds below. */
    private static final double GAP_STEPS = 10;

    private static final double GAP_S = 2;

    /** A throttle that is the same before and after a gap is taken to have stayed. */
    private static final double MOVED = 0.02;

    static Throttles of(Rig rig, Recording recording) {
        Map<Track, Integer> column = new HashMap<>();
        List<Track> tracks = new ArrayList<>();
        int[] of = new int[rig.fans().size()];
        List<String> without = new ArrayList<>();
        for (int k = 0; k < of.length; k++) {
            Optional<Track> own = track(rig, rig.fans().get(k), recording);
            if (own.isEmpty()) {
                without.add(rig.fans().get(k).id().text());
                of[k] = -1;
                continue;
            }
            if (column.putIfAbsent(own.get(), tracks.size()) == null) {
                tracks.add(own.get());
            }
            of[k] = column.get(own.get());
        }
        if (tracks.isEmpty()) {
            throw new NotDrivenException(needed(recording));
        }
        List<String> notes = new ArrayList<>();
        if (!without.isEmpty()) {
            notes.add(
                    "no throttle is recorded of "
                            + String.join(", ", without)
                            + ": taken to stand still");
        }
        return driven(tracks, of, notes);
    }

    private static String needed(Recording recording) {
        String speeds =
                recording.all(Signal.SPEED).isEmpty()
                        ? ""
                        : "; speeds are recorded, but what a fan was told is what its lack of thrust is"
                                + " measured against";
        return "no throttle was recorded: the plant needs a channel \"throttle\" (of all, of a"
                + " control group, or of a fan, 0 to 100 %)"
                + speeds
                + "; write down the steps of the test as a table of time and throttle and read it in"
                + " with the log";
    }

    private static Optional<Track> track(Rig rig, Fan fan, Recording recording) {
        Stream<String> groups =
                rig.control().groups().stream()
                        .filter(group -> group.fans().contains(fan.id()))
                        .map(Control.Group::name);
        return Stream.concat(
                        Stream.concat(Stream.of(fan.id().text()), groups), Stream.of(Track.ALL))
                .flatMap(name -> recording.track(Signal.THROTTLE, name).stream())
                .findFirst();
    }

    private static Throttles driven(List<Track> tracks, int[] of, List<String> notes) {
        double fromS =
                tracks.stream().mapToDouble(track -> track.samples().firstS()).max().orElseThrow();
        double toS =
                tracks.stream().mapToDouble(track -> track.samples().lastS()).max().orElseThrow();
        for (Track track : tracks) {
            if (track.samples().lastS() < toS - GAP_S) {
                notes.add(
                        track.name()
                                + " ends before the others: taken to stay as it was at its end");
            }
        }
        if (!(toS > fromS)) {
            throw new NotDrivenException(
                    "the throttle has one sample: the plant needs its course over time");
        }
        double[] timesS = times(tracks, fromS, toS);
        double[][] values = values(tracks, timesS);
        int[] corners = Straight.points(timesS, values, TOLERANCE);
        if (corners.length > MOST_CORNERS) {
            notes.add(
                    "the recorded throttle is noisy: averaged over stretches of "
                            + Math.max(1, Math.round(1000 * (toS - fromS) / MOST_CORNERS))
                            + " ms");
            double[][] smooth = averaged(timesS, values, MOST_CORNERS);
            timesS = smooth[0];
            values = Arrays.copyOfRange(smooth, 1, smooth.length);
            corners = Straight.points(timesS, values, TOLERANCE);
        }
        return made(timesS, values, corners, of, tracks, notes);
    }

    private static Throttles made(
            double[] timesS,
            double[][] values,
            int[] corners,
            int[] of,
            List<Track> tracks,
            List<String> notes) {
        double[] at = new double[corners.length];
        double[][] shares = new double[corners.length][of.length];
        boolean[] turns = new boolean[of.length];
        for (int k = 0; k < corners.length; k++) {
            at[k] = timesS[corners[k]] - timesS[0];
            for (int fan = 0; fan < of.length; fan++) {
                shares[k][fan] = of[fan] < 0 ? 0 : Math.clamp(values[corners[k]][of[fan]], 0, 1);
                turns[fan] |= shares[k][fan] > REST;
            }
        }
        List<double[]> gaps = new ArrayList<>();
        tracks.forEach(track -> gaps(track.samples(), gaps));
        return new Throttles(
                timesS[0],
                timesS[timesS.length - 1],
                new Order.Course(at, shares),
                List.copyOf(tracks),
                turns,
                List.copyOf(gaps),
                List.copyOf(notes));
    }

    private static double[] times(List<Track> tracks, double fromS, double toS) {
        TreeSet<Double> all = new TreeSet<>();
        for (Track track : tracks) {
            Samples samples = track.samples();
            int every = Math.max(1, samples.size() / MOST_SAMPLES);
            for (int k = 0; k < samples.size(); k += every) {
                if (samples.timeS(k) >= fromS && samples.timeS(k) <= toS) {
                    all.add(samples.timeS(k));
                }
            }
        }
        all.add(fromS);
        all.add(toS);
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double[][] values(List<Track> tracks, double[] timesS) {
        double[][] values = new double[timesS.length][tracks.size()];
        for (int of = 0; of < tracks.size(); of++) {
            Samples samples = tracks.get(of).samples();
            for (int k = 0; k < timesS.length; k++) {
                values[k][of] = samples.at(Math.min(timesS[k], samples.lastS()));
            }
        }
        return values;
    }

    /** Means over equal stretches, first the times and then a row of values for each of them. */
    private static double[][] averaged(double[] timesS, double[][] values, int stretches) {
        int count = values[0].length;
        double fromS = timesS[0];
        double longS = (timesS[timesS.length - 1] - fromS) / stretches;
        List<Double> times = new ArrayList<>();
        List<double[]> rows = new ArrayList<>();
        times.add(fromS);
        int next = 0;
        for (int k = 0; k < stretches; k++) {
            double[] sum = new double[count];
            double sumS = 0;
            int members = 0;
            while (next < timesS.length
                    && (timesS[next] < fromS + (k + 1) * longS || k == stretches - 1)) {
                sumS += timesS[next];
                for (int of = 0; of < count; of++) {
                    sum[of] += values[next][of];
                }
                members++;
                next++;
            }
            if (members > 0 && sumS / members > times.getLast()) {
                int of = members;
                times.add(sumS / members);
                rows.add(Arrays.stream(sum).map(all -> all / of).toArray());
            } else if (members > 0 && rows.isEmpty()) {
                rows.add(values[0]);
            }
        }
        if (rows.size() < times.size()) {
            rows.addFirst(rows.getFirst());
        }
        if (times.getLast() < timesS[timesS.length - 1]) {
            times.add(timesS[timesS.length - 1]);
            rows.add(rows.getLast());
        }
        double[][] both = new double[rows.size() + 1][];
        both[0] = times.stream().mapToDouble(Double::doubleValue).toArray();
        for (int k = 0; k < rows.size(); k++) {
            both[k + 1] = rows.get(k);
        }
        return both;
    }

    private static void gaps(Samples samples, List<double[]> into) {
        if (samples.size() < 3) {
            return;
        }
        double[] steps = new double[samples.size() - 1];
        for (int k = 0; k < steps.length; k++) {
            steps[k] = samples.timeS(k + 1) - samples.timeS(k);
        }
        double[] sorted = steps.clone();
        Arrays.sort(sorted);
        double usualS = sorted[sorted.length / 2];
        for (int k = 0; k < steps.length; k++) {
            if (steps[k] > Math.max(GAP_S, GAP_STEPS * usualS)
                    && Math.abs(samples.si(k + 1) - samples.si(k)) > MOVED) {
                into.add(new double[] {samples.timeS(k), samples.timeS(k + 1)});
            }
        }
    }

    /** Whether the throttle is known all the way between two moments. */
    boolean known(double fromS, double toS) {
        return fromS >= this.fromS
                && toS <= this.toS
                && gaps.stream().noneMatch(gap -> fromS < gap[1] && toS > gap[0]);
    }

    /** When the first fan is told to turn, on the clock of the recording, s. */
    double wakesS() {
        for (int k = 0; k < course.timesS().length; k++) {
            if (Arrays.stream(course.shares()[k]).anyMatch(share -> share > REST)) {
                return fromS + course.timesS()[Math.max(0, k - 1)];
            }
        }
        return toS;
    }
}
