package liftwright.trials.programme;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.Rig;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;

/**
 * The way of one rig from its first weighing to free flight.
 *
 * <p>It widens one thing at a time: bare fan, one pod, all fans; held down, hanging, on the scale,
 * a hop, free; always with nobody in it before somebody is. A card is there also where what holds
 * the rig on it was never declared: {@link Missing} says what to declare.
 *
 * @param rig as declared
 * @param cards in an order in which they can be done: each stands behind all that it may need
 */
public record Programme(Rig rig, List<Planned> cards) {

    /** Subject of cards done with dead mass in place of the wearer. */
    public static final String DUMMY = "dummy";

    /** Subject of the long run that warms all parts. */
    public static final String WARM = "warm";

    /** Subject of the proof that kills stop every fan, where the one without it stops one. */
    public static final String ALL = "all";

    public Programme {
        cards = List.copyOf(cards);
        Map<CardId, Integer> place = new HashMap<>();
        for (Planned card : cards) {
            for (Set<CardId> group : card.needs()) {
                if (!place.keySet().containsAll(group)) {
                    throw new IllegalArgumentException(
                            card.id() + " needs what is not before it: " + group);
                }
            }
            if (place.put(card.id(), place.size()) != null) {
                throw new IllegalArgumentException("twice: " + card.id());
            }
        }
    }

    /** All cards of a rig. Computes nothing heavy. */
    public static Programme of(Rig rig) {
        Deck deck = new Deck(rig);
        MeasuringCards.add(deck);
        FanCards.add(deck);
        HeldCards.add(deck);
        if (rig.wearer().isPresent()) {
            WornCards.add(deck);
        } else {
            UnwornCards.add(deck);
        }
        return new Programme(rig, deck.cards());
    }

    /** A card by its name; empty where this rig has none of that name. */
    public Optional<Planned> card(CardId id) {
        return cards.stream().filter(card -> card.id().equals(id)).findFirst();
    }

    /** All cards on which the same is done. */
    public List<Planned> ofKind(CardKind kind) {
        return cards.stream().filter(card -> card.id().kind() == kind).toList();
    }
}
