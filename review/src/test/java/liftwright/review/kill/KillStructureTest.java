package liftwright.review.kill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import liftwright.review.kill.KillRigs.Draft;
import liftwright.review.kill.KillRigs.Switch;
import liftwright.rig.Contactor;
import liftwright.rig.Control;
import liftwright.rig.Element;
import liftwright.rig.Kill;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Cut sets of kill chains against every state of their elements. The referee knows nothing of
 * structures: it fails the things by name, asks which kills then act, opens contactors and walks
 * from the packs.
 */
class KillStructureTest {

    private static final Rig CURLEW = KillRigs.example("curlew");
    private static final List<String> PACKS =
            CURLEW.packs().stream().map(pack -> pack.id().text()).toList();
    private static final List<String> FANS =
            CURLEW.fans().stream().map(fan -> fan.id().text()).toList();

    /** Most things that the referee tries all states of. */
    private static final int MOST = 12;

    @Test
    void cutsEqualEveryStateOfTheElements() {
        int[] tried = {0, 0};
        Seeded.check(
                400,
                random -> {
                    Rig rig = random(random);
                    List<String> things = things(rig);
                    if (things.size() > MOST) {
                        return;
                    }
                    tried[0]++;
                    KillStructure structure = new KillStructure(rig);
                    Set<Set<String>> found =
                            structure.cuts(MOST).stream()
                                    .map(
                                            cut ->
                                                    cut.stream()
                                                            .mapToObj(structure.needs()::get)
                                                            .map(KillStructureTest::named)
                                                            .collect(Collectors.toSet()))
                                    .collect(Collectors.toSet());
                    Set<Set<String>> expected = leastCuts(rig, things);
                    tried[1] += expected.size();

                    assertThat(found).isEqualTo(expected);
                    assertThat(structure.beyond()).isEqualTo(beyond(rig));
                    structure
                            .cuts(MOST)
                            .forEach(
                                    cut ->
                                            assertThat(structure.leftWithout(cut))
                                                    .isEqualTo(
                                                            fed(
                                                                    rig,
                                                                    cut.stream()
                                                                            .mapToObj(
                                                                                    structure
                                                                                                    .needs()
                                                                                            ::get)
                                                                            .map(
                                                                                    KillStructureTest
                                                                                            ::named)
                                                                            .collect(
                                                                                    Collectors
                                                                                            .toSet()))));
                });
        assertThat(tried[0]).isGreaterThan(200);
        assertThat(tried[1]).isGreaterThan(1000);
    }

    private static String named(Need need) {
        return need.sort() + ":" + need.name().toLowerCase(Locale.ROOT);
    }

    /** Two to four nodes between packs and fans, contactors anywhere, kills of every kind. */
    private static Rig random(RandomGenerator random) {
        var draft = new Draft();
        int contactors = 1 + random.nextInt(4);
        List<String> names = new ArrayList<>();
        for (int k = 0; k < contactors; k++) {
            names.add("k" + k);
            draft.contactor(
                    "k" + k,
                    random.nextInt(3) == 0 ? Optional.of(supply(random)) : Optional.empty());
        }
        List<String> nodes = List.of("a", "b", "c");
        int packs = 1 + random.nextInt(3);
        for (int pack = 0; pack < packs; pack++) {
            draft.chain(PACKS.get(pack), pick(random, nodes), some(random, names, 2));
        }
        for (int chain = 0; chain < random.nextInt(4); chain++) {
            draft.chain(pick(random, nodes), pick(random, nodes), some(random, names, 1));
        }
        int fans = 1 + random.nextInt(4);
        for (int fan = 0; fan < fans; fan++) {
            draft.chain(pick(random, nodes), FANS.get(fan), some(random, names, 2));
        }
        int kills = 1 + random.nextInt(3);
        for (int number = 0; number < kills; number++) {
            var one = new Switch("kill " + number);
            one.opens = some(random, names, contactors);
            one.by = pick(random, List.of(Kill.Means.values()));
            one.order =
                    random.nextInt(3) == 0
                            ? pick(random, List.of(Kill.Order.values()))
                            : Kill.Order.OPEN_AT_ONCE;
            one.heldBy = maybe(random, "watcher", "wearer");
            one.radio =
                    one.by == Kill.Means.RADIO ? maybe(random, "hand", "Hand", "mast") : one.radio;
            one.fedBy = random.nextBoolean() ? Optional.of(supply(random)) : Optional.empty();
            one.ground = maybe(random, "signal ground");
            one.opensOnLoss = random.nextBoolean();
            draft.kills.add(one.kill());
        }
        return KillRigs.with(
                CURLEW,
                draft.wiring(),
                KillRigs.control(CURLEW, pick(random, List.of(Control.Kind.values()))));
    }

    private static String supply(RandomGenerator random) {
        return pick(random, List.of("p.1", "p.2", "own battery", "own battery of the mast"));
    }

