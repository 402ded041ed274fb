package liftwright.logbook.engine;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.recording.Samples;

/** Samples of a Parquet file, and no more than are asked for. */
final class Thinning {

    private final Engine engine;
    private final String from;

    Thinning(Engine engine, Path file) throws IOException {
        this.engine = engine;
        this.from = "read_parquet(" + engine.path(file) + ", file_row_number = true)";
    }

    Map<String, Samples> samples(List<String> columns, double fromS, double toS, int atMost)
            throws EngineException {
        if (atMost < 4 || !(toS >= fromS)) {
            throw new IllegalArgumentException(atMost + " samples in " + fromS + "…" + toS + " s");
        }
        List<String> there = there(columns);
        if (there.isEmpty()) {
            return Map.of();
        }
        String within = " WHERE time BETWEEN " + literal(fromS) + " AND " + literal(toS);
        double[][] span =
                engine.numbers(
                        "SELECT count(*), min(time), max(time) FROM " + from + within,
                        Limits.OF_OURS);
        return span[0][0] <= atMost
                ? plain(there, within)
                : extremes(there, within, span[1][0], span[2][0], atMost / 2);
    }

    Map<String, Samples> every(List<String> columns, int atMost) throws EngineException {
        List<String> there = there(columns);
        if (there.isEmpty()) {
            return Map.of();
        }
        long rows = engine.run("SELECT count(*) FROM " + from).whole();
        long step = Math.max(1, Math.ceilDiv(rows, Math.max(1, atMost)));
        return plain(there, step == 1 ? "" : " WHERE file_row_number % " + step + " = 0");
    }

    private List<String> there(List<String> columns) throws EngineException {
        Rows described = engine.run("DESCRIBE SELECT * FROM " + from);
        var names = described.rows().stream().map(row -> row.getFirst().plain()).toList();
        return columns.stream().filter(names::contains).distinct().toList();
    }

    private Map<String, Samples> plain(List<String> columns, String where) throws EngineException {
        var select = new StringBuilder("SELECT time");
        columns.forEach(column -> select.append(", ").append(Sql.name(column)));
        double[][] numbers =
                engine.numbers(
                        select + " FROM " + from + where + " ORDER BY file_row_number",
                        new Limits(20_000_000, 1 << 30, Limits.OF_OURS.time()));
        var samples = new LinkedHashMap<String, Samples>();
        for (int c = 0; c < columns.size(); c++) {
            String name = columns.get(c);
            rising(numbers[0], numbers[c + 1]).ifPresent(s -> samples.put(name, s));
        }
        return samples;
    }

    /** Least and greatest of each of {@code buckets} equal stretches, with their times. */
    private Map<String, Samples> extremes(
            List<String> columns, String where, double firstS, double lastS, int buckets)
            throws EngineException {
        double widthS = Math.max((lastS - firstS) / buckets, Math.ulp(lastS));
        var select =
                new StringBuilder("SELECT least(floor((time - ")
                        .append(literal(firstS))
                        .append(") / ")
                        .append(literal(widthS))
                        .append("), ")
                        .append(buckets - 1)
                        .append(") AS bucket");
        for (String column : columns) {
            String name = Sql.name(column);
            select.append(", arg_min(time, ").append(name).append("), min(").append(name);
            select.append("), arg_max(time, ").append(name).append("), max(").append(name);
            select.append(")");
        }
        double[][] numbers =
                engine.numbers(
                        select + " FROM " + from + where + " GROUP BY bucket ORDER BY bucket",
                        Limits.OF_OURS);
        var samples = new LinkedHashMap<String, Samples>();
        for (int c = 0; c < columns.size(); c++) {
            String name = columns.get(c);
            pairs(numbers, 1 + 4 * c).ifPresent(s -> samples.put(name, s));
        }
        return samples;
    }

    /** The two of each bucket in the order of time. */
    private static Optional<Samples> pairs(double[][] numbers, int at) {
        int buckets = numbers[0].length;
        var times = new double[2 * buckets];
        var values = new double[2 * buckets];
        for (int k = 0; k < buckets; k++) {
            int early = numbers[at][k] <= numbers[at + 2][k] ? at : at + 2;
            int late = early == at ? at + 2 : at;
            times[2 * k] = numbers[early][k];
            values[2 * k] = numbers[early + 1][k];
            times[2 * k + 1] = numbers[late][k];
            values[2 * k + 1] = numbers[late + 1][k];
        }
        return rising(times, values);
    }

    /** Those that are there, in rising time; empty where none is. */
    private static Optional<Samples> rising(double[] timesS, double[] values) {
        var times = new double[timesS.length];
        var kept = new double[timesS.length];
        int n = 0;
        for (int k = 0; k < timesS.length; k++) {
            boolean rises = n == 0 || timesS[k] > times[n - 1];
            if (rises && Double.isFinite(timesS[k]) && Double.isFinite(values[k])) {
                times[n] = timesS[k];
                kept[n++] = values[k];
            }
        }
        return n == 0
                ? Optional.empty()
                : Optional.of(
                        new Samples(
                                java.util.Arrays.copyOf(times, n),
                                java.util.Arrays.copyOf(kept, n)));
    }

    /** A double that the engine reads back as it is; its name of infinity is a text. */
    private static String literal(double x) {
        return Double.isFinite(x)
                ? "CAST('" + x + "' AS DOUBLE)"
                : "CAST('" + (x > 0 ? "inf" : "-inf") + "' AS DOUBLE)";
    }
}
