package liftwright.plant.balance;

import java.util.Optional;
import liftwright.plant.body.ArmFrame;
import liftwright.rig.Exertion;
import liftwright.rig.Vec3;

/** An axis about which an arm's joint is held; positive is the way its angle grows. */
public enum ArmJoint {
    SHOULDER_FLEXION(0, Exertion.SHOULDER_FLEXION, Exertion.SHOULDER_EXTENSION),
    SHOULDER_ABDUCTION(1, Exertion.SHOULDER_ABDUCTION, Exertion.SHOULDER_ADDUCTION),
    SHOULDER_ROTATION(2, Exertion.SHOULDER_OUTWARD, Exertion.SHOULDER_INWARD),
    ELBOW_FLEXION(0, Exertion.ELBOW_FLEXION, Exertion.ELBOW_EXTENSION),
    /** To the side of the forearm: bones and ligaments hold it, no muscle does. */
    ELBOW_ACROSS(1),
    /** About the forearm: what turns the strapped forearm in its sleeve of muscle. */
    ELBOW_ALONG(2);

    private final int axis;
    private final Optional<Exertion> positive;
    private final Optional<Exertion> negative;

    ArmJoint(int axis, Exertion positive, Exertion negative) {
        this.axis = axis;
        this.positive = Optional.of(positive);
        this.negative = Optional.of(negative);
    }

    ArmJoint(int axis) {
        this.axis = axis;
        positive = Optional.empty();
        negative = Optional.empty();
    }

    /** What the wearer must exert for a moment of this sign; empty where no muscle holds it. */
    public Optional<Exertion> exertion(double heldNm) {
        return heldNm < 0 ? negative : positive;
    }

    /** Whether the shoulder is what is held. */
    public boolean isOfShoulder() {
        return switch (this) {
            case SHOULDER_FLEXION, SHOULDER_ABDUCTION, SHOULDER_ROTATION -> true;
            case ELBOW_FLEXION, ELBOW_ACROSS, ELBOW_ALONG -> false;
        };
    }

    /** The axis in rig axes. */
    Vec3 of(ArmFrame arm) {
        return isOfShoulder() ? arm.shoulderAxes().get(axis) : arm.elbowAxes().get(axis);
    }
}
