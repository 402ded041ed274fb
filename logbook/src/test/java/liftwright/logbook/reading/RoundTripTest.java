package liftwright.logbook.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import liftwright.plant.recording.Samples;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Random recordings, written by a plain writer of this test in a way that it draws, and read in.
 * What the values are in SI the test reckons by itself, from tables of units beside it.
 */
class RoundTripTest {

    /** Of units: how one is written, what it is in SI (SP 811 and the SI brochure), its nought. */
    private record Unit(String text, double slope, double zero) {}

    private record Kind(String name, double least, double greatest, List<Unit> units) {}

    private static final Unit ONE = new Unit("%", 0.01, 0);

    private static final List<Kind> KINDS =
            List.of(
                    new Kind("throttle", 0, 1, List.of(ONE)),
                    new Kind("throttle fan.2", 0, 1, List.of(ONE)),
                    new Kind(
                            "thrust",
                            0,
                            900,
                            List.of(
                                    new Unit("N", 1, 0),
                                    new Unit("kgf", 9.80665, 0),
                                    new Unit("lbf", 4.4482216152605, 0))),
                    new Kind(
                            "scale",
                            0,
                            120,
                            List.of(
                                    new Unit("kg", 1, 0),
                                    new Unit("g", 1e-3, 0),
                                    new Unit("lb", 0.45359237, 0))),
                    new Kind(
                            "current p.1",
                            0,
                            200,
                            List.of(new Unit("A", 1, 0), new Unit("mA", 1e-3, 0))),
                    new Kind(
                            "voltage p.1",
                            30,
                            60,
                            List.of(new Unit("V", 1, 0), new Unit("mV", 1e-3, 0))),
                    new Kind("speed fan.3", 0, 4000, List.of(new Unit("rpm", Math.PI / 30, 0))),
                    new Kind(
                            "temperature fan.1 winding",
                            270,
                            400,
                            List.of(
                                    new Unit("°C", 1, 273.15),
                                    new Unit("K", 1, 0),
                                    new Unit("°F", 5 / 9.0, 459.67 * 5 / 9))),
                    new Kind(
                            "air pressure",
                            90_000,
                            105_000,
                            List.of(
                                    new Unit("Pa", 1, 0),
                                    new Unit("hPa", 100, 0),
                                    new Unit("mbar", 100, 0))),
                    new Kind(
                            "charge used p.2",
                            0,
                            9e4,
                            List.of(new Unit("Ah", 3600, 0), new Unit("mAh", 3.6, 0))));

    @TempDir private Path folder = Path.of("");

    /** A column as it is written and as it must come out. */
    private record Column(String head, Kind kind, Unit unit, TreeMap<Double, Double> si) {}

    @Test
    void valuesComeBackAndNothingIsLost() throws IOException {
        try (var logs = new Logs(folder)) {
            Seeded.check(
                    60,
                    random -> {
                        try {
                            one(random, logs);
                        } catch (IOException e) {
                            throw new UncheckedIOException(e);
                        }
                    });
        }
    }

    private static void one(RandomGenerator random, Logs logs) throws IOException {
        char separator = ",;\t|".charAt(random.nextInt(4));
        char decimal = separator != ',' && random.nextBoolean() ? ',' : '.';
        String end = random.nextBoolean() ? "\n" : "\r\n";
        Charset charset =
                List.of(
                                StandardCharsets.UTF_8,
                                StandardCharsets.ISO_8859_1,
                                StandardCharsets.UTF_16)
                        .get(random.nextInt(3));
        int clock = random.nextInt(4);
        var columns = columns(random);
        var text = new StringBuilder();
        text.append(random.nextInt(3) == 0 ? "# drawn" + end : "");
        int timeAt = random.nextInt(columns.size() + 1);
        var heads = new ArrayList<String>();
        columns.forEach(column -> heads.add(column.head));
        heads.add(timeAt, List.of("time [s]", "time [ms]", "time", "time [min]").get(clock));
        text.append(String.join(Character.toString(separator), heads)).append(end);

        int rows = random.nextInt(1, 400);
        int spoiled = 0;
        int written = 0;
        double timeS = clock == 2 ? 3600 * random.nextInt(1, 20) : random.nextInt(100);
        for (int k = 0; k < rows; k++) {
            timeS += random.nextInt(1, 400) / 1000.0;
            timeS = Math.rint(timeS * 1000) / 1000;
            if (random.nextInt(30) == 0) {
                text.append(random.nextBoolean() ? "" : "# pause").append(end);
            }
            boolean spoil = spoiled < rows / 3 && random.nextInt(25) == 0;
            var cells = cells(random, columns, timeS, decimal, spoil);
            cells.add(timeAt, time(timeS, clock, decimal));
            if (spoil) {
                spoiled++;
                if (random.nextBoolean()) {
                    cells.add("1");
                } else {
                    cells.set(timeAt == 0 ? 1 : 0, "4 apples");
                }
            }
            text.append(String.join(Character.toString(separator), cells)).append(end);
            written++;
        }
        Imported read = logs.whole(logs.read(logs.file(text.toString().getBytes(charset))));

        Clocked table = read.tables().getFirst();
        long aside = read.rejected().stream().mapToLong(Rejected::count).sum();
        assertThat(aside).isEqualTo(spoiled);
        assertThat(table.rows() + aside).as("rows").isEqualTo(written);
        Map<String, Samples> samples = logs.samples(table);
        for (Column column : columns) {
            Samples back = samples.get(column.kind.name);
            if (back == null) {
                assertThat(column.si).isEmpty();
                continue;
            }
            compare(column, back);
        }
    }

