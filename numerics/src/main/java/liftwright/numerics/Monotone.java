package liftwright.numerics;

import java.util.Arrays;
import java.util.List;

/**
 * What works as long as enough of its elements work: elements joined by "all of" and "any of". An
 * element may stand in several places; that is what makes it a common one. There is no "not", so
 * that mending an element never breaks the whole (a coherent structure of reliability theory).
 */
public sealed interface Monotone {

    /** All of none: works always. */
    Monotone ALWAYS = new All(List.of());

    /** Any of none: never works. */
    Monotone NEVER = new Any(List.of());

    /**
     * One element.
     *
     * @param number from 0
     */
    record Element(int number) implements Monotone {
        public Element {
            if (number < 0) {
                throw new IllegalArgumentException("element " + number);
            }
        }
    }

    /** Works while each part works. */
    record All(List<Monotone> parts) implements Monotone {
        public All {
            parts = List.copyOf(parts);
        }
    }

    /** Works while one part or more works. */
    record Any(List<Monotone> parts) implements Monotone {
        public Any {
            parts = List.copyOf(parts);
        }
    }

    static Monotone element(int number) {
        return new Element(number);
    }

    static Monotone all(Monotone... parts) {
        return new All(Arrays.asList(parts));
    }

    static Monotone any(Monotone... parts) {
        return new Any(Arrays.asList(parts));
    }
}
