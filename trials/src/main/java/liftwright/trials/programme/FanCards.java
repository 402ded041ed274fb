package liftwright.trials.programme;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.trials.Basis;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Run;
import liftwright.trials.Topic;

/** Cards of single fans, a set for each type: the kill first, then the spin it is for. */
final class FanCards {

    private FanCards() {}

    static void add(Deck deck) {
        Rig rig = deck.rig();
        if (rig.fans().isEmpty()) {
            throw new IllegalArgumentException("a rig without fans has nothing to test");
        }
        deck.proof(
                CardId.of(CardKind.KILL),
                "How long every way to make the rig dead takes, from the press to thrust gone, on one"
                        + " fan.",
                Needs.all(CardKind.THROTTLE)
                        .and(CardKind.CELLS, deck.feeding().cells(List.of(rig.fans().getFirst())))
                        .groups(),
                Bases.run(),
                Practice.of(CardKind.KILL),
                onBench(rig.fans().getFirst(), Ladder.kill()));
        types(rig).forEach(type -> type(deck, type));
    }

    /** Names of the types that turn on the rig, in its order. */
    static List<String> types(Rig rig) {
        return rig.fanTypes().stream()
                .map(type -> type.name())
                .filter(name -> rig.fans().stream().anyMatch(of(name)))
                .toList();
    }

    private static Predicate<Fan> of(String type) {
        return fan -> fan.type().name().equals(type);
    }

    private static Run onBench(Fan fan, List<Run.Step> steps) {
        return new Run(List.of(fan.id()), Run.Held.BENCH, false, steps);
    }

    private static void type(Deck deck, String type) {
        List<Fan> fans = deck.rig().fans().stream().filter(of(type)).toList();
        Fan first = fans.getFirst();
        Basis basis = Bases.run(deck.feeding(), fans, Topic.BENCH);
        deck.turning(
                new CardId(CardKind.FIRST_SPIN, type),
                "That a fan of this type turns the right way, evenly and without a noise that does"
                        + " not belong there. Done with every single fan of the type.",
                Needs.all(CardKind.THROTTLE, CardKind.KILL)
                        .and(CardKind.CELLS, deck.feeding().cells(fans))
                        .groups(),
                Set.of(),
                basis,
                Practice.of(CardKind.FIRST_SPIN),
                Optional.of(onBench(first, Ladder.first())));
        deck.turning(
                new CardId(CardKind.PROOF_SPIN, type),
                "That the rotor holds together above the fastest it will ever turn.",
                Needs.none().and(CardKind.FIRST_SPIN, type).groups(),
                Set.of(),
                basis,
                Practice.of(CardKind.PROOF_SPIN),
                Optional.empty());
        deck.turning(
                new CardId(CardKind.THRUST, type),
                "Thrust, current and speed against throttle: the table that the rig file is fitted"
                        + " to.",
                Needs.none().and(CardKind.FIRST_SPIN, type).and(CardKind.PROOF_SPIN, type).groups(),
                Set.of(),
                basis,
                Practice.of(CardKind.THRUST),
                Optional.of(onBench(first, Ladder.rows())));
        deck.turning(
                new CardId(CardKind.LAG, type),
                "How long thrust takes to follow the throttle, up and down.",
                Needs.none().and(CardKind.THRUST, type).groups(),
                Set.of(),
                basis,
                Practice.of(CardKind.LAG),
                Optional.of(onBench(first, Ladder.jumps())));
    }
}
