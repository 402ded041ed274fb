package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import liftwright.plant.RigSketch;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.supply.CellDraw;
import liftwright.plant.supply.Cells;
import liftwright.plant.supply.PackBank;
import liftwright.rig.CellType;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import org.junit.jupiter.api.Test;

/**
 * Pulses of 7.5 A and 10 s on two cells of one kind, measured by others (plant,
 * cells/e50/SOURCE.md): figures from four pulses of one, told the others of both. The split was
 * fixed before the first run.
 */
class MeasuredPulsesTest {

    private static final Path FILES =
            Path.of("..", "plant", "src", "test", "resources", "cells", "e50");
    private static final double AMP = 7.5;
    private static final double CAPACITY_AS = 5 * 3600;

    /**
     * What a pulse showed: drops below rest, V, at its begin, after 5 s, at its end, 10 s later.
     */
    private record Shown(int cell, int percent, double on, double half, double end, double ten) {

        double fall() {
            return end - on;
        }
    }

    private static List<Shown> shown() throws IOException {
        List<double[]> rows = new ArrayList<>();
        for (String line : Files.readAllLines(FILES.resolve("pulses-25C.csv"))) {
            if (Character.isDigit(line.charAt(0))) {
                rows.add(Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray());
            }
        }
        List<Shown> shown = new ArrayList<>();
        for (int cell = 1; cell <= 2; cell++) {
            for (int percent = 20; percent <= 90; percent += 10) {
                shown.add(shown(rows, cell, percent));
            }
        }
        return shown;
    }

    private static Shown shown(List<double[]> rows, int cell, int percent) {
        List<double[]> own =
                rows.stream().filter(row -> row[0] == cell && row[1] == percent).toList();
        double rest = own.getFirst()[4];
        double[] first = own.stream().filter(row -> row[3] > 7).findFirst().orElseThrow();
        double[] last = own.stream().filter(row -> row[3] > 7).reduce((_, b) -> b).orElseThrow();
        double[] half = own.stream().filter(row -> row[2] > 5).findFirst().orElseThrow();
        return new Shown(
                cell,
                percent,
                rest - first[4],
                rest - half[4],
                rest - last[4],
                rest - own.getLast()[4]);
    }

    private static double mean(List<Shown> of, ToDoubleFunction<Shown> what) {
        return of.stream().mapToDouble(what).average().orElseThrow();
    }

    /** Twice the standard deviation over the mean. */
    private static double doubt(List<Shown> of, ToDoubleFunction<Shown> what) {
        double mean = mean(of, what);
        double squares =
                of.stream().mapToDouble(s -> Math.pow(what.applyAsDouble(s) - mean, 2)).sum();
        return 2 * Math.sqrt(squares / (of.size() - 1)) / mean;
    }

    private static CellType.Curve curve() throws IOException {
        List<Double> charge = new ArrayList<>();
        List<Double> volt = new ArrayList<>();
        for (String line : Files.readAllLines(FILES.resolve("open-circuit.csv"))) {
            if (Character.isDigit(line.charAt(0))) {
                charge.add(Double.parseDouble(line.substring(0, line.indexOf(','))) / 100);
                volt.add(Double.parseDouble(line.substring(line.indexOf(',') + 1)));
            }
        }
        return new CellType.Curve(charge, volt);
    }

    private static Pulse pulse(
            CellType.Curve curve, double charge, double ohm, double slowOhm, double slowS) {
        CellType cell =
                new CellType(
                        "E50",
                        "Li-ion",
                        Optional.of(RigSketch.si(CAPACITY_AS)),
                        Optional.of(RigSketch.si(ohm)),
                        List.of(new CellType.Settling(RigSketch.si(slowOhm), RigSketch.si(slowS))),
                        Optional.empty(),
                        CellType.Ageing.NONE,
                        RigSketch.si(0),
                        RigSketch.si(0.068),
                        Optional.of(curve),
                        RigSketch.si(0),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
        Pack pack =
                new Pack(
                        PartId.of("p", 1),
                        RigPath.of("packs", "p"),
                        cell,
                        1,
                        1,
                        RigSketch.si(0),
                        Optional.empty(),
                        RigSketch.si(0),
                        RigSketch.FRAME,
                        Vec3.ZERO,
                        RigSketch.si(charge),
                        Optional.empty(),
                        Optional.empty());
        RigSketch sketch = new RigSketch();
        sketch.packs.add(pack);
        Doubts doubts = new Doubts("cells");
        PackBank bank = PackBank.declare(sketch.rig(), doubts.rows());
        Cells cells = bank.newCells();
        ParameterTable table = doubts.rows().table();
        bank.load(table.nominal(), table, new CellDraw.Expected(), 298.15, cells);
        return Pulse.of(cells, 0, pack, AMP);
    }

    /** How far rest voltage falls over the pulse by the charge it takes, V. */
    private static double byCharge(CellType.Curve curve, int percent) {
        double from = percent / 100.0;
        return PulseTest.between(curve.charge(), curve.volt(), from)
                - PulseTest.between(curve.charge(), curve.volt(), from - AMP * 10 / CAPACITY_AS);
    }

    @Test
    void pulsesThatWereNotUsedLieInTheBandsOfTheCard() throws IOException {
        CellType.Curve curve = curve();
        List<Shown> used = new ArrayList<>();
        List<Shown> told = new ArrayList<>();
        for (Shown one : shown()) {
            (one.cell == 1 && one.percent % 20 == 10 ? used : told).add(one);
        }
        assertThat(used).hasSize(4);
        assertThat(told).hasSize(12);
        double ohm = mean(used, one -> one.on / AMP);
        double slow = mean(used, one -> one.fall() - byCharge(curve, one.percent));
        double half = mean(used, one -> one.half - one.on - byCharge(curve, one.percent) / 2);
        double tau = -5 / Math.log(slow / half - 1);
        double slowOhm = slow / AMP / -Math.expm1(-10 / tau);
        double onDoubt = Math.hypot(doubt(used, one -> one.on), 0.15);
        double fallDoubt = Math.hypot(doubt(used, Shown::fall), 0.25);
        int in = 0;
        int count = 0;
        double[] squares = new double[3];
        for (Shown one : told) {
            Pulse pulse = pulse(curve, one.percent / 100.0, ohm, slowOhm, tau);
            double rest = pulse.packV(0, false);
            double on = rest - pulse.packV(0.16, true);
            double end = rest - pulse.packV(10, true);
            double ten = rest - pulse.packAfterV(10, 10);
            in += Math.abs(one.on - on) <= onDoubt * on ? 1 : 0;
            in += Math.abs(one.fall() - (end - on)) <= fallDoubt * (end - on) ? 1 : 0;
            in += Math.abs(one.end - end) <= onDoubt * end ? 1 : 0;
            count += 3;
            squares[0] += Math.pow(one.on / on - 1, 2);
            squares[1] += Math.pow(one.fall() / (end - on) - 1, 2);
            squares[2] += Math.pow(1000 * (one.ten - ten), 2);
        }
        double[] rms = Arrays.stream(squares).map(sum -> Math.sqrt(sum / 12)).toArray();
        // docs/validation.md, "Readings of cards".
        assertThat(count).isEqualTo(36);
        assertThat(in).isEqualTo(36);
        assertThat(rms[0]).isCloseTo(0.086, within(0.0005)); // step
        assertThat(rms[1]).isCloseTo(0.089, within(0.0005)); // fall under current
        assertThat(rms[2]).isCloseTo(10.8, within(0.05)); // mV, ten seconds after
    }
}
