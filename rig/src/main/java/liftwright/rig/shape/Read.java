package liftwright.rig.shape;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem;
import liftwright.rig.Rig;

/**
 * What came of reading a rig file.
 *
 * @param rig the rig; empty when any problem is an error
 * @param problems all of them, in the order of the file
 */
public record Read(Optional<Rig> rig, List<Problem> problems) {

    public Read {
        problems = List.copyOf(problems);
    }
}
