package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import liftwright.plant.recording.Samples;

/**
 * Puts the clock of a recording of sound onto that of a log, by the start-up of the fans: what was
 * heard of their speed against what the throttle of the log lets a rotor do. At every shift the
 * throttle, behind a rotor's lag, is held against silence and speeds; a shift has the weight that
 * normal errors with a short memory give it, those of all lags together. Where no start is heard,
 * or another shift explains the sound as well, nothing is claimed.
 *
 * <p>Weight of a regression against none: [SCHW78].
 */
public final class StartUp {

    private static final double STEP_S = 0.02;

    private static final int COARSE = 5;

    /** Times in which a rotor comes near its speed, s; down it takes as long again. From memory. */
    private static final double[] LAGS_S = {0.05, 0.1, 0.15, 0.22, 0.32, 0.46, 0.7};

    /** What speeds are off by over the greatest, with this memory; from memory. */
    private static final double OFF = 0.05;

    private static final double MEMORY_S = 0.3;

    /** Silence before a start, and how long the log and the sound must share, s. */
    private static final double SILENCE_S = 0.3;

    private static final double SHARED = 0.6;

    /** Shifts as near as this are one. */
    private static final double NEAR_S = 0.4;

    private static final double SURE = 0.95;

    /**
     * The window in which a speed is heard, the sound's way in a room, and a rotor that lags
     * otherwise than it is taken to, standard deviation; from memory.
     */
    private static final double HEARD_S = 0.07;

    private final double[] heard;
    private final double firstHeard;
    private final double[] throttle;
    private final double fromS;
    private final double spacingS;
    private final List<Integer> starts;

    /** What a log says of the fans. */
    public enum Told {
        /** Speed goes with it to some such power: resistance and sag take the rest. */
        THROTTLE(0.7),
        /** Of a fan goes with its speed squared and cubed, of idle controllers with nothing. */
        CURRENT(0.4);

        private final double power;

        Told(double power) {
            this.power = power;
        }
    }

    /** What can be said of the two clocks. */
    public sealed interface Clocks {}

    /**
     * Plainly one shift.
     *
     * @param offsetS to be added to times of the recording for those of the log, s
     * @param errorS 95 % of errors are smaller, s
     * @param confidence share of all weight that is near it, 0 to 1
     */
    public record Aligned(double offsetS, double errorS, double confidence) implements Clocks {

        /** In words. */
        public String words() {
            return String.format(
                    Locale.ROOT,
                    "The start-up that is heard is that of the log %.2f s ± %.2f s later on its"
                            + " clock (confidence %s): times are those of the log.",
                    offsetS,
                    errorS,
                    confidence > 0.999
                            ? "over 99.9 %"
                            : String.format(Locale.ROOT, "%.1f %%", 100 * confidence));
        }
    }

    /**
     * It cannot be told.
     *
     * @param why a sentence
     */
    public record Apart(String why) implements Clocks {}

    private StartUp(double[] heard, double[] throttle, double fromS, double spacingS) {
        this.spacingS = spacingS;
        this.heard = heard;
        this.throttle = throttle;
        this.fromS = fromS;
        starts = starts(heard, 0);
        firstHeard = Arrays.stream(heard).filter(v -> v > 0).min().orElse(0);
    }

