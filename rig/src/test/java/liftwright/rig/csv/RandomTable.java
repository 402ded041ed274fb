package liftwright.rig.csv;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.random.RandomGenerator;

/**
 * A table written at random, and what it says in SI. Conversion factors stand here as numbers, from
 * the SI Brochure and NIST SP 811; nothing of the reader is called.
 */
final class RandomTable {

    /**
     * One way to write a column.
     *
     * @param header as in the head
     * @param factor SI over written value
     * @param offset in SI
     * @param least in the written unit
     * @param most in the written unit
     * @param mayBeEmpty whether a cell may say nothing
     */
    record Writing(
            String header,
            double factor,
            double offset,
            double least,
            double most,
            boolean mayBeEmpty) {}

    private static final double POUND_FORCE = 4.4482216152605;
    private static final double GRAM_FORCE = 9.80665e-3;

    /** Columns of a bench table by what they mean; the first four must be there. */
    static final List<List<Writing>> BENCH =
            List.of(
                    List.of(
                            new Writing("voltage [V]", 1, 0, 1, 100, false),
                            new Writing("Voltage [mV]", 1e-3, 0, 1000, 90_000, false)),
                    List.of(
                            new Writing("bus current [A]", 1, 0, 0, 300, false),
                            new Writing("bus_current [mA]", 1e-3, 0, 0, 90_000, false)),
                    List.of(
                            new Writing("thrust [N]", 1, 0, 0, 300, false),
                            new Writing("thrust [gf]", GRAM_FORCE, 0, 0, 30_000, false),
                            new Writing("thrust [kgf]", 1e3 * GRAM_FORCE, 0, 0, 30, false),
                            new Writing("thrust [lbf]", POUND_FORCE, 0, 0, 60, false)),
                    List.of(
                            new Writing("speed [rpm]", Math.PI / 30, 0, 100, 60_000, true),
                            new Writing("speed [rad/s]", 1, 0, 10, 6000, true)),
                    List.of(
                            new Writing("duty [%]", 0.01, 0, 0, 100, true),
                            new Writing("duty [1]", 1, 0, 0, 1, true)),
                    List.of(
                            new Writing("torque [N·m]", 1, 0, 0, 20, true),
                            new Writing("torque [mN·m]", 1e-3, 0, 0, 9000, true)),
                    List.of(
                            new Writing("air temperature [°C]", 1, 273.15, -40, 50, true),
                            new Writing("air temperature [K]", 1, 0, 230, 320, true)),
                    List.of(
                            new Writing("station pressure [hPa]", 100, 0, 500, 1060, true),
                            new Writing("station pressure [Pa]", 1, 0, 50_000, 106_000, true)),
                    List.of(
                            new Writing("airspeed [m/s]", 1, 0, 0, 60, true),
                            new Writing("airspeed [km/h]", 1 / 3.6, 0, 0, 200, true)));

    /** The same of a test of a cell. */
    static final List<List<Writing>> CELL =
            List.of(
                    List.of(
                            new Writing("time [s]", 1, 0, 0, 0, false),
                            new Writing("time [min]", 60, 0, 0, 0, false)),
                    List.of(
                            new Writing("discharge current [A]", 1, 0, -300, 300, false),
                            new Writing("charge current [A]", -1, 0, -300, 300, false)),
                    List.of(new Writing("voltage [V]", 1, 0, 1, 60, false)),
                    List.of(new Writing("temperature [°C]", 1, 273.15, -20, 60, true)));

    final List<Writing> columns = new ArrayList<>();
    final List<List<String>> cells = new ArrayList<>();

    /** SI values by row and meaning; empty cells are null. */
    final List<List<Double>> si = new ArrayList<>();

    final List<Integer> lines = new ArrayList<>();
    private final RandomGenerator random;
    private final List<Integer> order = new ArrayList<>();
    private final char separator;
    private final boolean comma;

    RandomTable(List<List<Writing>> meanings, int needed, RandomGenerator random) {
        this.random = random;
        separator = ",;\t".charAt(random.nextInt(3));
        comma = separator != ',' && random.nextBoolean();
        for (int k = 0; k < meanings.size(); k++) {
            List<Writing> ways = meanings.get(k);
            columns.add(ways.get(random.nextInt(ways.size())));
            if (k < needed || random.nextBoolean()) {
                order.add(k);
            }
        }
        Collections.shuffle(order, new Random(random.nextLong()));
        int rows = random.nextInt(2, 12);
        for (int row = 0; row < rows; row++) {
            row(row);
        }
    }

    private void row(int row) {
        var texts = new ArrayList<String>();
        var values = new ArrayList<Double>();
        for (int k = 0; k < columns.size(); k++) {
            Writing way = columns.get(k);
            boolean empty = !order.contains(k) || (way.mayBeEmpty() && random.nextInt(6) == 0);
            double span = way.most() - way.least();
            double value = way.least() + span * random.nextDouble();
            String text =
                    span == 0
                            ? String.valueOf(row * 7 + 1) // a time, which rises
                            : new BigDecimal(value)
                                    .setScale(span > 1000 ? 0 : 4, java.math.RoundingMode.HALF_DOWN)
                                    .toPlainString();
            texts.add(empty ? "" : text);
            values.add(empty ? null : Double.parseDouble(text) * way.factor() + way.offset());
        }
        cells.add(texts);
        si.add(values);
    }

    /** The columns that are written, in the order of the file, as places in {@link #columns}. */
    List<Integer> order() {
        return order;
    }

    /** The file, with the cells as they now are. */
    String text() {
        var out = new StringBuilder(random.nextBoolean() ? "\uFEFF" : "");
        String end = List.of("\n", "\r\n").get(random.nextInt(2));
        int line = 1;
        lines.clear();
        for (int row = -1; row < cells.size(); row++) {
            while (random.nextInt(4) == 0) {
                out.append(random.nextBoolean() ? "# 1, 2; \"3" : "").append(end);
                line++;
            }
            for (int at = 0; at < order.size(); at++) {
                int k = order.get(at);
                String cell = row < 0 ? columns.get(k).header() : cells.get(row).get(k);
                out.append(at == 0 ? "" : separator).append(dressed(cell));
            }
            out.append(end);
            if (row >= 0) {
                lines.add(line);
            }
            line++;
        }
        return out.toString();
    }

    private String dressed(String cell) {
        String marked = comma && cell.indexOf('[') < 0 ? cell.replace('.', ',') : cell;
        return switch (random.nextInt(5)) {
            case 0 -> '"' + marked + '"';
            case 1 -> " " + marked + "  ";
            default -> marked;
        };
    }
}
