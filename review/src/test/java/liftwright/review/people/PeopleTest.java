package liftwright.review.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Fields;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.quantity.Band;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;

/** What is told of people near the invented rigs, and what is not. */
class PeopleTest {

    /** A worn rig of two fans, with what a test needs to be known exactly. */
    private static String text(String rotor, String more) {
        return """
        liftwright: 1
        rig: Near
        demands: {hover: 30 s, runs: 2, height: 0.4 m}
        wearer: {mass: 70 kg, stature: 1.75 m, body: male}
        mounts:
          back: {on: trunk, at: {forward: -200 mm, up: 0 mm}}
        fan types:
          F:
            tip: 140 mm
            hub: 52 mm
            exit area: 128 cm²
            mass: 0.7 kg
            data: measured
            at speed: {speed: 26000 rpm, thrust: 92 N, shaft power: 4.6 kW}
            motor: {speed constant: 520 rpm/V, winding resistance: 12 mΩ, no-load current: 2.5 A, pole pairs: 5}
            %s
            controller: {on-resistance: 2 mΩ, mass: 0.1 kg}
        fans:
          - {id: left, type: F, mount: back, at: {right: -300 mm}}
          - {id: right, type: F, mount: back, at: {right: 300 mm}}
        cells:
          C: {chemistry: LiPo, capacity: 8 Ah, resistance: 0.9 mΩ, mass: 165 g, open circuit: LiPo}
        packs:
          - {id: p, cell: C, series: 14, parallel: 1, at: {mount: back}}
        wiring:
          feeds:
            - {id: feed, from: p, trunk: [{run: 8 AWG, length: 400 mm}], branch: [{run: 12 AWG, length: 500 mm}], fans: {p: [left, right]}}
        control: {kind: shared throttle, groups: {all: {fans: [left, right], share: 100 %%}}}
        %s
        """
                .formatted(rotor, more);
    }

    private static Rig rig(String text) {
        RigReading reading = RigReading.read("near.yaml", text.getBytes(StandardCharsets.UTF_8));
        return reading.rig().orElseThrow(() -> new AssertionError(reading.problems().toString()));
    }

    private static People people(String text, int draws) {
        return People.of(Plant.assemble(rig(text)), 5, draws);
    }

