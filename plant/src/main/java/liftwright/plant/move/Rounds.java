package liftwright.plant.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.rig.Vec3;
import liftwright.rig.place.PlaceText;

/**
 * How wished coordinates become written ones: one that hardly changes stays, one that is caught is
 * exact, and what is left is rounded so that the number in the file is.
 */
final class Rounds {

    /** A coordinate that changes by less keeps its number, m. */
    private static final double STAYS_M = 0.25e-3;

    /** Longest step of rounding when snapping: 5 mm, a quarter of an inch, m. */
    private static final double COARSE_M = 6.4e-3;

    /** The same when not: 1 mm, 0.05 in, m. */
    private static final double FINE_M = 1.3e-3;

    /** How finely a place is written. */
    enum Grain {
        SNAP,
        FREE,
        /** The place of a mirror image follows its original to the last digit written. */
        EXACT
    }

    private final Grain grain;
    private final Snap snap;
    private final List<String> caught = new ArrayList<>();

    Rounds(Grain grain, Snap snap) {
        this.grain = grain;
        this.snap = snap;
    }

    /** What caught coordinates, in words, none twice. */
    List<String> caught() {
        return caught.stream().distinct().toList();
    }

    /**
     * The place to come to.
     *
     * @param now where it is, in the axes of its mount, m
     * @param wanted where it is wished, m
     * @param zero where it would be if the file said 0, m
     * @param text where its numbers are written
     */
    Vec3 place(Vec3 now, Vec3 wanted, Vec3 zero, PlaceText text) {
        Vec3 steps = text.steps(grain == Grain.SNAP ? COARSE_M : FINE_M);
        return new Vec3(
                one(now.x(), wanted.x(), zero.x(), steps.x(), snap.forward(wanted)),
                one(now.y(), wanted.y(), zero.y(), steps.y(), snap.right(wanted)),
                one(now.z(), wanted.z(), zero.z(), steps.z(), snap.down(wanted)));
    }

    private double one(
            double now, double wanted, double zero, double step, Optional<Snap.Caught> mark) {
        if (Math.abs(wanted - now) < (grain == Grain.EXACT ? 0 : STAYS_M)) {
            return now;
        }
        if (grain == Grain.SNAP && mark.isPresent()) {
            caught.add(mark.get().by());
            return mark.get().own();
        }
        return grain == Grain.EXACT ? wanted : zero + Math.rint((wanted - zero) / step) * step;
    }
}
