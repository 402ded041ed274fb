package liftwright.rig.shape.kind;

import java.util.List;
import java.util.stream.Collectors;
import liftwright.rig.Problem.Code;

/** Whether a map has the keys that it must have, and none that exclude each other. */
final class Requirements {

    private Requirements() {}

    static void check(Fields fields, Problems problems) {
        for (Key<?> key : fields.section().keys()) {
            if (key.need() instanceof Need.Required && !fields.has(key)) {
                missing(fields, key, problems);
            }
        }
        for (Rule rule : fields.section().rules()) {
            switch (rule) {
                case Rule.AtMostOne(var keys) -> atMostOne(fields, keys, problems);
                case Rule.AtLeastOne(var keys) -> {
                    if (keys.stream().noneMatch(fields::has)) {
                        problems.add(
                                Code.MISSING_KEY,
                                fields.spot().missing(keys.getFirst().name()),
                                "none of " + names(keys),
                                "one of " + names(keys),
                                "Add for instance “" + line(keys.getFirst()) + "”.");
                    }
                }
                case Rule.Needs(var key, var others) -> {
                    for (Key<?> other : others) {
                        if (fields.has(key) && !fields.has(other)) {
                            missing(fields, other, problems);
                        }
                    }
                }
            }
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
            Key<?> second = given.get(1);
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(second),
                    names(given) + " together",
                    "one of " + names(keys),
                    "Both decide the same thing: take one out.");
        }
    }

    private static String line(Key<?> key) {
        return key.name() + ": " + key.example();
    }

    private static String names(List<Key<?>> keys) {
        return keys.stream().map(k -> "“" + k.name() + "”").collect(Collectors.joining(", "));
    }
}