    private static Section.Table table(People people, String id) {
        return people.sections().stream()
                .filter(section -> section.id().equals(id))
                .map(Section.Table.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static Value cell(Section.Table table, int row, String field) {
        return table.rows().get(row).get(table.columns().indexOf(field));
    }

    private static double si(Value value) {
        return ((Value.Figure.Amount) value.figure()).si();
    }

    private static List<Finding> findings(People people, String code) {
        return people.findings().stream().filter(f -> f.code().equals(code)).toList();
    }

    /**
     * Two fans 0.3 m to each side of a back 0.2 m behind a head: each at its own distance, none
     * nearer than 0.14 m; by hand from the place of the ears.
     */
    @Test
    void insideTheArrayABoundIsTold() {
        Plant plant = Plant.assemble(rig(text("noise: 100 dBA", "")));
        double[] p = plant.parameters().nominal();
        var head =
                plant.balancing().limbs(p).stream()
                        .filter(limb -> limb.name().equals("head"))
                        .findFirst()
                        .orElseThrow();
        double sum = 0;
        for (int fan = 0; fan < 2; fan++) {
            var place = plant.fanPlace(p, fan);
            double x = place.x() - (head.from().x() + head.to().x()) / 2;
            double y = place.y() - (head.from().y() + head.to().y()) / 2;
            double z = place.z() - (head.from().z() + head.to().z()) / 2;
            sum += 1e10 / Math.max(0.14 * 0.14, x * x + y * y + z * z);
        }
        Section.Table told = table(People.of(plant, 5, 0), "people-noise");
        assertThat(told.rows()).hasSize(1);
        assertThat(si(cell(told, 0, "noise-level"))).isCloseTo(10 * Math.log10(sum), within(1e-9));
        assertThat(cell(told, 0, "noise-how"))
                .isEqualTo(Value.words("noise-how", "a bound, inside the array"));
        assertThat(si(cell(told, 0, "noise-time"))).isEqualTo(60);
        assertThat(findings(People.of(plant, 5, 0), "noise")).hasSize(1);
    }

    /** ± 6 dB is two standard deviations: 1.96 of three each way, whatever else is known. */
    @Test
    void bandsAreThoseOfTheDeclaredDoubt() {
        People people =
                people(
                        text(
                                "rotor: {blades: 9, blade mass: 8 g ± 10 %, blade centre: 45 mm}\n"
                                        + "    noise: 100 dBA ± 6 dBA",
                                ""),
                        2000);
        Band level = cell(table(people, "people-noise"), 0, "noise-level").band().orElseThrow();
        assertThat(level.high() - level.low()).isCloseTo(2 * 1.96 * 3, within(0.7));
        assertThat(level.draws()).isEqualTo(2000);
        Section.Table pieces = table(people, "people-fragments");
        assertThat(cell(pieces, 0, "piece-reach").band()).isPresent();
        Value mass = cell(pieces, 0, "piece-mass");
        Band band = mass.band().orElseThrow();
        assertThat(si(mass)).isCloseTo(0.008, within(1e-12));
        assertThat(band.high() - band.low()).isCloseTo(2 * 1.96 * 0.0004, within(1e-4));
        // Energy goes with mass: the rig itself is known but for what defaults leave in doubt.
        Value energy = cell(pieces, 0, "piece-energy");
        assertThat(energy.band().orElseThrow().high() / si(energy))
                .isCloseTo(band.high() / 0.008, within(0.02));
        assertThat(people(text("", ""), 0).sections())
                .filteredOn(Section.Table.class::isInstance)
                .isNotEmpty();
    }

    @Test
    void whatIsNotDeclaredIsAskedFor() {
        People bare = people(text("", "crew: {watcher: {}}"), 0);
        assertThat(findings(bare, "fragments-cannot-be-told")).hasSize(1);
        assertThat(findings(bare, "lost-blade-load")).isEmpty();
        Finding where = findings(bare, "crew-distance-not-told").getFirst();
        assertThat(where.part()).isEqualTo(Optional.of("watcher"));
        assertThat(where.path()).isEqualTo(Optional.of("crew/watcher"));
        People told =
                people(
                        text(
                                "rotor: {inertia: 110 kg·mm², mass: 0.24 kg, blades: 11}",
                                "crew: {watcher: {distance: 6 m}, other: {distance: 900 m}}"),
                        0);
        assertThat(findings(told, "fragments-cannot-be-told")).isEmpty();
        assertThat(findings(told, "lost-blade-load")).hasSize(1);
        assertThat(findings(told, "crew-distance-not-told")).isEmpty();
        assertThat(findings(told, "crew-too-near"))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.part()).isEqualTo(Optional.of("watcher"));
                            assertThat(f.severity()).isEqualTo(Severity.WARNS);
                        });
        Section.Table crew = table(told, "people-crew");
        assertThat(cell(crew, 0, "piece-arrives"))
                .isEqualTo(Value.words("piece-arrives", "pieces with the hazardous energy"));
        assertThat(cell(crew, 1, "piece-arrives"))
                .isEqualTo(Value.words("piece-arrives", "no piece that is told"));
        assertThat(table(told, "people-noise").rows()).hasSize(3);
    }

    /** 14 cells stay below 60 V at 4.2 V each; one more does not, nor do they at 4.35 V. */
    @Test
    void theBusIsHeldAgainstSixtyVolt() {
        assertThat(findings(people(text("", ""), 0), "bus-hazardous")).isEmpty();
        assertThat(
                        findings(
                                people(text("", "").replace("series: 14", "series: 15"), 0),
                                "bus-hazardous"))
                .singleElement()
                .satisfies(
                        f -> assertThat(si(f.value().orElseThrow())).isCloseTo(63.0, within(0.3)));
        String high =
                text("", "")
                        .replace(
                                "open circuit: LiPo",
                                "open circuit: [{charge: 0 %, voltage: 3.3 V}, {charge: 100 %, voltage: 4.35 V}]");
        assertThat(findings(people(high, 0), "bus-hazardous"))
                .singleElement()
                .satisfies(
                        f -> assertThat(si(f.value().orElseThrow())).isCloseTo(60.9, within(1e-9)));
    }

    /** Fans that brake into the packs lift a bus of 58.8 V beyond 60 V. */
    @Test
    void braking() {
        String braking =
                text("rotor: {inertia: 110 kg·mm²}", "")
                        .replace(
                                "controller: {",
                                "controller: {braking: freewheel, capacitance: 940 µF, top voltage: 75 V, capacitor voltage: 80 V, ");
        assertThat(findings(people(braking, 0), "bus-hazardous"))
                .singleElement()
                .satisfies(f -> assertThat(si(f.value().orElseThrow())).isBetween(60.0, 100.0));
    }

    @Test
    void theExamplesAreToldInFieldsThatExistAndWithoutPromises() throws IOException {
        for (String example : List.of("mudlark", "curlew", "sandpiper")) {
            People people = people(read(example), 256);
            assertThat(people.sections()).hasSizeGreaterThan(4);
            for (Section section : people.sections()) {
                if (section instanceof Section.Table table) {
                    table.columns().forEach(Fields::of);
                    for (List<Value> row : table.rows()) {
                        assertThat(row.stream().map(Value::field).toList())
                                .isEqualTo(table.columns());
                        row.forEach(PeopleTest::isWithinItsBand);
                    }
                }
            }
            assertThat(people.findings()).isNotEmpty();
            for (Finding finding : people.findings()) {
                assertThat(words(finding.sentence()) + finding.cause())
                        .doesNotContainIgnoringCase("safe");
                finding.value().ifPresent(value -> Fields.of(value.field()));
            }
            assertThat(people.findings()).extracting(Finding::code).contains("keep-out");
        }
    }

    private static void isWithinItsBand(Value value) {
        value.band()
                .ifPresent(
                        band -> {
                            double wide = band.width() + 1e-9 * Math.abs(si(value));
                            assertThat(si(value))
                                    .as(value.field())
                                    .isBetween(band.low() - wide, band.high() + wide);
                        });
    }

    private static String words(Sentence sentence) {
        StringBuilder out = new StringBuilder();
        for (Sentence.Part part : sentence.parts()) {
            if (part instanceof Sentence.Part.Words words) {
                out.append(words.text());
            }
        }
        return out.toString();
    }

    private static String read(String example) {
        try {
            return Files.readString(Path.of("..", "examples", example, "rig.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same rig, seed and number of draws: the same answer, in whatever order it is asked. */
    @Test
    void theSameIsToldTwice() {
        Plant plant = Plant.assemble(rig(text("noise: 100 dBA ± 6 dBA", "")));
        People first = People.of(plant, 5, 150);
        People other = People.of(plant, 6, 150);
        assertThat(People.of(plant, 5, 150).sections()).isEqualTo(first.sections());
        assertThat(other.sections()).isNotEqualTo(first.sections());
    }

    /** Too few draws make no band, not an error. */
    @Test
    void fewDrawsMakeNoBand() {
        Plant plant = Plant.assemble(rig(text("noise: 100 dBA ± 6 dBA", "")));
        assertThat(cell(table(People.of(plant, 5, 40), "people-noise"), 0, "noise-level").band())
                .isEmpty();
    }

    /** Fans that no pack feeds throw nothing, blow nothing and are not heard. */
    @Test
    void deadFansAreNotTold() {
        String dead = text("noise: 100 dBA", "").replace("fans: {p: [left, right]}", "fans: {}");
        People people = people(dead, 0);
        assertThat(people.sections())
                .extracting(Section::id)
                .doesNotContain("people-fragments", "people-jets", "people-noise");
        assertThat(people.sections())
                .extracting(Section::id)
                .contains("people-energy", "impact-speeds");
        assertThat(findings(people, "noise")).isEmpty();
    }

    /** All power of the cells into 10 m × 8 m × 4 m of air, 1006 J/(kg·K), for twice 30 s. */
    @Test
    void aRoomWarmsByWhatTheCellsGive() {
        String room = "restraint: {room: {length: 10 m, width: 8 m, ceiling: 4 m}}";
        Plant plant = Plant.assemble(rig(text("", room)));
        double[] p = plant.parameters().nominal();
        SteadyState full = plant.state();
        plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), full);
        double watt = 0;
        for (int k = 0; k < full.packs(); k++) {
            watt += full.packA(k) * full.packRestV(k);
        }
        double rise = watt * 60 / (plant.siteDensityKgpm3(p) * 1006 * 320);
        assertThat(findings(People.of(plant, 5, 0), "room-warms"))
                .singleElement()
                .satisfies(
                        f ->
                                assertThat(si(f.value().orElseThrow()))
                                        .isCloseTo(rise, within(0.002 * rise)));
        People half = people(text("", "restraint: {room: {length: 10 m, ceiling: 4 m}}"), 0);
        assertThat(findings(half, "room-warms")).isEmpty();
        assertThat(words(findings(half, "room-cannot-be-told").getFirst().sentence()))
                .contains("width")
                .doesNotContain("length");
    }

    @Test
    void aKillBelongsOutside() {
        for (String distance : List.of("900 m", "15 m")) {
            String text =
                    text(
                                    "rotor: {blades: 9, blade mass: 8 g}",
                                    "crew: {near: {distance: 6 m}, far: {distance: "
                                            + distance
                                            + "}}")
                            .replace(
                                    "  feeds:",
                                    "  kills: [{id: a, by: wire, held by: near}, {id: b, by: wire, held by: far}]\n  feeds:");
            assertThat(findings(people(text, 0), "kill-within-reach"))
                    .hasSize(distance.equals("15 m") ? 1 : 0);
        }
    }

    /** What the builder declares is what is held against, with its origin. */
    @Test
    void declaredLimitsCount() {
        String rotor = "rotor: {blades: 9, blade mass: 14 g}";
        People usual = people(text(rotor, "crew: {watcher: {distance: 280 m}}"), 0);
        People own =
                people(
                        text(
                                rotor,
                                "crew: {watcher: {distance: 280 m}}\n"
                                        + "limits: {fragment energy: 2000 J, bystanders: 300 m, noise: 40 dBA, impact speed: 2 m/s}"),
                        0);
        assertThat(findings(usual, "fragment-energy")).hasSize(1);
        assertThat(findings(own, "fragment-energy")).isEmpty();
        assertThat(findings(usual, "drop-speed").getFirst().severity()).isEqualTo(Severity.NOTES);
        assertThat(findings(own, "drop-speed").getFirst().severity()).isEqualTo(Severity.WARNS);
        assertThat(findings(usual, "crew-too-near")).isEmpty();
        assertThat(findings(own, "crew-too-near"))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.severity()).isEqualTo(Severity.NOTES);
                            assertThat(f.limit().orElseThrow().origin()).contains("declared");
                        });
        assertThat(si(findings(own, "keep-out").getFirst().value().orElseThrow())).isEqualTo(300);
        assertThat(findings(usual, "noise")).hasSize(1);
        assertThat(findings(own, "noise")).hasSize(2);
    }

    /**
     * Leads that nobody declared are half a metre: v = √(2 F · 0.5 m/m) without a rotor's inertia.
     */
    @Test
    void aFanOnUndeclaredLeads() {
        String bare =
                text("", "")
                        .replace("branch: [{run: 12 AWG, length: 500 mm}]", "branch: []")
                        .replace("trunk: [{run: 8 AWG, length: 400 mm}]", "trunk: []");
        Plant plant = Plant.assemble(rig(bare));
        SteadyState full = plant.state();
        plant.solve(
                plant.parameters().nominal(),
                Effects.ALL.withCharge(false),
                plant.workspace(),
                full);
        Section.Table told = table(People.of(plant, 5, 0), "people-fragments");
        assertThat(told.rows()).hasSize(1);
        double speed = Math.sqrt(full.fanThrustN(0) / 0.7);
        assertThat(si(cell(told, 0, "piece-speed"))).isCloseTo(speed, within(1e-6));
    }

    /** Blades of open rotors are a third as wide, so that a tumbling one slows less. */
    @Test
    void slenderBladesFlyFarther() {
        String rotor = "rotor: {blades: 2, blade mass: 8 g}";
        Section.Table ducted = table(people(text(rotor, ""), 0), "people-fragments");
        Section.Table open =
                table(
                        people(
                                text(rotor, "")
                                        .replace("tip: 140 mm", "ducted: no\n    tip: 140 mm"),
                                0),
                        "people-fragments");
        double way = si(cell(ducted, 0, "piece-reach-tumbling"));
        // The same speed with a third of the drag: twice as far and more, not three times.
        assertThat(si(cell(open, 0, "piece-speed")))
                .isCloseTo(si(cell(ducted, 0, "piece-speed")), within(1e-9));
        assertThat(si(cell(open, 0, "piece-reach-tumbling"))).isBetween(1.8 * way, 3 * way);
        assertThat(si(cell(open, 0, "piece-reach")))
                .isCloseTo(si(cell(ducted, 0, "piece-reach")), within(1e-9));
    }
}
