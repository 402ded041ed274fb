package liftwright.rig.shape.kind;

import java.util.Optional;

/**
 * One key of the format: the row of the table that reader, schema, hints and reference page are
 * made from.
 *
 * @param name as written
 * @param kind what its value is
 * @param need what holds without it
 * @param meaning one sentence for the reference page
 * @param example a value as it would be written
 * @param usedBy the first question that reads it; empty while none does
 */
public record Key<T>(
        String name,
        Kind<T> kind,
        Need need,
        String meaning,
        String example,
        Optional<Question> usedBy) {

    /** The questions that keys may be read by. */
    public enum Question {
        LIFT(true),
        ENDURANCE(true),
        BALANCE(true),
        HEAT(true),
        FAILURES(true),
        RESTRAINT(true),
        FLIGHT(true);

        private final boolean asked;

        Question(boolean asked) {
            this.asked = asked;
        }

        /** Whether the program can be asked it yet. */
        public boolean isAsked() {
            return asked;
        }
    }

    /** The same key, first read by another question than lift. */
    public Key<T> readBy(Question question) {
        return new Key<>(name, kind, need, meaning, example, Optional.of(question));
    }

    /** Whether any question reads it yet. */
    public boolean isUsed() {
        return usedBy.map(Question::isAsked).orElse(false);
    }

    public static <T> Key<T> required(String name, Kind<T> kind, String meaning, String example) {
        return new Key<>(
                name, kind, new Need.Required(), meaning, example, Optional.of(Question.LIFT));
    }

    /**
     * @param without what the rig has or lacks without it
     */
    public static <T> Key<T> open(
            String name, Kind<T> kind, String meaning, String example, String without) {
        return new Key<>(
                name, kind, new Need.Open(without), meaning, example, Optional.of(Question.LIFT));
    }

    /**
     * @param text the default as it would be written
     * @param origin where it comes from
     */
    public static <T> Key<T> defaulted(
            String name, Kind<T> kind, String text, String origin, String meaning, String example) {
        return new Key<>(
                name,
                kind,
                new Need.Default(text, origin),
                meaning,
                example,
                Optional.of(Question.LIFT));
    }

    /**
     * @param rule how the value is found without it
     */
    public static <T> Key<T> computed(
            String name, Kind<T> kind, String rule, String meaning, String example) {
        return new Key<>(
                name, kind, new Need.Computed(rule), meaning, example, Optional.of(Question.LIFT));
    }

    /** A key of the format that no question reads yet. */
    public static <T> Key<T> later(String name, Kind<T> kind, String meaning, String example) {
        return new Key<>(
                name,
                kind,
                new Need.Open("nothing is assumed"),
                meaning,
                example,
                Optional.empty());
    }
}
