package liftwright.trials.programme;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.Fan;
import liftwright.rig.Restraint;
import liftwright.rig.Rig;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Run;

/** Cards of a rig that somebody wears, each first with dead mass in place of the wearer. */
final class WornCards {

    /** Questions that have to be answered before fans lift towards somebody's weight. */
    static final Set<String> HELD = Set.of("heat", "balance", "restraint");

    /** The same where thrust is more than weight. */
    static final Set<String> LIFTED =
            Set.of("lift", "endurance", "heat", "balance", "failures", "restraint");

    private WornCards() {}

    static void add(Deck deck) {
        hanging(deck);
        scale(deck);
        hop(deck);
        free(deck);
    }

    private static void hanging(Deck deck) {
        Rig rig = deck.rig();
        lay(
                deck,
                new CardId(CardKind.HANGING, Programme.DUMMY),
                "That the rig unloads its line as computed and does not turn or swing, with dead mass"
                        + " as heavy as the wearer in the harness.",
                UnwornCards.beforeHanging(rig),
                HELD,
                run(rig, Run.Held.TETHER, false, Ladder.hanging(rig, Ladder.HANGING_DUMMY)));
        lay(
                deck,
                CardId.of(CardKind.HANGING),
                "How it is for the wearer: how arms, harness and line feel, and whether the rig"
                        + " answers, with thrust always below weight.",
                Needs.none().and(CardKind.HANGING, Programme.DUMMY),
                with("failures"),
                run(rig, Run.Held.TETHER, true, Ladder.hanging(rig, Ladder.HANGING_WORN)));
    }

    /** The legs must never be so light that the wearer can no longer step against a push. */
    private static void scale(Deck deck) {
        Rig rig = deck.rig();
        boolean worn =
                rig.restraint()
                        .platform()
                        .map(platform -> platform.under() == Restraint.Under.WEARER)
                        .orElse(true);
        lay(
                deck,
                CardId.of(CardKind.SCALE),
                "How much the rig lifts where it will be used, read from a scale.",
                worn
                        ? Needs.all(CardKind.HANGING)
                        : Needs.none().and(CardKind.HANGING, Programme.DUMMY),
                worn ? with("failures") : HELD,
                run(rig, Run.Held.SCALE, worn, Ladder.scale(rig, worn)));
    }

    private static void hop(Deck deck) {
        Rig rig = deck.rig();
        lay(
                deck,
                new CardId(CardKind.HOP, Programme.DUMMY),
                "That the rig lifts dead mass as heavy as the wearer, and comes down into its lines as"
                        + " computed.",
                Needs.all(CardKind.SCALE).and(CardKind.HANGING, Programme.DUMMY),
                LIFTED,
                run(rig, Run.Held.TETHER, false, Ladder.hop(rig)));
        lay(
                deck,
                CardId.of(CardKind.HOP),
                "That it lifts its wearer by a hand's breadth and sets down softly, on the tether.",
                Needs.all(CardKind.HANGING, CardKind.SCALE).and(CardKind.HOP, Programme.DUMMY),
                LIFTED,
                run(rig, Run.Held.TETHER, true, Ladder.hop(rig)));
    }

    private static void free(Deck deck) {
        Rig rig = deck.rig();
        lay(
                deck,
                CardId.of(CardKind.FREE_HOVER),
                "That it carries its wearer low over mats with nothing that holds it.",
                Needs.all(CardKind.HOP),
                LIFTED,
                run(rig, Run.Held.NOTHING, true, Ladder.hover(rig, 10)));
    }

    private static Set<String> with(String question) {
        Set<String> all = new java.util.TreeSet<>(HELD);
        all.add(question);
        return all;
    }

    /** A card of the whole rig, which rests on everything. */
    static void lay(
            Deck deck, CardId id, String purpose, Needs needs, Set<String> questions, Run run) {
        deck.turning(
                id,
                purpose,
                needs.groups(),
                questions,
                Bases.whole(),
                Practice.of(id.kind()),
                Optional.of(run));
    }

    static Run run(Rig rig, Run.Held held, boolean worn, List<Run.Step> steps) {
        return new Run(rig.fans().stream().map(Fan::id).toList(), held, worn, steps);
    }
}
