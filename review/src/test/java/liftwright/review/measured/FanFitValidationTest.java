package liftwright.review.measured;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.numerics.LeastSquaresFit;
import liftwright.plant.identify.BenchPoint;
import liftwright.plant.identify.FanFit;
import liftwright.plant.identify.FanPriors;
import liftwright.plant.identify.FanUnknown;
import liftwright.plant.identify.FanUnknown.Channel;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.review.measured.Comparison.Point;
import liftwright.rig.table.CurrentKind;
import org.junit.jupiter.api.Test;

/**
 * Fans fitted to some rows of an open measurement, held against rows that played no part: figures
 * in {@code docs/validation.md}. By hand means the coefficient of the fitted row of the greatest
 * speed, held constant.
 */
class FanFitValidationTest {

    private static final double RPM = Math.PI / 30;
    private static final double DIAMETER_M = 0.2286;
    private static final double DENSITY = 1.225;

    /** Beyond it the data's authors' current sensor is of use, as its documentation has it. */
    private static final double LEAST_RPM = 5000;

    private static BenchPoint rotorRow(Points.Row row, int line) {
        double n = row.number("speed_rpm") / 60;
        double thrust = row.number("CT") * DENSITY * n * n * Math.pow(DIAMETER_M, 4);
        double power = row.number("CP") * DENSITY * n * n * n * Math.pow(DIAMETER_M, 5);
        return new BenchPoint(
                line,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(row.number("speed_rpm") * RPM),
                OptionalDouble.of(thrust),
                OptionalDouble.of(power / (2 * Math.PI * n)),
                1,
                0,
                Optional.empty());
    }

    private static List<BenchPoint> rotor() {
        List<BenchPoint> all = new ArrayList<>();
        for (Points.Row row : Points.read("rotor.csv")) {
            all.add(rotorRow(row, all.size() + 1));
        }
        return all;
    }

    private static FanPriors noMotor(double tipM) {
        return new FanPriors(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                Quantity.exact(0, Dimension.NONE),
                0,
                tipM);
    }

    private static double speed(BenchPoint point) {
        return point.speedRadps().orElseThrow();
    }

    private static BenchPoint fastest(List<BenchPoint> rows) {
        return rows.stream()
                .reduce((one, other) -> speed(one) > speed(other) ? one : other)
                .orElseThrow();
    }

    /** Thrust and shaft power of the rows that the fit has not seen. */
    private static List<Comparison> rotorAgainst(
            List<BenchPoint> fitted, List<BenchPoint> unseen, String name) {
        FanFit fit = FanFit.of(fitted, CurrentKind.BUS, noMotor(DIAMETER_M));
        assertThat(fit.status()).isEqualTo(LeastSquaresFit.Status.CONVERGED);
        BenchPoint top = fastest(fitted);
        List<Point> thrust = new ArrayList<>();
        List<Point> power = new ArrayList<>();
        for (BenchPoint row : unseen) {
            double square = Math.pow(speed(row) / speed(top), 2);
            thrust.add(
                    point(
                            row,
                            row.thrustN().orElseThrow(),
                            fit.predict(row, Channel.THRUST),
                            1,
                            top.thrustN().orElseThrow() * square));
            power.add(
                    point(
                            row,
                            row.torqueNm().orElseThrow() * speed(row),
                            fit.predict(row, Channel.TORQUE),
                            speed(row),
                            top.torqueNm().orElseThrow() * square * speed(row)));
        }
        return List.of(
                new Comparison(name + ": thrust", thrust),
                new Comparison(name + ": shaft power", power));
    }

    private static Point point(
            BenchPoint row, double measured, FanFit.Prediction band, double factor, double byHand) {
        // As shares of the measured value, so that rms is a share.
        return new Point(
                "row " + row.line(),
                1,
                (band.value() - band.halfWidth()) * factor / measured,
                band.value() * factor / measured,
                (band.value() + band.halfWidth()) * factor / measured,
                byHand / measured);
    }

