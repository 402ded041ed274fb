package liftwright.learning.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import liftwright.numerics.Work;
import liftwright.plant.fault.Effect;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Control;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.RandomTrialRig;
import org.junit.jupiter.api.Test;

/**
 * What is planted into recordings of random rigs, with instruments that are off and noisy, is told
 * with its kind, part and time; where nothing is planted nothing is told.
 */
class EventsTest {

    private static final int LOGS = 60;

    /** An event may be told so much off, s: three samples. */
    private static final double NEAR_S = 1;

    private static final double EVERY_S = 0.2;

    /** What is planted. */
    private enum Plant {
        STOPS(Set.of(Event.Kind.FAN_STOPPED, Event.Kind.CURRENT_GONE)),
        NEVER(Set.of(Event.Kind.NEVER_TURNED)),
        SLOWER(Set.of(Event.Kind.LOST_SPEED)),
        CURRENT(Set.of(Event.Kind.CURRENT_GONE)),
        HOT(Set.of(Event.Kind.LIMIT_REACHED)),
        SAGS(Set.of(Event.Kind.SAG)),
        THROTTLE(Set.of(Event.Kind.THROTTLE_MOVED)),
        NOTHING(Set.of());

        private final Set<Event.Kind> kinds;

        Plant(Set<Event.Kind> kinds) {
            this.kinds = kinds;
        }
    }

    /** A recording as instruments with a gain, an offset and noise of their own show it. */
    private static List<Track> shown(Recording made, RandomGenerator random) {
        List<Track> tracks = new ArrayList<>();
        for (Track track : made.tracks()) {
            if (track.signal() == Signal.THROTTLE) {
                tracks.add(track);
                continue;
            }
            boolean heat = track.signal() == Signal.TEMPERATURE;
            double most = 0;
            for (double si : Bands.values(track.samples())) {
                most = Math.max(most, Math.abs(si));
            }
            double errorSi = heat ? 2 : 0.01 * most;
            double errorShare = heat ? 0 : 0.01;
            double off = errorSi * 0.4 * random.nextGaussian();
            double gain = 1 + errorShare * 0.4 * random.nextGaussian();
            tracks.add(
                    edited(
                            track,
                            0,
                            si -> off + gain * si + 0.3 * errorSi * random.nextGaussian(),
                            errorSi,
                            errorShare));
        }
        return tracks;
    }

    private static Track edited(
            Track track,
            double fromS,
            DoubleUnaryOperator edit,
            double errorSi,
            double errorShare) {
        Samples samples = track.samples();
        double[] times = new double[samples.size()];
        double[] values = new double[samples.size()];
        for (int k = 0; k < times.length; k++) {
            times[k] = samples.timeS(k);
            double si = samples.si(k);
            values[k] = times[k] >= fromS ? edit.applyAsDouble(si) : si;
        }
        return new Track(
                track.signal(), track.of(), errorSi, errorShare, new Samples(times, values));
    }

    private static void edit(
            List<Track> tracks, Signal signal, String of, double fromS, DoubleUnaryOperator edit) {
        tracks.replaceAll(
                track ->
                        track.signal() == signal && track.of().equals(of)
                                ? edited(track, fromS, edit, track.errorSi(), track.errorShare())
                                : track);
    }

    private static Recording until(List<Track> tracks, double endS) {
        List<Track> cut = new ArrayList<>();
        for (Track track : tracks) {
            int count = track.samples().upTo(endS) + 1;
            double[] times = new double[count];
            double[] values = new double[count];
            for (int k = 0; k < count; k++) {
                times[k] = track.samples().timeS(k);
                values[k] = track.samples().si(k);
            }
            if (count > 0) {
                cut.add(
                        new Track(
                                track.signal(),
                                track.of(),
                                track.errorSi(),
                                track.errorShare(),
                                new Samples(times, values)));
            }
        }
        return new Recording(cut);
    }

