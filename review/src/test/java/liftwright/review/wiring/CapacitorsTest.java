package liftwright.review.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.plant.LeadLoop;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** What fills the controllers' capacitors. */
class CapacitorsTest {

    private static final String WIRING = "wiring:";

    private static List<Finding> findings(String example, String... replacements) {
        return Capacitors.findings(Plant.assemble(Sketch.example(example, replacements)));
    }

    private static Finding only(List<Finding> findings) {
        assertThat(findings).hasSize(1);
        return findings.getFirst();
    }

    /** Behind a contactor it warns; a plug in the hand of the crew is noted. */
    @Test
    void withoutAPreChargeTheInrushIsTold() {
        assertThat(only(findings("mudlark")).severity()).isEqualTo(Severity.WARNS);
        Finding plug = only(findings("sandpiper"));
        assertThat(plug.code()).isEqualTo("inrush");
        assertThat(plug.severity()).isEqualTo(Severity.NOTES);
        Rig rig = Sketch.example("sandpiper");
        Plant plant = Plant.assemble(rig);
        LeadLoop loop = plant.pluggedIn(plant.parameters().nominal()).getFirst();
        assertThat(Sketch.si(plug)).isLessThan(loop.sourceV() / loop.resistanceOhm());
        assertThat(Sketch.si(plug))
                .isCloseTo(ringing(loop, 0.6e-6 * loop.lengthM()), within(0.01 * Sketch.si(plug)));
    }

    /** The circuit run in time with small steps. */
    private static double ringing(LeadLoop loop, double henry) {
        double ampere = 0;
        double volt = 0;
        double most = 0;
        double step = Math.sqrt(henry * loop.capacitanceF()) / 2e4;
        for (int k = 0; k < 100_000; k++) {
            ampere += step * (loop.sourceV() - volt - ampere * loop.resistanceOhm()) / henry;
            volt += step * ampere / loop.capacitanceF();
            most = Math.max(most, ampere);
        }
        return most;
    }

    /** 24 cells of 4.2 V onto 2 mF through 50 Ω: 203 W, 10 J, 0.30 s. */
    @Test
    void aResistorBearsWhatTheCapacitorsStore() {
        Finding finding =
                only(findings("sandpiper", WIRING, "wiring:\n  pre-charge: {resistance: 50 Ω}"));
        assertThat(finding.code()).isEqualTo("pre-charge");
        Rig rig = Sketch.example("sandpiper");
        double fullV = 4.2 * rig.packs().getFirst().series();
        assertThat(Sketch.si(finding)).isCloseTo(fullV * fullV / 50, within(0.5));
    }

    @Test
    void aShortPreChargeWarns() {
        List<Finding> findings =
                findings(
                        "sandpiper",
                        WIRING,
                        "wiring:\n  pre-charge: {resistance: 50 Ω, for: 200 ms}");
        assertThat(findings)
                .filteredOn(one -> one.code().equals("pre-charge-short"))
                .singleElement()
                .satisfies(
                        one -> {
                            assertThat(one.severity()).isEqualTo(Severity.WARNS);
                            assertThat(Sketch.si(one))
                                    .isCloseTo(Math.exp(-0.2 / (50 * 2e-3)), within(1e-12));
                        });
        assertThat(
                        findings(
                                "sandpiper",
                                WIRING,
                                "wiring:\n  pre-charge: {resistance: 50 Ω, for: 400 ms}"))
                .noneMatch(one -> one.code().equals("pre-charge-short"));
    }

    @Test
    void whatDeclaresNoCapacitanceIsSilent() {
        assertThat(findings("sandpiper", "capacitance: 2 mF, ", "")).isEmpty();
    }
}
