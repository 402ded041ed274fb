package liftwright.plant.hold;

import java.util.Optional;

/**
 * One way in which a stand gives, against what loads it that way most.
 *
 * @param way how it gives
 * @param over edge over which, where it tips or pulls at bolts about an edge
 * @param worst the subset of fans at full throttle that loads it most: N for sliding and bolts, N·m
 *     for turning and tipping, 1 for a bolt's share
 * @param capacity load at which it gives, weight and floor included, in the same unit; below 0
 *     where it gives by itself
 */
public record Hold(Way way, Optional<Footprint.Edge> over, Subset worst, double capacity) {

    /** How a stand gives. */
    public enum Way {
        SLIDES,
        TURNS,
        TIPS,
        BOLT_PULLED,
        BOLT_SHEARED,
        BOLT_BOTH
    }

    /**
     * How many times the full thrust of the worst subset it takes; infinite where nothing loads it,
     * 0 where it gives by itself.
     */
    public double times() {
        if (capacity <= 0) {
            return 0;
        }
        return worst.load() > 0 ? capacity / worst.load() : Double.POSITIVE_INFINITY;
    }
}
