package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Lines and whose they are, made into a speed for each fan. */
final class FanSpeeds {

    private record Point(double low, double high, double sdRadS, double perRatio) {}

    /** Standard deviation of the shift of all ratios where few lines are seen. */
    private static final double SHIFT = 0.003;

    private final List<Voice> voices;
    private final Doubt doubt;
    private final double[] expected;
    private final double[] strays;
    private final int[] leader;
    private final List<TreeMap<Double, Point>> own = new ArrayList<>();
    private final List<TreeMap<Double, Point>> shared = new ArrayList<>();

    /**
     * @param expected ratio that each fan should have by the recording one by one; empty where
     *     there is none
     * @param strays its standard deviation
     */
    FanSpeeds(List<Voice> voices, Doubt doubt, double[] expected, double[] strays) {
        this.voices = voices;
        this.expected = expected.clone();
        this.strays = strays.clone();
        this.doubt = doubt;
        leader = new int[voices.size()];
        for (int i = 0; i < leader.length; i++) {
            leader[i] = i;
            own.add(new TreeMap<>());
            shared.add(new TreeMap<>());
        }
    }

    private int leader(int fan) {
        return leader[fan] == fan ? fan : leader(leader[fan]);
    }

    /** Fans that one line may belong to are one group. */
    void group(List<Integer> fans) {
        for (int fan : fans) {
            leader[leader(fan)] = leader(fans.getFirst());
        }
    }

    /** Once all groups are told. */
    void add(Trace line, List<Integer> fans) {
        boolean single = fans.size() == 1;
        TreeMap<Double, Point> to =
                single ? own.get(fans.getFirst()) : shared.get(leader(fans.getFirst()));
        for (int k = 0; k < line.size(); k++) {
            double speed = line.speedRadS()[k];
            double sd = line.sdRadS()[k];
            to.merge(
                    line.timesS()[k],
                    new Point(speed, speed, sd, speed / line.ratio()[k]),
                    (a, b) ->
                            new Point(
                                    Math.min(a.low(), b.low()),
                                    Math.max(a.high(), b.high()),
                                    Math.max(a.sdRadS(), b.sdRadS()),
                                    a.perRatio()));
        }
    }

    /** Speeds of fans that were heard. */
    List<FanSpeed> all() {
        var speeds = new ArrayList<FanSpeed>();
        for (int i = 0; i < voices.size(); i++) {
            var points = new TreeMap<>(own.get(i));
            boolean single = !points.isEmpty();
            var with = new ArrayList<String>();
            if (single) {
                with.add(voices.get(i).fan());
            } else {
                int fan = i;
                shared.get(leader(i))
                        .forEach((time, point) -> points.put(time, widened(point, fan)));
                for (int j = 0; j < voices.size(); j++) {
                    if (leader(j) == leader(i) && own.get(j).isEmpty()) {
                        with.add(voices.get(j).fan());
                    }
                }
            }
            if (!points.isEmpty()) {
                speeds.add(speed(voices.get(i), with, points));
            }
        }
        return speeds;
    }

    /** One of several lines, of which some may not be seen: as far as its own ratio lets it be. */
    private Point widened(Point point, int fan) {
        double stray = 1.96 * Math.hypot(strays[fan], SHIFT);
        double least = point.perRatio() * (expected[fan] - stray);
        double most = point.perRatio() * (expected[fan] + stray);
        return new Point(
                Math.min(point.low(), least),
                Math.max(point.high(), most),
                point.sdRadS(),
                point.perRatio());
    }

    private FanSpeed speed(Voice voice, List<String> with, Map<Double, Point> points) {
        double[] times = new double[points.size()];
        double[] speed = new double[points.size()];
        double[] error = new double[points.size()];
        int k = 0;
        for (var entry : points.entrySet()) {
            Point point = entry.getValue();
            times[k] = entry.getKey() - doubt.delayS();
            speed[k] = (point.low() + point.high()) / 2;
            double shared = speed[k] * doubt.shared();
            error[k] =
                    (point.high() - point.low()) / 2
                            + 1.96 * Math.sqrt(point.sdRadS() * point.sdRadS() + shared * shared);
            k++;
        }
        return new FanSpeed(voice, with, times, speed, error);
    }
}
