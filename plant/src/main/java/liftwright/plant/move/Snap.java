package liftwright.plant.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import liftwright.plant.body.Axes;
import liftwright.rig.Vec3;
import liftwright.rig.place.Carried;

/** Coordinates in which a part comes to stand in line with something, in the axes of its mount. */
final class Snap {

    /** How near is near enough, m. */
    static final double REACH_M = 8e-3;

    /** Sideways of the mount is sideways of the body where it is off by less. */
    private static final double SIDEWAYS = 1e-9;

    /**
     * @param own a point in the mount's axes, m
     * @param by what is there, in words
     * @param open whether the part may come to stand upon it
     */
    private record Mark(Vec3 own, String by, boolean open) {}

    /**
     * A coordinate that catches.
     *
     * @param own m
     * @param by what is there, in words
     */
    record Caught(double own, String by) {}

    private final List<Mark> marks;
    private final Optional<Caught> middle;

    private Snap(List<Mark> marks, Optional<Caught> middle) {
        this.marks = marks;
        this.middle = middle;
    }

    /** Nothing catches. */
    static Snap none() {
        return new Snap(List.of(), Optional.empty());
    }

    /**
     * What catches one part: others of its kind, their mirror images and the middle plane.
     *
     * @param moving ids of what moves along, which catches nothing
     * @param middle whether the middle plane catches
     */
    static Snap of(Standing standing, Carried part, Set<String> moving, boolean middle) {
        Axes axes = standing.axes(part);
        Axes mirror = axes.mirrored();
        var marks = new ArrayList<Mark>();
        for (Carried other : standing.file().carried()) {
            if (other.kind() != part.kind() || moving.contains(other.id().text())) {
                continue;
            }
            Axes others = standing.axes(other);
            Vec3 place = standing.place(other);
            String id = "“" + other.id().text() + "”";
            if (others.isParallelTo(axes)) {
                marks.add(new Mark(axes.own(place), id, false));
            }
            if (others.isParallelTo(mirror)) {
                marks.add(new Mark(axes.own(place.mirrored()), "the mirror image of " + id, true));
            }
        }
        double sideways = axes.right().y();
        boolean caught = middle && Math.abs(Math.abs(sideways) - 1) < SIDEWAYS;
        return new Snap(
                marks,
                caught
                        ? Optional.of(
                                new Caught(
                                        (0.0 - axes.origin().y()) / sideways, "the middle plane"))
                        : Optional.empty());
    }

    Optional<Caught> forward(Vec3 wanted) {
        return nearest(wanted, Vec3::x, Optional.empty());
    }

    Optional<Caught> right(Vec3 wanted) {
        return nearest(wanted, Vec3::y, middle);
    }

    Optional<Caught> down(Vec3 wanted) {
        return nearest(wanted, Vec3::z, Optional.empty());
    }

    private Optional<Caught> nearest(
            Vec3 wanted, ToDoubleFunction<Vec3> axis, Optional<Caught> plane) {
        double own = axis.applyAsDouble(wanted);
        Optional<Caught> best = plane.filter(p -> Math.abs(p.own() - own) <= REACH_M);
        for (Mark mark : marks) {
            double away = Math.abs(axis.applyAsDouble(mark.own()) - own);
            boolean stoodUpon = !mark.open() && mark.own().minus(wanted).length() < REACH_M;
            double least = best.map(b -> Math.abs(b.own() - own)).orElse(REACH_M);
            if (!stoodUpon && away < least) {
                best = Optional.of(new Caught(axis.applyAsDouble(mark.own()), mark.by()));
            }
        }
        return best;
    }
}
