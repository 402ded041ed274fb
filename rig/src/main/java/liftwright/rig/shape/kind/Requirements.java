package liftwright.rig.shape.kind;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import liftwright.rig.Problem.Code;

/** Whether a map has the keys that it must have, and none that exclude each other. */
public final class Requirements {

    private Requirements() {}

    static void check(Fields fields, Problems problems) {
        for (Key<?> key : fields.section().keys()) {
            if (key.need() instanceof Need.Required && !fields.has(key)) {
                missing(fields, key, problems);
            }
        }
        check(fields, fields.section().rules(), problems);
    }

    /**
     * Whether the rules hold; also for those that can be asked only after maps were laid over each
     * other. Where none of several keys stands, later rules of other kinds are left: they speak of
     * those keys.
     */
    public static void check(Fields fields, List<Rule> rules, Problems problems) {
        boolean whole = true;
        for (Rule rule : rules) {
            if (!whole && !(rule instanceof Rule.AtLeastOne)) {
                continue;
            }
            switch (rule) {
                case Rule.AtMostOne(var keys) -> atMostOne(fields, keys, problems);
                case Rule.AtLeastOne(var keys) -> {
                    if (keys.stream().noneMatch(fields::has)) {
                        noneOf(fields, keys, problems);
                        whole = false;
                    }
                }
                case Rule.Needs(var key, var others) -> {
                    for (Key<?> other : others) {
                        if (fields.has(key) && !fields.has(other)) {
                            missing(fields, other, problems);
                        }
                    }
                }
                case Rule.OnlyWith(var key, var others) -> {
                    if (fields.has(key) && others.stream().noneMatch(fields::has)) {
                        problems.add(
                                Code.CONTRADICTION,
                                fields.spotOf(key),
                                "“" + key.name() + "” without " + names(others),
                                "“" + key.name() + "” only beside " + names(others),
                                "Here it would mean nothing: take it out.");
                    }
                }
            }
        }
    }

    private static void noneOf(Fields fields, List<Key<?>> keys, Problems problems) {
        boolean one = keys.size() == 1;
        problems.add(
                Code.MISSING_KEY,
                fields.spot().missing(keys.getFirst().name()),
                (one ? "no " : "none of ") + names(keys),
                (one ? "" : "one of ") + names(keys),
                "Add for instance “" + line(keys.getFirst()) + "”.");
    }

    /** Tells of a key that must be there for a reason that lies outside its section. */
    public static void require(Fields fields, Key<?> key, Problems problems) {
        if (!fields.has(key)) {
            missing(fields, key, problems);
        }
    }

    private static void missing(Fields fields, Key<?> key, Problems problems) {
        problems.add(
                Code.MISSING_KEY,
                fields.spot().missing(key.name()),
                "no “" + key.name() + "”",
                key.name() + ": " + key.kind().expectation(),
                "Add for instance “" + line(key) + "”.");
    }

    private static void atMostOne(Fields fields, List<Key<?>> keys, Problems problems) {
        var given = keys.stream().filter(fields::has).toList();
        if (given.size() > 1) {
            Key<?> last =
                    Collections.max(
                            given, Comparator.comparingInt(k -> fields.spotOf(k).span().from()));
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(last),
                    names(given) + " together",
                    "one of " + names(keys),
                    "They decide the same thing, or exclude each other: take one out.");
        }
    }

    private static String line(Key<?> key) {
        return key.name() + ": " + key.example();
    }

    private static String names(List<Key<?>> keys) {
        return keys.stream().map(k -> "“" + k.name() + "”").collect(Collectors.joining(", "));
    }
}
