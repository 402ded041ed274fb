package liftwright.flight.sense;

import static liftwright.flight.motion.BodyState.OWN;
import static liftwright.flight.motion.BodyState.QW;

/** What the computer takes for true. */
public final class Estimate {

    /**
     * Place and velocity (scene), quaternion, turn rates (body): the numbers of {@link
     * liftwright.flight.motion.BodyState} in its order.
     */
    public final double[] felt = new double[OWN];

    private boolean leaning = true;
    private boolean level = true;
    private boolean height = true;

    Estimate() {
        felt[QW] = 1;
    }

    void tell(boolean leaningKnown, boolean levelKnown, boolean heightKnown) {
        leaning = leaningKnown;
        level = levelKnown;
        height = heightKnown;
    }

    /** Whether turn rates and lean are known. */
    public boolean knowsLean() {
        return leaning;
    }

    /** Whether velocity and place over ground are known. */
    public boolean knowsPlace() {
        return level;
    }

    /** Whether height and climb are known. */
    public boolean knowsHeight() {
        return height;
    }

    /** Whether all of it is known. */
    public boolean isValid() {
        return leaning && level && height;
    }
}
