package liftwright.plant.body;

import liftwright.plant.parameters.ParameterRows;
import liftwright.rig.Rig;
import liftwright.rig.Wearer;

/** The wearer's sizes and how arms, legs and trunk are held. */
record Posture(Arms arms, Stance stance, Sizes sizes) {

    static Posture declare(Rig rig, Wearer wearer, ParameterRows table) {
        Sizes sizes = Sizes.declare(wearer, table);
        return new Posture(
                Arms.declare(rig, wearer, sizes, table), Stance.declare(rig, wearer, table), sizes);
    }
}
