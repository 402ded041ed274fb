package liftwright.learning.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.rig.Fan;
import liftwright.rig.Pack;
import liftwright.rig.Rig;

/**
 * Which instruments a test had, and what they show of a true log: with an offset, a gain and a
 * drift of their own, noise that lasts, steps, values held between two of theirs, times that are
 * not even, a load cell that comes back late.
 */
final class Instruments {

    /**
     * One instrument.
     *
     * @param periodS between two values of its own
     * @param heldS between two rows; below the period values are repeated
     * @param stepSi of what it shows
     * @param lagS of what it measures behind what is
     */
    record Instrument(
            Signal signal,
            String of,
            double errorSi,
            double errorShare,
            double periodS,
            double heldS,
            double stepSi,
            double lagS) {}

    private final List<Instrument> all;
    private final Profile profile;
    private final Rig rig;
    private final long seed;

    Instruments(List<Instrument> all, Rig rig, Profile profile, long seed) {
        this.all = List.copyOf(all);
        this.rig = rig;
        this.profile = profile;
        this.seed = seed;
    }

    List<Instrument> all() {
        return all;
    }

    /** A random set that a builder could have. */
    static Instruments draw(Rig rig, TrueLog like, Profile profile, long seed) {
        SplittableRandom random = new SplittableRandom(seed ^ 0x1F2E3D4CL);
        List<Instrument> made = new ArrayList<>();
        double most = max(like.series(Signal.THRUST, Track.ALL));
        List<String> mounts =
                rig.fans().stream().map(fan -> fan.mount().name()).distinct().toList();
        boolean byMount = mounts.size() > 1 && random.nextDouble() < 0.35;
        for (String of : byMount ? mounts : List.of(Track.ALL)) {
            made.add(
                    new Instrument(
                            Signal.THRUST, of, 0.004 * most, 0.006, 0.1, 0.1, most / 8000, 0.06));
        }
        boolean volts = random.nextDouble() < 0.9;
        boolean cells = random.nextDouble() < 0.3;
        boolean charge = random.nextDouble() < 0.25;
        for (Pack pack : rig.packs()) {
            String of = pack.id().text();
            double amp = max(like.series(Signal.CURRENT, of));
            made.add(new Instrument(Signal.CURRENT, of, 0.005 * amp, 0.012, 0.2, 0.2, 0.1, 0.1));
            if (volts) {
                made.add(new Instrument(Signal.VOLTAGE, of, 0.05, 0.002, 0.2, 0.2, 0.01, 0.05));
            }
            if (cells) {
                made.add(new Instrument(Signal.CELL_VOLTAGE, of, 0.008, 0, 0.5, 0.5, 0.002, 0.1));
            }
            if (charge) {
                made.add(new Instrument(Signal.CHARGE_USED, of, 4, 0.02, 1, 1, 3.6, 0));
            }
        }
        ofFans(rig, like, random, made);
        if (random.nextDouble() < 0.4) {
            List<String> joints = like.joints();
            for (int k = 0; k < 3; k++) {
                String of = joints.get(random.nextInt(joints.size()));
                if (made.stream().noneMatch(one -> one.of().equals(of))) {
                    made.add(new Instrument(Signal.TEMPERATURE, of, 2.5, 0, 0.5, 0.5, 0.25, 1.5));
                }
            }
        }
        if (random.nextDouble() < 0.6) {
            made.add(new Instrument(Signal.AIR_TEMPERATURE, Track.ALL, 1, 0, 2, 2, 0.1, 0));
        }
        if (random.nextDouble() < 0.3) {
            made.add(new Instrument(Signal.AIR_PRESSURE, Track.ALL, 150, 0, 2, 2, 10, 0));
        }
        return new Instruments(made, rig, profile, seed);
    }