    private static void assertAim(Comparison comparison, double aim) {
        assertThat(comparison.points()).hasSizeGreaterThan(3);
        assertThat(comparison.rms()).as(comparison.report()).isLessThan(aim);
        assertThat(comparison.rms()).as(comparison.report()).isLessThan(comparison.rmsByHand());
    }

    /** Every second speed from the slowest is fitted; those between are told. */
    @Test
    void speedsBetweenThoseFitted() {
        List<BenchPoint> fitted = rotor().stream().filter(row -> row.line() % 2 == 1).toList();
        List<BenchPoint> unseen = rotor().stream().filter(row -> row.line() % 2 == 0).toList();
        List<Comparison> both = rotorAgainst(fitted, unseen, "rotor, speeds between");
        assertAim(both.getFirst(), 0.03);
        assertAim(both.getLast(), 0.05);
        assertThat(Comparison.pooled(both.stream()).inside())
                .as(both.getFirst().report() + both.getLast().report())
                .isGreaterThanOrEqualTo(7);
    }

    /** The five slowest speeds are fitted; the four fastest are told, up to a third beyond. */
    @Test
    void speedsBeyondThoseFitted() {
        List<BenchPoint> fitted = rotor().stream().filter(row -> row.line() <= 5).toList();
        List<BenchPoint> unseen = rotor().stream().filter(row -> row.line() > 5).toList();
        List<Comparison> both = rotorAgainst(fitted, unseen, "rotor, speeds beyond");
        assertThat(both.getFirst().rms()).as(both.getFirst().report()).isLessThan(0.03);
        assertThat(both.getLast().rms()).as(both.getLast().report()).isLessThan(0.05);
    }

    /**
     * Single figures typed in from the axial-flow test of the same rotor (J. Brandt, R. Deters, G.
     * Ananda, M. Selig, UIUC Propeller Data Site, volume 2; no licence stated, cited as facts):
     * rpm, J, CT, CP. Every second row of 3038 rpm, every third of 4041 and 5037 rpm, up to J =
     * 0.54.
     */
    private static final double[][] STREAM = {
        {3038, 0.2044, 0.1651, 0.1059},
        {3038, 0.3088, 0.1431, 0.0993},
        {3038, 0.4155, 0.1178, 0.0904},
        {3038, 0.5323, 0.0860, 0.0757},
        {4041, 0.1573, 0.1772, 0.1077},
        {4041, 0.2704, 0.1534, 0.1013},
        {4041, 0.3912, 0.1266, 0.0924},
        {4041, 0.5083, 0.0936, 0.0775},
        {5037, 0.1213, 0.1881, 0.1104},
        {5037, 0.2187, 0.1691, 0.1058},
        {5037, 0.3103, 0.1482, 0.0995},
        {5037, 0.4066, 0.1242, 0.0905},
        {5037, 0.5014, 0.0973, 0.0784},
    };

    private static List<BenchPoint> stream() {
        List<BenchPoint> all = new ArrayList<>();
        for (double[] row : STREAM) {
            double n = row[0] / 60;
            all.add(
                    new BenchPoint(
                            all.size() + 1,
                            1,
                            OptionalDouble.empty(),
                            OptionalDouble.empty(),
                            OptionalDouble.of(row[0] * RPM),
                            OptionalDouble.of(row[2] * DENSITY * n * n * Math.pow(DIAMETER_M, 4)),
                            OptionalDouble.of(
                                    row[3]
                                            * DENSITY
                                            * n
                                            * n
                                            * Math.pow(DIAMETER_M, 5)
                                            / (2 * Math.PI)),
                            1,
                            row[1] * n * DIAMETER_M,
                            Optional.empty()));
        }
        return all;
    }

