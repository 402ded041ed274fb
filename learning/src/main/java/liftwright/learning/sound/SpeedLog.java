package liftwright.learning.sound;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Speeds as a log: a column of time and one for each fan, as {@code log add} reads them. */
public final class SpeedLog {

    private SpeedLog() {}

    /** CSV with a line for every moment; a cell is empty where a fan was not heard. */
    public static String write(List<FanSpeed> fans) {
        Map<Double, double[]> rows = new TreeMap<>();
        var text = new StringBuilder("time [s]");
        for (int f = 0; f < fans.size(); f++) {
            FanSpeed fan = fans.get(f);
            text.append(",speed ").append(fan.voice().fan()).append(" [rpm]");
            for (int k = 0; k < fan.size(); k++) {
                rows.computeIfAbsent(fan.timesS()[k], t -> new double[fans.size()])[f] =
                        fan.speedRadS()[k] * 30 / Math.PI;
            }
        }
        text.append('\n');
        rows.forEach(
                (time, speeds) -> {
                    text.append(String.format(Locale.ROOT, "%.4f", time));
                    for (double speed : speeds) {
                        text.append(',');
                        if (speed > 0) {
                            text.append(String.format(Locale.ROOT, "%.1f", speed));
                        }
                    }
                    text.append('\n');
                });
        return text.toString();
    }
}
