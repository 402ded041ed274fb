package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How far a fan is from those of its type that are heard at the same moments. */
final class Mismatch {

    private Mismatch() {}

    /** Median over moments of its speed over the mean, less one; 0 for the only one. */
    static double of(FanSpeed fan, List<FanSpeed> fans) {
        Map<Double, double[]> sums = new HashMap<>();
        int same = 0;
        for (FanSpeed other : fans) {
            if (other.voice().type().equals(fan.voice().type())) {
                same++;
                for (int k = 0; k < other.size(); k++) {
                    double[] sum = sums.computeIfAbsent(other.timesS()[k], t -> new double[2]);
                    sum[0] += other.speedRadS()[k];
                    sum[1]++;
                }
            }
        }
        var ratios = new ArrayList<Double>();
        for (int k = 0; k < fan.size(); k++) {
            double[] sum = sums.get(fan.timesS()[k]);
            // A mean over ever other fans would jump: only moments with nearly all count.
            if (sum != null && sum[1] >= 0.8 * same) {
                ratios.add(fan.speedRadS()[k] * sum[1] / sum[0] - 1);
            }
        }
        return ratios.isEmpty() ? 0 : Line.median(ratios.stream().mapToDouble(v -> v).toArray());
    }
}
