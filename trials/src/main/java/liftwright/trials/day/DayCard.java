package liftwright.trials.day;

import java.util.List;
import java.util.Map;
import liftwright.trials.Abort;
import liftwright.trials.Planned;
import liftwright.trials.Rung;

/**
 * A card as it stands this morning.
 *
 * @param planned what it is
 * @param passed whether its pass still stands
 * @param closedBy what keeps it closed whatever is done today: findings, what is not declared; in
 *     words. Its needs and the kills are not among it
 * @param chargePerRun of each pack, share of full that one run takes; empty where nothing runs
 * @param aborts where to stop in the air and on the packs of today
 */
public record DayCard(
        Planned planned,
        boolean passed,
        List<String> closedBy,
        Map<String, Double> chargePerRun,
        List<Abort> aborts) {

    public DayCard {
        closedBy = List.copyOf(closedBy);
        chargePerRun = Map.copyOf(chargePerRun);
        aborts = List.copyOf(aborts);
        if (chargePerRun.values().stream().anyMatch(share -> !(share >= 0))) {
            throw new IllegalArgumentException("a run takes charge: " + planned.id());
        }
    }

    /** Whether a fan turns, also on a card whose run is not laid out in steps. */
    boolean turns() {
        return turns(planned);
    }

    static boolean turns(Planned card) {
        return card.run().isPresent() || card.id().kind().rung() != Rung.MEASURED;
    }

    boolean runs() {
        return planned.run().isPresent();
    }
}
