package liftwright.rig.shape.kind;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/**
 * A map whose keys are names.
 *
 * @param what what it holds, in the plural
 * @param value what stands under each name
 * @param names whose names they are
 */
public record MapOf<E>(String what, Kind<E> value, Names names)
        implements Kind<Map<String, Stated<E>>> {

    /** Whether the keys give new names or repeat those of parts. */
    public enum Names {
        NEW,
        OF_PARTS
    }

    @Override
    public Optional<Map<String, Stated<E>>> read(Node node, Spot spot, Problems problems) {
        if (!(node instanceof Node.Entries(var entries, var _))) {
            return Scalars.wrong(Scalars.name(node), spot, this, problems);
        }
        if (entries.size() > ListOf.LONGEST) {
            problems.add(
                    Code.OUT_OF_RANGE,
                    spot,
                    entries.size() + " entries",
                    "at most " + ListOf.LONGEST,
                    "");
            return Optional.empty();
        }
        var read = new LinkedHashMap<String, Stated<E>>();
        for (Node.Entry entry : entries) {
            Spot at = spot.child(entry.key(), entry.value().span());
            if (names == Names.NEW) {
                // a bad name still names: what refers to it needs no problem of its own
                Name.check(entry.key(), at, entry.keySpan(), problems);
            }
            value.read(entry.value(), at, problems)
                    .ifPresent(v -> read.put(entry.key(), new Stated<>(at, v)));
        }
        return Optional.of(Collections.unmodifiableMap(read));
    }

    @Override
    public String expectation() {
        return "a map of " + what;
    }
}
