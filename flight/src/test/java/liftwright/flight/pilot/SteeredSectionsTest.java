package liftwright.flight.pilot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.flight.Examples;
import liftwright.flight.pilot.HoverMotion.Axis;
import liftwright.plant.Plant;
import org.junit.jupiter.api.Test;

/** What is said: the worst axis decides, and every value has a field. */
class SteeredSectionsTest {

    @Test
    void saysWhoCanHoldMudlark() {
        Plant plant = Plant.assemble(Examples.rig("mudlark"));
        Steered steered = Steered.of(plant, plant.parameters().nominal()).orElseThrow();
        var said = new SteeredSections(steered);
        assertThat(said.findings()).extracting(Finding::code).contains("pilot-grows");
        Section.Table axes = (Section.Table) said.sections().getLast();
        assertThat(axes.rows()).hasSize(3);
        Section.Table motions = (Section.Table) said.sections().getFirst();
        assertThat(motions.rows()).hasSameSizeAs(steered.modes());
        for (Section.Table table : List.of(motions, axes)) {
            assertThat(table.rows())
                    .allSatisfy(row -> assertThat(row).hasSameSizeAs(table.columns()));
        }
    }

    @Test
    void theWorstAxisDecides() {
        Mode fast = new Mode(3, 0);
        Means legs = new Means("legs", -60, 5, 0.3, 20);
        Means arms = new Means("arms", 200, 0.5, 0.3, 20);
        Steered steered =
                new Steered(
                        List.of(fast),
                        Level.of(List.of(fast)),
                        List.of(
                                Steered.about(Axis.ROLL, List.of(fast), List.of(legs)),
                                Steered.about(Axis.PITCH, List.of(), List.of(legs, arms))));
        assertThat(steered.holds()).isEqualTo(Person.Holds.NOT);
    }
}