    private static List<Column> columns(RandomGenerator random) {
        var kinds = new ArrayList<>(KINDS);
        Collections.shuffle(kinds, new Random(random.nextLong()));
        var columns = new ArrayList<Column>();
        for (Kind kind : kinds.subList(0, random.nextInt(1, 6))) {
            Unit unit = kind.units.get(random.nextInt(kind.units.size()));
            String head = kind.name + (random.nextBoolean() ? " " : "") + "[" + unit.text + "]";
            columns.add(new Column(head, kind, unit, new TreeMap<>()));
        }
        return columns;
    }

    /** A spoiled row is not to come back. */
    private static List<String> cells(
            RandomGenerator random,
            List<Column> columns,
            double timeS,
            char decimal,
            boolean spoil) {
        var cells = new ArrayList<String>();
        for (Column column : columns) {
            Kind kind = column.kind;
            double si = random.nextDouble(kind.least, kind.greatest);
            double shown = (si - column.unit.zero) / column.unit.slope;
            String cell = String.format(Locale.ROOT, "%.6f", shown);
            double exact = Double.parseDouble(cell);
            if (random.nextInt(12) == 0) {
                cells.add(List.of("", "NaN", "n/a", "-").get(random.nextInt(4)));
                continue;
            }
            String written = cell.replace('.', decimal);
            cells.add(random.nextInt(9) == 0 ? '"' + written + '"' : written);
            if (!spoil) {
                column.si.put(timeS, exact * column.unit.slope + column.unit.zero);
            }
        }
        return cells;
    }

    private static String time(double timeS, int clock, char decimal) {
        String text =
                switch (clock) {
                    case 0 -> String.format(Locale.ROOT, "%.3f", timeS);
                    case 1 -> Long.toString(Math.round(timeS * 1000));
                    case 2 -> {
                        long ms = Math.round(timeS * 1000);
                        yield String.format(
                                Locale.ROOT,
                                "%02d:%02d:%02d.%03d",
                                ms / 3_600_000,
                                ms / 60_000 % 60,
                                ms / 1000 % 60,
                                ms % 1000);
                    }
                    default -> String.format(Locale.ROOT, "%.12f", timeS / 60);
                };
        return text.replace('.', decimal);
    }

    private static void compare(Column column, Samples back) {
        assertThat(back.size()).as(column.head).isEqualTo(column.si.size());
        int k = 0;
        for (var entry : column.si.entrySet()) {
            assertThat(back.timeS(k)).isEqualTo(entry.getKey(), within(1e-8));
            double si = entry.getValue();
            assertThat(back.si(k))
                    .as(column.head)
                    .isEqualTo(si, within(1e-12 * Math.max(Math.abs(si), column.unit.zero + 1e-3)));
            k++;
        }
    }

    /** Lines are told rightly where the engine reads a file in pieces at once. */
    @Test
    void linesOfRejectedRowsAreRightInALargeFile() throws IOException {
        var text = new StringBuilder("time [s],thrust [N],note\n");
        var bad = new ArrayList<Long>();
        var random = new Random(3);
        long line = 1;
        for (int k = 0; k < 1_500_000; k++) {
            line++;
            if (random.nextInt(50_000) == 0) {
                text.append("x,1,\n");
                bad.add(line);
            } else if (random.nextInt(100_000) == 0) {
                text.append('\n');
            } else {
                text.append(k).append(",12.5,some words to fill it\n");
            }
        }
        try (var logs = new Logs(folder)) {
            Imported read = logs.whole(logs.read(logs.file(text.toString())));
            assertThat(bad.size()).isBetween(10, 200);
            assertThat(read.rejected().getFirst().count()).isEqualTo(bad.size());
            assertThat(read.rejected().getFirst().first())
                    .extracting(Rejected.Row::line)
                    .containsExactlyElementsOf(
                            bad.subList(0, Math.min(Rejected.SHOWN, bad.size())));
        }
    }
}
