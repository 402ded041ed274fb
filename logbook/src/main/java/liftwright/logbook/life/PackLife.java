package liftwright.logbook.life;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import liftwright.answer.Outcome;
import liftwright.logbook.entry.PackSheet;
import liftwright.logbook.entry.PackSheet.Row;
import liftwright.quantity.Band;
import liftwright.quantity.Quantity;

/**
 * A pack on a day, by its life sheet. Resistances are brought to 25 °C with the law of the cell,
 * R25 = R / exp(B (1/T − 1/298.15 K)) (Arrhenius form, {@link
 * liftwright.physics.CellLaw#temperatureFactor}; common practice between about 0 °C and 60 °C).
 *
 * @param points one for each row until that day, in the order of their days
 * @param reasons what the rule of retirement asks, each with its answer
 * @param storedDays that it lay, all rows together
 * @param outcome whether it stays in use that day
 */
public record PackLife(List<Point> points, List<Reason> reasons, int storedDays, Outcome outcome) {

    /** Draws of the declared doubts. */
    public static final int DRAWS = 4096;

    public PackLife {
        points = List.copyOf(points);
        reasons = List.copyOf(reasons);
    }

    /**
     * A row with its numbers made comparable.
     *
     * @param at25Ohm resistance at 25 °C, Ω
     * @param resistanceShare of that when new
     * @param capacityShare of that when new
     */
    public record Point(
            Row row,
            Optional<Figure> at25Ohm,
            Optional<Figure> resistanceShare,
            Optional<Figure> capacityShare) {}

    /**
     * A number and the interval that the declared doubts leave it; that is empty where none was
     * declared.
     */
    public record Figure(double si, Optional<Band> band) {
        double low() {
            return band.map(Band::low).orElse(si);
        }

        double high() {
            return band.map(Band::high).orElse(si);
        }
    }

    /** What a pack can go for. */
    public enum Kind {
        RESISTANCE("resistance at 25 °C"),
        CAPACITY("capacity"),
        SWELLING("swelling"),
        CRASH("crash");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** For a reader. */
        public String words() {
            return words;
        }
    }

    /**
     * One thing that the rule asks.
     *
     * @param on the day of the row that answers it
     * @param share what was found, as a share; of a crash the days since
     * @param limit what it is held against; of a crash the days of rest
     * @param outcome whether the pack may stay for it
     */
    public record Reason(Kind kind, LocalDate on, Figure share, double limit, Outcome outcome) {}

    /**
     * Reads a sheet.
     *
     * @param today rows after it do not count
     * @param seed of the draws of doubt
     */
    public static PackLife of(PackSheet sheet, LocalDate today, long seed) {
        List<Row> rows =
                sheet.rows().stream()
                        .filter(row -> !row.date().isAfter(today))
                        .sorted(Comparator.comparing(Row::date))
                        .toList();
        List<Point> points = points(sheet, rows, new Doubt(seed));
        List<Reason> reasons = reasons(sheet.retire(), points, today);
        return new PackLife(
                points,
                reasons,
                rows.stream().mapToInt(row -> row.storedDays().orElse(0)).sum(),
                outcome(reasons));
    }

    private static List<Point> points(PackSheet sheet, List<Row> rows, Doubt doubt) {
        Optional<Doubt.Drawn> newOhm =
                sheet.newResistance()
                        .map(doubt::own)
                        .or(() -> first(rows, row -> at25(sheet, row, doubt)));
        Optional<Doubt.Drawn> newCharge =
                sheet.newCapacity()
                        .map(doubt::own)
                        .or(() -> first(rows, row -> row.capacity().map(doubt::own)));
        var points = new ArrayList<Point>();
        for (Row row : rows) {
            Optional<Doubt.Drawn> ohm = at25(sheet, row, doubt);
            Optional<Doubt.Drawn> charge = row.capacity().map(doubt::own);
            points.add(
                    new Point(
                            row,
                            ohm.map(Doubt.Drawn::figure),
                            ohm.flatMap(is -> newOhm.map(was -> is.over(was).figure())),
                            charge.flatMap(is -> newCharge.map(was -> is.over(was).figure()))));
        }
        return points;
    }

