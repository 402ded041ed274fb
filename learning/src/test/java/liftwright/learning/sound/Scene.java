package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/** A test drawn at random: fans, what they turned, the recordings of it. */
final class Scene {

    static final double RATE_HZ = 24_000;

    final RandomGenerator random;
    final Synth synth;
    final List<Synth.Fan> fans;
    final List<Voice> voices;
    final double lengthS;
    final List<double[]> speeds = new ArrayList<>();
    final Synth.Room room;

    /** Ratio to the card in this run: fans do not return exactly. */
    private final double[] returned;

    private final double[] fromS;
    private final double[] levels;
    private final double wander;

    private final Synth.Lags lags;

    /** Fans of one type. */
    Scene(RandomGenerator random, int count) {
        this(random, count, Synth.Lags.USUAL);
    }

    /** The same with rotors that follow as fast as is said. */
    Scene(RandomGenerator random, int count, Synth.Lags lags) {
        this.random = random;
        this.lags = lags;
        synth = new Synth(random);
        int blades = random.nextInt(3, 13);
        double topHz = random.nextDouble(1500, 5200);
        double scatter = random.nextDouble(0.008, 0.022);
        fans = synth.fans("left", count, blades, topHz / blades * 2 * Math.PI, scatter);
        voices =
                fans.stream()
                        .map(fan -> new Voice(fan.id(), "left", blades, fan.topRadS() * 1.02))
                        .toList();
        double startS = random.nextDouble(0.4, 1.2);
        double holdS = random.nextDouble(4, 7);
        double full = random.nextDouble(0.6, 0.95);
        fromS = new double[] {startS, startS + 1.5, startS + 1.5 + holdS, startS + 4 + holdS};
        levels = new double[] {random.nextDouble(0.25, 0.4), full, full * 0.7, 0};
        lengthS = fromS[3] + 1.5;
        wander = random.nextDouble(0.0002, 0.0008);
        returned = new double[count];
        for (int f = 0; f < count; f++) {
            returned[f] = fans.get(f).ratio() * (1 + 0.0015 * synth.gauss());
            speeds.add(synth.speed(fans.get(f), fromS, levels, lengthS, returned[f], wander, lags));
        }
        room =
                new Synth.Room(
                        RATE_HZ,
                        random.nextDouble(0.003, 0.02),
                        random.nextDouble(0, 0.6),
                        random.nextDouble(0.1, 0.5),
                        0,
                        random.nextDouble(-5e-5, 5e-5),
                        random.nextDouble(1, 8),
                        0,
                        0.5);
    }

    /**
     * A fan gives up: it coasts down, or it loses synchronism and shudders far below the others.
     */
    void fail(int fan, double atS) {
        double[] speed = speeds.get(fan);
        int from = (int) (atS / Synth.STEP_S);
        double before = speed[from];
        boolean shudders = random.nextBoolean();
        for (int k = from; k < speed.length; k++) {
            double t = (k - from) * Synth.STEP_S;
            speed[k] =
                    shudders
                            ? before * Math.max(0.3 + 0.1 * synth.gauss(), Math.exp(-t / 0.25))
                            : before * Math.exp(-t / 0.35);
        }
    }

    Waveform together() {
        return new Waveform(synth.sound(fans, speeds, lengthS, room), RATE_HZ);
    }

    /** Each fan alone at one throttle, in the order of the fans. */
    Waveform oneByOne() {
        double eachS = 3.6;
        double allS = eachS * fans.size() + 0.5;
        List<double[]> alone = new ArrayList<>();
        for (int f = 0; f < fans.size(); f++) {
            double start = 0.4 + f * eachS;
            double[] from = {start, start + 2.0};
            alone.add(
                    synth.speed(
                            fans.get(f),
                            from,
                            new double[] {0.5, 0},
                            allS,
                            fans.get(f).ratio(),
                            wander,
                            lags));
        }
        return new Waveform(synth.sound(fans, alone, allS, room), RATE_HZ);
    }

    /** When each throttle began. */
    double[] fromS() {
        return fromS.clone();
    }

    double[] levels() {
        return levels.clone();
    }

    /** From the first throttle to the last. */
    double ranS() {
        return fromS[fromS.length - 1] - fromS[0];
    }

    /** When the highest throttle has settled. */
    double fullFromS() {
        return fromS[1] + 0.6;
    }

    double fullToS() {
        return fromS[2];
    }

    Doubt doubt() {
        return Doubt.standing(room.distanceM());
    }

    /** What a fan turned at a moment of the recording's clock, rad/s. */
    double truth(int fan, double timeS) {
        return Synth.at(speeds.get(fan), timeS * (1 + room.clock()));
    }
}
