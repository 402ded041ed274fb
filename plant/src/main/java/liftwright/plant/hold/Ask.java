package liftwright.plant.hold;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing that is asked of what holds a rig.
 *
 * @param what is asked
 * @param over edge over which a stand tips, where it is one
 * @param fans those at full throttle that load it most, by number in the rig; none where it is not
 *     they alone
 * @param load greatest, in the unit of {@link What#unit}, ≥ 0
 * @param capacity load at which it gives; empty where what it rests on was not declared
 * @param factor how many times the load it has to bear
 */
public record Ask(
        What what,
        Optional<Footprint.Edge> over,
        List<Integer> fans,
        double load,
        OptionalDouble capacity,
        double factor) {

    public Ask {
        fans = List.copyOf(fans);
    }

    /** Of what fans do not load alone. */
    static Ask of(What what, double load, OptionalDouble capacity, double factor) {
        return new Ask(what, Optional.empty(), List.of(), load, capacity, factor);
    }

    /**
     * Capacity over load over factor, less 1: at or above 0 it bears what it has to. Infinite where
     * nothing loads it, −1 where it gives by itself; empty where nothing was declared.
     */
    public OptionalDouble margin() {
        if (capacity.isEmpty()) {
            return OptionalDouble.empty();
        }
        double bears = capacity.getAsDouble();
        if (bears <= 0) {
            return OptionalDouble.of(-1);
        }
        return OptionalDouble.of(load > 0 ? bears / load / factor - 1 : Double.POSITIVE_INFINITY);
    }

    /** What a load is measured in. */
    public enum Unit {
        FORCE,
        MOMENT,
        LENGTH,
        SPEED,
        SHARE
    }

    /** What can be asked. */
    public enum What {
        SLIDES(Unit.FORCE),
        TURNS(Unit.MOMENT),
        TIPS(Unit.MOMENT),
        BOLT_PULLED(Unit.FORCE),
        BOLT_SHEARED(Unit.FORCE),
        BOLT_BOTH(Unit.SHARE),
        /** A climb stays below what stands above. */
        HEADROOM(Unit.LENGTH),
        /** What a fall into the line pulls. */
        ANCHOR(Unit.FORCE),
        LINE(Unit.FORCE),
        ARREST(Unit.FORCE),
        FREE_FALL(Unit.LENGTH),
        /** The line stretches less than there is room below. */
        CLEARANCE(Unit.LENGTH),
        /** Speed on the ground after a runaway. */
        LANDING(Unit.SPEED),
        DOWN_LINE(Unit.FORCE),
        /** The line is too short to reach an open intake. */
        INGESTION(Unit.LENGTH),
        SIDE_REACH(Unit.LENGTH),
        GANTRY_TIPS(Unit.MOMENT),
        GANTRY_SLIDES(Unit.FORCE);

        private final Unit unit;

        What(Unit unit) {
            this.unit = unit;
        }

        public Unit unit() {
            return unit;
        }
    }
}
