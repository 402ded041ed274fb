package liftwright.review.measured;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import liftwright.plant.Plant;
import liftwright.review.measured.Coefficients.Loaded;
import liftwright.review.measured.Comparison.Point;
import liftwright.review.measured.Points.Row;
import liftwright.rig.CellType;
import liftwright.rig.Rig;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * {@code examples/measured} against points that gave no coefficient. The method, the sources and
 * what falls short are in {@code docs/validation.md}.
 */
class MeasuredRigTest {

    private static final double RPM = Math.PI / 30;
    private static final double DISC_M2 = Math.PI / 4 * Coefficients.ROTOR_M * Coefficients.ROTOR_M;

    private static Comparison thrust;
    private static Comparison shaftPower;
    private static Comparison current;
    private static Comparison speed;
    private static Comparison supplySag;
    private static Comparison cellSag;

    @BeforeAll
    static void compare() {
        Rig rig = MeasuredRig.read();
        Plant plant = Plant.assemble(rig);
        rotor(plant);
        drive(plant);
        supply(plant);
        cell(plant, rig.packs().getFirst().cell());
    }

    private static void rotor(Plant plant) {
        Bench bench = new Bench(plant, "lift");
        int fan = bench.fan("lifter.1");
        Consumer<double[]> fullPack = bench.with("demands/judged at charge", 1);
        List<Point> newtons = new ArrayList<>();
        List<Point> watts = new ArrayList<>();
        for (Row row : Points.read("rotor.csv", "use", "held out")) {
            double rpm = row.number("speed_rpm");
            double n = rpm / 60;
            double d = Coefficients.ROTOR_M;
            double rho = Coefficients.DENSITY_KGPM3;
            double measuredN = row.number("CT") * rho * n * n * Math.pow(d, 4);
            double measuredW = row.number("CP") * rho * n * n * n * Math.pow(d, 5);
            // By hand: momentum theory of the disc, from the power or from the thrust.
            double handN = Math.cbrt(2 * rho * DISC_M2 * measuredW * measuredW);
            double handW = Math.pow(measuredN, 1.5) / Math.sqrt(2 * rho * DISC_M2);
            newtons.add(
                    bench.read(
                            name(rpm, "rpm"),
                            fullPack,
                            s -> s.fanSpeedRadps(fan),
                            rpm * RPM,
                            s -> s.fanThrustN(fan),
                            measuredN,
                            handN));
            watts.add(
                    bench.read(
                            name(rpm, "rpm"),
                            fullPack,
                            s -> s.fanSpeedRadps(fan),
                            rpm * RPM,
                            s -> s.fanShaftW(fan),
                            measuredW,
                            handW));
        }
        thrust = new Comparison("rotor: thrust at speed, N", newtons);
        shaftPower = new Comparison("rotor: shaft power at speed, W", watts);
    }

    private static void drive(Plant plant) {
        Bench bench = new Bench(plant, "push");
        int fan = bench.fan("pusher.1");
        // By hand: the strongest level as the rating, power with speed cubed, 16.8 V throughout.
        List<Row> rated = Points.read("drive.csv", "drive", "coefficient");
        Coefficients.Level rating =
                Coefficients.levels(rated).stream()
                        .max(Comparator.comparingDouble(level -> level.mean("bus_A")))
                        .orElseThrow();
        double ratedW = rating.mean("bus_V") * rating.mean("bus_A");
        double ratedRpm = rating.mean("speed_rpm");
        double fullV = 16.8;
        List<Point> amperes = new ArrayList<>();
        List<Point> speeds = new ArrayList<>();
        for (Row row : Points.read("drive.csv", "drive", "held out")) {
            double rpm = row.number("speed_rpm");
            double measuredA = row.number("bus_A");
            String name = name(rpm, "rpm, wind " + row.word("wind_mps") + " m/s");
            amperes.add(
                    bench.read(
                            name,
                            _ -> {},
                            s -> s.fanSpeedRadps(fan),
                            rpm * RPM,
                            s -> s.fanBusA(fan),
                            measuredA,
                            ratedW * Math.pow(rpm / ratedRpm, 3) / fullV));
            speeds.add(
                    bench.read(
                            name,
                            _ -> {},
                            s -> s.fanBusA(fan),
                            measuredA,
                            s -> s.fanSpeedRadps(fan) / RPM,
                            rpm,
                            ratedRpm * Math.cbrt(measuredA * fullV / ratedW)));
        }
        current = new Comparison("drive: bus current at speed, A", amperes);
        speed = new Comparison("drive: speed at bus current, rpm", speeds);
    }

