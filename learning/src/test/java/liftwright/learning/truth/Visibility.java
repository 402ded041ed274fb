package liftwright.learning.truth;

import java.util.ArrayList;
import java.util.List;
import liftwright.plant.recording.Signal;
import liftwright.rig.Rig;

/**
 * How far something hidden takes the channels of a test out of what they show with nothing wrong:
 * means over the holds, against the same of truths drawn anew.
 */
final class Visibility {

    private final Rig rig;
    private final Profile profile;
    private final Instruments instruments;
    private final long seed;
    private final List<Double> errors = new ArrayList<>();
    private final double[] own;
    private final double[] spread;

    Visibility(Rig rig, Profile profile, Instruments instruments, long seed, int draws) {
        this.rig = rig;
        this.profile = profile;
        this.instruments = instruments;
        this.seed = seed;
        own = means(seed, List.of());
        List<double[]> others = new ArrayList<>();
        for (int k = 1; k <= draws; k++) {
            others.add(means(seed + 104_729L * k, List.of()));
        }
        spread = new double[own.length];
        for (int i = 0; i < own.length; i++) {
            double mean = 0;
            double square = 0;
            for (double[] one : others) {
                mean += one[i] / draws;
                square += one[i] * one[i] / draws;
            }
            double wander = Math.max(0, square - mean * mean) * draws / (draws - 1);
            spread[i] = Math.sqrt(wander + errors.get(i) * errors.get(i));
        }
    }

    /** The greatest number of standard deviations by which any mean moves. */
    double of(Hidden hidden) {
        double[] moved = means(seed, List.of(hidden));
        double most = 0;
        for (int i = 0; i < own.length; i++) {
            most = Math.max(most, Math.abs(moved[i] - own[i]) / spread[i]);
        }
        return most;
    }

    private double[] means(long of, List<Hidden> hidden) {
        TrueLog log = new TrueLog(rig, of, profile, hidden, profile.lengthS());
        List<Double> found = new ArrayList<>();
        List<Double> doubts = new ArrayList<>();
        for (var with : instruments.all()) {
            if (with.signal() == Signal.AIR_TEMPERATURE || with.signal() == Signal.AIR_PRESSURE) {
                continue;
            }
            double[] series = log.series(with.signal(), with.of());
            for (Profile.Hold hold : profile.holds()) {
                double sum = 0;
                int count = 0;
                for (int k = (int) (hold.fromS() / TrueLog.STEP_S);
                        k < Math.min(series.length, hold.toS() / TrueLog.STEP_S);
                        k++) {
                    double timeS = k * TrueLog.STEP_S;
                    sum += log.shown(with.signal(), with.of(), series[k], timeS);
                    count++;
                }
                double mean = count == 0 ? 0 : sum / count;
                found.add(mean);
                doubts.add(Math.hypot(with.errorSi(), with.errorShare() * mean) / 2);
            }
        }
        if (errors.isEmpty()) {
            errors.addAll(doubts);
        }
        return found.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
