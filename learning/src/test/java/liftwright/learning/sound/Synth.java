package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Sound of fans whose every speed is known, made sample by sample from phases. Shares no code with
 * what listens to it.
 */
final class Synth {

    /** Speeds are kept in steps of this, s. */
    static final double STEP_S = 0.001;

    private static final double SOUND_M_S = 343;

    /** One fan: its blades, what it turns at full throttle, how it sounds. */
    @SuppressWarnings("ArrayRecordComponent") // never compared, never shown
    record Fan(
            String id,
            int blades,
            double topRadS,
            double ratio,
            double level,
            double[] harmonics) {}

    /** How a recording is made; each zero leaves its trouble out. */
    record Room(
            double rateHz,
            double noise,
            double echo,
            double echoS,
            double clip,
            double clock,
            double distanceM,
            double swayM,
            double swayHz) {

        static Room quiet(double rateHz) {
            return new Room(rateHz, 0.005, 0, 0.3, 0, 0, 0, 0, 0);
        }

        Room withNoise(double rms) {
            return new Room(rateHz, rms, echo, echoS, clip, clock, distanceM, swayM, swayHz);
        }
    }

    private final RandomGenerator random;

    Synth(RandomGenerator random) {
        this.random = random;
    }

    /** Fans of one type. */
    List<Fan> fans(String type, int count, int blades, double topRadS, double scatter) {
        var fans = new ArrayList<Fan>();
        for (int k = 1; k <= count; k++) {
            double[] harmonics = new double[5];
            harmonics[0] = 1;
            for (int h = 1; h < 5; h++) {
                harmonics[h] = random.nextDouble(0.15, 0.8) / Math.sqrt(h);
            }
            fans.add(
                    new Fan(
                            type + "." + k,
                            blades,
                            topRadS,
                            1 + scatter * gauss(),
                            0.03 * Math.pow(10, random.nextDouble(-6, 6) / 20),
                            harmonics));
        }
        return fans;
    }

    /** Time constants in which a rotor gains speed and loses it. */
    record Lags(double upS, double downS) {

        static final Lags USUAL = new Lags(0.12, 0.4);
    }

    /**
     * Speed over time behind a throttle: a first-order lag, faster up than down, with wander.
     *
     * @param levels throttle from each of {@code fromS} on, 0 to 1
     * @param wander standard deviation of a slow wander of the speed, relative
     */
    double[] speed(
            Fan fan,
            double[] fromS,
            double[] levels,
            double lengthS,
            double ratio,
            double wander,
            Lags lags) {
        int steps = (int) Math.ceil(lengthS / STEP_S) + 2;
        double[] speed = new double[steps];
        double now = 0;
        double drift = 0;
        int part = -1;
        for (int k = 0; k < steps; k++) {
            double t = k * STEP_S;
            while (part + 1 < fromS.length && t >= fromS[part + 1]) {
                part++;
            }
            double aim = part < 0 ? 0 : Math.pow(levels[part], 0.7);
            now += (aim - now) * STEP_S / (aim > now ? lags.upS() : lags.downS());
            drift += -drift * STEP_S / 0.8 + wander * Math.sqrt(2 * STEP_S / 0.8) * gauss();
            speed[k] = fan.topRadS() * ratio * now * (1 + drift);
        }
        return speed;
    }

    /**
     * Sound at the microphone; the first sample is at time 0 of the speeds, by the phone's clock.
     */
    float[] sound(List<Fan> fans, List<double[]> speeds, double lengthS, Room room) {
        int samples = (int) (lengthS * room.rateHz());
        double[] dry = new double[samples];
        double dt = (1 + room.clock()) / room.rateHz();
        for (int f = 0; f < fans.size(); f++) {
            add(dry, fans.get(f), speeds.get(f), dt, room);
        }
        double[] wet = echoed(dry, room);
        float[] out = new float[samples];
        double hiss = 0;
        for (int k = 0; k < samples; k++) {
            hiss = 0.5 * hiss + gauss();
            double value = wet[k] + room.noise() * hiss * 0.87;
            if (room.clip() > 0) {
                value = Math.max(-room.clip(), Math.min(room.clip(), value));
            }
            out[k] = (float) (Math.round(value * 32_768) / 32_768.0);
        }
        return out;
    }

    private void add(double[] dry, Fan fan, double[] speed, double dt, Room room) {
        double angle = random.nextDouble(2 * Math.PI);
        double[] phases = random.doubles(5, 0, 2 * Math.PI).toArray();
        for (int k = 0; k < dry.length; k++) {
            double t = k * dt;
            double sway = 2 * Math.PI * room.swayHz();
            double moving = room.swayM() * sway * Math.cos(sway * t);
            double heard = t - room.distanceM() / SOUND_M_S;
            double omega =
                    heard <= 0 ? 0 : at(speed, heard) * (1 - moving / SOUND_M_S) * fan.blades();
            angle += omega * dt;
            double share = omega / (fan.topRadS() * fan.blades());
            double loud = fan.level() * share * share;
            if (loud < 1e-6) {
                continue;
            }
            for (int h = 1; h <= 5; h++) {
                if (h * omega < 0.45 * 2 * Math.PI * room.rateHz()) {
                    dry[k] += loud * fan.harmonics()[h - 1] * Math.sin(h * angle + phases[h - 1]);
                }
            }
        }
    }

    private double[] echoed(double[] dry, Room room) {
        if (room.echo() == 0) {
            return dry;
        }
        double[] wet = dry.clone();
        int taps = 60;
        double[] gains = new double[taps];
        int[] delays = new int[taps];
        double power = 0;
        for (int e = 0; e < taps; e++) {
            double delayS = room.echoS() * random.nextDouble(0.01, 1);
            delays[e] = (int) (delayS * room.rateHz());
            gains[e] = gauss() * Math.exp(-3 * delayS / room.echoS());
            power += gains[e] * gains[e];
        }
        for (int e = 0; e < taps; e++) {
            double gain = gains[e] * room.echo() / Math.sqrt(power);
            for (int k = delays[e]; k < dry.length; k++) {
                wet[k] += gain * dry[k - delays[e]];
            }
        }
        return wet;
    }

    static double at(double[] speed, double timeS) {
        double place = Math.max(0, Math.min(speed.length - 1.001, timeS / STEP_S));
        int k = (int) place;
        return speed[k] + (place - k) * (speed[k + 1] - speed[k]);
    }

    /** Standard normal, by the sum of twelve. */
    double gauss() {
        double sum = -6;
        for (int k = 0; k < 12; k++) {
            sum += random.nextDouble();
        }
        return sum;
    }
}
