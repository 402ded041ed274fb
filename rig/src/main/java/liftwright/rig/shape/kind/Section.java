package liftwright.rig.shape.kind;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/**
 * A map with a fixed set of keys.
 *
 * @param name what it is called on the reference page and in schemas, unlike that of any other
 * @param meaning one sentence
 * @param keys in the order of the reference page
 * @param rules what holds between them
 * @param byName the same keys by their names
 */
public record Section(
        String name,
        String meaning,
        List<Key<?>> keys,
        List<Rule> rules,
        Map<String, Key<?>> byName)
        implements Kind<Fields> {

    /** The key that names an entry of a list. */
    public static final String ID = "id";

    public Section {
        keys = List.copyOf(keys);
        rules = List.copyOf(rules);
        byName = Map.copyOf(byName);
    }

    public static Section of(String name, String meaning, Key<?>... keys) {
        var byName = new LinkedHashMap<String, Key<?>>();
        for (Key<?> key : keys) {
            if (byName.put(key.name(), key) != null) {
                throw new IllegalArgumentException(name + " has " + key.name() + " twice");
            }
        }
        return new Section(name, meaning, List.of(keys), List.of(), byName);
    }

    /** The same section with rules. */
    public Section with(Rule... more) {
        return new Section(name, meaning, keys, List.of(more), byName);
    }

    public boolean hasId() {
        return byName.containsKey(ID);
    }

    @Override
    public Optional<Fields> read(Node node, Spot spot, Problems problems) {
        if (!(node instanceof Node.Entries(var entries, var _))) {
            return Scalars.wrong(Scalars.name(node), spot, this, problems);
        }
        var read = new LinkedHashMap<String, Stated<?>>(2 * entries.size());
        var unread = new HashSet<String>(0);
        for (Node.Entry entry : entries) {
            Key<?> key = byName.get(entry.key());
            Spot at = spot.child(entry.key(), entry.value().span());
            if (key == null) {
                problems.add(
                        Code.UNKNOWN_KEY,
                        at,
                        entry.keySpan(),
                        "the key " + Problems.quote(entry.key()),
                        "one of the keys of " + name,
                        unknown(entry.key(), problems));
                continue;
            }
            boolean unused = !key.isUsed();
            if (unused) {
                problems.add(
                        Code.USED_BY_NO_QUESTION_YET,
                        at,
                        entry.keySpan(),
                        "the key " + Problems.quote(entry.key()),
                        "nothing else: it is part of the format",
                        "It is read, and used by no question yet.");
                problems.enterUnused();
            }
            if (!read(key, entry.value(), at, problems, read)) {
                unread.add(entry.key());
            }
            if (unused) {
                problems.leaveUnused();
            }
        }
        var fields = new Fields(this, spot, read, unread);
        Requirements.check(fields, problems);
        return Optional.of(fields);
    }

    private static <T> boolean read(
            Key<T> key, Node node, Spot at, Problems problems, Map<String, Stated<?>> into) {
        var value = key.kind().read(node, at, problems);
        value.ifPresent(v -> into.put(key.name(), new Stated<>(at, v)));
        return value.isPresent();
    }

    private String unknown(String given, Problems problems) {
        List<String> homes = problems.homesOf(given);
        if (!homes.isEmpty()) {
            return "It is a key of " + String.join(", ", homes) + ".";
        }
        String advice = Nearest.advice(given, byName.keySet());
        if (!advice.isEmpty()) {
            return advice;
        }
        var names = keys.stream().map(Key::name).toList();
        return names.size() <= 12
                ? "Its keys are: " + String.join(", ", names) + "."
                : "The reference page of the rig file lists its keys.";
    }

    @Override
    public String expectation() {
        return "a map with the keys of " + name;
    }
}
