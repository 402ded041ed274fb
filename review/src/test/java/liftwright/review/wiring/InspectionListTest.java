package liftwright.review.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.Plant;
import liftwright.rig.Element;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** What is to be looked at first. */
class InspectionListTest {

    private static final double WIRE_K = 323.15;

    private static List<Double> margins(Section.Table table) {
        int column = table.columns().indexOf("inspection-margin");
        List<Double> margins = new ArrayList<>();
        for (List<Value> row : table.rows()) {
            margins.add(Sketch.si(row.get(column)));
        }
        return margins;
    }

    @Test
    void theLeastMarginComesFirst() {
        Rig rig = Sketch.example("mudlark");
        Loads loads = Loads.of(Plant.assemble(rig));
        Section.Table table = InspectionList.of(rig, loads, WIRE_K, Map.of());
        assertThat(margins(table)).isSorted().hasSizeGreaterThan(20);
        // By hand: bullet of 130 A used to 70 % of its rating.
        int chain = 0;
        double least = Double.POSITIVE_INFINITY;
        for (var own : rig.wiring().chains()) {
            for (Element element : own.elements()) {
                double rating =
                        switch (element) {
                            case Element.Run _ -> Double.NaN;
                            case Element.Joint joint -> 0.7 * joint.rating().orElseThrow().si();
                            case Element.Fuse fuse -> fuse.rating().si() / 1.25;
                            case Element.Pole pole -> pole.contactor().rating().orElseThrow().si();
                        };
                if (!(element instanceof Element.Run)) {
                    least = Math.min(least, 1 - loads.worstA()[chain] / rating);
                }
            }
            chain++;
        }
        assertThat(margins(table).getFirst()).isCloseTo(least, within(1e-12));
        int fresh = table.columns().indexOf("drop-new");
        for (List<Value> row : table.rows()) {
            double drop = Sketch.si(row.get(fresh));
            assertThat(Sketch.si(row.get(fresh + 1))).isCloseTo(1.2 * drop, within(1e-15));
            assertThat(Sketch.si(row.get(fresh + 2))).isCloseTo(1.5 * drop, within(1e-15));
        }
    }

    @Test
    void heatGoesBeforeCurrentWhereItLeavesLessAndWiresComeWhenTheyAreClose() {
        Rig rig = Sketch.example("mudlark");
        Loads loads = Loads.of(Plant.assemble(rig));
        var elements = rig.wiring().chains().getFirst().elements();
        PartId hot = elements.getFirst().id();
        PartId wire =
                elements.stream()
                        .filter(Element.Run.class::isInstance)
                        .findFirst()
                        .orElseThrow()
                        .id();
        Section.Table table =
                InspectionList.of(
                        rig,
                        loads,
                        WIRE_K,
                        Map.of(hot, new Warmth(390, 363.15), wire, new Warmth(345, 363.15)));
        assertThat(Sketch.words(table.rows().getFirst().getFirst())).isEqualTo(hot.text());
        assertThat(margins(table).getFirst())
                .isCloseTo((363.15 - 390) / (363.15 - 293.15), within(1e-12));
        assertThat(table.rows())
                .filteredOn(row -> Sketch.words(row.get(1)).equals("wire"))
                .singleElement()
                .satisfies(row -> assertThat(Sketch.words(row.getFirst())).isEqualTo(wire.text()));
    }
}
