package liftwright.plant.identify;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Results made before. A search for remedies assembles one rig hundreds of times with the same
 * tables; a fit depends on nothing but its key, so remembering it changes no result. Safe from any
 * thread.
 */
final class Remembered<K, V> {

    private static final int KEPT = 32;

    private final Map<K, V> made =
            new LinkedHashMap<>(KEPT, 0.75f, true) {
                private static final long serialVersionUID = 1;

                @Override
                protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                    return size() > KEPT;
                }
            };

    V get(K key, Function<K, V> maker) {
        synchronized (made) {
            V known = made.get(key);
            if (known == null) {
                known = maker.apply(key);
                made.put(key, known);
            }
            return known;
        }
    }
}
