package liftwright.review.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import liftwright.review.measured.Points.Row;
import liftwright.rig.CellType;

/**
 * The figures of {@code examples/measured/rig.yaml} once more, from the points marked "coefficient"
 * and no others. Written apart from the code they feed.
 */
final class Coefficients {

    static final double DENSITY_KGPM3 = 1.225;
    static final double ROTOR_M = 0.2286;
    private static final double ROOM_K = 298.15;

    private Coefficients() {}

    /** Thrust at a speed from the mean CT, N. */
    static Figure rotorThrustN(double speedRpm) {
        double n = speedRpm / 60;
        return rotor("CT", DENSITY_KGPM3 * Math.pow(n, 2) * Math.pow(ROTOR_M, 4));
    }

    /** Shaft power at a speed from the mean CP, W. */
    static Figure rotorPowerW(double speedRpm) {
        double n = speedRpm / 60;
        return rotor("CP", DENSITY_KGPM3 * Math.pow(n, 3) * Math.pow(ROTOR_M, 5));
    }

    private static Figure rotor(String column, double factor) {
        return Figure.of(
                Points.read("rotor.csv", "use", "coefficient").stream()
                        .map(row -> row.number(column) * factor)
                        .toList());
    }

    /**
     * Shaft power at a speed, W: bus power less copper and iron with assumed motor figures, over
     * speed cubed.
     */
    static Figure drivePowerW(double speedRadps, double kvRadpsV, double ohm, double noLoadA) {
        return Figure.of(
                levels(Points.read("drive.csv", "drive", "coefficient")).stream()
                        .map(
                                level -> {
                                    double speed = level.mean("speed_rpm") * Math.PI / 30;
                                    double busW = level.mean("bus_V") * level.mean("bus_A");
                                    // busW = R I² + I Ω/K_v, the torque's current being I − I₀
                                    double emf = speed / kvRadpsV;
                                    double windingA =
                                            2
                                                    * busW
                                                    / (emf + Math.sqrt(emf * emf + 4 * ohm * busW));
                                    double shaftW = (windingA - noLoadA) * emf;
                                    return shaftW * Math.pow(speedRadps / speed, 3);
                                })
                        .toList());
    }

    /** A straight line of bus voltage against bus current through throttle levels. */
    record Line(double restV, double ohm, double ohmPlusMinus, double residualPlusMinusV) {}

    static Line supply() {
        List<Level> levels = levels(Points.read("drive.csv", "supply", "coefficient"));
        int n = levels.size();
        double meanA = levels.stream().mapToDouble(l -> l.mean("bus_A")).average().orElseThrow();
        double meanV = levels.stream().mapToDouble(l -> l.mean("bus_V")).average().orElseThrow();
        double spread = 0;
        double slope = 0;
        for (Level level : levels) {
            double a = level.mean("bus_A") - meanA;
            spread += a * a;
            slope += a * (level.mean("bus_V") - meanV);
        }
        double ohm = -slope / spread;
        double squares = 0;
        for (Level level : levels) {
            double left = level.mean("bus_V") - (meanV - ohm * (level.mean("bus_A") - meanA));
            squares += left * left;
        }
        double residual = Math.sqrt(squares / (n - 2));
        return new Line(meanV + ohm * meanA, ohm, 2 * residual / Math.sqrt(spread), 2 * residual);
    }

    /** The rows of one throttle level. */
    record Level(List<Row> rows) {
        double mean(String column) {
            return rows.stream().mapToDouble(row -> row.number(column)).average().orElseThrow();
        }
    }

    static List<Level> levels(List<Row> rows) {
        Map<String, List<Row>> byLevel =
                rows.stream()
                        .collect(
                                Collectors.groupingBy(
                                        row -> row.word("wind_mps") + "/" + row.word("level"),
                                        TreeMap::new,
                                        Collectors.toList()));
        return byLevel.values().stream().map(Level::new).toList();
    }

