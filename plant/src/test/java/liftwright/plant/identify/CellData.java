package liftwright.plant.identify;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.CellType;
import liftwright.rig.table.CellTest;
import liftwright.rig.table.CellTests;

/** Open measured data of two cells; sources and licences beside the tables in resources/cells. */
final class CellData {

    private CellData() {}

    private static List<String[]> rows(String file) {
        try (InputStream in = Objects.requireNonNull(CellData.class.getResourceAsStream(file))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static CellTest.Row row(int line, String[] field, int from) {
        return new CellTest.Row(
                line,
                Double.parseDouble(field[from]),
                Double.parseDouble(field[from + 1]),
                Double.parseDouble(field[from + 2]),
                OptionalDouble.of(Double.parseDouble(field[from + 3]) + 273.15));
    }

    static CellTests.Run discharge(String file, double charge, boolean heldOut) {
        List<CellTest.Row> read = new ArrayList<>();
        for (String[] field : rows("/cells/" + file)) {
            read.add(row(read.size() + 2, field, 0));
        }
        return new CellTests.Run(new CellTest(file, read), charge, heldOut);
    }

    /** Ten-second pulses of several cells at several charges, each a test of its own. */
    static List<CellTests.Run> pulses(String file) {
        List<CellTests.Run> runs = new ArrayList<>();
        List<CellTest.Row> read = new ArrayList<>();
        String now = "";
        int line = 2;
        for (String[] field : rows("/cells/" + file)) {
            String key = field[0] + " at " + field[1];
            if (!key.equals(now) && !read.isEmpty()) {
                runs.add(pulse(file, now, read));
                read.clear();
            }
            now = key;
            read.add(row(line++, field, 2));
        }
        runs.add(pulse(file, now, read));
        return runs;
    }

    private static CellTests.Run pulse(String file, String key, List<CellTest.Row> rows) {
        double charge = Double.parseDouble(key.substring(key.indexOf(" at ") + 4)) / 100;
        return new CellTests.Run(new CellTest(file + " " + key, rows), charge, false);
    }

    static CellType.Curve openCircuit(String file) {
        List<Double> charge = new ArrayList<>();
        List<Double> volt = new ArrayList<>();
        for (String[] field : rows("/cells/" + file)) {
            charge.add(Double.parseDouble(field[0]) / 100);
            volt.add(Double.parseDouble(field[1]));
        }
        return new CellType.Curve(charge, volt);
    }

    /** A cell of which tests tell everything but, perhaps, rest voltage. */
    static CellType type(String name, Optional<CellType.Curve> open, List<CellTests.Run> runs) {
        return new CellType(
                name,
                "Li-ion",
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                CellType.Ageing.NONE,
                new Quantity(
                        2000,
                        Dimensions.TEMPERATURE,
                        new Tolerance(1200, 1200, Tolerance.Form.BOUND, Tolerance.Scope.SHARED)),
                Quantity.exact(0.07, Dimensions.MASS),
                open,
                Quantity.exact(0, Dimensions.VOLTAGE),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new CellTests(runs)));
    }

    /**
     * 5 Ah, size 21700: curve, pulses and two rates told; the other rates and the cold held out.
     */
    static CellType e50(String... fitted) {
        List<CellTests.Run> runs = new ArrayList<>(pulses("e50/pulses-25C.csv"));
        runs.addAll(pulses("e50/pulses-10C.csv"));
        List<String> told = List.of(fitted);
        CellType.Curve open = openCircuit("e50/open-circuit.csv");
        for (String one : List.of("0.5C-25C", "1C-25C", "2C-25C", "1C-10C", "2C-10C")) {
            double charge = one.endsWith("10C") ? 0.985 : 1;
            runs.add(discharge("e50/" + one + ".csv", charge, !told.contains(one)));
        }
        return type("E50", Optional.of(open), runs);
    }

    /** 3 Ah, size 18650: three rates of one cell told, the rest and a second cell held out. */
    static CellType p30(String... fitted) {
        List<String> told = List.of(fitted);
        return type(
                "P30",
                Optional.empty(),
                Stream.of(
                                "s001-c10",
                                "s001-1c",
                                "s001-2c",
                                "s001-3c",
                                "s001-4c",
                                "s003-3c",
                                "s003-4c")
                        .map(one -> discharge("p30/" + one + ".csv", 1, !told.contains(one)))
                        .toList());
    }
}