    private static void ofFans(
            Rig rig, TrueLog like, SplittableRandom random, List<Instrument> made) {
        boolean telemetry = random.nextDouble() < 0.45;
        boolean speeds = telemetry || random.nextDouble() < 0.35;
        double held = random.nextDouble() < 0.4 ? 0.1 : 0.2;
        for (Fan fan : rig.fans()) {
            String of = fan.id().text();
            if (speeds) {
                made.add(
                        new Instrument(Signal.SPEED, of, 6, 0.003, 0.2, held, 100 * 0.10472, 0.05));
            }
            if (telemetry) {
                double amp = max(like.series(Signal.CURRENT, of));
                made.add(
                        new Instrument(Signal.CURRENT, of, 0.01 * amp, 0.03, 0.2, held, 0.25, 0.1));
                made.add(new Instrument(Signal.VOLTAGE, of, 0.1, 0.005, 0.2, held, 0.05, 0.05));
            }
        }
    }

    private static double max(double[] of) {
        double most = 0;
        for (double one : of) {
            most = Math.max(most, one);
        }
        return most;
    }

    /** What they show. */
    Recording read(TrueLog log) {
        List<Track> tracks = new ArrayList<>();
        if (profile.single()) {
            for (int k = 0; k < rig.fans().size(); k++) {
                tracks.add(throttle(rig.fans().get(k).id().text(), k, log.endS()));
            }
        } else {
            tracks.add(throttle(Track.ALL, 0, log.endS()));
        }
        for (Instrument with : all) {
            tracks.add(track(with, log));
        }
        return new Recording(tracks);
    }

    private Track throttle(String of, int fan, double endS) {
        int count = (int) (endS / 0.1);
        double[] times = new double[count];
        double[] values = new double[count];
        for (int k = 0; k < count; k++) {
            times[k] = 0.1 * k;
            values[k] = profile.at(fan, times[k]);
        }
        return new Track(Signal.THROTTLE, of, 0.003, 0, new Samples(times, values));
    }

    private Track track(Instrument with, TrueLog log) {
        var random =
                new SplittableRandom(seed * 131 + (with.signal().name() + with.of()).hashCode());
        double off = 0.4 * random.nextGaussian();
        double gain = 0.4 * random.nextGaussian();
        double drift = 0.2 * random.nextGaussian();
        int count = Math.max(1, (int) ((log.endS() - 0.2) / with.heldS()));
        double[] times = new double[count];
        double[] values = new double[count];
        double noise = random.nextGaussian();
        double kept = Math.exp(-with.periodS() / 0.8);
        double shown = 0;
        double creep = 0;
        double lastS = Double.NEGATIVE_INFINITY;
        double[] series = seriesOf(with, log);
        for (int k = 0; k < count; k++) {
            double timeS = with.heldS() * k;
            if (timeS >= lastS + with.periodS() - 1e-9) {
                lastS = timeS;
                noise = kept * noise + Math.sqrt(1 - kept * kept) * random.nextGaussian();
                double at = Math.max(0, timeS - with.lagS() - 0.03 * random.nextDouble());
                double value = between(series, at);
                creep += (value - creep) * with.periodS() / 12;
                value += with.signal() == Signal.THRUST ? 0.0015 * (creep - value) : 0;
                double read =
                        log.shown(with.signal(), with.of(), value, timeS)
                                + with.errorSi() * (off + drift * timeS / log.endS() + 0.22 * noise)
                                + with.errorShare() * value * (gain + 0.1 * random.nextGaussian());
                shown = Math.rint(read / with.stepSi()) * with.stepSi();
            }
            times[k] = timeS + 0.2 * with.heldS() * random.nextDouble();
            values[k] = shown;
        }
        return new Track(
                with.signal(),
                with.of(),
                with.errorSi(),
                with.errorShare(),
                new Samples(times, values));
    }

    private static double[] seriesOf(Instrument with, TrueLog log) {
        return switch (with.signal()) {
            case AIR_TEMPERATURE -> new double[] {log.airK()};
            case AIR_PRESSURE -> new double[] {log.pressurePa()};
            default -> log.series(with.signal(), with.of());
        };
    }

    private static double between(double[] series, double timeS) {
        double at = Math.min(timeS / TrueLog.STEP_S, series.length - 1);
        int low = (int) at;
        int high = Math.min(low + 1, series.length - 1);
        return series[low] + (at - low) * (series[high] - series[low]);
    }
}
