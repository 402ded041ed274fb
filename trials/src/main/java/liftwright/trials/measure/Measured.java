package liftwright.trials.measure;

import java.util.List;
import liftwright.answer.Section;
import liftwright.trials.Reading;

/**
 * What stands on a card for measuring.
 *
 * @param blocks in reading order: procedure, instruments, what should be read, what is good, what
 *     to write back
 * @param readings the same numbers that the blocks show, each with its channel
 */
public record Measured(List<Section.Card.Block> blocks, List<Reading> readings) {

    public Measured {
        blocks = List.copyOf(blocks);
        readings = List.copyOf(readings);
    }
}
