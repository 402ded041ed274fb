package liftwright.app.bay;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * JSON as it came in. Whoever asks for a member gets it or the request is refused with a sentence
 * that names it.
 */
sealed interface Json {

    /** A text without half characters. */
    record Text(String value) implements Json {}

    /** A finite number. */
    record Amount(double value) implements Json {}

    /** True or false. */
    record Truth(boolean value) implements Json {}

    /** The word null. */
    record Nothing() implements Json {}

    /** A list. */
    record Items(List<Json> values) implements Json {
        public Items {
            values = List.copyOf(values);
        }
    }

    /** An object: no name twice, in the order written. */
    record Members(Map<String, Json> values) implements Json {

        /** The member as text. */
        String text(String name) {
            return of(name).asText(name);
        }

        /** The member as text, where it stands. */
        Optional<String> optionalText(String name) {
            return optional(name).map(value -> value.asText(name));
        }

        /** The member as a finite number. */
        double number(String name) {
            if (of(name) instanceof Amount(double value)) {
                return value;
            }
            throw wrong(name, "a number");
        }

        /** The member as a whole number from 0. */
        int whole(String name) {
            double value = number(name);
            if (value < 0 || value > Integer.MAX_VALUE || value != Math.rint(value)) {
                throw wrong(name, "a whole number from 0");
            }
            return (int) value;
        }

        /** The member as true or false. */
        boolean truth(String name) {
            if (of(name) instanceof Truth(boolean value)) {
                return value;
            }
            throw wrong(name, "true or false");
        }

        /** The members of a member. */
        Members members(String name) {
            return of(name).asMembers(name);
        }

        /** The items of a member. */
        List<Json> items(String name) {
            if (of(name) instanceof Items(List<Json> values)) {
                return values;
            }
            throw wrong(name, "a list");
        }

        /** The items of a member, each a text. */
        List<String> texts(String name) {
            return items(name).stream().map(item -> item.asText(name)).toList();
        }

        /** A member, where it stands and is not null. */
        Optional<Json> optional(String name) {
            return Optional.ofNullable(values.get(name)).filter(v -> !(v instanceof Nothing));
        }

        private Json of(String name) {
            return optional(name)
                    .orElseThrow(
                            () -> FaultException.badRequest("The member " + name + " is missing."));
        }
    }

    /**
     * This as text.
     *
     * @param name of it, for the fault
     */
    default String asText(String name) {
        if (this instanceof Text(String value)) {
            return value;
        }
        throw wrong(name, "a text");
    }

    /**
     * This as an object.
     *
     * @param name of it, for the fault
     */
    default Members asMembers(String name) {
        if (this instanceof Members members) {
            return members;
        }
        throw wrong(name, "an object");
    }

    private static FaultException wrong(String name, String expected) {
        return FaultException.badRequest("The member " + name + " is not " + expected + ".");
    }
}
