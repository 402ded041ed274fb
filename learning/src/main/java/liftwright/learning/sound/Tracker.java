package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Follows the fans of one type through a stretch of sound in which they speed up and down together.
 * Where two lines come so near that either could be the other afterwards, both are cut: a line that
 * goes on behind a meeting is another until its ratio says whose it is.
 */
final class Tracker {

    /** Windows overlap by three quarters. */
    static final int HOPS = 4;

    /** A line is no shorter, in windows' lengths. */
    private static final double SHORTEST = 2.5;

    private static final int HARMONICS = 4;
    private static final double COST = 1.5;
    private static final double LEAST = 12;
    private static final double WANDER = 0.0008;

    /** A fan's ratio goes no farther from one second to the next. */
    private static final double STEP = 0.004;

    /** Standard deviation per relative change of speed: an echo is late by some 8 ms. */
    private static final double LATE_S = 0.008;

    private final Reference reference;
    private final Zoom zoom;
    private final double perRatioRadS;
    private final double[] timesS;
    private final List<List<Peak>> peaks = new ArrayList<>();
    private int apart;
    private double centre = 1;

    /**
     * @param fullHz rate of the blades at scale and ratio 1, Hz
     * @param perRatioRadS speed at scale and ratio 1, rad/s
     * @param windowS length of a window, s
     */
    Tracker(
            Waveform sound,
            Reference reference,
            double fullHz,
            double perRatioRadS,
            double windowS) {
        this.reference = reference;
        this.perRatioRadS = perRatioRadS;
        zoom = new Zoom(sound, reference, fullHz, HARMONICS, windowS);
        double hop = windowS / HOPS;
        int count =
                (int) Math.max(0, (reference.toS() - reference.fromS() - windowS / 2) / hop + 1);
        timesS = new double[count];
        for (int k = 0; k < count; k++) {
            timesS[k] = reference.fromS() + windowS / 4 + k * hop;
        }
    }

    /** Least difference of ratios that is told apart where the fans are fastest. */
    double resolution() {
        return zoom.resolution(reference.highest());
    }

    /**
     * @param fans how many there are: no more lines are looked for at one time
     */
    List<Trace> follow(int fans) {
        double[] gate = new double[timesS.length];
        for (int k = 0; k < timesS.length; k++) {
            peaks.add(zoom.peaks(timesS[k]));
            double resolution = zoom.resolution(reference.scaleAt(timesS[k]));
            gate[k] = Math.max(WANDER, 0.5 * resolution);
        }
        List<Line> lines = atMost(new Linker(peaks, gate, COST, LEAST).lines(4 * fans + 8), fans);
        apart = apart(lines);
        centre = centre(lines);
        var kept = new ArrayList<Line>();
        List<Line> cut = Cuts.of(lines, this::tooNear);
        for (Line line : fans > 1 ? Cuts.atSteps(cut, 2 * HOPS, STEP) : cut) {
            if (line.last() - line.first() + 1 >= SHORTEST * HOPS && line.seen() >= 0.6) {
                kept.add(line);
            }
        }
        return kept.stream().map(line -> trace(line, fans > 1)).toList();
    }

    /** Lines that begin while already as many run as there are fans are left out, weakest first. */
    private List<Line> atMost(List<Line> bestFirst, int fans) {
        int[] running = new int[timesS.length];
        var kept = new ArrayList<Line>();
        for (Line line : bestFirst) {
            int full = 0;
            for (int k : line.frames()) {
                full += running[k] >= fans ? 1 : 0;
            }
            if (full > 0.3 * line.frames().size()) {
                continue;
            }
            line.frames().forEach(k -> running[k]++);
            kept.add(line);
        }
        return kept;
    }

    /** Mean ratio of all lines, those that meet too. */
    double centre() {
        return centre;
    }

    private static double centre(List<Line> lines) {
        return lines.stream()
                .flatMap(line -> line.peaks().stream())
                .mapToDouble(Peak::ratio)
                .average()
                .orElse(1);
    }