    /**
     * @param fans as they were heard
     * @param lengthS of the recording
     * @param throttles what all fans were told together, or each of them; or their currents
     */
    public static Clocks of(
            List<FanSpeed> fans, double lengthS, List<Samples> throttles, Told told) {
        double[] heard = heard(fans, lengthS);
        if (fans.isEmpty() || Arrays.stream(heard).noneMatch(v -> v > 0)) {
            return new Apart("No fan is heard, so the clocks cannot be brought together.");
        }
        if (starts(heard, 0).isEmpty()) {
            return new Apart(
                    "The recording begins while fans already turn: without their start-up the"
                            + " clocks cannot be brought together.");
        }
        double fromS = throttles.stream().mapToDouble(Samples::firstS).min().orElse(0);
        double toS = throttles.stream().mapToDouble(Samples::lastS).max().orElse(0);
        double[] throttle = new double[Math.max(1, (int) ((toS - fromS) / STEP_S) + 1)];
        for (int k = 0; k < throttle.length; k++) {
            for (Samples one : throttles) {
                double timeS = fromS + k * STEP_S;
                double at = timeS < one.firstS() ? 0 : one.at(Math.min(timeS, one.lastS()));
                throttle[k] += Math.max(0, at) / throttles.size();
            }
        }
        double most = Arrays.stream(throttle).max().orElse(0);
        if (!(most > 0)) {
            return new Apart("The log tells no fan to turn.");
        }
        for (int k = 0; k < throttle.length; k++) {
            throttle[k] = Math.pow(throttle[k] / most, told.power);
        }
        if (starts(throttle, 0.1).isEmpty()) {
            return new Apart(
                    "The log begins while fans already turn: without their start-up the clocks"
                            + " cannot be brought together.");
        }
        double spacingS =
                throttles.stream()
                        .mapToDouble(one -> (one.lastS() - one.firstS()) / Math.max(1, one.size()))
                        .max()
                        .orElse(0);
        return new StartUp(heard, throttle, fromS, spacingS).found();
    }

    /** Mean speed over the greatest; 0 in silence. */
    private static double[] heard(List<FanSpeed> fans, double lengthS) {
        double[] sum = new double[(int) (lengthS / STEP_S) + 1];
        int[] count = new int[sum.length];
        for (FanSpeed fan : fans) {
            for (int k = 0; k + 1 < fan.size(); k++) {
                double a = fan.timesS()[k];
                double b = fan.timesS()[k + 1];
                for (int i = (int) Math.ceil(Math.max(0, a) / STEP_S);
                        b - a < SILENCE_S && i < sum.length && i * STEP_S < b;
                        i++) {
                    double part = (i * STEP_S - a) / (b - a);
                    sum[i] += (1 - part) * fan.speedRadS()[k] + part * fan.speedRadS()[k + 1];
                    count[i]++;
                }
            }
        }
        double most = 0;
        for (int i = 0; i < sum.length; i++) {
            sum[i] = count[i] == 0 ? 0 : sum[i] / count[i];
            most = Math.max(most, sum[i]);
        }
        for (int i = 0; i < sum.length && most > 0; i++) {
            sum[i] /= most;
        }
        return sum;
    }

    /** Where something comes after silence, on the grid. */
    private static List<Integer> starts(double[] course, double least) {
        var starts = new ArrayList<Integer>();
        int silent = 0;
        for (int k = 0; k < course.length; k++) {
            if (course[k] > least && silent * STEP_S >= SILENCE_S) {
                starts.add(k);
            }
            silent = course[k] > least ? 0 : silent + 1;
        }
        return starts;
    }

