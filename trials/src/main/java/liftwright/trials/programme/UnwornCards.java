package liftwright.trials.programme;

import liftwright.rig.Control;
import liftwright.rig.Rig;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Run;

/**
 * Cards of a rig that nobody wears: by itself, then across, then to whom it is for. Without a
 * flight computer it cannot hold a point, and its way ends on the tether.
 */
final class UnwornCards {

    private UnwornCards() {}

    static void add(Deck deck) {
        Rig rig = deck.rig();
        WornCards.lay(
                deck,
                CardId.of(CardKind.HANGING),
                "That the rig unloads its line as computed and does not turn or swing.",
                beforeHanging(rig),
                WornCards.HELD,
                WornCards.run(
                        rig, Run.Held.TETHER, false, Ladder.hanging(rig, Ladder.HANGING_DUMMY)));
        WornCards.lay(
                deck,
                CardId.of(CardKind.SCALE),
                "How much the rig lifts where it will be used, read from a scale.",
                Needs.all(CardKind.HANGING),
                WornCards.HELD,
                WornCards.run(rig, Run.Held.SCALE, false, Ladder.scale(rig, false)));
        WornCards.lay(
                deck,
                CardId.of(CardKind.HOP),
                "That it lifts itself by a hand's breadth and sets down softly, on the tether.",
                Needs.all(CardKind.HANGING, CardKind.SCALE),
                WornCards.LIFTED,
                WornCards.run(rig, Run.Held.TETHER, false, Ladder.hop(rig)));
        if (rig.control().kind() == Control.Kind.FLIGHT_COMPUTER) {
            alone(deck);
        }
    }

    private static void alone(Deck deck) {
        Rig rig = deck.rig();
        WornCards.lay(
                deck,
                CardId.of(CardKind.MODULE_HOLD),
                "That it holds a point by itself with nobody near.",
                Needs.all(CardKind.HOP),
                WornCards.LIFTED,
                WornCards.run(rig, Run.Held.NOTHING, false, Ladder.hover(rig, 15)));
        WornCards.lay(
                deck,
                CardId.of(CardKind.MODULE_CROSS),
                "That it crosses to an empty place and stops there within the distance it was told.",
                Needs.all(CardKind.MODULE_HOLD),
                WornCards.LIFTED,
                WornCards.run(rig, Run.Held.NOTHING, false, Ladder.hover(rig, 25)));
        WornCards.lay(
                deck,
                CardId.of(CardKind.TO_WEARER),
                "That it comes to whom it is for and stops before an arm can reach it.",
                Needs.all(CardKind.MODULE_CROSS),
                WornCards.LIFTED,
                WornCards.run(rig, Run.Held.NOTHING, false, Ladder.hover(rig, 25)));
    }

    /** All that is proved with the rig held down, and where its centre of mass is. */
    static Needs beforeHanging(Rig rig) {
        Needs needs =
                Needs.all(CardKind.MASS, CardKind.ALL_FANS)
                        .and(CardKind.ALL_FANS, Programme.WARM)
                        .oneOf(CardKind.CENTRE, CardKind.INERTIA);
        return rig.control().kind() == Control.Kind.FLIGHT_COMPUTER
                ? needs.and(CardKind.INERTIA)
                : needs;
    }
}
