package liftwright.review;

import liftwright.plant.balance.Allocation;
import liftwright.rig.Vec3;

/** The three ways to turn, with words from the wearer's point of view. */
enum Turn {
    ROLL(0, "roll", "rolls right side down", "rolls left side down", "30°", Math.PI / 6),
    PITCH(1, "pitch", "leans back", "leans forward", "30°", Math.PI / 6),
    YAW(2, "yaw", "turns to the right", "turns to the left", "a quarter turn", Math.PI / 2);

    private final int index;
    private final String word;
    private final String positive;
    private final String negative;
    private final String angleWords;
    private final double angleRad;

    Turn(
            int index,
            String word,
            String positive,
            String negative,
            String angleWords,
            double angleRad) {
        this.index = index;
        this.word = word;
        this.positive = positive;
        this.negative = negative;
        this.angleWords = angleWords;
        this.angleRad = angleRad;
    }

    /** From 0, in the order above. */
    int index() {
        return index;
    }

    String word() {
        return word;
    }

    /** In a sentence about the rig: it … */
    String verb() {
        return switch (this) {
            case ROLL -> "rolls";
            case PITCH -> "pitches";
            case YAW -> "turns";
        };
    }

    /** What the wearer sees of a moment or acceleration of this sign. */
    String seen(double signed) {
        return signed < 0 ? negative : positive;
    }

    /** The angle whose time is told, in words. */
    String angleWords() {
        return angleWords;
    }

    double angleRad() {
        return angleRad;
    }

    /** Component of a moment about the body's axes. */
    double of(Vec3 v) {
        return switch (this) {
            case ROLL -> v.x();
            case PITCH -> v.y();
            case YAW -> v.z();
        };
    }

    /** The same axis for a flight computer. */
    Allocation.Axis axis() {
        return switch (this) {
            case ROLL -> Allocation.Axis.ROLL;
            case PITCH -> Allocation.Axis.PITCH;
            case YAW -> Allocation.Axis.YAW;
        };
    }

    /** Field of a moment about this axis. */
    String momentField() {
        return switch (this) {
            case ROLL -> "roll-moment";
            case PITCH -> "pitch-moment";
            case YAW -> "yaw-moment";
        };
    }
}
