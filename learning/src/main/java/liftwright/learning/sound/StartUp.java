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

    private static final double STEP_S = HeardCourse.STEP_S;

    /** For a first look over all shifts every so many samples. */
    private static final int COARSE = 5;

    /** Times in which a rotor comes near its speed, and in which it loses it, s; from memory. */
    private static final double[] UP_S = {0.05, 0.1, 0.18, 0.3, 0.5};

    private static final double[] DOWN_S = {0.1, 0.2, 0.4, 0.8, 1.4};

    /** The same for the first look. */
    private static final double[] FIRST_UP_S = {0.08, 0.25};

    private static final double[] FIRST_DOWN_S = {0.2, 0.6};

    /** How much of what is heard must lie within the log. */
    private static final double SHARED = 0.6;

    /** Shifts as near as this are one, s. */
    private static final double NEAR_S = 0.4;

    private static final double SURE = 0.95;

    /**
     * The window in which a speed is heard, the sound's way in a room, and a rotor that follows
     * otherwise than it is taken to, standard deviation; from memory.
     */
    private static final double HEARD_S = 0.04;

    private final HeardCourse heard;
    private final double[] told;
    private final double[] powers;
    private final double fromS;
    private final double spacingS;

    /** What a log says of the fans. */
    public enum Told {
        /** Speed goes with it to some such power: resistance and sag take the rest. */
        THROTTLE(0.5, 0.7, 0.9),
        /** Of a fan goes with its speed squared and cubed, of idle controllers with nothing. */
        CURRENT(0.33, 0.42, 0.5);

        private final double[] powers;

        Told(double... powers) {
            this.powers = powers;
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

    private StartUp(
            HeardCourse heard, double[] told, double[] powers, double fromS, double spacingS) {
        this.heard = heard;
        this.told = told;
        this.powers = powers;
        this.fromS = fromS;
        this.spacingS = spacingS;
    }

    /**
     * @param fans as they were heard
     * @param lengthS of the recording
     * @param throttles what all fans were told together, or each of them; or their currents
     */
    public static Clocks of(List<FanSpeed> fans, double lengthS, List<Samples> throttles, Told as) {
        var heard = new HeardCourse(fans, lengthS);
        if (heard.silent()) {
            return new Apart("No fan is heard, so the clocks cannot be brought together.");
        }
        if (!heard.starts()) {
            return new Apart(
                    "The recording begins while fans already turn: without their start-up the"
                            + " clocks cannot be brought together.");
        }
        double fromS = throttles.stream().mapToDouble(Samples::firstS).min().orElse(0);
        double[] told = told(throttles, fromS);
        double most = Arrays.stream(told).max().orElse(0);
        if (!(most > 0)) {
            return new Apart("The log tells no fan to turn.");
        }
        for (int k = 0; k < told.length; k++) {
            told[k] /= most;
        }
        if (HeardCourse.starts(told, 0.05).isEmpty()) {
            return new Apart(
                    "The log begins while fans already turn: without their start-up the clocks"
                            + " cannot be brought together.");
        }
        double spacingS =
                throttles.stream()
                        .mapToDouble(one -> (one.lastS() - one.firstS()) / Math.max(1, one.size()))
                        .max()
                        .orElse(0);
        return new StartUp(heard, told, as.powers, fromS, spacingS).found();
    }

    /** Mean of what was told, on the grid. */
    private static double[] told(List<Samples> throttles, double fromS) {
        double toS = throttles.stream().mapToDouble(Samples::lastS).max().orElse(0);
        double[] told = new double[Math.max(1, (int) ((toS - fromS) / STEP_S) + 1)];
        for (int k = 0; k < told.length; k++) {
            for (Samples one : throttles) {
                double timeS = fromS + k * STEP_S;
                double at = timeS < one.firstS() ? 0 : one.at(Math.min(timeS, one.lastS()));
                told[k] += Math.max(0, at) / throttles.size();
            }
        }
        return told;
    }

    private Clocks found() {
        int first = 1 - heard.size();
        int shifts = heard.size() + told.length - 1;
        List<Turning> turned = turned(FIRST_UP_S, FIRST_DOWN_S);
        // All shifts coarsely, for what else it may be; then those near the best.
        double[] coarse = new double[(shifts - 1) / COARSE + 1];
        int best = 0;
        // Nothing in common: as likely beforehand as all shifts together.
        double all = Math.log(coarse.length) + heard.byItself(COARSE);
        for (int s = 0; s < coarse.length; s++) {
            coarse[s] = weight(turned, first + COARSE * s, COARSE);
            best = coarse[s] > coarse[best] ? s : best;
            all = add(all, coarse[s]);
        }
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
                            100 * confidence));
        }
        return closer(first + COARSE * best, Math.min(1, confidence));
    }

    private Aligned closer(int about, double confidence) {
        List<Turning> turned = turned(UP_S, DOWN_S);
        int reach = (int) Math.round(NEAR_S / STEP_S);
        double[] weights = new double[2 * reach + 1];
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < weights.length; k++) {
            weights[k] = weight(turned, about + k - reach, 1);
            most = Math.max(most, weights[k]);
        }
        double sum = 0;
        double mean = 0;
        double square = 0;
        for (int k = 0; k < weights.length; k++) {
            double off = (k - reach) * STEP_S;
            double weight = Math.exp(weights[k] - most);
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

    /** What was told behind a rotor, for each law and each pair of lags. */
    private List<Turning> turned(double[] upS, double[] downS) {
        var turned = new ArrayList<Turning>();
        for (double power : powers) {
            double[] aim = Arrays.stream(told).map(v -> Math.pow(v, power)).toArray();
            for (double up : upS) {
                for (double down : downS) {
                    turned.add(Turning.behind(aim, up, down));
                }
            }
        }
        return turned;
    }

    /**
     * ln of the weight of a shift, all rotors together; minus infinity where too little is shared.
     */
    private double weight(List<Turning> turned, int shift, int stride) {
        int from = Math.max(0, -shift);
        int to = Math.min(heard.size(), told.length - shift);
        if (!heard.startsWithin(from, to) || heard.share(from, to) < SHARED) {
            return Double.NEGATIVE_INFINITY;
        }
        double sum = Double.NEGATIVE_INFINITY;
        for (Turning one : turned) {
            sum = add(sum, heard.as(one, shift, stride) - Math.log(turned.size()));
        }
        return sum;
    }

    /** Logarithm of the sum of two weights. */
    static double add(double a, double b) {
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
