package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A recording in which every fan ran by itself, in a known order and at one throttle: what each
 * turned, which tells later whose line is whose.
 *
 * @param fans one for each that was heard, in order; empty where the recording cannot be trusted
 * @param trouble why it cannot, a sentence; empty where it can
 */
record OneByOne(List<Alone> fans, Optional<String> trouble) {

    private static final double WINDOW_S = 0.2;

    OneByOne {
        fans = List.copyOf(fans);
    }

    /**
     * @param voice the fan
     * @param speedRadS where it turned fastest and held, rad/s
     * @param sdRadS standard deviation, rad/s
     * @param fromS when it was first heard, s
     * @param toS when last
     */
    record Alone(Voice voice, double speedRadS, double sdRadS, double fromS, double toS) {

        /** At which its blades passed, Hz. */
        double hz() {
            return voice.blades() * speedRadS / (2 * Math.PI);
        }
    }

    /**
     * @param voices in the order in which they ran
     */
    static OneByOne of(Waveform sound, List<Voice> voices) {
        double most = voices.stream().mapToDouble(Voice::topHz).max().orElseThrow();
        CommonCurve curve = CommonCurve.of(Spectrogram.of(sound), List.of(1.0), 1, most * 1.1, 0);
        List<Stretches.Stretch> heard = Stretches.all(curve);
        if (heard.size() != voices.size()) {
            return new OneByOne(
                    List.of(),
                    Optional.of(
                            heard.size()
                                    + (heard.size() == 1 ? " fan is" : " fans are")
                                    + " heard to spin up one after the other, and "
                                    + voices.size()
                                    + " ran"));
        }
        var fans = new ArrayList<Alone>();
        for (int k = 0; k < heard.size(); k++) {
            Optional<Alone> alone = alone(sound, curve, heard.get(k), voices.get(k));
            if (alone.isEmpty()) {
                return new OneByOne(
                        List.of(),
                        Optional.of(
                                "the line of "
                                        + voices.get(k).fan()
                                        + " is not heard well enough, or lies above its top speed"));
            }
            fans.add(alone.get());
        }
        return new OneByOne(fans, Optional.empty());
    }

    private static Optional<Alone> alone(
            Waveform sound, CommonCurve curve, Stretches.Stretch stretch, Voice voice) {
        Reference reference = Reference.of(curve, stretch.from(), stretch.to(), 4);
        double perHz = 2 * Math.PI / voice.blades();
        List<Trace> traces = new Tracker(sound, reference, 1, perHz, WINDOW_S).follow(1);
        var speeds = new ArrayList<Double>();
        traces.forEach(
                trace -> {
                    for (double speed : trace.speedRadS()) {
                        speeds.add(speed);
                    }
                });
        if (speeds.size() < 4) {
            return Optional.empty();
        }
        double[] sorted = speeds.stream().mapToDouble(v -> v).sorted().toArray();
        double high = sorted[(int) (0.9 * (sorted.length - 1))];
        double[] held = speeds.stream().mapToDouble(v -> v).filter(v -> v > 0.97 * high).toArray();
        double middle = Line.median(held);
        if (middle > 1.05 * voice.topRadS()) {
            return Optional.empty();
        }
        double[] off = Arrays.stream(held).map(speed -> Math.abs(speed - middle)).toArray();
        // Of normal errors 1.48 medians are a standard deviation, and spinning down counts for
        // nothing. Neighbouring windows share three quarters of their sound.
        double sd = 1.4826 * Line.median(off) * Math.sqrt(Tracker.HOPS / (double) held.length);
        return Optional.of(
                new Alone(
                        voice,
                        middle,
                        sd,
                        curve.timeS(stretch.from()),
                        curve.timeS(stretch.to() - 1)));
    }
}
