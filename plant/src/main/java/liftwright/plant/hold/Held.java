package liftwright.plant.hold;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.motion.RunawayPath;
import liftwright.plant.motion.Stop;

/**
 * What holds a rig, at one vector of its numbers.
 *
 * @param fans every fan at full throttle alone
 * @param extent how far the rig reaches
 * @param massKg of the whole
 * @param stand empty where none is declared
 * @param tether empty where none is declared
 * @param asks all that is asked of both
 */
public record Held(
        List<FanAlone> fans,
        Extent extent,
        double massKg,
        Optional<OnStand> stand,
        Optional<OnTether> tether,
        List<Ask> asks) {

    public Held {
        fans = List.copyOf(fans);
        asks = List.copyOf(asks);
    }

    /**
     * The rig on a stand.
     *
     * @param held numbers of the fans on it, in the rig
     * @param pushes what each of them does to it
     * @param heightM of the middle of thrust, m
     * @param ways every way in which it gives, the weakest first
     */
    public record OnStand(
            List<Integer> held,
            List<Push> pushes,
            StandHold.Floor floor,
            double heightM,
            List<Hold> ways) {

        public OnStand {
            held = List.copyOf(held);
            pushes = List.copyOf(pushes);
            ways = List.copyOf(ways);
        }
    }

    /**
     * The rig on a tether.
     *
     * @param stop when the slowest kill acts
     * @param path of the runaway, with nothing overhead
     */
    public record OnTether(
            TetherNumbers line,
            TetherHold.Hung rig,
            TetherHold.Ran ran,
            Stop stop,
            RunawayPath path) {}

    /** Greatest margin that is told: what nothing loads, or hardly anything, has no other. */
    public static final double MOST_TOLD = 1000;

    /**
     * The least margin of all that is asked, {@link #MOST_TOLD} at most; empty where nothing is
     * asked of what was declared.
     */
    public OptionalDouble margin() {
        return asks.stream()
                .map(Ask::margin)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(margin -> Math.min(margin.getAsDouble(), MOST_TOLD))
                .min();
    }
}
