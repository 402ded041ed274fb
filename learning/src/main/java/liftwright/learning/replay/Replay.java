package liftwright.learning.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.fault.Effect;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.recording.Recording;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;

/**
 * A recording beside what the plant gives under the same throttle and in the same air, with the
 * band of 95 % of what its instruments would show.
 *
 * @param driven the run at the declared values, followed
 * @param channels those that the plant predicts
 * @param lift what was promised and what was measured of lift; empty where no channel tells it
 * @param events what happened
 * @param wentS how far the run went at the declared values, on the clock of the recording, s
 * @param draws of the declared doubt that the bands rest on
 * @param lostDraws draws in which a value can not be
 */
public record Replay(
        Driven driven,
        List<Replayed> channels,
        Optional<MissingLift> lift,
        List<Event> events,
        double wentS,
        int draws,
        int lostDraws) {

    /** Draws of the declared doubt. */
    public static final int DRAWS = 256;

    /** Blocks of a channel. */
    public static final int BLOCKS = 240;

    /** Where only lift is asked. */
    private static final int LIFT_BLOCKS = 60;

    /** So many channels have as many blocks; more of them have fewer. */
    private static final int CHANNELS = 60;

    public Replay {
        channels = List.copyOf(channels);
        events = List.copyOf(events);
    }

    /**
     * Replays it.
     *
     * @param seed of every draw; the same seed gives the same on any number of threads
     * @param threads worker threads, ≥ 1
     * @param work told of progress, asked whether to stop
     * @return empty when it was stopped
     * @throws NotDrivenException where no throttle was recorded
     */
    public static Optional<Replay> of(
            Rig rig, Recording recording, long seed, int threads, Work work) {
        int many = Math.max(1, (recording.tracks().size() + CHANNELS - 1) / CHANNELS);
        Driven plain = Driven.of(rig, recording, Effect.NONE, BLOCKS / many);
        double[] nominal = plain.parameters().nominal();
        double[][] expected = plain.blocks();
        plain.predict(nominal, new CellDraw.Expected(), expected);
        List<Optional<Lag>> lags = lags(plain);
        Driven driven =
                plain.later(
                        lags.stream().mapToDouble(lag -> lag.map(Lag::lagS).orElse(0.0)).toArray());
        double wentS = driven.predict(nominal, new CellDraw.Expected(), expected);
        return drawn(driven, seed, DRAWS, threads, work)
                .map(bands -> made(driven, expected, wentS, lags, bands));
    }

    /**
     * The missing lift alone, by fewer draws and fewer blocks, where a list asks it of many tests.
     *
     * @param draws of the declared doubt, ≥ 2
     * @return empty where no channel tells lift under load, or when it was stopped
     * @throws NotDrivenException where no throttle was recorded
     */
    public static Optional<MissingLift> lift(
            Rig rig, Recording recording, long seed, int draws, int threads, Work work) {
        Driven driven = Driven.of(rig, InStep.of(rig, recording), Effect.NONE, LIFT_BLOCKS);
        double[][] expected = driven.blocks();
        double wentS =
                driven.predict(driven.parameters().nominal(), new CellDraw.Expected(), expected);
        return drawn(driven, seed, draws, threads, work)
                .flatMap(bands -> Lift.of(driven, expected, wentS, bands));
    }

    static List<Optional<Lag>> lags(Driven driven) {
        List<Optional<Lag>> lags = new ArrayList<>();
        for (int k = 0; k < driven.watched().size(); k++) {
            lags.add(
                    switch (driven.watched().get(k).track().signal()) {
                        case THRUST,
                                SCALE,
                                TETHER_LOAD,
                                CURRENT,
                                WINDING_CURRENT,
                                SPEED,
                                VOLTAGE,
                                CELL_VOLTAGE ->
                                Lag.of(driven, k);
                        case ROLL_MOMENT,
                                PITCH_MOMENT,
                                YAW_MOMENT,
                                THROTTLE,
                                TEMPERATURE,
                                CHARGE_USED,
                                AIR_TEMPERATURE,
                                AIR_PRESSURE,
                                HUMIDITY,
                                WIND ->
                                Optional.empty();
                    });
        }
        return lags;
    }

    private static Optional<Bands> drawn(
            Driven driven, long seed, int draws, int threads, Work work) {
        Bands bands = new Bands(driven, seed, draws);
        double[] ones = new double[driven.parameters().inputs().size()];
        Arrays.fill(ones, 1);
        work.stage("draws", draws);
        int made =
                Draws.forEachKept(
                        work,
                        threads,
                        0,
                        draws,
                        driven::another,
                        (own, draw) -> {
                            double[] p = new double[own.parameters().size()];
                            double[][] out = own.blocks();
                            try {
                                own.parameters().draw(seed, draw, ones, p);
                                double wentS =
                                        own.predict(p, new CellDraw.Drawn(seed, draw, ones), out);
                                bands.take(draw, own, out, wentS);
                            } catch (ImpossibleValueException beyond) {
                                // The draw is lost, and counted as such.
                            }
                        },
                        bands);
        return made < draws ? Optional.empty() : Optional.of(bands);
    }

    private static Replay made(
            Driven driven,
            double[][] expected,
            double wentS,
            List<Optional<Lag>> lags,
            Bands bands) {
        List<Replayed> channels = new ArrayList<>();
        for (int k = 0; k < expected.length; k++) {
            channels.add(bands.channel(k, expected[k], wentS, lags.get(k)));
        }
        return new Replay(
                driven,
                channels,
                Lift.of(driven, expected, wentS, bands),
                Events.in(driven, channels),
                wentS,
                bands.made(),
                DRAWS - bands.made());
    }

    /** Lags that were found. */
    public List<Lag> lags() {
        return channels.stream().flatMap(channel -> channel.lag().stream()).toList();
    }
}