    private static <T> T pick(RandomGenerator random, List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private static Optional<String> maybe(RandomGenerator random, String... names) {
        return random.nextBoolean() ? Optional.of(pick(random, List.of(names))) : Optional.empty();
    }

    private static List<String> some(RandomGenerator random, List<String> names, int most) {
        Set<String> chosen = new LinkedHashSet<>();
        int count = random.nextInt(most + 1);
        for (int k = 0; k < count; k++) {
            chosen.add(pick(random, names));
        }
        return List.copyOf(chosen);
    }

    // The referee.

    private static List<String> things(Rig rig) {
        var names = new TreeSet<String>();
        for (Kill kill : rig.wiring().kills()) {
            names.addAll(hand(kill));
            names.addAll(zero(rig, kill));
            opened(kill).forEach(name -> names.addAll(pole(rig, name)));
        }
        return List.copyOf(names);
    }

    private static String own(String supply, String of) {
        return "SUPPLY:" + (supply.equals("own battery") ? supply + " of " + of : supply);
    }

    /** What a kill needs before anything happens. */
    private static Set<String> hand(Kill kill) {
        Set<String> all = new HashSet<>(Set.of("SWITCH:" + kill.id()));
        kill.heldBy().ifPresent(person -> all.add("PERSON:" + person));
        if (kill.by() == Kill.Means.RADIO) {
            all.add("RADIO:" + kill.radio().orElse("of " + kill.id()).toLowerCase(Locale.ROOT));
        }
        kill.ground().ifPresent(ground -> all.add("GROUND:" + ground));
        if (!kill.opensOnLoss()) {
            kill.fedBy().ifPresent(supply -> all.add(own(supply, kill.id())));
        }
        if (kill.by() == Kill.Means.SOFTWARE) {
            all.add("COMPUTER:flight computer");
        }
        return all;
    }

    private static Set<String> zero(Rig rig, Kill kill) {
        if (kill.order() == Kill.Order.OPEN_AT_ONCE) {
            return Set.of();
        }
        return rig.control().kind() == Control.Kind.FLIGHT_COMPUTER
                ? Set.of("COMPUTER:flight computer")
                : Set.of("LINK:throttle line");
    }

    private static List<String> opened(Kill kill) {
        return kill.order() == Kill.Order.COMMAND_ZERO_ONLY ? List.of() : kill.opens();
    }

    private static Set<String> pole(Rig rig, String name) {
        Contactor contactor =
                rig.wiring().contactors().stream()
                        .filter(one -> one.name().equals(name))
                        .findFirst()
                        .orElseThrow();
        return Stream.concat(
                        Stream.of("CONTACTOR:" + name),
                        contactor.coil().stream().map(supply -> own(supply, name)))
                .collect(Collectors.toSet());
    }

    /** Fans that stay on with every kill pressed and some things failed. */
    private static List<String> fed(Rig rig, Set<String> failed) {
        Set<String> open = new HashSet<>();
        for (Kill kill : rig.wiring().kills()) {
            if (hand(kill).stream().anyMatch(failed::contains)) {
                continue;
            }
            if (kill.order() != Kill.Order.OPEN_AT_ONCE
                    && zero(rig, kill).stream().noneMatch(failed::contains)) {
                return List.of();
            }
            for (String name : opened(kill)) {
                if (pole(rig, name).stream().noneMatch(failed::contains)) {
                    open.add(name);
                }
            }
        }
        return walk(rig, open);
    }

    private static List<String> walk(Rig rig, Set<String> open) {
        Set<String> live = new HashSet<>(PACKS);
        for (boolean more = true; more; ) {
            more = false;
            for (Wiring.Chain chain : rig.wiring().chains()) {
                boolean conducts =
                        chain.elements().stream()
                                .map(Element.Pole.class::cast)
                                .noneMatch(pole -> open.contains(pole.contactor().name()));
                if (conducts && live.contains(chain.from()) != live.contains(chain.to())) {
                    live.add(chain.from());
                    live.add(chain.to());
                    more = true;
                }
            }
        }
        return FANS.stream().filter(live::contains).toList();
    }

    /** Fans that are on with every kill whole. */
    private static List<String> beyond(Rig rig) {
        return fed(rig, Set.of());
    }

    private static Set<Set<String>> leastCuts(Rig rig, List<String> things) {
        List<String> beyond = beyond(rig);
        boolean[] cut = new boolean[1 << things.size()];
        for (int mask = 0; mask < cut.length; mask++) {
            cut[mask] = !beyond.containsAll(fed(rig, names(things, mask)));
        }
        Set<Set<String>> least = new HashSet<>();
        for (int mask = 0; mask < cut.length; mask++) {
            boolean minimal = cut[mask];
            for (int one = 0; one < things.size(); one++) {
                minimal &= (mask >> one & 1) == 0 || !cut[mask & ~(1 << one)];
            }
            if (minimal) {
                least.add(names(things, mask));
            }
        }
        return least;
    }

    private static Set<String> names(List<String> things, int mask) {
        Set<String> names = new HashSet<>();
        for (int one = 0; one < things.size(); one++) {
            if ((mask >> one & 1) == 1) {
                names.add(things.get(one));
            }
        }
        return names;
    }
}
