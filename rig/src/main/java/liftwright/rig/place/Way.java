package liftwright.rig.place;

import liftwright.rig.Vec3;

/** One of the words that say a place, as a direction in the axes of what carries the part. */
enum Way {
    FORWARD("forward", Axis.X, 1),
    BACK("back", Axis.X, -1),
    RIGHT("right", Axis.Y, 1),
    LEFT("left", Axis.Y, -1),
    OUTBOARD("outboard", Axis.Y, 1),
    INBOARD("inboard", Axis.Y, -1),
    DOWN("down", Axis.Z, 1),
    ALONG("along", Axis.Z, 1),
    UP("up", Axis.Z, -1);

    /** An axis of the inside: x forward, y right, z down. */
    enum Axis {
        X,
        Y,
        Z;

        double of(Vec3 v) {
            return switch (this) {
                case X -> v.x();
                case Y -> v.y();
                case Z -> v.z();
            };
        }
    }

    private final String key;
    private final Axis axis;
    private final int sign;

    Way(String key, Axis axis, int sign) {
        this.key = key;
        this.axis = axis;
        this.sign = sign;
    }

    String key() {
        return key;
    }

    Axis axis() {
        return axis;
    }

    /** +1 where the word points along its axis on such a carrier, else −1. */
    int sign(Carriage carriage) {
        return switch (this) {
            case OUTBOARD, INBOARD -> sign * carriage.outboard();
            case FORWARD, BACK, RIGHT, LEFT, DOWN, ALONG, UP -> sign;
        };
    }

    /** Whether the word is one for a place on such a carrier. */
    boolean isUsable(Carriage carriage) {
        return switch (this) {
            case OUTBOARD, INBOARD -> carriage.outboard() != 0;
            case ALONG -> carriage.alongIsLength();
            case FORWARD, BACK, RIGHT, LEFT, DOWN, UP -> true;
        };
    }
}
