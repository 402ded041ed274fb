package liftwright.plant.identify;

import java.util.LinkedHashMap;
import java.util.Map;
import liftwright.rig.FanType;
import liftwright.rig.table.BenchTable;

/**
 * Fits made before. A search for remedies assembles one rig hundreds of times with the same tables;
 * a fit depends on nothing but its key, so remembering it changes no result.
 */
public final class FanFits {

    private static final int KEPT = 32;

    private record Key(BenchTable table, FanPriors priors) {}

    private static final Map<Key, FanFit> MADE =
            new LinkedHashMap<>(KEPT, 0.75f, true) {
                private static final long serialVersionUID = 1;

                @Override
                protected boolean removeEldestEntry(Map.Entry<Key, FanFit> eldest) {
                    return size() > KEPT;
                }
            };

    private FanFits() {}

    /** {@link FanFit#of(BenchTable, FanType)}, made once. Safe from any thread. */
    public static FanFit of(BenchTable table, FanType type) {
        Key key = new Key(table, FanPriors.of(type));
        synchronized (MADE) {
            FanFit known = MADE.get(key);
            if (known == null) {
                known = FanFit.of(table, type);
                MADE.put(key, known);
            }
            return known;
        }
    }
}
