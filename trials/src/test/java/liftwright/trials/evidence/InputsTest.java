package liftwright.trials.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Topic;
import liftwright.trials.TrialExamples;
import org.junit.jupiter.api.Test;

/** Whether inputs are all of a rig, and nothing else. */
class InputsTest {

    private static final String SMALL =
            """
            liftwright: 1
            rig: Small
            revision: 1
            note: first
            site: {turbulence: 2 m/s}
            mounts: {deck: {on: frame}}
            fan types:
              A: {tip: 140 mm, hub: 50 mm, mass: 0.7 kg, at speed: {speed: 26000 rpm, thrust: 92 N, shaft power: 4.6 kW}, motor: {speed constant: 520 rpm/V, winding resistance: 12 mΩ, no-load current: 2.5 A}, controller: {mass: 0.1 kg, slew: 300 %/s, start time: 0.6 s}}
            fans:
              - {id: a, type: A, mount: deck, at: {right: 300 mm}}
              - {id: b, type: A, mount: deck, at: {left: 300 mm}}
            cells: {C: {capacity: 8 Ah, chemistry: LiPo, resistance: 1 mΩ, mass: 165 g, open circuit: LiPo}}
            packs: [{id: p, cell: C, series: 12, at: {mount: deck}, serials: "0417"}]
            wiring: {feeds: [{id: feed, from: p, fans: {p.1: [a, b]}}]}
            other parts: [{id: frame, mass: 2 kg, at: {mount: deck}, serial: F1}]
            control: {kind: flight computer}
            """;

    private static Inputs of(String yaml) {
        return Inputs.of(RandomTrialRig.rig(yaml));
    }

    @Test
    void whateverIsAlteredInARigIsAnInput() {
        Set<String> seen = new HashSet<>();
        int[] made = {0};
        Seeded.check(
                60,
                random -> {
                    Rig rig =
                            random.nextInt(8) == 0
                                    ? TrialExamples.rig(TrialExamples.NAMES.get(random.nextInt(3)))
                                    : RandomTrialRig.rig(random);
                    Inputs before = Inputs.of(rig);
                    var altered = new Altered(random);
                    for (int i = 0; i < 20; i++) {
                        altered.in(rig)
                                .ifPresent(
                                        after -> {
                                            made[0]++;
                                            seen.add(altered.where().strip().replaceAll(" .*", ""));
                                            assertThat(Inputs.of(after).byPath())
                                                    .as(altered.where())
                                                    .isNotEqualTo(before.byPath());
                                        });
                    }
                });
        assertThat(made[0]).isGreaterThan(300);
        assertThat(seen)
                .contains("Rig.fans", "Rig.wearer", "Rig.wiring", "Rig.restraint", "Rig.crew");
    }

    @Test
    void aMeasuredRigIsItsTablesByWhatTheySay() {
        Inputs inputs = Inputs.of(TrialExamples.rig("fitted"));
        assertThat(inputs.byPath().values()).anyMatch(text -> text.startsWith("table sha256:"));
    }

    @Test
    void everyInputIsAboutSomethingThatARuleKnows() {
        Set<String> unknown = new TreeSet<>();
        Seeded.check(
                150,
                random ->
                        Inputs.of(RandomTrialRig.rig(random)).byPath().keySet().stream()
                                .filter(path -> !Topics.isKnown(path))
                                .forEach(unknown::add));
        for (String name : List.of("mudlark", "curlew", "sandpiper", "measured", "fitted")) {
            Inputs.of(TrialExamples.rig(name)).byPath().keySet().stream()
                    .filter(path -> !Topics.isKnown(path))
                    .forEach(unknown::add);
        }
        assertThat(unknown).isEmpty();
        assertThat(Topics.of("moon/phase")).containsExactlyInAnyOrder(Topic.values());
        assertThat(Topics.of("fan types/A/whatever comes"))
                .containsExactlyInAnyOrder(Topic.values());
    }

    @Test
    void whatSaysNothingOfTheBuildIsNoInput() {
        Inputs before = of(SMALL);
        assertThat(of(SMALL.replace("rig: Small", "rig: Tall"))).isEqualTo(before);
        assertThat(of(SMALL.replace("revision: 1", "revision: 2"))).isEqualTo(before);
        assertThat(of(SMALL.replace("note: first", "note: second   # and more"))).isEqualTo(before);
        assertThat(of(SMALL.replace("  - {id: a", "  # a comment\n  - {id: a"))).isEqualTo(before);
        String a = SMALL.lines().filter(line -> line.contains("id: a,")).findFirst().orElseThrow();
        String b = SMALL.lines().filter(line -> line.contains("id: b,")).findFirst().orElseThrow();
        assertThat(of(SMALL.replace(a + "\n" + b, b + "\n" + a))).isEqualTo(before);
        assertThat(of(SMALL.replace("tip: 140 mm", "tip: 14 cm"))).isEqualTo(before);
    }

    @Test
    void whatNoQuestionReadsIsAnInputToo() {
        Inputs before = of(SMALL);
        assertThat(before.byPath())
                .containsEntry("declared/fan types/A/controller/start time", "0.6 s")
                .containsEntry("declared/site/turbulence", "2 m/s")
                .containsEntry("declared/other parts/frame/serial", "F1")
                .containsEntry("packs/p.1/serial", "0417");
        var since = of(SMALL.replace("0.6 s", "0.5 s")).since(before, before);
        assertThat(since)
                .containsExactly(
                        new Inputs.Difference(
                                "declared/fan types/A/controller/start time", "0.6 s", "0.5 s"));
        assertThat(Topics.of("declared/fan types/A/controller/start time")).contains(Topic.CONTROL);
        assertThat(Topics.of("declared/other parts/frame/serial")).containsExactly(Topic.SERIAL);
    }

    @Test
    void howAControllerFollowsIsAboutControl() {
        var since = of(SMALL.replace("300 %/s", "200 %/s")).since(of(SMALL), of(SMALL));
        assertThat(since).hasSize(1);
        assertThat(Topics.of(since.getFirst().path())).contains(Topic.CONTROL);
    }

    @Test
    void aDeclaredLimitIsAnotherInputThanADefaultOfTheSameSize() {
        Inputs declared = of(SMALL + "limits: {cell under load: 3.3 V}\n");
        assertThat(declared.byPath()).containsEntry("limits/cell under load", "3.3 V, declared");
        assertThat(of(SMALL).byPath()).containsEntry("limits/cell under load", "3.3 V, default");
    }

    @Test
    void settingsOfControllersAreInputs() {
        Rig rig = RandomTrialRig.rig(SMALL);
        Inputs with = Inputs.of(rig, Map.of("esc.hex", "sha256:1"));
        assertThat(with.since(Inputs.of(rig), Inputs.of(rig)))
                .isEmpty(); // what a pass without them rests on is the same
        assertThat(Inputs.of(rig).since(with, Inputs.of(rig)))
                .containsExactly(
                        new Inputs.Difference("settings/esc.hex", "sha256:1", Inputs.NOTHING));
        assertThat(Topics.of("settings/esc.hex")).contains(Topic.CONTROL);
    }
}