    private Clocks found() {
        int first = 1 - heard.length;
        int shifts = heard.length + throttle.length - 1;
        List<double[]> turned = Arrays.stream(LAGS_S).mapToObj(this::behind).toList();
        // All shifts coarsely, for what else it may be; then those near the best.
        double[] coarse = new double[(shifts - 1) / COARSE + 1];
        int best = 0;
        double all = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < coarse.length; s++) {
            coarse[s] = log(turned, first + COARSE * s, COARSE);
            best = coarse[s] > coarse[best] ? s : best;
            all = add(all, coarse[s]);
        }
        // Nothing in common: the sound by itself, its mean taken away.
        all = add(all, Math.log(coarse.length) + nothing());
        double near = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < coarse.length; s++) {
            if (Math.abs(s - best) * COARSE * STEP_S <= NEAR_S) {
                near = add(near, coarse[s]);
            }
        }
        double confidence = Math.exp(near - all);
        if (!(confidence >= SURE)) {
            return new Apart(
                    String.format(
                            Locale.ROOT,
                            "The start-up that is heard fits the throttle of the log at no one"
                                    + " shift plainly (confidence %.0f %%): the clocks are left"
                                    + " apart.",
                            100 * (confidence >= 0 ? confidence : 0)));
        }
        return closer(turned, first + COARSE * best, Math.min(1, confidence));
    }

    private Aligned closer(List<double[]> turned, int about, double confidence) {
        int reach = (int) Math.round(NEAR_S / STEP_S);
        double[] logs = new double[2 * reach + 1];
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < logs.length; k++) {
            logs[k] = log(turned, about + k - reach, 1);
            most = Math.max(most, logs[k]);
        }
        double sum = 0;
        double mean = 0;
        double square = 0;
        for (int k = 0; k < logs.length; k++) {
            double off = (k - reach) * STEP_S;
            double weight = Math.exp(logs[k] - most);
            sum += weight;
            mean += weight * off;
            square += weight * off * off;
        }
        mean /= sum;
        double wide =
                Math.sqrt(
                        Math.max(0, square / sum - mean * mean)
                                + HEARD_S * HEARD_S
                                + spacingS * spacingS / 12);
        return new Aligned(fromS + about * STEP_S + mean, 1.96 * wide, confidence);
    }

    /** The throttle behind a rotor that comes near its speed in so long. */
    private double[] behind(double lagS) {
        double[] turned = new double[throttle.length];
        double now = 0;
        for (int k = 0; k < turned.length; k++) {
            double rest = throttle[k] - now;
            now += rest * -Math.expm1(-STEP_S / (rest > 0 ? lagS : 2 * lagS));
            turned[k] = now;
        }
        return turned;
    }

    /** ln of the weight of a shift, all lags together. */
    private double log(List<double[]> turned, int shift, int stride) {
        int from = Math.max(0, -shift);
        int to = Math.min(heard.length, throttle.length - shift);
        if (!startsWithin(from, to)) {
            return Double.NEGATIVE_INFINITY;
        }
        double sum = Double.NEGATIVE_INFINITY;
        for (double[] one : turned) {
            sum = add(sum, log(one, shift, stride, from, to) - Math.log(LAGS_S.length));
        }
        return sum;
    }

    /** The same of one lag; minus infinity where too little is shared. */
    private double log(double[] turned, int shift, int stride, int from, int to) {
        double both = 0;
        double squares = 0;
        int audible = 0;
        int shared = 0;
        for (int i = 0; i < heard.length; i += stride) {
            audible += heard[i] > 0 ? 1 : 0;
            if (i >= from && i < to && heard[i] > 0) {
                shared++;
                both += heard[i] * turned[i + shift];
                squares += turned[i + shift] * turned[i + shift];
            }
        }
        if (shared < SHARED * audible || !(squares > 0)) {
            return Double.NEGATIVE_INFINITY;
        }
        double gain = both / squares;
        double left = 0;
        for (int i = 0; i < heard.length; i += stride) {
            // Where the log says nothing, nothing is expected: it was not written without reason.
            double expected = i >= from && i < to ? gain * turned[i + shift] : 0;
            double off = heard[i] - (expected < firstHeard ? 0 : expected);
            left += stride * off * off;
        }
        return weight(left);
    }

    /** Whether the sound starts where the log tells what was told. */
    private boolean startsWithin(int from, int to) {
        int silence = (int) (SILENCE_S / STEP_S);
        return starts.stream().anyMatch(k -> k - silence >= from && k < to);
    }

    private double nothing() {
        double mean = Arrays.stream(heard).average().orElse(0);
        return weight(Arrays.stream(heard).map(v -> (v - mean) * (v - mean)).sum());
    }

    private double weight(double squares) {
        double points = heard.length * STEP_S / MEMORY_S;
        return -points / 2 * Math.log(squares / heard.length + OFF * OFF);
    }

    private static double add(double a, double b) {
        double most = Math.max(a, b);
        return most == Double.NEGATIVE_INFINITY
                ? most
                : most + Math.log(Math.exp(a - most) + Math.exp(b - most));
    }

    /** Speeds on the clock of the log. */
    static List<FanSpeed> onLog(List<FanSpeed> fans, double offsetS) {
        var moved = new ArrayList<FanSpeed>();
        for (FanSpeed fan : fans) {
            double[] times = fan.timesS().clone();
            for (int k = 0; k < times.length; k++) {
                times[k] += offsetS;
            }
            moved.add(
                    new FanSpeed(fan.voice(), fan.with(), times, fan.speedRadS(), fan.errorRadS()));
        }
        return moved;
    }
}