    private static Optional<Doubt.Drawn> first(
            List<Row> rows, Function<Row, Optional<Doubt.Drawn>> of) {
        return rows.stream().flatMap(row -> of.apply(row).stream()).findFirst();
    }

    private static Optional<Doubt.Drawn> at25(PackSheet sheet, Row row, Doubt doubt) {
        return row.resistance()
                .flatMap(
                        ohm ->
                                row.at()
                                        .map(
                                                kelvin ->
                                                        doubt.at25(
                                                                ohm,
                                                                kelvin,
                                                                sheet.temperatureCoefficient())));
    }

    private static List<Reason> reasons(
            PackSheet.Retire rule, List<Point> points, LocalDate today) {
        var reasons = new ArrayList<Reason>();
        last(points, Point::resistanceShare)
                .ifPresent(found -> reasons.add(found.atMost(Kind.RESISTANCE, rule.resistance())));
        last(points, Point::capacityShare)
                .ifPresent(found -> reasons.add(found.atLeast(Kind.CAPACITY, rule.capacity())));
        last(points, point -> point.row().swelling().map(PackLife::figure))
                .ifPresent(found -> reasons.add(found.atMost(Kind.SWELLING, rule.swelling())));
        points.stream()
                .filter(point -> !point.row().crash().isEmpty())
                .reduce((_, later) -> later)
                .ifPresent(point -> reasons.add(crash(point.row().date(), rule, today)));
        return reasons;
    }

    private static Reason crash(LocalDate on, PackSheet.Retire rule, LocalDate today) {
        double days = today.toEpochDay() - on.toEpochDay();
        return new Reason(
                Kind.CRASH,
                on,
                new Figure(days, Optional.empty()),
                rule.quarantineDays(),
                days > rule.quarantineDays() ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD);
    }

    private static Figure figure(Quantity share) {
        var doubt = share.tolerance();
        return new Figure(
                share.si(),
                doubt.isNone()
                        ? Optional.empty()
                        : Optional.of(
                                new Band(
                                        share.si() - doubt.minus(),
                                        share.si() + doubt.plus(),
                                        0.95,
                                        "as declared",
                                        0,
                                        0)));
    }

    /** What the last row that tells it tells. */
    private record Found(LocalDate on, Figure share) {

        /** It goes when it reaches the limit. */
        Reason atMost(Kind kind, double limit) {
            return new Reason(
                    kind,
                    on,
                    share,
                    limit,
                    share.high() < limit
                            ? Outcome.HOLDS
                            : share.low() >= limit
                                    ? Outcome.DOES_NOT_HOLD
                                    : Outcome.CANNOT_BE_TOLD);
        }

        /** It goes when it is below the limit. */
        Reason atLeast(Kind kind, double limit) {
            return new Reason(
                    kind,
                    on,
                    share,
                    limit,
                    share.low() >= limit
                            ? Outcome.HOLDS
                            : share.high() < limit
                                    ? Outcome.DOES_NOT_HOLD
                                    : Outcome.CANNOT_BE_TOLD);
        }
    }

    private static Optional<Found> last(List<Point> points, Function<Point, Optional<Figure>> of) {
        return points.stream()
                .flatMap(p -> of.apply(p).map(share -> new Found(p.row().date(), share)).stream())
                .reduce((_, later) -> later);
    }

    /** What does not hold outweighs what cannot be told; nothing measured tells nothing. */
    private static Outcome outcome(List<Reason> reasons) {
        if (reasons.stream().anyMatch(r -> r.outcome() == Outcome.DOES_NOT_HOLD)) {
            return Outcome.DOES_NOT_HOLD;
        }
        boolean told =
                reasons.stream().anyMatch(r -> r.kind() != Kind.CRASH)
                        && reasons.stream().allMatch(r -> r.outcome() == Outcome.HOLDS);
        return told ? Outcome.HOLDS : Outcome.CANNOT_BE_TOLD;
    }
}
