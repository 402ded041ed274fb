package liftwright.trials;

import java.util.List;
import liftwright.answer.Section;

/**
 * A card with all that was computed for it.
 *
 * @param planned what it is
 * @param predicted readings of each step, in the order of the steps; empty where nothing runs
 * @param aborts where to stop
 * @param blocks what is printed, in order: set-up, instruments, steps, aborts, people, start list,
 *     emergency, sign-off
 */
public record TestCard(
        Planned planned,
        List<List<Reading>> predicted,
        List<Abort> aborts,
        List<Section.Card.Block> blocks) {

    public TestCard {
        predicted = predicted.stream().map(List::copyOf).toList();
        aborts = List.copyOf(aborts);
        blocks = List.copyOf(blocks);
    }
}