    double fromS() {
        return reference.fromS();
    }

    double toS() {
        return reference.toS();
    }

    /** Ratio of a speed to the reference at a moment. */
    double ratio(double speedRadS, double timeS) {
        return speedRadS / perRatioRadS / reference.scaleAt(timeS);
    }

    /** Share of the windows between two moments in which there is a line near a ratio. */
    double present(double ratio, double fromS, double toS) {
        int all = 0;
        int seen = 0;
        for (int k = 0; k < timesS.length; k++) {
            if (timesS[k] >= fromS && timesS[k] <= toS) {
                double near = Math.max(0.003, zoom.resolution(reference.scaleAt(timesS[k])));
                all++;
                seen +=
                        peaks.get(k).stream().anyMatch(p -> Math.abs(p.ratio() - ratio) < near)
                                ? 1
                                : 0;
            }
        }
        return all == 0 ? 1 : seen / (double) all;
    }

    /** Whether the reference goes on at half its greatest scale and more. */
    boolean goesOn(double fromS, double toS) {
        for (double t = fromS; t <= toS; t += 0.1) {
            if (reference.scaleAt(t) < 0.5 * reference.highest()) {
                return false;
            }
        }
        return true;
    }

    /** Greatest over least scale between two moments. */
    double changes(double fromS, double toS) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (double t = fromS; t <= toS; t += 0.05) {
            double scale = reference.scaleAt(t);
            least = Math.min(least, scale);
            most = Math.max(most, scale);
        }
        return most / least;
    }

    /** How many lines run apart where the fans are fastest: the upper quartile of such windows. */
    int apart() {
        return apart;
    }

    private int apart(List<Line> lines) {
        List<List<Double>> at = new ArrayList<>();
        for (int k = 0; k < timesS.length; k++) {
            at.add(new ArrayList<>());
        }
        for (Line line : lines) {
            for (int k = 0; k < line.frames().size(); k++) {
                at.get(line.frames().get(k)).add(line.peaks().get(k).ratio());
            }
        }
        var counts = new ArrayList<Integer>();
        for (int k = 0; k < timesS.length; k++) {
            double scale = reference.scaleAt(timesS[k]);
            if (scale > 0.9 * reference.highest()) {
                counts.add(groups(at.get(k), zoom.resolution(scale)));
            }
        }
        Collections.sort(counts);
        return counts.isEmpty() ? 0 : counts.get(counts.size() * 3 / 4);
    }

    private static int groups(List<Double> ratios, double resolution) {
        Collections.sort(ratios);
        int groups = ratios.isEmpty() ? 0 : 1;
        for (int k = 1; k < ratios.size(); k++) {
            groups += ratios.get(k) - ratios.get(k - 1) > resolution ? 1 : 0;
        }
        return groups;
    }

    private boolean tooNear(int frame, double a, double b) {
        double scale = reference.scaleAt(timesS[frame]);
        return Math.abs(a - b) < Math.min(0.7 * zoom.resolution(scale), 0.004);
    }

    private Trace trace(Line line, boolean several) {
        int n = line.frames().size();
        double[] times = new double[n];
        double[] ratio = new double[n];
        double[] speed = new double[n];
        double[] sd = new double[n];
        double[] wander = Wander.of(line, several ? 0.7 : 0.2);
        for (int k = 0; k < n; k++) {
            Peak peak = line.peaks().get(k);
            double t = timesS[line.frames().get(k)];
            double scale = reference.scaleAt(t);
            double slope =
                    (reference.scaleAt(t + 0.05) - reference.scaleAt(t - 0.05)) / 0.1 / scale;
            times[k] = t;
            ratio[k] = peak.ratio();
            speed[k] = peak.ratio() * scale * perRatioRadS;
            double late = slope * LATE_S;
            sd[k] =
                    speed[k]
                            * Math.sqrt(
                                    peak.errorRatio() * peak.errorRatio()
                                            + wander[k]
                                            + late * late);
        }
        return new Trace(times, ratio, speed, sd, line.medianLevel(), line.seen());
    }
}
