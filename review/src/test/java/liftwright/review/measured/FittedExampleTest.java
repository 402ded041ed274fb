package liftwright.review.measured;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.identify.BenchPoint;
import liftwright.plant.identify.CellFit;
import liftwright.plant.identify.CellUnknown;
import liftwright.plant.identify.FanFit;
import liftwright.plant.identify.FanFits;
import liftwright.plant.identify.FanUnknown.Channel;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;

/**
 * {@code examples/fitted}: its own fits against the measured rows that are in none of its tables.
 */
class FittedExampleTest {

    private static final Path FOLDER = Path.of("..", "examples", "fitted");

    private static Rig read() throws Exception {
        RigReading read =
                RigReading.read(
                        "rig.yaml",
                        Files.readAllBytes(FOLDER.resolve("rig.yaml")),
                        new Folder(FOLDER));
        assertThat(read.problems()).noneMatch(problem -> problem.code().isError());
        return read.rig().orElseThrow();
    }

    /** Thrust and torque at the four speeds between, within 3 and 5 % (the aim). */
    @Test
    void theRotorAtTheSpeedsBetween() throws Exception {
        FanType type = read().fanTypes().getFirst();
        var measured = (FanType.Performance.Measured) type.performance();
        FanFit fit = FanFits.of(measured.table(), type);
        int held = 0;
        int rows = 0;
        for (Points.Row row : Points.read("rotor.csv")) {
            double rpm = row.number("speed_rpm");
            if (measured.table().rows().stream()
                    .anyMatch(
                            one ->
                                    Math.abs(one.speedRadps().orElseThrow() - rpm * Math.PI / 30)
                                            < 0.1)) {
                continue;
            }
            double turns = rpm / 60;
            double thrust = row.number("CT") * 1.225 * turns * turns * Math.pow(0.2286, 4);
            double torque =
                    row.number("CP") * 1.225 * turns * turns * Math.pow(0.2286, 5) / (2 * Math.PI);
            BenchPoint at =
                    new BenchPoint(
                            1,
                            0,
                            OptionalDouble.empty(),
                            OptionalDouble.empty(),
                            OptionalDouble.of(rpm * Math.PI / 30),
                            OptionalDouble.empty(),
                            OptionalDouble.of(torque),
                            1,
                            0,
                            Optional.empty());
            FanFit.Prediction pull = fit.predict(at, Channel.THRUST);
            FanFit.Prediction twist = fit.predict(at, Channel.TORQUE);
            assertThat(pull.value() / thrust)
                    .as("thrust at %s rpm", rpm)
                    .isCloseTo(1, within(0.03));
            assertThat(twist.value() / torque)
                    .as("torque at %s rpm", rpm)
                    .isCloseTo(1, within(0.05));
            held += Math.abs(pull.value() - thrust) <= pull.halfWidth() ? 1 : 0;
            held += Math.abs(twist.value() - torque) <= twist.halfWidth() ? 1 : 0;
            rows++;
        }
        assertThat(rows).isEqualTo(4);
        assertThat(held).as("of 8 in the 95 % bands").isGreaterThanOrEqualTo(7);
    }

    /**
     * The cell at the measured temperatures: the published first-second and settled resistances of
     * this data set (29.5 mΩ in a pulse; 41 to 54 mΩ in a discharge), and the runs held out.
     */
    @Test
    void theCellInTheRunsHeldOut() throws Exception {
        CellFit fit = CellFit.of(read().packs().getFirst().cell()).orElseThrow();
        double atOnce = fit.value(CellUnknown.RESISTANCE).orElseThrow().value();
        double settled =
                atOnce
                        + fit.value(CellUnknown.FAST_RESISTANCE).orElseThrow().value()
                        + fit.value(CellUnknown.SLOW_RESISTANCE).orElseThrow().value();
        assertThat(atOnce).isCloseTo(0.0295, within(0.002));
        assertThat(settled).isBetween(0.041, 0.065);
        assertThat(fit.judged()).filteredOn(CellFit.Judged::heldOut).hasSize(4);
        for (CellFit.Judged run : fit.judged()) {
            if (run.heldOut()) {
                assertThat(run.rmsV()).as(run.file()).isLessThan(0.12);
            } else {
                assertThat(run.rmsV()).as(run.file()).isLessThan(0.03);
            }
        }
    }
}