    private static void supply(Plant plant) {
        Bench bench = new Bench(plant, "push");
        int fan = bench.fan("pusher.1");
        double fullV = 16.8;
        List<Point> volts = new ArrayList<>();
        for (Row row : Points.read("drive.csv", "supply", "held out")) {
            volts.add(
                    bench.read(
                            name(row.number("bus_A"), "A"),
                            _ -> {},
                            s -> s.fanBusA(fan),
                            row.number("bus_A"),
                            s -> s.fanTerminalV(fan),
                            row.number("bus_V"),
                            fullV));
        }
        supplySag = new Comparison("supply: voltage at current, V", volts);
    }

    private static void cell(Plant plant, CellType cell) {
        Bench bench = new Bench(plant, "lift");
        int pack = bench.pack("p.1");
        List<Point> volts = new ArrayList<>();
        double capacityAh = cell.capacity().orElseThrow().si() / 3600;
        for (Loaded row :
                Coefficients.discharges("held out", cell.openCircuit().orElseThrow(), capacityAh)) {
            volts.add(
                    bench.read(
                            row.run() + ", " + name(100 * row.charge(), "%"),
                            bench.with("demands/judged at charge", 1)
                                    .andThen(bench.with("packs/p/charge", row.charge()))
                                    .andThen(bench.with("packs/p/temperature", row.kelvin())),
                            s -> s.packA(pack),
                            row.currentA(),
                            s -> s.cellUnderLoadV(pack),
                            row.voltageV(),
                            // By hand: no sag, the rest voltage at that charge.
                            row.restV(cell.openCircuit().orElseThrow())));
        }
        cellSag = new Comparison("cell: voltage at current, V", volts);
    }

    private static String name(double value, String unit) {
        return String.format(Locale.ROOT, "%.0f %s", value, unit);
    }

    private static Stream<Comparison> all() {
        return Stream.of(thrust, shaftPower, current, speed, supplySag, cellSag);
    }

    @Test
    void nearlyAllHeldOutRowsLieInTheirBands() {
        Comparison pooled = Comparison.pooled(all());
        assertThat(pooled.points()).hasSizeGreaterThan(100);
        assertThat(pooled.share()).as("%s", reports(_ -> true)).isBetween(0.90, 0.98);
    }

    @Test
    void noChannelContradictsItsBand() {
        // A count that a true share of 95 % would hardly ever give speaks against the band. Rows
        // of one level or one run hang together, so this is kinder than it looks.
        assertThat(reports(each -> each.shareInterval().upper() < 0.95)).isEmpty();
        assertThat(reports(each -> each.share() < 0.85)).isEmpty();
    }

    @Test
    void everyChannelIsNearerThanByHand() {
        assertThat(reports(each -> each.rms() >= 0.6 * each.rmsByHand())).isEmpty();
    }

    /** Reports of the channels that something is wrong with. */
    private static List<String> reports(Predicate<Comparison> wrong) {
        List<Comparison> channels = all().toList();
        assertThat(channels).hasSize(6).noneMatch(each -> each.points().isEmpty());
        return channels.stream().filter(wrong).map(Comparison::report).toList();
    }

    @Test
    void errorsAreSmall() {
        assertThat(relative(thrust)).as(thrust.report()).isLessThan(0.02);
        assertThat(relative(shaftPower)).as(shaftPower.report()).isLessThan(0.015);
        assertThat(relative(current)).as(current.report()).isLessThan(0.08);
        assertThat(relative(speed)).as(speed.report()).isLessThan(0.025);
        assertThat(relative(supplySag)).as(supplySag.report()).isLessThan(0.006);
        assertThat(relative(cellSag)).as(cellSag.report()).isLessThan(0.015);
    }

