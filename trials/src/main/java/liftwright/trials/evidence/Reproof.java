package liftwright.trials.evidence;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.trials.CardId;
import liftwright.trials.Planned;

/**
 * The cards to do again so that all that a card rests on counts today: the set that takes the least
 * time, and an order to do it in.
 *
 * @param order cards, each behind all that it rests on
 * @param minutes of all of them together
 */
public record Reproof(List<CardId> order, double minutes) {

    public Reproof {
        order = List.copyOf(order);
    }

    /**
     * Exact: every choice among what would do is followed that can still be shorter than the best
     * one found. What several cards rest on is done once.
     *
     * @param cards of the programme, each behind all that it needs
     * @param standing which of them count today
     * @param goal whose needs are to be met; itself it is not done
     * @return empty where the goal is none of the cards, or needs what none of them gives
     * @throws IllegalArgumentException if a card needs one that stands behind it
     */
    public static Optional<Reproof> cheapest(List<Planned> cards, Standing standing, CardId goal) {
        return new Search(cards, standing).from(goal);
    }

    /** A depth-first search with a bound; groups are those of the chosen cards not yet met. */
    private static final class Search {
        private final List<Planned> cards;
        private final Map<CardId, Integer> place = new HashMap<>();
        private final BitSet passed = new BitSet();
        private Optional<BitSet> best = Optional.empty();
        private double bestMinutes = Double.POSITIVE_INFINITY;

        Search(List<Planned> cards, Standing standing) {
            this.cards = cards;
            for (Planned card : cards) {
                int at = place.size();
                for (Set<CardId> group : card.needs()) {
                    for (CardId need : group) {
                        if (!place.containsKey(need) && isLater(need)) {
                            throw new IllegalArgumentException(
                                    card.id() + " needs " + need + ", which stands behind it");
                        }
                    }
                }
                place.put(card.id(), at);
                passed.set(at, standing.isPassed(card.id()));
            }
        }

        private boolean isLater(CardId need) {
            return cards.stream().anyMatch(card -> card.id().equals(need));
        }

        private boolean isMet(Set<CardId> group, BitSet chosen) {
            for (CardId need : group) {
                Integer at = place.get(need);
                if (at != null && (passed.get(at) || chosen.get(at))) {
                    return true;
                }
            }
            return false;
        }

        Optional<Reproof> from(CardId goal) {
            Integer at = place.get(goal);
            if (at == null) {
                return Optional.empty();
            }
            follow(new BitSet(), 0, cards.get(at).needs());
            return best.map(
                    set ->
                            new Reproof(
                                    set.stream().mapToObj(i -> cards.get(i).id()).toList(),
                                    bestMinutes));
        }

        private void follow(BitSet chosen, double minutes, List<Set<CardId>> groups) {
            var open = new ArrayList<Set<CardId>>();
            double more = 0;
            for (Set<CardId> group : groups) {
                if (!isMet(group, chosen)) {
                    open.add(group);
                    more = Math.max(more, least(group));
                }
            }
            if (open.isEmpty()) {
                if (minutes < bestMinutes) {
                    bestMinutes = minutes;
                    best = Optional.of((BitSet) chosen.clone());
                }
                return;
            }
            if (!(minutes + more < bestMinutes)) {
                return;
            }
            // The group with the fewest ways first: a group with one way is no choice at all.
            Set<CardId> next = open.getFirst();
            for (Set<CardId> group : open) {
                next = group.size() < next.size() ? group : next;
            }
            for (CardId need : next.stream().sorted().toList()) {
                Integer at = place.get(need);
                if (at != null) {
                    chosen.set(at);
                    var left = new ArrayList<>(open);
                    left.addAll(cards.get(at).needs());
                    follow(chosen, minutes + cards.get(at).minutes(), left);
                    chosen.clear(at);
                }
            }
        }

        /** The shortest card of a group by itself; endless where the programme has none of it. */
        private double least(Set<CardId> group) {
            double least = Double.POSITIVE_INFINITY;
            for (CardId need : group) {
                Integer at = place.get(need);
                if (at != null) {
                    least = Math.min(least, cards.get(at).minutes());
                }
            }
            return least;
        }
    }
}
