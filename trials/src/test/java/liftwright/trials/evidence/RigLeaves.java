package liftwright.trials.evidence;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Contactor;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * A referee for inputs: every leaf of a rig's records as the object that it is, to be compared by
 * {@code equals} and not as a text of ours. Its paths are those of the product, so that the rules
 * which say what a path is about can be asked; everything else of it stands here alone.
 */
final class RigLeaves {

    private static final Set<String> PASSED_OVER =
            Set.of("name", "revision", "note", "declaration", "defaults", "tables", "corrections");

    /** Where such parts are written out. */
    private static final Pattern OWN =
            Pattern.compile("(fan types|cells|mounts|wiring/contactors)/[^/]+");

    private final Map<String, Object> leaves = new TreeMap<>();

    private RigLeaves() {}

    static Map<String, Object> of(Rig rig) {
        var walk = new RigLeaves();
        for (RecordComponent c : Rig.class.getRecordComponents()) {
            if (!PASSED_OVER.contains(c.getName())) {
                String section = spelt(c.getName()).replace("cell types", "cells");
                walk.go(section, read(c, rig));
            }
        }
        return walk.leaves;
    }

    private void go(String at, Object value) {
        if (value instanceof Optional<?> maybe) {
            maybe.ifPresent(v -> go(at, v));
        } else if (value instanceof OptionalInt || value instanceof OptionalDouble) {
            leaves.put(at, value);
        } else if (value instanceof Limits limits) {
            for (LimitName name : LimitName.values()) {
                leaves.put(
                        at + "/" + name.key(),
                        List.of(limits.si(name), limits.declared().containsKey(name)));
            }
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((k, v) -> go(at + "/" + k, v));
        } else if (value instanceof List<?> list) {
            int number = 1;
            for (Object one : list) {
                go(at + "/" + called(one).orElse("" + number), one);
                number++;
            }
            if (at.endsWith("/elements")) {
                leaves.put(at + "/order", list.stream().map(one -> called(one)).toList());
            }
        } else if (isNamedElsewhere(value) && !OWN.matcher(at).matches()) {
            leaves.put(at, called(value).orElseThrow());
        } else if (value instanceof Record record
                && !(value instanceof Quantity)
                && !(value instanceof Vec3)) {
            int before = leaves.size();
            if (Arrays.stream(record.getClass().getInterfaces()).anyMatch(Class::isSealed)) {
                leaves.put(at + "/is", record.getClass());
            }
            for (RecordComponent c : record.getClass().getRecordComponents()) {
                // The path of a part in a list says what it is called.
                if (!at.endsWith("/" + read(c, record))) {
                    go(at + "/" + spelt(c.getName()), read(c, record));
                }
            }
            if (leaves.size() == before) {
                leaves.put(at, record.getClass());
            }
        } else {
            leaves.put(at, value);
        }
    }

    private static boolean isNamedElsewhere(Object value) {
        return value instanceof FanType
                || value instanceof CellType
                || value instanceof Mount
                || value instanceof Contactor;
    }

    private static Optional<String> called(Object one) {
        if (!(one instanceof Record record) || one instanceof Quantity || one instanceof Vec3) {
            return Optional.empty();
        }
        RecordComponent first = record.getClass().getRecordComponents()[0];
        return Set.of("id", "name").contains(first.getName())
                ? Optional.of(read(first, record).toString())
                : Optional.empty();
    }

    private static Object read(RecordComponent c, Record of) {
        try {
            return c.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("cannot read " + c, e);
        }
    }

    private static String spelt(String camel) {
        return camel.replaceAll("([A-Z])", " $1").toLowerCase(java.util.Locale.ROOT);
    }
}
