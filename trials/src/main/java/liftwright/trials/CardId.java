package liftwright.trials;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

/**
 * Names a card of a rig: {@code first-spin.F140}, {@code pod.left pod}, {@code hop}.
 *
 * @param kind what is done
 * @param subject fan type, mount, cell type or the like that it is done to; empty for the whole rig
 */
public record CardId(CardKind kind, String subject) implements Comparable<CardId> {

    private static final Comparator<CardId> ORDER =
            Comparator.comparing(CardId::kind).thenComparing(CardId::subject);

    /** Of the whole rig. */
    public static CardId of(CardKind kind) {
        return new CardId(kind, "");
    }

    /** Reads the printed form; empty where it names no kind of card. */
    public static Optional<CardId> parse(String text) {
        int dot = text.indexOf('.');
        String kind = dot < 0 ? text : text.substring(0, dot);
        String subject = dot < 0 ? "" : text.substring(dot + 1);
        return Arrays.stream(CardKind.values())
                .filter(one -> one.id().equals(kind))
                .map(one -> new CardId(one, subject))
                .findFirst();
    }

    /** As it is printed and typed. */
    public String text() {
        return subject.isEmpty() ? kind.id() : kind.id() + "." + subject;
    }

    @Override
    public int compareTo(CardId other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return text();
    }
}
