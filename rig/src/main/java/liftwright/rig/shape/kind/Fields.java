package liftwright.rig.shape.kind;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What one map of the file states, key by key. */
public final class Fields {

    private final Section section;
    private final Spot spot;
    private final Map<String, Stated<?>> stated;
    private final Set<String> unread;

    /**
     * @param unread keys that stand there with a value that could not be read
     */
    Fields(Section section, Spot spot, Map<String, Stated<?>> stated, Set<String> unread) {
        this.section = section;
        this.spot = spot;
        this.stated = Collections.unmodifiableMap(stated);
        this.unread = Set.copyOf(unread);
    }

    /** A map that says nothing, for a section that is not written. */
    public static Fields none(Section section, Spot spot) {
        return new Fields(section, spot, Map.of(), Set.of());
    }

    public Section section() {
        return section;
    }

    public Spot spot() {
        return spot;
    }

    /** Whether the key is written, even with a value that could not be read. */
    public boolean has(Key<?> key) {
        return stated.containsKey(key.name()) || unread.contains(key.name());
    }

    /** Whether the key is written with a value that could not be read. */
    public boolean failed(Key<?> key) {
        return unread.contains(key.name());
    }

    public Spot spotOf(Key<?> key) {
        Stated<?> value = stated.get(key.name());
        return value == null ? spot.missing(key.name()) : value.spot();
    }

    public <T> Optional<Stated<T>> stated(Key<T> key) {
        if (!Objects.equals(section.byName().get(key.name()), key)) {
            throw new IllegalArgumentException(section.name() + " has no such key: " + key.name());
        }
        return Optional.ofNullable(cast(stated.get(key.name())));
    }

    public <T> Optional<T> get(Key<T> key) {
        return stated(key).map(Stated::value);
    }

    /** These values, and those of {@code other} where these leave a key open. */
    public Fields over(Fields other, Set<String> exceptKeys) {
        var both = new LinkedHashMap<String, Stated<?>>();
        other.stated.forEach(
                (name, value) -> {
                    if (!exceptKeys.contains(name)) {
                        both.put(name, value);
                    }
                });
        both.putAll(stated);
        return new Fields(section, spot, both, unread);
    }

    /** Only a section’s reading puts values in, each under the key that read it. */
    @SuppressWarnings("unchecked")
    private static <T> @Nullable Stated<T> cast(@Nullable Stated<?> value) {
        return (Stated<T>) value;
    }
}
