package liftwright.review.kill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import liftwright.answer.Finding;
import liftwright.review.kill.KillRigs.Draft;
import liftwright.review.kill.KillRigs.Switch;
import liftwright.rig.Kill;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Generated kill wirings: two or three switches that each make the whole rig dead, into some of
 * which something that all of them need was planted. Every one is found, by its name, and nothing
 * else is; what only looks common (each its own battery, a supply whose loss opens, a coil that
 * opens without) is not.
 */
class PlantedCommonsTest {

    private static final Rig CURLEW = KillRigs.example("curlew");
    private static final Set<String> CODES = Set.of("kills-in-common", "kills-share");

    private static final String FRAME = "own battery of the frame";

    /** What may be planted. */
    private enum Plant {
        CONTACTOR,
        COIL_SUPPLY,
        SUPPLY,
        PACK,
        RADIO,
        GROUND,
        PERSON,
        NAMED
    }

    @Test
    void everyPlantedElementIsFoundAndNothingElse() {
        Map<Plant, Integer> planted = new EnumMap<>(Plant.class);
        int[] clean = {0};
        Seeded.check(
                240,
                random -> {
                    var wiring = new Generated(random, 2 + random.nextInt(2));
                    Set<String> expected = new TreeSet<>();
                    int several = random.nextInt(3);
                    for (int k = 0; k < several; k++) {
                        Plant kind = Plant.values()[random.nextInt(Plant.values().length)];
                        if (kind == Plant.PACK && expected.contains(FRAME)) {
                            continue; // a kill has one supply
                        }
                        if (kind == Plant.SUPPLY && expected.contains("p.2")) {
                            continue;
                        }
                        expected.addAll(wiring.plant(kind));
                        planted.merge(kind, 1, Integer::sum);
                    }
                    clean[0] += several == 0 ? 1 : 0;
                    Rig rig = wiring.rig();

                    assertThat(common(rig, "kills-in-common")).isEqualTo(expected);
                    assertThat(common(rig, "kills-share")).isEmpty();
                });
        assertThat(planted).hasSize(Plant.values().length);
        assertThat(planted.values()).allSatisfy(count -> assertThat(count).isGreaterThan(8));
        assertThat(clean[0]).isGreaterThan(40);
    }

    /** With a third that is independent, what two share leaves another way. */
    @Test
    void whatTwoOfThreeShareLeavesAnotherWay() {
        Seeded.check(
                60,
                random -> {
                    var wiring = new Generated(random, 3);
                    wiring.switches.get(0).heldBy = Optional.of("watcher");
                    wiring.switches.get(1).heldBy = Optional.of("watcher");
                    wiring.switches.get(2).heldBy = Optional.of("wearer");
                    Rig rig = wiring.rig();

                    assertThat(common(rig, "kills-in-common")).isEmpty();
                    assertThat(common(rig, "kills-share")).containsExactly("watcher");
                });
    }