    /** Two speeds in a stream are fitted; a third, in faster streams, is told. */
    @Test
    void airspeedsNotFitted() {
        List<Comparison> both =
                rotorAgainst(stream().subList(0, 8), stream().subList(8, 13), "rotor in a stream");
        assertAim(both.getFirst(), 0.03);
        assertAim(both.getLast(), 0.05);
        assertThat(Comparison.pooled(both.stream()).inside())
                .as(both.getFirst().report() + both.getLast().report())
                .isGreaterThanOrEqualTo(9);
    }

    private static List<BenchPoint> drive(double windMps) {
        List<BenchPoint> all = new ArrayList<>();
        for (Points.Row row : Points.read("drive.csv")) {
            if (row.number("wind_mps") == windMps && row.number("speed_rpm") > LEAST_RPM) {
                all.add(
                        new BenchPoint(
                                all.size() + 1,
                                row.number("bus_V"),
                                OptionalDouble.empty(),
                                OptionalDouble.of(row.number("bus_A")),
                                OptionalDouble.of(row.number("speed_rpm") * RPM),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                1,
                                windMps,
                                Optional.empty()));
            }
        }
        return all;
    }

    private static Quantity about(double value, double share) {
        return new Quantity(
                value,
                Dimension.NONE,
                new Tolerance(
                        value * share,
                        value * share,
                        Tolerance.Form.NORMAL,
                        Tolerance.Scope.SHARED));
    }

    private static FanPriors tunnelMotor() {
        return new FanPriors(
                Optional.of(about(1100 * RPM, 0.10)),
                Optional.of(about(0.055, 0.49)),
                Optional.of(about(1, 0.5)),
                0.005,
                Quantity.exact(0, Dimension.NONE),
                0,
                0.23);
    }

    /**
     * At one airspeed drift and advance ratio are one: the fit says that it cannot tell another.
     */
    @Test
    void oneAirspeedDoesNotTellAnother() {
        FanFit fit = FanFit.of(drive(10), CurrentKind.BUS, tunnelMotor());
        assertThat(fit.status()).isEqualTo(LeastSquaresFit.Status.CONVERGED);
        assertThat(fit.notes()).anyMatch(note -> note.contains("nothing about another airspeed"));
        Comparison unseen = power(fit, drive(10), drive(15));
        assertThat(unseen.rms()).as(unseen.report()).isLessThan(unseen.rmsByHand());
    }

    /** Both runs, but every second throttle level at 15 m/s kept back. */
    @Test
    void levelsBetweenAtAnotherAirspeed() {
        List<BenchPoint> fitted = new ArrayList<>(drive(10));
        List<BenchPoint> unseen = new ArrayList<>();
        List<BenchPoint> windy = drive(15);
        // Four rows a level, levels 4 to 9: 5, 7 and 9 are fitted, 4, 6 and 8 are told.
        for (int k = 0; k < windy.size(); k++) {
            (k / 4 % 2 == 1 ? fitted : unseen).add(windy.get(k));
        }
        FanFit fit = FanFit.of(fitted, CurrentKind.BUS, tunnelMotor());
        assertThat(fit.status()).isEqualTo(LeastSquaresFit.Status.CONVERGED);
        assertThat(fit.coefficient(FanUnknown.TORQUE_INFLOW_SQUARE)).isPresent();
        Comparison told = power(fit, fitted, unseen);
        assertThat(told.rms()).as(told.report()).isLessThan(told.rmsByHand());
    }

    private static Comparison power(FanFit fit, List<BenchPoint> fitted, List<BenchPoint> unseen) {
        BenchPoint top = fastest(fitted);
        double topW = top.voltageV() * top.currentA().orElseThrow();
        List<Point> watts = new ArrayList<>();
        for (BenchPoint row : unseen) {
            watts.add(
                    point(
                            row,
                            row.voltageV() * row.currentA().orElseThrow(),
                            fit.predict(row, Channel.CURRENT),
                            row.voltageV(),
                            topW * Math.pow(speed(row) / speed(top), 3)));
        }
        return new Comparison("drive at 15 m/s: electrical power", watts);
    }
}
