package liftwright.plant.hold;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import liftwright.plant.motion.RunawayPath;

/**
 * What was computed of the rig itself, for others that hold the same rig otherwise: more ballast
 * changes no thrust and no climb. Kept by the numbers it depends on and nothing else, so that what
 * is found does not depend on what was asked before. For any number of threads.
 */
public final class HoldMemory {

    /** What is kept at most; beyond it everything is computed anew. */
    private static final int MOST = 20_000;

    private final Map<Numbers, Optional<List<FanAlone>>> fans = new ConcurrentHashMap<>();
    private final Map<Numbers, RunawayPath> paths = new ConcurrentHashMap<>();

    /** Numbers that something depends on, compared one by one. */
    private static final class Numbers {

        private final double[] values;
        private final int hash;

        Numbers(double[] p, int count, double[] more) {
            values = Arrays.copyOf(p, count + more.length);
            System.arraycopy(more, 0, values, count, more.length);
            hash = Arrays.hashCode(values);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Numbers numbers && Arrays.equals(values, numbers.values);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    /** Every fan alone at the first {@code count} numbers of a vector. */
    public Optional<List<FanAlone>> fans(
            double[] p, int count, Supplier<Optional<List<FanAlone>>> otherwise) {
        return kept(fans, new Numbers(p, count, new double[0]), otherwise);
    }

    /**
     * A runaway of the rig with those numbers.
     *
     * @param more what it depends on besides: lines, where it starts, when it is stopped
     */
    public RunawayPath path(double[] p, int count, double[] more, Supplier<RunawayPath> otherwise) {
        return kept(paths, new Numbers(p, count, more), otherwise);
    }

    private static <V> V kept(Map<Numbers, V> map, Numbers key, Supplier<V> otherwise) {
        V known = map.get(key);
        if (known != null) {
            return known;
        }
        V found = otherwise.get();
        if (map.size() < MOST) {
            map.put(key, found);
        }
        return found;
    }
}
