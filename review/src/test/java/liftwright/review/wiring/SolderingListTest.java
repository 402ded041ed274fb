package liftwright.review.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import liftwright.answer.Fields;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.physics.AircraftWire;
import liftwright.plant.Plant;
import liftwright.rig.Element;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;
import org.junit.jupiter.api.Test;

/** What stands on the soldering list of the examples, reckoned anew from the rig alone. */
class SolderingListTest {

    private static final double WIRE_K = 323.15;

    private static Value cell(Section.Table table, List<Value> row, String column) {
        return row.get(table.columns().indexOf(column));
    }

    /** Both tables as one: what the file of it holds. */
    private static Section.Table joined(SolderingList list) {
        Section.Table made = list.made();
        Section.Table carried = list.carried();
        List<String> columns = new ArrayList<>(made.columns());
        columns.addAll(carried.columns());
        List<List<Value>> rows = new ArrayList<>();
        for (int row = 0; row < made.rows().size(); row++) {
            List<Value> cells = new ArrayList<>(made.rows().get(row));
            cells.addAll(carried.rows().get(row));
            assertThat(cell(made, made.rows().get(row), "part"))
                    .isEqualTo(cell(carried, carried.rows().get(row), "part"));
            rows.add(cells);
        }
        assertThat(carried.rows()).hasSameSizeAs(made.rows());
        return new Section.Table("joined", "", columns, rows);
    }

    @Test
    void everyElementStandsOnceWithWhatItCarries() {
        for (String name : List.of("mudlark", "curlew", "sandpiper")) {
            Rig rig = Sketch.example(name);
            Loads loads = Loads.of(Plant.assemble(rig));
            Section.Table whole = joined(SolderingList.of(rig, loads, WIRE_K, Map.of()));
            Map<String, List<Value>> byPart = new HashMap<>();
            for (List<Value> row : whole.rows()) {
                assertThat(row).hasSameSizeAs(whole.columns());
                assertThat(byPart.put(Sketch.words(cell(whole, row, "part")), row)).isNull();
            }
            whole.columns().forEach(column -> assertThat(Fields.find(column)).isPresent());
            int elements = 0;
            for (int chain = 0; chain < rig.wiring().chains().size(); chain++) {
                for (Element element : rig.wiring().chains().get(chain).elements()) {
                    elements++;
                    List<Value> row = byPart.get(element.id().text());
                    assertThat(byPart).containsKey(element.id().text());
                    check(whole, Objects.requireNonNull(row), element, loads, chain);
                }
            }
            assertThat(whole.rows()).hasSize(elements).isNotEmpty();
        }
    }

    private static void check(
            Section.Table whole, List<Value> row, Element element, Loads loads, int chain) {
        double ampere = loads.expectedA()[chain];
        assertThat(Sketch.si(cell(whole, row, "current-expected"))).isEqualTo(ampere);
        assertThat(Sketch.si(cell(whole, row, "current-worst"))).isEqualTo(loads.worstA()[chain]);
        double ohm =
                switch (element) {
                    case Element.Run run -> {
                        assertThat(Sketch.si(cell(whole, row, "wire-pieces")))
                                .isEqualTo(2 * run.conductors());
                        assertThat(Sketch.si(cell(whole, row, "cut-length")))
                                .isCloseTo(1.05 * run.length().si() + 0.03, within(1e-12));
                        yield 2
                                * AircraftWire.of(run.gauge()).ohmpm()
                                * run.length().si()
                                / run.conductors()
                                * (1 + 0.00393 * 30);
                    }
                    case Element.Joint joint -> joint.resistance().si();
                    case Element.Fuse fuse -> fuse.resistance().si();
                    case Element.Pole pole -> pole.contactor().resistance().si();
                };
        assertThat(Sketch.si(cell(whole, row, "voltage-drop")))
                .isCloseTo(ampere * ohm, within(1e-9 * ampere * ohm));
        assertThat(Sketch.words(cell(whole, row, "done"))).isEqualTo("[ ]");
    }

    /** Whoever works down the list never closes a chain to a pack before what hangs behind it. */
    @Test
    void packsAreJoinedLast() {
        Rig rig = Sketch.example("mudlark");
        Section.Table made =
                SolderingList.of(rig, Loads.of(Plant.assemble(rig)), WIRE_K, Map.of()).made();
        List<String> order =
                made.rows().stream().map(row -> Sketch.words(cell(made, row, "part"))).toList();
        Set<String> packs = new HashSet<>();
        rig.packs().forEach(pack -> packs.add(pack.id().text()));
        for (Wiring.Chain trunk : rig.wiring().chains()) {
            List<Element> elements = trunk.elements();
            if (!packs.contains(trunk.from())) {
                continue;
            }
            for (int k = 1; k < elements.size(); k++) {
                assertThat(order.indexOf(elements.get(k).id().text()))
                        .isLessThan(order.indexOf(elements.get(k - 1).id().text()));
            }
            for (Wiring.Chain branch : rig.wiring().chains()) {
                if (branch.from().equals(trunk.to())) {
                    branch.elements()
                            .forEach(
                                    element ->
                                            assertThat(order.indexOf(element.id().text()))
                                                    .isLessThan(
                                                            order.indexOf(
                                                                    elements.getLast()
                                                                            .id()
                                                                            .text())));
                }
            }
        }
    }

    @Test
    void lugsAreTightenedAndCrimpsArePulled() {
        Rig rig = Sketch.example("sandpiper");
        Section.Table made =
                SolderingList.of(rig, Loads.of(Plant.assemble(rig)), WIRE_K, Map.of()).made();
        List<Value> lug =
                made.rows().stream()
                        .filter(
                                row ->
                                        Sketch.words(cell(made, row, "wiring-kind"))
                                                .equals("lug M8"))
                        .findFirst()
                        .orElseThrow();
        assertThat(Sketch.si(cell(made, lug, "torque"))).isEqualTo(12);
        // UL 486A, 4 AWG: 140 lbf (from memory)
        assertThat(Sketch.si(cell(made, lug, "pull-test"))).isCloseTo(140 * 4.448222, within(1e-3));
        List<Value> wire =
                made.rows().stream()
                        .filter(row -> Sketch.words(cell(made, row, "wiring-kind")).equals("wire"))
                        .findFirst()
                        .orElseThrow();
        assertThat(Sketch.words(cell(made, wire, "torque"))).isEqualTo("–");
        assertThat(Sketch.words(cell(made, wire, "wire-gauge"))).isEqualTo("4 AWG");
    }

    @Test
    void temperaturesComeWithARunThatWarmedIt() {
        Rig rig = Sketch.example("sandpiper");
        Loads loads = Loads.of(Plant.assemble(rig));
        assertThat(joined(SolderingList.of(rig, loads, WIRE_K, Map.of())).columns())
                .doesNotContain("part-hottest", "part-temperature-limit");
        PartId part = rig.wiring().chains().getFirst().elements().getFirst().id();
        Section.Table warm =
                SolderingList.of(rig, loads, WIRE_K, Map.of(part, new Warmth(340, 363.15)))
                        .carried();
        List<Value> row =
                warm.rows().stream()
                        .filter(one -> Sketch.words(cell(warm, one, "part")).equals(part.text()))
                        .findFirst()
                        .orElseThrow();
        assertThat(Sketch.si(cell(warm, row, "part-hottest"))).isEqualTo(340);
        assertThat(Sketch.si(cell(warm, row, "part-temperature-limit"))).isEqualTo(363.15);
        assertThat(new ArrayList<>(warm.rows())).hasSizeGreaterThan(1);
    }
}
