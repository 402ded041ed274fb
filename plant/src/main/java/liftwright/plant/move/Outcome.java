package liftwright.plant.move;

import java.util.List;
import liftwright.rig.Change;
import liftwright.rig.Vec3;

/** What came of a wish. */
public sealed interface Outcome {

    /**
     * It can be done; nothing has been changed yet.
     *
     * @param changes of the file; none where the part is there already
     * @param place where the part will be, read from the changed file, m
     * @param sentence what the file will say, and what else moves
     * @param parts ids of all parts that move, and mounts as {@code mounts/NAME}
     */
    record Moved(List<Change> changes, Vec3 place, String sentence, List<String> parts)
            implements Outcome {
        public Moved {
            changes = List.copyOf(changes);
            parts = List.copyOf(parts);
        }
    }

    /**
     * It cannot be done.
     *
     * @param why a sentence for the one who asked
     */
    record Stays(String why) implements Outcome {}
}