    /** Events without bands: those of turning alone need them. */
    private static List<Event> events(Rig rig, Recording recording) {
        Driven driven = Driven.of(rig, recording, Effect.NONE, Replay.BLOCKS);
        double[][] expected = driven.blocks();
        driven.predict(driven.plant().parameters().nominal(), new CellDraw.Expected(), expected);
        List<Replayed> channels = new ArrayList<>();
        for (int k = 0; k < expected.length; k++) {
            double[] far = new double[expected[k].length];
            Arrays.fill(far, Double.MAX_VALUE);
            double[] near = new double[expected[k].length];
            Arrays.fill(near, -Double.MAX_VALUE);
            channels.add(
                    new Replayed(
                            driven.watched().get(k),
                            expected[k],
                            near,
                            far,
                            Optional.empty(),
                            expected[k].length));
        }
        return Events.in(driven, channels);
    }

    /** Rise, hold, stairs: the middle of the second hold is under load. */
    private static double[][] course(RandomGenerator random) {
        int count = (int) (50 / EVERY_S) + 1;
        double[] times = new double[count];
        double[] shares = new double[count];
        double first = 0.05 * (8 + random.nextInt(4));
        double second = first + 0.05 * (1 + random.nextInt(4));
        for (int k = 0; k < count; k++) {
            times[k] = EVERY_S * k;
            double to = times[k] < 4 ? 0 : times[k] < 20 ? first : second;
            shares[k] = k == 0 ? 0 : shares[k - 1] + Math.clamp(to - shares[k - 1], -0.02, 0.02);
        }
        return new double[][] {times, shares};
    }

    private record Planted(Plant plant, String part, double timeS, Recording recording, Rig rig) {}

    private static Planted planted(RandomGenerator random, int number) {
        Plant plant = Plant.values()[number % Plant.values().length];
        while (true) {
            Rig rig = RandomTrialRig.rig(random);
            boolean shared = rig.control().kind() == Control.Kind.SHARED_THROTTLE;
            if (rig.fans().size() > 6 || (plant == Plant.THROTTLE && !shared)) {
                continue;
            }
            MadeRecording made = new MadeRecording(rig, course(random), false);
            if (made.recording().tracks().getFirst().samples().lastS() < 45
                    || events(rig, made.recording()).stream()
                            .anyMatch(event -> event.kind().isFault())) {
                continue; // it runs into a limit of its own
            }
            double timeS = 25 + 15 * random.nextDouble();
            List<Track> tracks = shown(made.recording(), random);
            String part = plant(rig, plant, tracks, timeS, random);
            double endS = random.nextInt(3) == 0 ? timeS + 0.9 : 50;
            return new Planted(
                    plant,
                    part,
                    plant == Plant.NEVER ? 4 : timeS,
                    until(tracks, plant == Plant.NOTHING || plant == Plant.NEVER ? 50 : endS),
                    rig);
        }
    }

    private static String plant(
            Rig rig, Plant plant, List<Track> tracks, double timeS, RandomGenerator random) {
        String fan = rig.fans().get(random.nextInt(rig.fans().size())).id().text();
        String pack = rig.packs().get(random.nextInt(rig.packs().size())).id().text();
        switch (plant) {
            case STOPS, NEVER -> {
                double fromS = plant == Plant.NEVER ? 0 : timeS;
                for (Signal signal : List.of(Signal.SPEED, Signal.CURRENT, Signal.THRUST)) {
                    edit(tracks, signal, fan, fromS, si -> 0.002 * si);
                }
                edit(tracks, Signal.WINDING_CURRENT, fan, fromS, si -> 0.002 * si);
            }
            case SLOWER -> {
                edit(tracks, Signal.SPEED, fan, timeS, si -> 0.7 * si);
                edit(tracks, Signal.THRUST, fan, timeS, si -> 0.5 * si);
            }
            case CURRENT -> edit(tracks, Signal.CURRENT, fan, timeS, si -> 0.002 * si);
            case HOT -> edit(tracks, Signal.TEMPERATURE, pack, timeS, si -> si + 150);
            case SAGS -> edit(tracks, Signal.CELL_VOLTAGE, pack, timeS, si -> si - 2);
            case THROTTLE -> {
                Track all = tracks.getFirst();
                tracks.add(
                        edited(
                                new Track(Signal.THROTTLE, fan, 0, 0, all.samples()),
                                timeS,
                                si -> Math.min(1, si + 0.25),
                                0,
                                0));
            }
            case NOTHING -> {}
        }
        return plant == Plant.HOT || plant == Plant.SAGS ? pack : fan;
    }

