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

    private RefereeDraw(Optional<RandomGenerator> random, String halved) {
        this.random = random;
        this.halved = halved;
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

    /**
     * In the declared unit. A value that each part draws for itself is drawn anew at every call.
     */
    double of(String name, Doubtful declared) {
        if (random.isEmpty()) {
            return declared.value();
        }
        double narrowed = name.equals(halved) ? 0.5 : 1;
        if (declared.each()) {
            return declared.draw(random.get(), narrowed);
        }
        return shared.computeIfAbsent(name, _ -> declared.draw(random.get(), narrowed));
    }
}
