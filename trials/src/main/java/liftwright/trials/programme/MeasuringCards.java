package liftwright.trials.programme;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import liftwright.rig.CellType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Topic;

/** Cards on which nothing turns: what the rig is, before what it does. */
final class MeasuringCards {

    private MeasuringCards() {}

    static void add(Deck deck) {
        deck.still(
                CardId.of(CardKind.MASS),
                "What every part, the whole rig and whoever wears it weigh.",
                Needs.none().groups(),
                Bases.of(EnumSet.of(Topic.MASS, Topic.SERIAL)),
                Practice.of(CardKind.MASS));
        deck.still(
                CardId.of(CardKind.CENTRE),
                "Where the centre of mass is, forward, right and up.",
                Needs.all(CardKind.MASS).groups(),
                Bases.of(EnumSet.of(Topic.MASS, Topic.PLACE)),
                Practice.of(CardKind.CENTRE));
        deck.still(
                CardId.of(CardKind.INERTIA),
                "How slowly the rig turns about each axis. Hung from two points, it tells its centre"
                        + " of mass too.",
                Needs.all(CardKind.MASS).groups(),
                Bases.of(EnumSet.of(Topic.MASS, Topic.PLACE, Topic.FAN)),
                Practice.of(CardKind.INERTIA));
        deck.rig().cellTypes().stream()
                .map(CellType::name)
                .filter(name -> isUsed(deck.rig(), name))
                .forEach(name -> cells(deck, name));
        deck.still(
                CardId.of(CardKind.FRAME),
                "Which tones the frame rings with, and so at which fan speeds it would shake.",
                Needs.none().groups(),
                Bases.of(
                        EnumSet.of(
                                Topic.MASS,
                                Topic.PLACE,
                                Topic.FAN,
                                Topic.PACK,
                                Topic.WIRING,
                                Topic.SITE,
                                Topic.CONTROL)),
                Practice.of(CardKind.FRAME));
        deck.still(
                CardId.of(CardKind.THROTTLE),
                "That both ends of the throttle are taught, that every fan answers to its own"
                        + " channel, and what fans do when the signal is lost or stands still.",
                Needs.none().groups(),
                Bases.of(EnumSet.of(Topic.CONTROL, Topic.SERIAL, Topic.FAN)),
                Practice.of(CardKind.THROTTLE));
    }

    private static boolean isUsed(Rig rig, String cell) {
        return rig.packs().stream().anyMatch(pack -> pack.cell().name().equals(cell));
    }

    private static void cells(Deck deck, String cell) {
        Set<String> parts = new HashSet<>(Set.of(cell));
        for (Pack pack : deck.rig().packs()) {
            if (pack.cell().name().equals(cell)) {
                parts.add(pack.id().text());
            }
        }
        deck.still(
                new CardId(CardKind.CELLS, cell),
                "What the cells of every pack hold, how evenly they rest and how far they sag.",
                Needs.none().groups(),
                Bases.of(EnumSet.of(Topic.PACK, Topic.SERIAL, Topic.SITE), parts),
                Practice.of(CardKind.CELLS));
    }
}
