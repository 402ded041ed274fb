package liftwright.rig;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a declared value stands in the rig file: keys from the top, entries of a list by their id,
 * joined with slashes: {@code fan types/F140/motor/speed constant}, {@code
 * fans/left/cant/outboard}, {@code wiring/feeds/feed/fans/p.1}. It is also the first part of a
 * parameter's name, so it is part of the file format. Slashes never occur in keys or ids.
 *
 * @param segments keys and ids, outermost first; a list entry without an id is its number from 1
 */
public record RigPath(List<String> segments) {

    public RigPath {
        segments = List.copyOf(segments);
    }

    public static RigPath of(String... segments) {
        return new RigPath(List.of(segments));
    }

    /** Reads the printed form. Never fails: what it names may not exist. */
    public static RigPath parse(String text) {
        return text.isEmpty() ? new RigPath(List.of()) : new RigPath(List.of(text.split("/", -1)));
    }

    public RigPath child(String segment) {
        var longer = new ArrayList<>(segments);
        longer.add(segment);
        return new RigPath(longer);
    }

    @Override
    public String toString() {
        return String.join("/", segments);
    }
}
