package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.LeadLoop;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** When the peaks at the controllers' inputs are told, and how loudly. */
class FastFindingsTest {

    private static final String SANDPIPER = "sandpiper";

    private static final String NO_RUN =
            ", {run: 4 AWG, length: 700 mm ± 5 %, insulation: XLPE, class: 125 °C, wall: 1.1 mm ±"
                    + " 0.2 mm}";

    private static List<Finding> findings(String example, String... replacements) {
        return FastFindings.of(Plant.assemble(ExampleRigs.edited(example, replacements)));
    }

    private static Finding only(List<Finding> findings) {
        assertThat(findings).hasSize(1);
        return findings.getFirst();
    }

    @Test
    void pluggingInWarnsHoweverHighThePeak() {
        Finding finding = only(findings(SANDPIPER));
        assertThat(finding.code()).isEqualTo("plug-in-peak");
        assertThat(finding.severity()).isEqualTo(Severity.WARNS);
        assertThat(findings(SANDPIPER, "top voltage: 120 V", "top voltage: 102 V"))
                .filteredOn(one -> one.code().equals("plug-in-peak"))
                .singleElement()
                .satisfies(one -> assertThat(one.severity()).isEqualTo(Severity.WARNS))
                .satisfies(one -> assertThat(si(one)).isGreaterThan(102));
    }

    @Test
    void aPreChargeKeepsThePeakNearThePack() {
        Finding full =
                only(findings(SANDPIPER, "wiring:", "wiring:\n  pre-charge: {resistance: 50 Ω}"));
        assertThat(full.code()).isEqualTo("fast-effects");
        assertThat(si(full)).isCloseTo(100.8, within(1.5)); // the cut is left, from a sagged pack
        assertThat(
                        only(findings(
                                        SANDPIPER,
                                        "wiring:",
                                        "wiring:\n  pre-charge: {resistance: 50 Ω, for: 10 ms}"))
                                .code())
                .as("a tenth of a time constant fills next to nothing")
                .isEqualTo("plug-in-peak");
    }

    @Test
    void aCutBeyondARatingStops() {
        List<Finding> findings =
                findings(
                        SANDPIPER,
                        "length: 700 mm",
                        "length: 20 m",
                        "capacitance: 2 mF",
                        "capacitance: 100 µF");
        assertThat(findings)
                .anySatisfy(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("cut-peak");
                            assertThat(finding.severity()).isEqualTo(Severity.STOPS);
                        });
    }

    @Test
    void whatIsNotDeclaredIsSaidAndWhatHasNoRatingIsSilent() {
        Finding untold = only(findings(SANDPIPER, "capacitance: 2 mF, ", ""));
        assertThat(untold.code()).isEqualTo("peaks-cannot-be-told");
        assertThat(untold.sentence().toString()).contains("capacitance");
        Finding noRun = only(findings(SANDPIPER, NO_RUN, ""));
        assertThat(noRun.code()).isEqualTo("peaks-cannot-be-told");
        assertThat(noRun.sentence().toString()).contains("run");
        assertThat(
                        findings(
                                SANDPIPER,
                                "capacitance: 2 mF, ",
                                "",
                                "top voltage: 120 V, ",
                                "",
                                "capacitor voltage: 125 V, ",
                                ""))
                .isEmpty();
    }

    /**
     * Random leads, capacitors and ratings: told as too high where the circuit, run in time with
     * small steps, passes the limit, and never as a stop at plug-in.
     */
    @Test
    void onRandomFeedsAPeakIsTooHighWhereARunInTimeSaysSo() {
        int[] told = {0};
        Seeded.check(
                60,
                random -> {
                    Rig rig =
                            ExampleRigs.edited(
                                    SANDPIPER,
                                    "length: 700 mm",
                                    "length: " + random.nextInt(50, 3000) + " mm",
                                    "capacitance: 2 mF",
                                    "capacitance: " + random.nextInt(200, 6000) + " µF",
                                    "top voltage: 120 V",
                                    "top voltage: " + random.nextInt(120, 220) + " V",
                                    "capacitor voltage: 125 V",
                                    "capacitor voltage: " + random.nextInt(120, 220) + " V");
                    Plant plant = Plant.assemble(rig);
                    double highest = 0;
                    for (LeadLoop loop : plant.pluggedIn(plant.parameters().nominal())) {
                        highest = Math.max(highest, run(loop));
                    }
                    FanType.Controller own = rig.fanTypes().getFirst().controller();
                    double limit =
                            0.85
                                    * Math.min(
                                            own.topVoltage().orElseThrow().si(),
                                            own.capacitorVoltage().orElseThrow().si());
                    List<Finding> plugIn =
                            FastFindings.of(plant).stream()
                                    .filter(one -> one.code().equals("plug-in-peak"))
                                    .toList();
                    if (Math.abs(highest - limit) > 0.001 * limit) {
                        assertThat(plugIn).hasSize(highest > limit ? 1 : 0);
                    }
                    for (Finding finding : plugIn) {
                        assertThat(finding.severity()).isEqualTo(Severity.WARNS);
                        assertThat(si(finding)).isCloseTo(highest, withPercentage(0.05));
                        told[0]++;
                    }
                });
        if (System.getProperty("seed") == null) {
            assertThat(told[0]).as("peaks told").isBetween(5, 595);
        }
    }

    /** Highest voltage of empty capacitors on a source, 1 µH a metre; leapfrog. */
    private static double run(LeadLoop loop) {
        double henry = 1e-6 * loop.lengthM();
        double period = 2 * Math.PI * Math.sqrt(henry * loop.capacitanceF());
        double step = Math.min(period, henry / loop.resistanceOhm()) / 2000;
        double ampere = 0;
        double volt = 0;
        double peak = loop.sourceV();
        for (double t = 0; t < 2 * period; t += step) {
            ampere += (loop.sourceV() - volt - loop.resistanceOhm() * ampere) / henry * step;
            volt += ampere / loop.capacitanceF() * step;
            peak = Math.max(peak, volt);
        }
        return peak;
    }

    /** What the sentence offers does what it says. */
    @Test
    void theLeadLengthAndTheCapacitanceOfferedHoldTheLimit() {
        double length = last(Measure.LENGTH);
        double farad = last(Measure.CAPACITANCE);
        assertThat(farad).isGreaterThan(2e-3);
        assertThat(length).isBetween(0.1, 0.69);
        double[] pair = {farad * 1.001, farad * 0.999};
        double[] peak = new double[2];
        for (int k = 0; k < 2; k++) {
            Rig rig =
                    ExampleRigs.edited(
                            SANDPIPER,
                            "capacitance: 2 mF",
                            "capacitance: " + pair[k] * 1e6 + " µF",
                            "top voltage: 120 V",
                            "top voltage: 119 V"); // so that both are told
            peak[k] = si(FastFindings.of(Plant.assemble(rig)).getFirst());
        }
        assertThat(peak[0]).isLessThan(0.85 * 120);
        assertThat(peak[1]).isGreaterThan(0.85 * 120).isLessThan(102.1);
    }

    private static double last(Measure measure) {
        return only(findings(SANDPIPER)).sentence().parts().stream()
                .filter(Sentence.Part.Amount.class::isInstance)
                .map(Sentence.Part.Amount.class::cast)
                .filter(amount -> amount.measure() == measure)
                .reduce((_, later) -> later)
                .orElseThrow()
                .si();
    }

    private static double si(Finding finding) {
        return ((Value.Figure.Amount) finding.value().orElseThrow().figure()).si();
    }
}
