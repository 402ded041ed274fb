package liftwright.plant.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import liftwright.plant.identify.FanUnknown.Channel;

/** Several single fans of one kind in one table: how one differs from another. */
final class FanLot {

    private final List<BenchPoint> points;
    private final boolean[] counts;
    private final Fitted out;

    FanLot(List<BenchPoint> points, boolean[] counts, Fitted out) {
        this.points = points;
        this.counts = counts;
        this.out = out;
    }

    void add(List<FanUnknown> unknowns) {
        Map<String, List<FanFit.RowResidual>> byFan = new TreeMap<>();
        for (int k = 0; k < points.size(); k++) {
            if (counts[k] && points.get(k).fan().isPresent()) {
                byFan.computeIfAbsent(points.get(k).fan().get(), _ -> new ArrayList<>())
                        .add(out.rows.get(k));
            }
        }
        if (byFan.size() < 2) {
            return;
        }
        List<FanFit.Unit> units = new ArrayList<>();
        byFan.forEach(
                (name, rows) ->
                        units.add(
                                new FanFit.Unit(
                                        name,
                                        1 + mean(rows, Channel.THRUST),
                                        1 + mean(rows, Channel.CURRENT),
                                        rows.size())));
        double thrust = scatter(units, Channel.THRUST);
        double current = scatter(units, Channel.CURRENT);
        out.lot = Optional.of(new FanFit.Lot(List.copyOf(units), thrust, current));
        // Rows of one fan hang together: the mean of the lot is known only as well as its fans.
        int n = unknowns.size();
        widen(unknowns.indexOf(FanUnknown.THRUST), n, thrust * thrust / units.size());
        widen(unknowns.indexOf(FanUnknown.TORQUE), n, current * current / units.size());
    }

    private static double mean(List<FanFit.RowResidual> rows, Channel channel) {
        return rows.stream()
                .map(row -> channel == Channel.THRUST ? row.thrust() : row.current())
                .flatMap(left -> left.stream().boxed().findFirst().stream())
                .mapToDouble(Double::doubleValue)
                .average()
                .orElse(0);
    }

    /** Spread of the fans' means about the lot's. */
    private static double scatter(List<FanFit.Unit> units, Channel channel) {
        double[] share =
                units.stream()
                        .mapToDouble(
                                unit ->
                                        channel == Channel.THRUST
                                                ? unit.thrustShare()
                                                : unit.currentShare())
                        .toArray();
        double mean = 0;
        for (double one : share) {
            mean += one / share.length;
        }
        double squares = 0;
        for (double one : share) {
            squares += (one - mean) * (one - mean);
        }
        return Math.sqrt(squares / (share.length - 1));
    }

    private void widen(int index, int n, double variance) {
        if (index < 0) {
            return;
        }
        out.covariance[index * n + index] += variance;
        FanFit.Coefficient old = out.coefficients.get(index);
        out.coefficients.set(
                index,
                new FanFit.Coefficient(
                        old.unknown(),
                        old.value(),
                        Math.sqrt(out.covariance[index * n + index]),
                        old.freedom(),
                        old.assumed()));
    }
}
