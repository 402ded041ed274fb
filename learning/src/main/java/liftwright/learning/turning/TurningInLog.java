package liftwright.learning.turning;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.review.cause.Attribution;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.table.TurningTable;
import liftwright.rig.table.TurningTable.Axis;
import liftwright.rig.table.TurningTable.Rate;
import liftwright.rig.table.TurningTable.Row;

/**
 * Moments that a stand measured, as the angular accelerations with which the rig would have begun
 * to turn, let go at that throttle: the table that {@code review balance --measured} takes too, so
 * that one ledger explains both. A moment goes with the thrust that was there; where the log tells
 * thrust, moments are brought to that of the ledger at the same throttle.
 */
public final class TurningInLog {

    private static final Map<Axis, Signal> MEASURED =
            new EnumMap<>(
                    Map.of(
                            Axis.ROLL, Signal.ROLL_MOMENT,
                            Axis.PITCH, Signal.PITCH_MOMENT,
                            Axis.YAW, Signal.YAW_MOMENT));

    /** What no stand is better than: this share of thrust times a metre, N m / N; from memory. */
    private static final double FLOOR = 1e-4;

    private TurningInLog() {}

    /** Which causes explain it; empty where no moment was measured at a throttle that stood. */
    public static Optional<Attribution> explained(Rig rig, Recording recording, long seed) {
        return table(rig, recording).map(table -> Attribution.of(rig, table, seed));
    }

    /** A row for each throttle that was held. */
    static Optional<TurningTable> table(Rig rig, Recording recording) {
        List<Holds> holds = Holds.in(recording);
        Map<Axis, Track> tracks = new EnumMap<>(Axis.class);
        MEASURED.forEach(
                (axis, signal) ->
                        recording
                                .track(signal, Track.ALL)
                                .ifPresent(track -> tracks.put(axis, track)));
        if (tracks.isEmpty() || holds.isEmpty()) {
            return Optional.empty();
        }
        Balancing balancing = Balancing.of(rig);
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        List<Row> rows = new ArrayList<>();
        for (Holds hold : holds) {
            HoverPoint point = worker.atThrottle(p, hold.throttle());
            row(rows.size() + 1, recording, tracks, hold, holds.size(), point).ifPresent(rows::add);
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(new TurningTable("the log", rows));
    }

    private static Optional<Row> row(
            int line,
            Recording recording,
            Map<Axis, Track> tracks,
            Holds hold,
            int rows,
            HoverPoint point) {
        double thrustN = point.ledger().fans().stream().mapToDouble(FanAtWork::thrustN).sum();
        double scale =
                recording
                        .track(Signal.THRUST, Track.ALL)
                        .flatMap(track -> hold.mean(track.samples()))
                        .filter(mean -> mean[0] > thrustN / 10)
                        .map(mean -> thrustN / mean[0])
                        .orElse(1.0);
        double[] momentNm = new double[3];
        double[] deviationNm = new double[3];
        for (Map.Entry<Axis, Track> one : tracks.entrySet()) {
            Track track = one.getValue();
            Optional<double[]> mean = hold.mean(track.samples());
            if (mean.isEmpty()) {
                return Optional.empty();
            }
            int axis = place(one.getKey());
            momentNm[axis] = scale * mean.get()[0];
            // The error of an instrument is the same in all rows, which are weighed as if it were
            // new in each: so much wider that they tell no more together than it allows.
            double lasting =
                    Math.sqrt(rows)
                            * Math.hypot(track.errorSi(), track.errorShare() * mean.get()[0])
                            / 2;
            deviationNm[axis] =
                    scale * Math.hypot(Math.hypot(lasting, mean.get()[1]), FLOOR * thrustN);
        }
        Vec3 rate = rate(point, momentNm[0], momentNm[1], momentNm[2]);
        List<Rate> rates = new ArrayList<>();
        for (Axis axis : tracks.keySet()) {
            double squares = 0;
            for (int k = 0; k < 3; k++) {
                double[] alone = new double[3];
                alone[k] = deviationNm[k];
                double part = of(axis, rate(point, alone[0], alone[1], alone[2]));
                squares += part * part;
            }
            rates.add(new Rate(axis, of(axis, rate), 2 * Math.sqrt(squares)));
        }
        return Optional.of(
                new Row(
                        line,
                        OptionalDouble.of(hold.throttle()),
                        OptionalDouble.empty(),
                        new TurningTable.Swap.None(),
                        rates));
    }

    private static Vec3 rate(HoverPoint point, double rollNm, double pitchNm, double yawNm) {
        return point.mass().inertia().acceleration(new Vec3(rollNm, pitchNm, yawNm));
    }

    private static int place(Axis axis) {
        return switch (axis) {
            case ROLL -> 0;
            case PITCH -> 1;
            case YAW -> 2;
        };
    }

    private static double of(Axis axis, Vec3 rate) {
        return switch (axis) {
            case ROLL -> rate.x();
            case PITCH -> rate.y();
            case YAW -> rate.z();
        };
    }
}
