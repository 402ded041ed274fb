package liftwright.review.remedy;

import java.util.Set;
import liftwright.rig.RigPath;

/**
 * What reaches a limit too soon: where remedies of heat begin.
 *
 * @param wires places in the rig file of runs that are too hot
 * @param joints of joints
 * @param fuses of fuses that open
 * @param fans whether controllers or motors are too hot
 * @param cells whether cells are too hot, or packs reach a limit of charge or voltage
 */
public record Hot(
        Set<RigPath> wires, Set<RigPath> joints, Set<RigPath> fuses, boolean fans, boolean cells) {

    public Hot {
        wires = Set.copyOf(wires);
        joints = Set.copyOf(joints);
        fuses = Set.copyOf(fuses);
    }
}
