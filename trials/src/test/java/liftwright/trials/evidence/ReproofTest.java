package liftwright.trials.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import liftwright.testkit.Seeded;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.evidence.Standing.State;
import liftwright.trials.programme.Programme;
import org.junit.jupiter.api.Test;

/** Whether the shortest way back is the shortest, and a way. */
class ReproofTest {

    private static Standing standing(Set<CardId> passed) {
        var states = new TreeMap<CardId, State>();
        passed.forEach(id -> states.put(id, new State.Passed(Cards.DAY, Optional.empty(), 1)));
        return new Standing(Cards.DAY, states);
    }

    private static boolean met(Planned card, Set<CardId> done) {
        return card.needs().stream().allMatch(group -> group.stream().anyMatch(done::contains));
    }

    /** Least minutes over all subsets of cards that do not count; endless where none will do. */
    private static double bruteForce(List<Planned> cards, Set<CardId> passed, Planned goal) {
        var open = cards.stream().filter(card -> !passed.contains(card.id())).toList();
        double best = Double.POSITIVE_INFINITY;
        for (int set = 0; set < 1 << open.size(); set++) {
            var done = new HashSet<>(passed);
            double minutes = 0;
            for (int i = 0; i < open.size(); i++) {
                if ((set >> i & 1) == 1) {
                    done.add(open.get(i).id());
                    minutes += open.get(i).minutes();
                }
            }
            boolean all = met(goal, done);
            for (int i = 0; i < open.size() && all; i++) {
                all = (set >> i & 1) == 0 || met(open.get(i), done);
            }
            best = all ? Math.min(best, minutes) : best;
        }
        return best;
    }

    private static void check(List<Planned> cards, Set<CardId> passed, Planned goal) {
        Optional<Reproof> found = Reproof.cheapest(cards, standing(passed), goal.id());
        double best = bruteForce(cards, passed, goal);
        assertThat(found.isPresent()).isEqualTo(best < Double.POSITIVE_INFINITY);
        found.ifPresent(
                reproof -> {
                    assertThat(reproof.minutes()).isCloseTo(best, within(1e-9));
                    var done = new HashSet<>(passed);
                    double minutes = 0;
                    for (CardId id : reproof.order()) {
                        Planned card =
                                cards.stream()
                                        .filter(one -> one.id().equals(id))
                                        .findFirst()
                                        .orElseThrow();
                        assertThat(passed).doesNotContain(id);
                        assertThat(met(card, done)).as(id + " in " + reproof).isTrue();
                        assertThat(done.add(id)).isTrue();
                        minutes += card.minutes();
                    }
                    assertThat(met(goal, done)).isTrue();
                    assertThat(minutes).isCloseTo(reproof.minutes(), within(1e-9));
                });
    }

    @Test
    void onRandomGraphsNoSubsetIsShorter() {
        int[] several = {0};
        Seeded.check(
                400,
                random -> {
                    int many = 2 + random.nextInt(11);
                    var cards = new ArrayList<Planned>();
                    for (int i = 0; i < many; i++) {
                        var needs = new ArrayList<Set<CardId>>();
                        for (int g = i == 0 ? 0 : random.nextInt(4); g > 0; g--) {
                            Set<CardId> group = new TreeSet<>();
                            for (int k = random.nextInt(3); k >= 0; k--) {
                                // Now and then one that the programme does not have.
                                group.add(
                                        Cards.id(random.nextInt(40) == 0 ? 24 : random.nextInt(i)));
                            }
                            needs.add(group);
                        }
                        cards.add(Cards.card(Cards.id(i), needs, 1 + random.nextInt(60)));
                    }
                    Set<CardId> passed = new HashSet<>();
                    cards.stream()
                            .map(Planned::id)
                            .filter(_ -> random.nextInt(3) == 0)
                            .forEach(passed::add);
                    check(cards, passed, cards.getLast());
                    several[0] += cards.getLast().needs().size() > 1 ? 1 : 0;
                });
        assertThat(several[0]).isGreaterThan(100);
    }

    @Test
    void onProgrammesOfRandomRigsNoSubsetIsShorter() {
        Seeded.check(
                40,
                random -> {
                    var cards = Programme.of(RandomTrialRig.rig(random)).cards();
                    var ids = new ArrayList<>(cards.stream().map(Planned::id).toList());
                    Planned goal = cards.get(cards.size() / 2 + random.nextInt(cards.size() / 2));
                    while (ids.size() > 11) {
                        ids.remove(random.nextInt(ids.size()));
                    }
                    Set<CardId> passed = new HashSet<>();
                    cards.stream()
                            .map(Planned::id)
                            .filter(id -> !ids.contains(id))
                            .forEach(passed::add);
                    check(cards, passed, goal);
                });
    }

    @Test
    void whatSeveralCardsRestOnIsDoneOnce() {
        Planned base = Cards.card(Cards.id(0), List.of(), 50);
        Planned left = Cards.card(Cards.id(1), List.of(Set.of(base.id())), 5);
        Planned right = Cards.card(Cards.id(2), List.of(Set.of(base.id())), 5);
        Planned other = Cards.card(Cards.id(3), List.of(), 54);
        Planned goal =
                Cards.card(
                        Cards.id(4), List.of(Set.of(left.id(), other.id()), Set.of(right.id())), 1);
        // By itself the other one is shorter than base and left; base is needed anyway.
        var found =
                Reproof.cheapest(
                                List.of(base, left, right, other, goal),
                                standing(Set.of()),
                                goal.id())
                        .orElseThrow();
        assertThat(found).isEqualTo(new Reproof(List.of(base.id(), left.id(), right.id()), 60));
    }

    @Test
    void aWholeProgrammeFromNothingIsFoundAndGoalsWithoutAWayAreTold() {
        Seeded.check(
                20,
                random -> {
                    var cards = Programme.of(RandomTrialRig.rig(random)).cards();
                    var found = Reproof.cheapest(cards, standing(Set.of()), cards.getLast().id());
                    assertThat(found).isPresent();
                    assertThat(found.get().order()).isNotEmpty();
                });
        assertThat(Reproof.cheapest(List.of(), standing(Set.of()), Cards.id(0))).isEmpty();
        Planned late = Cards.card(Cards.id(1), List.of(), 5);
        Planned early = Cards.card(Cards.id(0), List.of(Set.of(late.id())), 5);
        assertThatThrownBy(
                        () -> Reproof.cheapest(List.of(early, late), standing(Set.of()), late.id()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
