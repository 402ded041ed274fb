package liftwright.trials.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.rig.csv.TableReader;
import liftwright.rig.csv.TableReading;
import liftwright.rig.table.KillLog;
import liftwright.testkit.Seeded;
import liftwright.trials.proof.PressTimes.Outcome;
import liftwright.trials.proof.SimulatedLog.Faults;
import liftwright.trials.proof.SimulatedLog.Truth;
import org.junit.jupiter.api.Test;

/** Times read from logs, against those of a simulator that made the logs. */
class PressTimesTest {

    static KillLog read(byte[] bytes) {
        return switch (TableReader.kills("kills.csv", bytes, List.of("remote", "wearer"))) {
            case TableReading.Whole<KillLog>(var log) -> log;
            case TableReading.Broken<KillLog>(var problems) ->
                    throw new AssertionError(problems.toString());
        };
    }

    /** Counts over all cases of a property. */
    private static final class Tally {
        int presses;
        int timed;
        int failed;
        int halfWithin;
        int tenthWithin;
        int beyondASample;
    }

    @Test
    void trueTimesLieWithinWhatIsTold() {
        Tally tally = new Tally();
        Seeded.check(
                400,
                random -> {
                    Faults faults = Faults.draw(random);
                    SimulatedLog log = new SimulatedLog(random, faults, 3, random.nextInt(3) == 0);
                    List<PressTimes> read = PressTimes.of(read(log.bytes()));
                    assertThat(read).hasSize(3);
                    for (int k = 0; k < 3; k++) {
                        tally.presses++;
                        judge(read.get(k), log.truths.get(k), faults, tally);
                    }
                });
        String told =
                tally.presses
                        + " presses, "
                        + tally.timed
                        + " timed, "
                        + tally.failed
                        + " failed, "
                        + tally.halfWithin
                        + " and "
                        + tally.tenthWithin
                        + " within, "
                        + tally.beyondASample
                        + " beyond by more than a row";
        assertThat(tally.timed).as(told).isGreaterThan(tally.presses * 8 / 10);
        assertThat(tally.halfWithin).as(told).isGreaterThanOrEqualTo(tally.timed * 95 / 100);
        assertThat(tally.tenthWithin).as(told).isGreaterThanOrEqualTo(tally.timed * 95 / 100);
        assertThat(tally.beyondASample).as(told).isLessThanOrEqualTo(tally.timed / 200);
        assertThat(tally.failed).as(told).isLessThanOrEqualTo(tally.presses / 200);
    }

    private static void judge(PressTimes press, Truth truth, Faults faults, Tally tally) {
        switch (press.outcome()) {
            case Outcome.Timed(var _, Span half, Span tenth) -> {
                tally.timed++;
                tally.halfWithin += within(half, truth.halfS(), 0) ? 1 : 0;
                tally.tenthWithin += within(tenth, truth.tenthS(), 0) ? 1 : 0;
                double row = 1.3 / faults.rateHz();
                tally.beyondASample +=
                        within(half, truth.halfS(), row) && within(tenth, truth.tenthS(), row)
                                ? 0
                                : 1;
            }
            case Outcome.Failed _ -> tally.failed++;
            case Outcome.Untold _ -> {}
        }
    }

    private static boolean within(Span span, double truth, double slack) {
        // The fine grid of the simulator is a tenth of a millisecond.
        return span.lowS() <= truth + slack + 1e-4 && truth - slack - 1e-4 <= span.highS();
    }

    /** Wide enough is easy: of a clean log the interval is not wider than the rows make it. */
    @Test
    void aCleanLogIsReadToTheRow() {
        List<Double> rows = new ArrayList<>();
        Seeded.check(
                60,
                random -> {
                    double rate = random.nextDouble(20, 500);
                    Faults faults = new Faults(rate, 0, 0, 0, 0, 0, 1, 0, 0);
                    SimulatedLog log = new SimulatedLog(random, faults, 1, false);
                    Outcome outcome = PressTimes.of(read(log.bytes())).getFirst().outcome();
                    assertThat(outcome).isInstanceOf(Outcome.Timed.class);
                    Span tenth = ((Outcome.Timed) outcome).tenth();
                    rows.add((tenth.highS() - tenth.lowS()) * rate);
                });
        assertThat(rows).hasSize(60).allSatisfy(width -> assertThat(width).isLessThan(2.2));
    }

    /** Noise of 1 % at 200 rows a second leaves a tenth known to some hundredths of a second. */
    @Test
    void noiseWidensByLittle() {
        List<Double> widths = new ArrayList<>();
        Seeded.check(
                60,
                random -> {
                    Faults faults = new Faults(200, 0.01, 0, 0.01, 0, 0, 1, 0, 0);
                    SimulatedLog log = new SimulatedLog(random, faults, 1, false);
                    if (PressTimes.of(read(log.bytes())).getFirst().outcome()
                            instanceof Outcome.Timed(var _, var _, Span tenth)) {
                        widths.add(
                                (tenth.highS() - tenth.lowS())
                                        / (0.05 + log.truths.getFirst().tenthS()));
                    }
                });
        assertThat(widths).hasSizeGreaterThan(55);
        double[] sorted = widths.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        assertThat(sorted[sorted.length / 2]).as(Arrays.toString(sorted)).isLessThan(0.35);
    }
}