    /** The page's table is written by hand; its counts and errors are these. */
    @Test
    void thePageSaysWhatCameOut() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "validation.md"));
        for (Comparison each : all().toList()) {
            String channel = each.channel().substring(0, each.channel().indexOf(','));
            String[] cells =
                    page.lines()
                            .filter(line -> line.startsWith("| " + channel))
                            .findFirst()
                            .orElseThrow()
                            .split("\\|", -1);
            assertThat(cells[2].strip())
                    .as(channel)
                    .isEqualTo(Integer.toString(each.points().size()));
            assertThat(cells[3].strip()).as(channel).isEqualTo(Integer.toString(each.inside()));
            assertThat(cells[4].strip()).startsWith(asWritten(each.rms(), cells[4]) + " ");
            assertThat(cells[5].strip()).startsWith(asWritten(each.rmsByHand(), cells[5]) + " ");
        }
        Comparison pooled = Comparison.pooled(all());
        assertThat(page)
                .contains(
                        String.format(
                                Locale.ROOT,
                                "| **all** | **%d** | **%d (%.0f %%)** |",
                                pooled.points().size(),
                                pooled.inside(),
                                100 * pooled.share()));
    }

    /** A number with as many decimals as stand in the cell. */
    private static String asWritten(double value, String cell) {
        String number = cell.strip().split(" ", 2)[0];
        int decimals = number.contains(".") ? number.length() - number.indexOf('.') - 1 : 0;
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    private static double relative(Comparison comparison) {
        return comparison.rms()
                / comparison.points().stream().mapToDouble(Point::measured).average().orElseThrow();
    }

    /**
     * Network, fan and cell against closed forms of the same laws, with figures read off the file.
     */
    @Test
    void thePlantAgreesWithClosedForms() {
        agree(
                thrust,
                Points.read("rotor.csv", "use", "held out").stream()
                        .map(row -> 3.012 * Math.pow(row.number("speed_rpm") / 4000, 2)));
        agree(
                shaftPower,
                Points.read("rotor.csv", "use", "held out").stream()
                        .map(row -> 25.79 * Math.pow(row.number("speed_rpm") / 4000, 3)));
        agree(
                current,
                Points.read("drive.csv", "drive", "held out").stream()
                        .map(row -> driveA(row.number("speed_rpm"))));
        agree(
                supplySag,
                Points.read("drive.csv", "supply", "held out").stream()
                        .map(row -> 4 * (4.206 - 23.55e-3 * row.number("bus_A"))));
        CellType cell = MeasuredRig.read().packs().getFirst().cell();
        agree(
                cellSag,
                Coefficients.discharges("held out", cell.openCircuit().orElseThrow(), 4.84).stream()
                        .map(
                                row ->
                                        row.restV(cell.openCircuit().orElseThrow())
                                                - row.currentA()
                                                        * (31.1e-3 + 19.3e-3)
                                                        * Math.exp(
                                                                918
                                                                        * (1 / row.kelvin()
                                                                                - 1 / 298.15))));
    }

    /** Bus power of the drive at a speed, drawn from 16.824 V behind 94.2 mΩ. */
    private static double driveA(double rpm) {
        double shaftW = 222.9 * Math.pow(rpm / 11000, 3);
        double emf = rpm / 1100;
        double windingA = 1 + shaftW / emf;
        double busW = 60e-3 * windingA * windingA + emf * windingA;
        double rest = 4 * 4.206;
        return 2 * busW / (rest + Math.sqrt(rest * rest - 4 * 4 * 23.55e-3 * busW));
    }

    private static void agree(Comparison comparison, Stream<Double> closedForm) {
        List<Double> expected = closedForm.toList();
        assertThat(expected).hasSameSizeAs(comparison.points());
        for (int k = 0; k < expected.size(); k++) {
            assertThat(comparison.points().get(k).computed())
                    .as(comparison.channel() + ", " + comparison.points().get(k).name())
                    // The air of the site is 0.7 millionths short of the 1.225 kg/m³ used here.
                    .isCloseTo(expected.get(k), withinPercentage(1e-4));
        }
    }
}