    /** Resistance at the first loaded record, brought to 25 °C, Ω. */
    static Figure cellInstantOhm(double coefficientK) {
        List<Row> warm = Points.read("cell-pulses.csv", "ambient_C", "25");
        double factor = factor(coefficientK, meanK(warm));
        return Figure.of(warm.stream().map(row -> ohm(row, "first_V") / factor).toList());
    }

    /**
     * B of R = R(25 °C) exp(B (1/T − 1/298.15 K)) from the resistance after 10 s at two
     * temperatures; its ± from the spread over charge.
     */
    static Figure cellTemperatureCoefficientK() {
        List<Row> warm = Points.read("cell-pulses.csv", "ambient_C", "25");
        List<Row> cold = Points.read("cell-pulses.csv", "ambient_C", "10");
        double span = 1 / meanK(cold) - 1 / meanK(warm);
        List<Double> perCharge = new ArrayList<>();
        for (String charge :
                warm.stream().map(row -> row.word("charge_percent")).distinct().toList()) {
            perCharge.add(Math.log(meanEndOhm(cold, charge) / meanEndOhm(warm, charge)) / span);
        }
        double all =
                Math.log(
                        mean(cold, row -> ohm(row, "end_V"))
                                / mean(warm, row -> ohm(row, "end_V")));
        return new Figure(all / span, Figure.of(perCharge).plusMinus());
    }

    private static double meanEndOhm(List<Row> rows, String charge) {
        return mean(
                rows.stream().filter(row -> row.word("charge_percent").equals(charge)).toList(),
                row -> ohm(row, "end_V"));
    }

    private static double ohm(Row row, String column) {
        return (row.number("rest_V") - row.number(column)) / row.number("current_A");
    }

    private static double meanK(List<Row> rows) {
        return 273.15 + mean(rows, row -> row.number("surface_C"));
    }

    private static double mean(List<Row> rows, ToDoubleFunction<Row> of) {
        return rows.stream().mapToDouble(of).average().orElseThrow();
    }

    static double factor(double coefficientK, double kelvin) {
        return Math.exp(coefficientK * (1 / kelvin - 1 / ROOM_K));
    }

    /** One row of a discharge at constant current, with the charge it was taken at. */
    record Loaded(String run, double charge, double currentA, double voltageV, double kelvin) {

        double restV(CellType.Curve curve) {
            return along(curve.charge(), curve.volt(), charge);
        }
    }

    /**
     * Rows of the discharges at constant current; their charge is what the rest voltage before
     * tells, less what was drawn.
     */
    static List<Loaded> discharges(String use, CellType.Curve curve, double capacityAh) {
        List<Loaded> loaded = new ArrayList<>();
        double full = 0;
        for (Row row : Points.read("cell-rates.csv", "use", use)) {
            if (row.number("current_A") == 0) {
                full = along(curve.volt(), curve.charge(), row.number("voltage_V"));
                continue;
            }
            loaded.add(
                    new Loaded(
                            row.word("run"),
                            full - row.number("drawn_Ah") / capacityAh,
                            row.number("current_A"),
                            row.number("voltage_V"),
                            273.15 + row.number("can_C")));
        }
        return loaded;
    }

    /** Resistance that minutes of discharge show, brought to 25 °C, Ω. */
    static Figure cellSettledOhm(CellType.Curve curve, double capacityAh, double coefficientK) {
        return Figure.of(
                discharges("coefficient", curve, capacityAh).stream()
                        .map(
                                row ->
                                        (row.restV(curve) - row.voltageV())
                                                / row.currentA()
                                                / factor(coefficientK, row.kelvin()))
                        .toList());
    }

    private static double along(List<Double> x, List<Double> y, double at) {
        for (int k = 1; k < x.size(); k++) {
            if (at <= x.get(k)) {
                double share = Math.max(0, (at - x.get(k - 1)) / (x.get(k) - x.get(k - 1)));
                return y.get(k - 1) + share * (y.get(k) - y.get(k - 1));
            }
        }
        return y.getLast();
    }
}
