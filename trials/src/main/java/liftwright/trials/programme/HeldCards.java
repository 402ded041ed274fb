package liftwright.trials.programme;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Run;
import liftwright.trials.Topic;

/** Cards of fans on the rig, held down, nobody in it. */
final class HeldCards {

    private HeldCards() {}

    static void add(Deck deck) {
        Rig rig = deck.rig();
        Set<String> mounts = new LinkedHashSet<>();
        rig.fans().forEach(fan -> mounts.add(fan.mount().name()));
        mounts.forEach(mount -> pod(deck, mount));
        deck.proof(
                new CardId(CardKind.KILL, Programme.ALL),
                "That every way to make the rig dead stops every fan, at low throttle.",
                Needs.all(CardKind.KILL).and(CardKind.POD, mounts).groups(),
                Bases.run(),
                Practice.of(CardKind.KILL),
                onStand(rig.fans(), Ladder.kill()));
        deck.turning(
                CardId.of(CardKind.ALL_FANS),
                "What all fans give together, what they take from the packs, and that nothing shakes"
                        + " loose.",
                Needs.all(CardKind.MASS, CardKind.FRAME)
                        .and(CardKind.POD, mounts)
                        .and(CardKind.KILL, Programme.ALL)
                        .groups(),
                Set.of("restraint"),
                Bases.run(Topic.MASS, Topic.PLACE, Topic.HOLD, Topic.PEOPLE),
                Practice.of(CardKind.ALL_FANS),
                Optional.of(onStand(rig.fans(), Ladder.together())));
        deck.turning(
                new CardId(CardKind.ALL_FANS, Programme.WARM),
                "How warm wires, joints, controllers, motors and cells get in a run as long as the"
                        + " hover that is asked for.",
                Needs.all(CardKind.ALL_FANS).groups(),
                Set.of("heat", "restraint"),
                Bases.run(Topic.DEMAND),
                new Practice.Terms(60, 3, Optional.of(90)),
                Optional.of(onStand(rig.fans(), Ladder.warm(rig))));
    }

    private static void pod(Deck deck, String mount) {
        List<Fan> fans =
                deck.rig().fans().stream().filter(fan -> fan.mount().name().equals(mount)).toList();
        Set<String> types = new LinkedHashSet<>();
        fans.forEach(fan -> types.add(fan.type().name()));
        deck.turning(
                new CardId(CardKind.POD, mount),
                "That the fans of this mount run together as they ran alone, on the wires and packs"
                        + " of the rig.",
                Needs.all(CardKind.FRAME)
                        .and(CardKind.THRUST, types)
                        .and(CardKind.LAG, types)
                        .and(CardKind.CELLS, deck.feeding().cells(fans))
                        .groups(),
                Set.of(),
                Bases.run(deck.feeding(), fans, Topic.PLACE),
                Practice.of(CardKind.POD),
                Optional.of(onStand(fans, Ladder.together())));
    }

    private static Run onStand(List<Fan> fans, List<Run.Step> steps) {
        return new Run(fans.stream().map(Fan::id).toList(), Run.Held.STAND, false, steps);
    }
}
