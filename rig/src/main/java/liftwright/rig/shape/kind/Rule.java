package liftwright.rig.shape.kind;

import java.util.List;

/** What holds between the keys of one section. */
public sealed interface Rule {

    /** Any one of the keys, but not two of them. */
    record AtMostOne(List<Key<?>> keys) implements Rule {
        public AtMostOne {
            keys = List.copyOf(keys);
        }
    }

    /** One of the keys must stand there. */
    record AtLeastOne(List<Key<?>> keys) implements Rule {
        public AtLeastOne {
            keys = List.copyOf(keys);
        }
    }

    /** Where {@code key} stands, the others must stand too. */
    record Needs(Key<?> key, List<Key<?>> others) implements Rule {
        public Needs {
            others = List.copyOf(others);
        }
    }

    /** {@code key} has a meaning only where one of the others stands. */
    record OnlyWith(Key<?> key, List<Key<?>> others) implements Rule {
        public OnlyWith {
            others = List.copyOf(others);
        }
    }

    static Rule onlyWith(Key<?> key, Key<?>... others) {
        return new OnlyWith(key, List.of(others));
    }

    static Rule atMostOne(Key<?>... keys) {
        return new AtMostOne(List.of(keys));
    }

    static Rule atLeastOne(Key<?>... keys) {
        return new AtLeastOne(List.of(keys));
    }

    static Rule needs(Key<?> key, Key<?>... others) {
        return new Needs(key, List.of(others));
    }
}