    @Test
    void plantedEventsAreFound() {
        int[] number = new int[1];
        List<String> missed = new ArrayList<>();
        List<String> falsely = new ArrayList<>();
        int[] healthy = new int[1];
        Seeded.check(
                LOGS,
                random -> {
                    Planted planted = planted(random, number[0]++);
                    List<Event> found = events(planted.rig(), planted.recording());
                    boolean is =
                            found.stream()
                                    .anyMatch(
                                            event ->
                                                    planted.plant().kinds.contains(event.kind())
                                                            && event.part().equals(planted.part())
                                                            && Math.abs(
                                                                            event.timeS()
                                                                                    - planted
                                                                                            .timeS())
                                                                    < NEAR_S + 1);
                    if (planted.plant() == Plant.NOTHING) {
                        healthy[0]++;
                        found.stream()
                                .filter(event -> event.kind().isFault())
                                .forEach(event -> falsely.add(ReplayTest.words(event)));
                    } else if (!is) {
                        missed.add(
                                planted.plant()
                                        + " "
                                        + planted.part()
                                        + " at "
                                        + planted.timeS()
                                        + ": "
                                        + found.stream()
                                                .map(
                                                        event ->
                                                                event.kind()
                                                                        + " "
                                                                        + event.part()
                                                                        + " "
                                                                        + event.timeS())
                                                .toList());
                    }
                });
        assertThat(healthy[0]).isPositive();
        assertThat(missed).as("missed of %d", LOGS).hasSizeLessThanOrEqualTo(LOGS / 20);
        assertThat(falsely).as("false in %d healthy logs", healthy[0]).isEmpty();
    }

    @Test
    void turningIsToldFromWhenOnItLeavesItsBand() {
        Seeded.check(
                3,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Recording made = new MadeRecording(rig, course(random), false).recording();
                    List<Track> tracks = new ArrayList<>();
                    tracks.add(made.tracks().getFirst());
                    double[] none = new double[made.tracks().getFirst().samples().size()];
                    double[] times = new double[none.length];
                    for (int k = 0; k < times.length; k++) {
                        times[k] = made.tracks().getFirst().samples().timeS(k);
                    }
                    tracks.add(
                            new Track(
                                    Signal.ROLL_MOMENT,
                                    Track.ALL,
                                    0.2,
                                    0,
                                    new Samples(times, none)));
                    Replay still =
                            Replay.of(rig, new Recording(tracks), 5, 2, Work.quiet()).orElseThrow();
                    Replayed expected = still.channels().getFirst();
                    double wide = 0;
                    for (int k = 0; k < expected.blocks(); k++) {
                        wide = Math.max(wide, expected.highSi()[k] - expected.lowSi()[k]);
                    }
                    double[] turned = new double[none.length];
                    for (int k = 0; k < turned.length; k++) {
                        turned[k] =
                                still.driven().at(0, times[k]) + (times[k] > 30 ? 1.5 * wide : 0);
                    }
                    tracks.set(
                            1,
                            new Track(
                                    Signal.ROLL_MOMENT,
                                    Track.ALL,
                                    0.2,
                                    0,
                                    new Samples(times, turned)));
                    Replay replay =
                            Replay.of(rig, new Recording(tracks), 5, 2, Work.quiet()).orElseThrow();
                    assertThat(replay.events())
                            .filteredOn(event -> event.kind() == Event.Kind.TURNING)
                            .hasSize(1)
                            .allSatisfy(event -> assertThat(event.timeS()).isBetween(29.5, 30.5));
                });
    }
}
