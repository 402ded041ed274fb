package liftwright.trials.measure;

import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;

/** An axis of a body, in the words of the rig file. */
enum Axis {
    FORWARD("forward"),
    RIGHT("right"),
    /** Inside, down counts. */
    UP("up");

    private final String word;

    Axis(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    /** How far a point lies that way, m. */
    double along(Vec3 point) {
        return switch (this) {
            case FORWARD -> point.x();
            case RIGHT -> point.y();
            case UP -> -point.z();
        };
    }

    /** Moment of inertia about this axis through the centre, kg·m². */
    double about(Inertia inertia) {
        return switch (this) {
            case FORWARD -> inertia.xx();
            case RIGHT -> inertia.yy();
            case UP -> inertia.zz();
        };
    }

    /** The turn about it, as the trade calls it. */
    String turn() {
        return switch (this) {
            case FORWARD -> "roll";
            case RIGHT -> "pitch";
            case UP -> "yaw";
        };
    }
}
