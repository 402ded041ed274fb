package liftwright.review.referee;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;

/** One draw of every declared value, or the declared values themselves. */
final class RefereeDraw {

    private final Optional<RandomGenerator> random;
    private final String halved;
    private final Map<String, Double> shared = new HashMap<>();

    /** The only input that is drawn, or that stands at an end of its band; empty for all. */
    private final String only;

    /** The end of its band at which that one stands; 0 where it is drawn. */
    private final int side;

    private RefereeDraw(Optional<RandomGenerator> random, String halved) {
        this(random, halved, "", 0);
    }

    private RefereeDraw(Optional<RandomGenerator> random, String halved, String only, int side) {
        this.random = random;
        this.halved = halved;
        this.only = only;
        this.side = side;
    }

    /** The declared values with one at the upper (1) or lower (−1) end of its 95 % band. */
    static RefereeDraw shifted(String name, int side) {
        return new RefereeDraw(Optional.empty(), "", name, side);
    }

    /** One input drawn, all others as declared. */
    static RefereeDraw alone(RandomGenerator random, String name) {
        return new RefereeDraw(Optional.of(random), "", name, 0);
    }

    static RefereeDraw nominal() {
        return new RefereeDraw(Optional.empty(), "");
    }

    /**
     * @param halved name of the input whose doubt is halved; empty for none
     */
    static RefereeDraw of(RandomGenerator random, String halved) {
        return new RefereeDraw(Optional.of(random), halved);
    }

    /** Whether nothing is drawn. */
    boolean asDeclared() {
        return random.isEmpty();
    }

    /**
     * In the declared unit. A value that each part draws for itself is drawn anew at every call.
     */
    double of(String name, Doubtful declared) {
        if (side != 0 && name.equals(only)) {
            return declared.value() * (1 + (side > 0 ? declared.plus() : -declared.minus()));
        }
        if (random.isEmpty() || (!only.isEmpty() && !name.equals(only))) {
            return declared.value();
        }
        double narrowed = name.equals(halved) ? 0.5 : 1;
        if (declared.each()) {
            return declared.draw(random.get(), narrowed);
        }
        return shared.computeIfAbsent(name, _ -> declared.draw(random.get(), narrowed));
    }
}
