package liftwright.rig;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;

/**
 * How often single parts fail, as the builder knows it; nothing is assumed for a kind without rate.
 *
 * @param byKind failures of one part of the kind in running time, 1/s
 * @param exposure running time over which they are counted, s
 */
public record Rates(Map<PartKind, Quantity> byKind, Quantity exposure) {

    /** Nothing is known; one hour. */
    public static final Rates NONE =
            new Rates(Map.of(), Quantity.exact(3600, new Dimension(0, 0, 1, 0, 0, 0)));

    public Rates {
        byKind = Map.copyOf(byKind);
    }

    /** The rate of one part of that kind, 1/s. */
    public Optional<Quantity> of(PartKind kind) {
        return Optional.ofNullable(byKind.get(kind));
    }

    /** Kinds of parts that fail. */
    public enum PartKind {
        FAN,
        CONTROLLER,
        PACK,
        FUSE,
        RUN,
        JOINT,
        CONTACTOR,
        SENSOR,
        COMPUTER,
        /** The throttle link. */
        LINK,
        /** A signal line or its ground. */
        SIGNAL;

        /** The word in the file. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
