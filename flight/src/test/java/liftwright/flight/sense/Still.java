package liftwright.flight.sense;

import liftwright.flight.motion.BodyState;
import liftwright.physics.Gravity;

/** A rig that hovers still, and what it feels. */
final class Still {

    static final double[] FELT = {0, 0, -Gravity.STANDARD_MPS2};
    static final double[] NO_ROTORS = {};

    private Still() {}

    static BodyState at(double heightM) {
        var state = new BodyState();
        state.rest(0, 0, heightM, 0);
        return state;
    }
}
