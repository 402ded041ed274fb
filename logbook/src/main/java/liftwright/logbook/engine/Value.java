package liftwright.logbook.engine;

/**
 * One value of an answer. Text is untrusted, like the files it came from: escape it at the door.
 */
public sealed interface Value {

    /** Nothing is there. */
    record None() implements Value {}

    record Truth(boolean is) implements Value {}

    record Whole(long n) implements Value {}

    /**
     * @param x may be infinite or no number where the engine computed so
     */
    record Real(double x) implements Value {}

    record Text(String text) implements Value {}

    /** As a plain text; empty for nothing. */
    default String plain() {
        return switch (this) {
            case None _ -> "";
            case Truth(var is) -> Boolean.toString(is);
            case Whole(var n) -> Long.toString(n);
            case Real(var x) -> Double.toString(x);
            case Text(var text) -> text;
        };
    }
}