    private static Set<String> common(Rig rig, String code) {
        List<Finding> findings = CommonFindings.of(rig, new KillStructure(rig));
        assertThat(findings)
                .filteredOn(finding -> CODES.contains(finding.code()))
                .allSatisfy(finding -> assertThat(finding.path()).isPresent());
        return findings.stream()
                .filter(finding -> finding.code().equals(code))
                .map(finding -> finding.part().orElseThrow().toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Each switch opens contactors of its own, which lie in series on every way to a fan. */
    private static final class Generated {
        private final RandomGenerator random;
        private final List<Switch> switches = new ArrayList<>();
        private final List<List<String>> own = new ArrayList<>();
        private final Map<String, Optional<String>> coils = new java.util.TreeMap<>();
        private final boolean[] bused;

        Generated(RandomGenerator random, int count) {
            this.random = random;
            bused = new boolean[] {random.nextBoolean()};
            for (int number = 0; number < count; number++) {
                var one = new Switch("kill " + number);
                int poles = random.nextBoolean() ? 1 : CURLEW.packs().size();
                List<String> names = new ArrayList<>();
                for (int k = 0; k < poles; k++) {
                    names.add("k" + number + "." + k);
                    // A coil that holds its contactor closed: all may hang on one pack.
                    coils.put(names.getLast(), Optional.empty());
                }
                own.add(names);
                one.by =
                        List.of(Kill.Means.WIRE, Kill.Means.RADIO, Kill.Means.BUTTON)
                                .get(random.nextInt(3));
                if (random.nextBoolean()) {
                    one.heldBy = Optional.of("person " + number);
                }
                if (one.by == Kill.Means.RADIO && random.nextBoolean()) {
                    one.radio = Optional.of("radio " + number);
                }
                switch (random.nextInt(4)) {
                    case 0 -> one.fedBy = Optional.of("own battery"); // each has one
                    case 1 -> one.fedBy = Optional.of("own battery of mast " + number);
                    case 2 -> {
                        one.fedBy = Optional.of("p.1"); // whose loss opens
                        one.opensOnLoss = true;
                    }
                    default -> one.opensOnLoss = random.nextBoolean();
                }
                if (random.nextBoolean()) {
                    one.through = List.of("plug " + number);
                }
                switches.add(one);
            }
        }

        /** Names of what all switches now need. */
        Set<String> plant(Plant kind) {
            return switch (kind) {
                case CONTACTOR -> {
                    for (int number = 1; number < own.size(); number++) {
                        own.set(number, own.getFirst());
                    }
                    yield new HashSet<>(own.getFirst());
                }
                case COIL_SUPPLY -> {
                    coils.replaceAll((_, _) -> Optional.of("p.4"));
                    yield Set.of("p.4");
                }
                case SUPPLY -> {
                    fedBy(FRAME);
                    yield Set.of(FRAME);
                }
                case PACK -> {
                    fedBy("p.2");
                    yield Set.of("p.2");
                }
                case RADIO -> {
                    for (Switch one : switches) {
                        one.by = Kill.Means.RADIO;
                        one.radio = Optional.of(spelled("hand set"));
                    }
                    yield Set.of("hand set");
                }
                case GROUND -> {
                    switches.forEach(one -> one.ground = Optional.of("signal ground"));
                    yield Set.of("signal ground");
                }
                case PERSON -> {
                    switches.forEach(one -> one.heldBy = Optional.of("watcher"));
                    yield Set.of("watcher");
                }
                case NAMED -> {
                    switches.forEach(one -> one.through = List.of(spelled("relay board")));
                    yield Set.of("relay board");
                }
            };
        }

        private void fedBy(String supply) {
            for (Switch one : switches) {
                one.fedBy = Optional.of(supply);
                one.opensOnLoss = false;
            }
        }

        private String spelled(String name) {
            return random.nextBoolean() ? name : name.toUpperCase(Locale.ROOT);
        }

        Rig rig() {
            var draft = new Draft();
            coils.forEach(draft::contactor);
            List<String> packs = CURLEW.packs().stream().map(pack -> pack.id().text()).toList();
            List<String> fans = CURLEW.fans().stream().map(fan -> fan.id().text()).toList();
            for (int pack = 0; pack < packs.size(); pack++) {
                List<String> poles = new ArrayList<>();
                for (List<String> names : new java.util.LinkedHashSet<>(own)) {
                    poles.add(names.get(Math.min(pack, names.size() - 1)));
                }
                draft.chain(packs.get(pack), bused[0] ? "bus" : "split " + pack, poles);
            }
            for (int fan = 0; fan < fans.size(); fan++) {
                draft.chain(
                        bused[0] ? "bus" : "split " + fan % packs.size(), fans.get(fan), List.of());
            }
            for (int number = 0; number < switches.size(); number++) {
                switches.get(number).opens = own.get(number);
                draft.kills.add(switches.get(number).kill());
            }
            return KillRigs.with(CURLEW, draft.wiring(), CURLEW.control());
        }
    }
}
