package liftwright.trials.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.Basis;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Topic;
import liftwright.trials.evidence.Standing.State;
import liftwright.trials.programme.Programme;
import org.junit.jupiter.api.Test;

/** Whether a change voids the passes whose inputs it changes, and no other. */
class VoidedPassesTest {

    @Test
    void voidedPassesAreThoseThatBruteForceFinds() {
        int[] voided = {0};
        int[] stood = {0};
        Seeded.check(
                500,
                random -> {
                    var before = RandomTrialRig.reading(RandomTrialRig.yaml(random));
                    Rig was = before.rig().orElseThrow();
                    var made = RandomChange.of(before, random);
                    Rig is = made.after().rig().orElseThrow();
                    List<Planned> byHand = Cards.random(was, random);
                    var cardsWas = both(Programme.of(was).cards(), byHand);
                    var cardsIs = both(Programme.of(is).cards(), byHand);
                    Inputs inputs = Inputs.of(was);
                    var passes = new ArrayList<Pass>();
                    cardsWas.forEach(
                            card ->
                                    passes.add(
                                            Cards.pass(
                                                    passes.size() + 1,
                                                    card,
                                                    inputs,
                                                    Cards.DAY,
                                                    card.repeats())));
                    assertThat(Standing.of(cardsWas, passes, inputs, Cards.DAY).byCard().values())
                            .allMatch(State.Passed.class::isInstance);
                    Standing standing = Standing.of(cardsIs, passes, Inputs.of(is), Cards.DAY);
                    Set<CardId> expected = bruteForce(was, is, cardsWas, cardsIs);
                    Set<CardId> found = new TreeSet<>();
                    standing.byCard()
                            .forEach(
                                    (card, state) -> {
                                        if (state instanceof State.Voided(var _, var by)) {
                                            assertThat(by).isNotEmpty();
                                            found.add(card);
                                        }
                                    });
                    assertThat(found).as(made.changes().toString()).isEqualTo(expected);
                    voided[0] += found.size();
                    stood[0] += cardsIs.size() - found.size();
                });
        assertThat(voided[0]).isGreaterThan(2000);
        assertThat(stood[0]).isGreaterThan(2000);
    }

    private static List<Planned> both(List<Planned> one, List<Planned> other) {
        var both = new ArrayList<>(one);
        both.addAll(other);
        return both;
    }

    private static Set<CardId> bruteForce(
            Rig was, Rig is, List<Planned> cardsWas, List<Planned> cardsIs) {
        Map<String, Object> before = all(was);
        Map<String, Object> after = all(is);
        Map<CardId, Basis> bases =
                cardsWas.stream().collect(Collectors.toMap(Planned::id, Planned::basis));
        Set<String> paths = new HashSet<>(before.keySet());
        paths.addAll(after.keySet());
        Set<CardId> voided = new TreeSet<>();
        for (Planned card : cardsIs) {
            Optional<Basis> recorded = Optional.ofNullable(bases.get(card.id()));
            if (recorded.isEmpty()) {
                continue;
            }
            for (String path : paths) {
                boolean wasInSet = before.containsKey(path) && rests(recorded.get(), path);
                boolean isInSet = after.containsKey(path) && rests(card.basis(), path);
                boolean same = Objects.equals(before.get(path), after.get(path));
                if ((wasInSet && !same) || (isInSet && !wasInSet)) {
                    voided.add(card.id());
                    break;
                }
            }
        }
        return voided;
    }

    private static Map<String, Object> all(Rig rig) {
        var all = new HashMap<>(RigLeaves.of(rig));
        var unread = new TreeMap<String, String>();
        UnreadKeys.add(rig.declaration(), unread);
        all.putAll(unread);
        return all;
    }

    /** What a path speaks of, read once: hundreds of cards ask it of thousands of paths. */
    private static final Map<String, Spoken> SPOKEN = new HashMap<>();

    private record Spoken(Set<Topic> topics, Set<String> parts) {
        static Spoken of(String path) {
            return SPOKEN.computeIfAbsent(
                    path, each -> new Spoken(Topics.of(each), Topics.parts(each)));
        }
    }

    /** By sets and loops, not as the product asks it. */
    private static boolean rests(Basis basis, String path) {
        Spoken spoken = Spoken.of(path);
        boolean topic = false;
        for (var one : spoken.topics()) {
            topic |= basis.topics().contains(one);
        }
        boolean part = basis.parts().isEmpty() || spoken.parts().isEmpty();
        for (String one : spoken.parts()) {
            part |= basis.parts().orElse(Set.of()).contains(one);
        }
        return topic && part;
    }
}
