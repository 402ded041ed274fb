package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** What is told of rotors after a stop, and of ripple, and what is left untold. */
class SpoolFindingsTest {

    private static final String INERTIA = ", inertia: 110 kg·mm² ± 15 %";

    private static List<Finding> spool(String... replacements) {
        return SpoolFindings.of(Plant.assemble(ExampleRigs.edited("mudlark", replacements)));
    }

    private static Finding only(List<Finding> findings) {
        assertThat(findings).hasSize(1);
        return findings.getFirst();
    }

    private static double si(Finding finding) {
        return ((Value.Figure.Amount) finding.value().orElseThrow().figure()).si();
    }

    /** By hand: κ = 4.6 kW / (26000 rpm)³ at the 1.236 kg/m³ of the site; J/(κ Ω) (√10 − 1). */
    @Test
    void coastingTakesTheTimeOfDragAlone() {
        Finding finding = only(spool());
        assertThat(finding.code()).isEqualTo("coasting");
        assertThat(finding.severity()).isEqualTo(Severity.NOTES);
        double speed =
                finding.sentence().parts().stream()
                        .filter(Sentence.Part.Amount.class::isInstance)
                        .map(Sentence.Part.Amount.class::cast)
                        .filter(amount -> amount.measure() == Measure.ROTATION)
                        .findFirst()
                        .orElseThrow()
                        .si();
        double kappa = 4600 / Math.pow(26_000 * Math.PI / 30, 3) * 1.236 / 1.225;
        double expected = 110e-6 / kappa / speed * (Math.sqrt(10) - 1);
        assertThat(si(finding)).isCloseTo(expected, withPercentage(0.5));
    }

    @Test
    void aHeavyRotorIsLate() {
        Finding finding = only(spool("inertia: 110 kg·mm²", "inertia: 300 kg·mm²"));
        assertThat(finding.severity()).isEqualTo(Severity.WARNS);
        assertThat(si(finding)).isGreaterThan(0.5);
    }

    @Test
    void brakingIntoAnOpenContactorStops() {
        List<Finding> findings = spool("braking: coast", "braking: freewheel");
        assertThat(findings).extracting(Finding::code).containsExactly("coasting", "brake-rise");
        assertThat(findings.getLast().severity()).isEqualTo(Severity.STOPS);
        assertThat(si(findings.getLast())).isBetween(0.001, 0.02);
    }

    @Test
    void whatIsNotDeclaredIsSaidOrSilent() {
        assertThat(spool(INERTIA, "")).isEmpty();
        Finding untold = only(spool(INERTIA, "", "braking: coast", "braking: freewheel"));
        assertThat(untold.code()).isEqualTo("brake-rise-cannot-be-told");
        assertThat(untold.sentence().toString()).contains("inertia");
    }

    @Test
    void rippleIsWorstBelowFullThrottleAndMoreCapacitanceLowersIt() {
        double as = si(ripple(ExampleRigs.edited("mudlark")).orElseThrow());
        double less =
                si(
                        ripple(
                                        ExampleRigs.edited(
                                                "mudlark",
                                                "capacitance: 940 µF",
                                                "capacitance: 470 µF"))
                                .orElseThrow());
        assertThat(less).isCloseTo(2 * as, within(1e-9));
        Finding high =
                ripple(
                                ExampleRigs.edited(
                                        "mudlark",
                                        "switching frequency: 24 kHz",
                                        "switching frequency: 2 kHz"))
                        .orElseThrow();
        assertThat(high.severity()).isEqualTo(Severity.WARNS);
        assertThat(ripple(ExampleRigs.edited("mudlark", "      switching frequency: 24 kHz\n", "")))
                .isEmpty();
    }

    @Test
    void theCapacitorsResistanceAddsToIt() {
        Finding plain = ripple(ExampleRigs.edited("mudlark")).orElseThrow();
        Finding more =
                ripple(
                                ExampleRigs.edited(
                                        "mudlark",
                                        "capacitance: 940 µF",
                                        "capacitance: 940 µF\n      capacitor resistance: 5 mΩ"))
                        .orElseThrow();
        assertThat(si(more)).isGreaterThan(si(plain));
    }

    private static Optional<Finding> ripple(Rig rig) {
        return RippleFinding.of(Plant.assemble(rig));
    }
}
