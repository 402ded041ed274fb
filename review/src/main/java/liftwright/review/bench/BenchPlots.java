package liftwright.review.bench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import liftwright.answer.Section;
import liftwright.answer.Section.Plot;
import liftwright.plant.identify.BenchPoint;
import liftwright.plant.identify.FanFit;
import liftwright.plant.identify.FanUnknown.Channel;
import liftwright.rig.table.BenchTable;

/** Rows and the fit through them, for a picture. */
final class BenchPlots {

    private static final int STEPS = 48;

    private BenchPlots() {}

    /**
     * Thrust over speed with the 95 % band of one more reading, and what the fit leaves of it;
     * nothing where too few rows tell a speed.
     */
    static List<Section> of(BenchTable table, FanFit fit) {
        List<BenchTable.Row> rows =
                table.rows().stream().filter(row -> row.speedRadps().isPresent()).toList();
        if (rows.size() < 2) {
            return List.of();
        }
        Set<Integer> aside = new HashSet<>(fit.outliers());
        List<Section> plots = new ArrayList<>();
        List<Plot.Series> thrust = new ArrayList<>();
        if (rows.stream().allMatch(row -> row.airspeedMps().orElse(0) == 0)) {
            thrust.addAll(curve(fit, rows));
        }
        thrust.addAll(points(rows, aside, row -> OptionalDouble.of(inStandardAir(table, row))));
        plots.add(
                new Plot(
                        "thrust-over-speed",
                        "Thrust over speed, in air of 1.225 kg/m³",
                        "bench-speed",
                        "bench-thrust",
                        thrust));
        List<Plot.Series> left = new ArrayList<>();
        left.add(
                new Plot.Series(
                        "nothing left",
                        Plot.Mark.LINE,
                        List.of(
                                new Plot.Point(least(rows), 0),
                                new Plot.Point(greatest(rows), 0))));
        // One that was set aside would press all others onto the line.
        left.addAll(
                points(
                        rows,
                        aside,
                        row ->
                                aside.contains(row.line())
                                        ? OptionalDouble.empty()
                                        : left(fit, row)));
        plots.add(
                new Plot(
                        "left-of-thrust",
                        "What the fit leaves of the thrust"
                                + (aside.isEmpty() ? "" : "; rows set aside left out"),
                        "bench-speed",
                        "bench-left-thrust",
                        left));
        return plots;
    }

    private static List<Plot.Series> points(
            List<BenchTable.Row> rows,
            Set<Integer> aside,
            Function<BenchTable.Row, OptionalDouble> y) {
        List<Plot.Point> kept = new ArrayList<>();
        List<Plot.Point> far = new ArrayList<>();
        for (BenchTable.Row row : rows) {
            y.apply(row)
                    .ifPresent(
                            value ->
                                    (aside.contains(row.line()) ? far : kept)
                                            .add(
                                                    new Plot.Point(
                                                            row.speedRadps().orElseThrow(),
                                                            value)));
        }
        List<Plot.Series> series = new ArrayList<>();
        if (!kept.isEmpty()) {
            series.add(new Plot.Series("measured", Plot.Mark.DOT, kept));
        }
        if (!far.isEmpty()) {
            series.add(new Plot.Series("set aside", Plot.Mark.CROSS, far));
        }
        return series;
    }

    private static double inStandardAir(BenchTable table, BenchTable.Row row) {
        return row.thrustN() / point(table, row).densityShare();
    }

    private static BenchPoint point(BenchTable table, BenchTable.Row row) {
        return BenchPoint.of(new BenchTable(table.file(), table.current(), List.of(row)))
                .getFirst();
    }

    private static OptionalDouble left(FanFit fit, BenchTable.Row row) {
        return fit.rows().stream()
                .filter(one -> one.line() == row.line())
                .findFirst()
                .map(FanFit.RowResidual::thrust)
                .orElseGet(OptionalDouble::empty);
    }

    private static List<Plot.Series> curve(FanFit fit, List<BenchTable.Row> rows) {
        List<Plot.Point> middle = new ArrayList<>();
        List<Plot.Point> low = new ArrayList<>();
        List<Plot.Point> high = new ArrayList<>();
        double from = least(rows);
        double to = greatest(rows);
        for (int i = 0; i <= STEPS; i++) {
            double speed = from + (to - from) * i / STEPS;
            FanFit.Prediction at = fit.predict(standing(speed), Channel.THRUST);
            middle.add(new Plot.Point(speed, at.value()));
            low.add(new Plot.Point(speed, at.value() - at.halfWidth()));
            high.add(new Plot.Point(speed, at.value() + at.halfWidth()));
        }
        return List.of(
                new Plot.Series("fit", Plot.Mark.LINE, middle),
                new Plot.Series("95 % of one more reading", Plot.Mark.DASHES, low),
                new Plot.Series("", Plot.Mark.DASHES, high));
    }

    private static BenchPoint standing(double speedRadps) {
        return new BenchPoint(
                0,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(speedRadps),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                1,
                0,
                Optional.empty());
    }

    private static double least(List<BenchTable.Row> rows) {
        return rows.stream().mapToDouble(row -> row.speedRadps().orElseThrow()).min().orElseThrow();
    }

    private static double greatest(List<BenchTable.Row> rows) {
        return rows.stream().mapToDouble(row -> row.speedRadps().orElseThrow()).max().orElseThrow();
    }
}
